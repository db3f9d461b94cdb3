"""How well marks are found on mopped floors: by kind, by contrast, false alarms, confidence."""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence

from farwall.bench.mopped_before import PARTS, When, before
from farwall.bench.mopped_camera import photograph
from farwall.bench.mopped_edges import known_edges
from farwall.bench.mopped_floors import MoppedFloor, mopped
from farwall.bench.mopped_marks import MAKERS
from farwall.bench.mopped_match import APART, Proposed, Sought, matched
from farwall.bench.mopped_rich import Step, steps_of
from farwall.bench.mopped_sheet import clicks_of, read_sheet, sheet_of
from farwall.colour.marks.nouns import KnownEdge, Mark, Sheet
from farwall.nouns import dataclass

JUDGING, TUNING = 1_000_000, 0
ALL = "all"
STEPPED = ("lap line", "missed crescent")
"""Kinds whose recall is told by finer steps of lightness, too."""
Find = Callable[[Sheet, Sequence[KnownEdge]], tuple[Mark, ...]]
CLASSES = (("faint", 0.0, 1.0), ("weak", 1.0, 2.0), ("middle", 2.0, 3.5), ("strong", 3.5, 100.0))
"""By L against the floor beside, whichever way."""
BINS = ((0.0, 0.3), (0.3, 0.5), (0.5, 0.7), (0.7, 0.9), (0.9, 1.01))


@dataclass(frozen=True)
class Looked:
    """One floor that was looked at."""

    seed: int
    marked: bool
    area_m2: float
    sought: tuple[Sought, ...]
    proposed: tuple[Proposed, ...]
    cpu_s: float

    @property
    def false(self) -> tuple[Proposed, ...]:
        """Proposals that met nothing, but for those along cracks and joints."""
        return tuple(
            one for one in self.proposed
            if not one.met and one.kind not in APART and not one.on_line
        )  # fmt: skip


@dataclass(frozen=True)
class Recall:
    """Of one kind: how many were there to see, found, called by their name, by contrast."""

    kind: str
    marks: int
    found: int
    named: int
    by_class: tuple[tuple[int, int], ...]


@dataclass(frozen=True)
class Trust:
    """Proposals of so much confidence, and how many of them met a mark."""

    least: float
    most: float
    proposals: int
    met: int


@dataclass(frozen=True)
class Report:
    """All of one half. false_*: alarms a photo; apart: proposals that call themselves crack or
    joint and lie on one, that do not, and others that lie along one."""

    floors: int
    marked: int
    hidden: int
    recalls: tuple[Recall, ...]
    false_marked: float
    false_free: float
    clean_free_percent: float
    false_kinds: tuple[tuple[str, int], ...]
    false_on_drying: int
    apart: tuple[int, int, int]
    trusts: tuple[Trust, ...]
    cpu_s_median: float
    cpu_s_worst: float
    steps: tuple[tuple[str, tuple[Step, ...]], ...] = ()


def drawn_sheet(seed: int, *, own: bool = False) -> tuple[MoppedFloor, Sheet]:
    """A floor and its photo laid flat by the reader, or by the bench's own hand."""
    floor = mopped(seed)
    photo = photograph(floor)
    lay = sheet_of if own else read_sheet
    return floor, lay(photo.data, clicks_of(floor, photo), floor.wide_m, floor.high_m)


def before_sheet(floor: MoppedFloor, when: When) -> Sheet | None:
    """A photo of the same slab from before, laid flat by clicks of its own; None: no such coat."""
    was = before(floor, when)
    if was is None:
        return None
    photo = photograph(was, part=PARTS[when] + 1)
    clicks = clicks_of(was, photo, part=PARTS[when] + 2)
    return read_sheet(photo.data, clicks, was.wide_m, was.high_m)


def look(seed: int, find: Find, *, own: bool = False, known: bool = False) -> Looked:
    """One floor drawn, photographed, laid flat, searched, scored.

    known: the finder is told where bands met by the run sheet, off by an error of the hand.
    """
    floor, sheet = drawn_sheet(seed, own=own)
    began = time.process_time()
    marks = find(sheet, known_edges(floor) if known else ())
    took = time.process_time() - began
    sought, proposed = matched(floor, sheet, marks)
    area = float(sheet.floor.sum()) * sheet.m_per_px**2
    return Looked(seed, bool(floor.marks), area, tuple(sought), tuple(proposed), took)


def report(looked: Sequence[Looked]) -> Report:
    """What all of them come to."""
    seen = [one for each in looked for one in each.sought if one.seen]
    marked = [one for one in looked if one.marked]
    free = [one for one in looked if not one.marked]
    false = [one.kind for each in looked for one in each.false]
    proposals = [one for each in looked for one in each.proposed]
    named = [one for one in proposals if one.kind in APART]
    weighed = [one for one in proposals if one.kind not in APART and (one.met or not one.on_line)]
    times = sorted(one.cpu_s for one in looked)
    return Report(
        len(looked), len(marked),
        sum(not one.seen for each in looked for one in each.sought),
        tuple(_recall(kind, seen) for kind in (*MAKERS, ALL)),
        _mean([len(one.false) for one in marked]), _mean([len(one.false) for one in free]),
        100 * _mean([not one.false for one in free]),
        tuple((kind, false.count(kind)) for kind in sorted(set(false))),
        sum(one.on_drying for each in looked for one in each.false),
        (sum(p.on_line for p in named), sum(not p.on_line for p in named),
         sum(p.on_line and not p.met for p in proposals if p.kind not in APART)),
        tuple(_trust(low, high, weighed) for low, high in BINS),
        times[len(times) // 2], times[-1],
        tuple((kind, steps_of(kind, seen)) for kind in STEPPED),
    )  # fmt: skip


def _mean(of: Sequence[float]) -> float:
    return sum(of) / len(of) if of else 0.0


def _recall(kind: str, every: Sequence[Sought]) -> Recall:
    seen = [one for one in every if kind in {one.kind, ALL}]
    classes = []
    for _, low, high in CLASSES:
        own = [one for one in seen if low <= abs(one.lighter) < high]
        classes.append((sum(one.found for one in own), len(own)))
    return Recall(
        kind, len(seen), sum(one.found for one in seen),
        sum(one.kind in one.called for one in seen), tuple(classes),
    )  # fmt: skip


def _trust(low: float, high: float, proposals: Sequence[Proposed]) -> Trust:
    own = [one for one in proposals if low <= one.confidence < high]
    return Trust(low, min(high, 1.0), len(own), sum(bool(one.met) for one in own))
