"""The bench in words: one line a field, then a set in a few lines."""

from __future__ import annotations

import statistics
from collections import Counter
from collections.abc import Sequence

from farwall.bench.growth import Growth
from farwall.bench.habits import ExtraGallon, LargestLast
from farwall.bench.more_habits import EveryDoorway, HalfThenGauge
from farwall.bench.real_plans import NotRead
from farwall.bench.score import FieldScore, Score
from farwall.bench.summary import Spread, Summary

_NAME = 36
_LOOSE = "-"


def heading(*, search: bool = False) -> str:
    """The line above the fields."""
    best = f"  {'best':>6} {'/bound':>6}" if search else ""
    return (
        f"{'field':<{_NAME}} {'m²':>6} {'bands':>5} {'E m':>6} {'bound':>6} {'E/bound':>7} "
        f"{'swept':>6} {'replay':>6} {'ratio':>5} {'verdict':<9} {'s':>5}{best}"
    )


def field_line(one: FieldScore) -> str:
    """One field: metres, minutes; `ratio` is the replayed age over the swept one."""
    best = "" if one.best_m is None else f"  {one.best_m:6.2f} {_figure(one.best_ratio, 6)}"
    return (
        f"{_fitted(one.name):<{_NAME}} {one.area_m2:6.1f} {one.bands:5} {one.front_m:6.2f} "
        f"{one.bound_m:6.2f} {_figure(one.ratio, 7)} {one.predicted_min:6.2f} "
        f"{one.replayed_min:6.2f} {_figure(one.realised, 5)} {one.verdict:<9} "
        f"{_figure(one.seconds, 5, 1)}{best}"
    ).rstrip()


def score_lines(found: Score) -> list[str]:
    """The lines of one case: its fields, or that there is no plan; then what must not be."""
    lines = [field_line(one) for one in found.fields]
    if found.unplanned:
        lines.append(f"{found.case:<{_NAME}} no plan: {found.unplanned}")
    return [*lines, *(f"  WRONG  {failure}" for failure in found.failures)]


def summary_lines(told: Summary) -> list[str]:
    """A set in a few lines."""
    verdicts = " · ".join(f"{word} {count}" for word, count in sorted(told.verdicts.items()))
    lines = [
        "",
        (
            f"{_count(told.cases, 'case')}, {_count(told.fields, 'field')} ({told.one_band} of "
            f"one band, left out below), planned in {told.seconds:.1f} s"
        ),
        f"verdicts            {verdicts or 'none'}",
        f"E over bound        {_spread(told.ratio)}",
        *([f"best over bound     {_spread(told.best)}"] if told.best else []),
        f"replay over swept   {_spread(told.realised)}   (walks and refills are in it)",
    ]
    if told.worst:
        lines += ["worst by E over bound:"]
        lines += [f"  {_fitted(name):<{_NAME}} {ratio:5.2f}" for name, ratio in told.worst]
    if told.worst_best:
        lines += ["worst by best over bound:"]
        lines += [f"  {_fitted(name):<{_NAME}} {ratio:5.2f}" for name, ratio in told.worst_best]
    if told.unplanned:
        lines += ["without a plan:"]
        lines += [f"  {name}: {why}" for name, why in told.unplanned]
    return lines


def unread_lines(unread: Sequence[NotRead]) -> list[str]:
    """The plans that are not among the cases."""
    return [f"{one.name:<{_NAME}} {one.why}" for one in unread]


def growth_heading() -> str:
    """The line above the sizes."""
    return f"{'rooms':>5} {'fields':>6} {'plan s':>8} {'replay s':>8} {'peak MB':>8}"


def growth_line(one: Growth) -> str:
    """One size of house."""
    return (
        f"{one.rooms:5} {one.fields or _LOOSE:>6} {_figure(one.plan_s, 8)} "
        f"{_figure(one.check_s, 8)} {_figure(one.peak_mb, 8, 0)}"
        + (f"  {one.came_to}" if one.came_to else "")
        + "".join(f"\n  WRONG  {fault}" for fault in one.faults)
    )


def habit_lines(last: Sequence[LargestLast], gallons: Sequence[ExtraGallon]) -> list[str]:
    """Habits of the trade beside the plan."""
    if not gallons:
        return []
    counts = Counter(one.came_to for one in last)
    six, five = ([getattr(one, key) for one in gallons] for key in ("on_six", "on_five"))
    return [
        "",
        "Habits of the trade beside the plan (common practice, no source)",
        f"  largest open area last, {_count(len(last), 'house')}: "
        + ", ".join(f"{word} {count}" for word, count in sorted(counts.items())),
        *(
            f"    {one.case}: {_outcome(one)}"
            for one in last
            if one.came_to not in {"as planned", "same"}
        ),
        (
            "  one extra gallon, mixed once, runs dry inside a field: on six "
            f"{_percent(six)}, on five {_percent(five)} of days; the gate allows "
            f"{100 * gallons[0].allowed:.1f} %"
        ),
    ]


def more_habit_lines(
    doorways: Sequence[EveryDoorway], halves: Sequence[HalfThenGauge]
) -> list[str]:
    """A stop at every doorway, and half the mix then gauge, beside the plan."""
    if not halves:
        return []
    told = [one for one in doorways if one.came_to != "cannot"]
    fields, dead, seen = (
        [sum(getattr(one, key)[at] for one in told) for at in (0, 1)]
        for key in ("fields", "dead_edges", "seen_open")
    )
    cannot = [one.case for one in doorways if one.came_to == "cannot"]
    dry, inside, extra = (
        _percent([getattr(one, key) for one in halves])
        for key in ("dry", "mixed_inside", "dry_with_extra")
    )
    return [
        (
            f"  a stop at every doorway, {_count(len(doorways), 'house')}: {fields[1]} fields "
            f"(the plan {fields[0]}), dead edges {dead[1]} ({dead[0]}), cold lines seen open "
            f"{seen[1]} ({seen[0]})"
        ),
        *(f"    {case}: a room cannot be done alone" for case in cannot),
        (
            f"  half the mix in the tank, then gauge: runs dry inside a field on {dry} of days, "
            f"on {inside} more is mixed inside a field; with one on six more at the second "
            f"mixing dry on {extra}"
        ),
    ]


def _outcome(one: LargestLast) -> str:
    if one.habit_share is None:
        return f"{one.came_to} somebody; the plan uses {one.planned_share:.0%} of its open time"
    dead = f", {_count(one.dead_edges, 'field')} more with a dead edge" if one.dead_edges else ""
    return (
        f"{one.came_to}: worst edge at {one.habit_share:.0%} of its open time, "
        f"the plan's at {one.planned_share:.0%}{dead}"
    )


def _fitted(name: str) -> str:
    """A long name without its beginning: the number of the field is at its end."""
    return name if len(name) <= _NAME else "…" + name[1 - _NAME :]


def _percent(chances: Sequence[float]) -> str:
    low, high = 100 * min(chances), 100 * max(chances)
    return f"{100 * statistics.median(chances):.1f} % ({low:.1f}-{high:.1f})"


def _spread(one: Spread | None) -> str:
    if one is None:
        return "no field to tell of"
    return f"median {one.median:5.2f}   least {one.least:5.2f}   worst {one.worst:5.2f}"


def _figure(value: float | None, wide: int, places: int = 2) -> str:
    return f"{_LOOSE:>{wide}}" if value is None else f"{value:{wide}.{places}f}"


def _count(number: int, what: str) -> str:
    return f"{number} {what}" if number == 1 else f"{number} {what}s"
