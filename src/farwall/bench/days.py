"""How good calendars are, and how long they take, as houses and crews grow in number."""

from __future__ import annotations

from time import perf_counter, process_time

from farwall.bench.day_houses import SEED, day_question
from farwall.days.calendar import calendar
from farwall.days.check import check_days
from farwall.days.document import document
from farwall.nouns import dataclass

SIZES = ((5, 1), (10, 2), (20, 3), (50, 5), (100, 7), (200, 10))


@dataclass(frozen=True)
class DaysScore:
    """One calendar: its cost, what none can undercut, its seconds, the checker's faults."""

    houses: int
    crews: int
    columns: int
    cost_days: float
    bound_days: float
    gap_percent: float
    late_houses: int
    cpu_s: float
    wall_s: float
    faults: tuple[str, ...]


def score_days(houses: int, crews: int, *, seed: int = SEED) -> DaysScore:
    """Make the calendar of a frozen set and have the checker read it."""
    question = day_question(houses, crews, seed=seed)
    cpu, wall = process_time(), perf_counter()
    answer = calendar(question)
    cpu, wall = process_time() - cpu, perf_counter() - wall
    faults = tuple(f"{one.code} {one.house}" for one in check_days(document(answer)))
    proof = answer.proof
    if proof.bound_days > proof.cost_days + 1e-6:
        faults += ("the bound is above the cost",)
    return DaysScore(
        houses=houses,
        crews=crews,
        columns=proof.columns,
        cost_days=round(proof.cost_days, 3),
        bound_days=round(proof.bound_days, 3),
        gap_percent=round(proof.gap_percent, 3),
        late_houses=sum(one.late_days > 0 for one in answer.houses),
        cpu_s=round(cpu, 2),
        wall_s=round(wall, 2),
        faults=faults,
    )


def days_heading() -> str:
    """The names over the lines."""
    return (
        f"{'houses':>6} {'crews':>5} {'ways':>7} {'cost':>9} {'bound':>9} {'gap %':>6} "
        f"{'late':>4} {'cpu s':>6} {'wall s':>6}"
    )


def days_line(one: DaysScore) -> str:
    """One calendar in a line."""
    line = (
        f"{one.houses:>6} {one.crews:>5} {one.columns:>7} {one.cost_days:>9.1f} "
        f"{one.bound_days:>9.1f} {one.gap_percent:>6.2f} {one.late_houses:>4} "
        f"{one.cpu_s:>6.1f} {one.wall_s:>6.1f}"
    )
    return "\n".join([line, *(f"  WRONG: {fault}" for fault in one.faults[:8])])
