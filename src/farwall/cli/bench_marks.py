"""`farwall bench colour --marks`: marks found on invented mopped floors, and on real surfaces."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator, Sequence
from dataclasses import asdict
from itertools import islice
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.bench.mopped_score import Find, Report
    from farwall.bench.mopped_surfaces import Surface

FLOORS = 80
_DONE = 0


def run_marks(
    *,
    floors: int | None,
    surfaces: Path | None,
    as_json: bool,
    tuning: bool = False,
    own: bool = False,
    known: bool = False,
    seed: int | None = None,
    first: str | None = None,
) -> int:
    """Score so many floors of a half, or look at the real surfaces of a folder; always 0.

    seed: floors from that one on in place of a half · first: only floors whose first mark is of
    that kind, by the throws of the generator. Raises Refused for a kind that is none.
    """
    from farwall.colour.marks.find import marks_in

    find: Find = marks_in
    if surfaces is not None:
        from farwall.bench.mopped_surfaces import surfaces as looked_at

        seen = looked_at(surfaces, find)
        print(
            json.dumps([asdict(one) for one in seen]) if as_json else "\n".join(on_surfaces(seen))
        )
        return _DONE
    from farwall.bench.mopped_score import JUDGING, TUNING, look, report

    begin = seed if seed is not None else TUNING if tuning else JUDGING
    looked, refused = [], 0
    for number in _seeds(begin, first, floors or FLOORS):
        try:
            looked.append(look(number, find, own=own, known=known))
        except Refused:
            refused += 1
        if not as_json and sys.stderr.isatty():
            print(f"\r{len(looked)}", end="", file=sys.stderr, flush=True)
    if not looked:
        raise Refused(Mistake("--seed", "no photo of these floors can be laid on its plan."))
    told = report(looked)
    half = ("tuning" if tuning else "judging") if seed is None else f"from seed {seed}"
    half += f", first mark a {first}" if first else ""
    half += f", {refused} more not laid" if refused else ""
    half += ", edges of bands known" if known else ""
    print(json.dumps({"half": half} | asdict(told)) if as_json else "\n".join(lines(told, half)))
    return _DONE


def _seeds(begin: int, first: str | None, count: int) -> Iterator[int]:
    from farwall.bench.mopped_marks import MAKERS
    from farwall.bench.mopped_rich import seeds_from

    if first is not None and first not in MAKERS:
        raise Refused(Mistake("--first", f"no mark is called “{first}”.", ", ".join(MAKERS)))
    return islice(seeds_from(begin, first), count)


def lines(told: Report, half: str) -> list[str]:
    """The tables on the screen."""
    kinds = ", ".join(f"{count} {kind}" for kind, count in told.false_kinds) or "none"
    as_said, not_so, beside = told.apart
    said = f"""
{told.floors} invented mopped floors ({half}), {told.marked} with marks; of their marks
{told.hidden} are left out, for the sheet shows less than 60 % of them.
found: a lap line along 40 % of its length within 0.10 m, another mark where a middle lies in an
outline grown by 0.10 m; named: by its own kind. Faint: below 1 L against the floor beside; weak:
below 2; strong: from 3.5.

{"kind":<17}{"marks":>6}{"found":>7}{"%":>5}{"named":>7}{"faint":>8}{"weak":>8}{"middle":>8}{"strong":>8}
{chr(10).join(_recalls(told))}

{chr(10).join(_steps(told))}

false alarms a photo: {told.false_marked:.2f} on floors with marks, {told.false_free:.2f} on floors
without, {told.clean_free_percent:.0f} % of which had none. They are: {kinds};
{told.false_on_drying} of them on ground that has begun to dry.
apart: {as_said} called crack or joint that are, {not_so} that are not, {beside} a mark along one

{"confidence":<14}{"proposals":>10}{"met a mark %":>14}
{chr(10).join(_trusts(told))}

processor a sheet: median {told.cpu_s_median:.2f} s, worst {told.cpu_s_worst:.2f} s"""
    return said.strip().splitlines()


def _trusts(told: Report) -> Iterator[str]:
    for one in told.trusts:
        share = 100 * one.met / max(one.proposals, 1)
        yield f"{f'{one.least:.1f} to {one.most:.1f}':<14}{one.proposals:>10}{share:>14.0f}"


def _recalls(told: Report) -> Iterator[str]:
    for one in told.recalls:
        share = 100 * one.found / max(one.marks, 1)
        classes = "".join(f"{f'{found}/{marks}':>8}" for found, marks in one.by_class)
        yield f"{one.kind:<17}{one.marks:>6}{one.found:>7}{share:>5.0f}{one.named:>7}{classes}"


def _steps(told: Report) -> Iterator[str]:
    from farwall.bench.mopped_rich import wilson

    yield f"{'by lightness step':<34}{'marks':>6}{'found':>7}{'%':>5}   19 times in 20"
    for kind, steps in told.steps:
        for one in steps:
            low, high = (100 * share for share in wilson(one.found, one.marks))
            share = f"{100 * one.found / one.marks:.0f}" if one.marks else "–"
            sure = f"{low:.0f} to {high:.0f}" if one.marks else ""
            row = f"{kind:<17}{one.words:<17}{one.marks:>6}{one.found:>7}{share:>5}   {sure}"
            yield row.rstrip()


def on_surfaces(seen: Sequence[Surface]) -> list[str]:
    """One line for each picture and scale, and the sum."""
    told = [
        "Real surfaces nobody stained; no scale is known, two are guessed. All marks are false.",
        "",
        f"{'picture':<28}{'mm/point':>9}{'m2':>6}{'marks':>7}{'cracks, joints':>16}  kinds",
    ]
    told += [
        f"{one.name:<28}{1000 * one.m_per_px:>9.0f}{one.area_m2:>6.2f}{len(one.marks):>7}"
        f"{one.apart:>16}  {', '.join(one.marks)}"
        for one in seen
    ]
    marks, area = sum(len(one.marks) for one in seen), sum(one.area_m2 for one in seen)
    told.append(f"{'together':<28}{'':>9}{area:>6.1f}{marks:>7}{sum(s.apart for s in seen):>16}")
    return told
