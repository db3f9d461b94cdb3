"""What a page says of its own scale: what is taken, and what is only offered to the user.

See docs/decisions/0020-the-scale-of-a-page.md. Lengths lettered over what is drawn settle it; a
printed scale alone is taken, and asked to be checked; a bar alone, put together here from loose
lines and figures, is offered and asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.facts.reading import Note
from farwall.nouns import dataclass
from farwall.readers.lines.bars import Bar
from farwall.readers.lines.printed import Printed, not_to_scale, printed_scales
from farwall.readers.lines.scales import APART, find_evidence
from farwall.readers.lines.sheet import Calibration, Measure, Role, Sheet
from farwall.readers.sizes import length_m

_LEAF_M = (0.55, 1.25)  # usual leaves: common practice, no source
_MOST_LONE = 2
_DOTS_PER_IN = (96, 72)
"""Programs take either for the inch when they write pixels (from memory)."""


@dataclass(frozen=True)
class Told:
    """The sheet with the calibrations that are taken, and those that are only offered."""

    sheet: Sheet
    offers: tuple[Calibration, ...] = ()
    lone_print: str = ""
    """The printed scale, where nothing else speaks for it."""
    notes: tuple[Note, ...] = ()


def tell_scale(
    sheet: Sheet,
    bars: Sequence[Bar],
    paper_m_per_unit: float | None,
    *,
    lone: Sequence[Measure] = (),
    overruled: bool = False,
) -> Told:
    """What the page tells, weighed.

    lone: lettered lengths that no other agrees with. overruled: the user said the scale, and all
    that the page tells is compared with it.
    """
    said = printed_scales(sheet.words)
    sized = [_calibration(one, paper_m_per_unit) for one in said if paper_m_per_unit]
    scales = _distinct([Calibration(bar.source, bar.m_per_unit) for bar in bars])
    lengths = [_lettered(one) for one in lone[:_MOST_LONE]]
    drawn = [*scales, *lengths]
    if overruled:
        return Told(replace(sheet, calibrations=(*drawn, *sized)))
    unsized = [] if paper_m_per_unit else [offer for one in said for offer in _unsized(one)]
    agreed = [one for one in sized if any(_agree(one, bar) for bar in drawn)]
    if find_evidence(sheet) or any(_agree(a, b) for a in scales for b in lengths):
        taken = sized if len(sized) == 1 else agreed
        return Told(replace(sheet, calibrations=(*drawn, *taken)), tuple(unsized))
    doubt = _doubt(sheet, sized)
    if len(sized) == 1 and not doubt:
        alone = "" if drawn else said[0].text
        return Told(replace(sheet, calibrations=(*drawn, *sized)), (), alone)
    if len(agreed) == 1:
        return Told(replace(sheet, calibrations=(*drawn, *agreed)), (), "", doubt)
    return Told(sheet, (*drawn, *sized, *unsized), "", doubt)


def door_radii(sheet: Sheet) -> list[float]:
    """The radii of arcs that may be doors' swings, from small to large, in units of the sheet."""
    return sorted(
        s.radius
        for s in sheet.swings
        if s.role is Role.OPENING or (s.role is Role.OTHER and 80 < s.sweep_deg < 100)
    )


def _calibration(printed: Printed, paper_m: float) -> Calibration:
    return Calibration(f"the printed scale {printed.text}", printed.ratio * paper_m)


def _lettered(lone: Measure) -> Calibration:
    return Calibration(f"the lettered length {lone.text}", (length_m(lone.text) or 0) / lone.length)


def _unsized(printed: Printed) -> list[Calibration]:
    """A printed scale where the file does not say how large its page is on paper."""
    return [
        Calibration(
            f"the printed scale {printed.text} at {dots} units to the inch of paper",
            printed.ratio * 0.0254 / dots,
        )
        for dots in _DOTS_PER_IN
    ]


def _distinct(found: Sequence[Calibration]) -> list[Calibration]:
    kept: list[Calibration] = []
    for one in found:
        if not any(_agree(one, other) for other in kept):
            kept.append(one)
    return kept


def _agree(first: Calibration, second: Calibration) -> bool:
    return abs(first.m_per_unit / second.m_per_unit - 1) <= APART


def _doubt(sheet: Sheet, prints: Sequence[Calibration]) -> tuple[Note, ...]:
    """Why a printed scale cannot be taken alone."""
    if not prints:
        return ()
    if not_to_scale(sheet.words):
        what = "The page says that something on it is not to scale, so its printed scale is asked."
        return (Note("not-to-scale", what),)
    radii = door_radii(sheet)
    if len(prints) == 1 and len(radii) > 1:
        leaf = radii[len(radii) // 2] * prints[0].m_per_unit
        if not _LEAF_M[0] <= leaf <= _LEAF_M[1]:
            what = f"By {prints[0].source} its doors' leaves would be {leaf:.3g} m wide."
            return (Note("scale-doubted", f"{what} The page may have been resized."),)
    return ()
