"""The tables of whole houses and of two colours, for `farwall bench colour`."""

from __future__ import annotations

import textwrap
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

    from farwall.bench.colour_score import Whole
    from farwall.bench.colour_sealed import Sealed


def whole_lines(found: Whole) -> list[str]:
    """Jobs by both rules, said chances against found shares, and where the dark rooms are."""
    heads = "".join(
        f"{head:>{width}}"
        for head, width in (
            ("jobs", 6), ("rooms", 7), ("too dark %", 12), ("rooms %", 9), ("cost", 7),
            ("coats", 7), ("away", 7),
        )
    )  # fmt: skip
    told = ["", f"{'whole jobs':<34}{heads}"]
    told += [
        f"{one.rule:<34}{one.jobs:>6}{one.rooms:>7}{one.too_dark_percent:>12.2f}"
        f"{one.rooms_too_dark_percent:>9.2f}{one.cost:>7.2f}{one.coats:>7.2f}{one.away:>7.2f}"
        for one in (*found.houses, *found.two)
    ]
    told += ["", "Chance of too dark that was said, and the share that came, per cent:"]
    told += [
        f"  {one.low:>3.0f} to {one.high:<4.0f}{one.count:>7} times   said {one.said:>5.1f}"
        f"   came {one.found:>5.1f}"
        for one in found.chances
    ]
    return [*told, *_dark(found)]


def _dark(found: Whole) -> list[str]:
    dark = found.dark
    if not dark.rooms:
        return []
    told = f"Rooms that we left too dark: {dark.rooms}. The thirstiest of their house: "
    told += f"{dark.thirstiest:.0f} %; at once, with the first coat: {dark.at_once:.0f} %; "
    told += f"chance that was said of the last coat, in the mean: {dark.said:.1f} %."
    return ["", *textwrap.wrap(told, 96)]


def sealed_lines(found: Sequence[Sealed]) -> list[str]:
    """The sealed look by how many samples were seen wet and sealed."""
    told = [
        "",
        f"{'sealed look, samples sealed':<34}{'median':>8}{'90 %':>7}{'bias':>7}{'held':>7}",
    ]
    return told + [
        f"{one.samples:<34}{one.median:>8.2f}{one.p90:>7.2f}{one.bias:>7.2f}{one.held_percent:>7.1f}"
        for one in found
    ]
