"""When to fill the tank: where it ages the live edges least, and as seldom as can be.

Looked at are this field and those that come after it in the coat: a part-used
tank is changed at a stop line when that saves a filling inside a later field.
The search itself is `tank_run`; it is exact for the pauses told here, which are
guesses: walks out and in are told by how many bands are left.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from farwall.errors import Unanswerable
from farwall.facts.plan import PlanTools
from farwall.floor.geometry import Point
from farwall.nouns import dataclass
from farwall.spray.refills_again import stops_again
from farwall.spray.routes import gap_m
from farwall.spray.sweep import Sweep
from farwall.spray.tank_run import Stops, TankRun, best_stops
from farwall.units import volume_words

TANK_RESERVE = 0.15
"""Share of a tank that the plan keeps unspent: a slab may drink more. Rank: guess."""
DIP = 0.02
"""A filling inside a field that spares the reserve no more of a tank is left out. Rank: guess."""
_HAIR_L = 1e-9
LOOK_AHEAD = 6
"""So many later fields are looked at: a tank seldom lasts for more. Rank: guess."""


@dataclass(frozen=True)
class Flow:
    """What a coat drinks and who brings it."""

    coat: str
    l_per_m2: float
    helper: bool
    tools: PlanTools
    still_to_spray_l: float
    """What this field and all later ones of the coat are likely to need."""
    ahead: tuple[Sweep, ...] = ()
    """The sweeps that come after this field in the coat, in order."""
    comfort_min: float = 0.0
    """Edges up to this age leave margin enough: among them fewer fillings count. [min]"""

    @property
    def filled_l(self) -> float:
        """What a full tank gives before its reserve. [L]"""
        return self.tools.tank_l * (1 - TANK_RESERVE)

    @property
    def swaps(self) -> bool:
        """Whether the helper brings a full tank: never where that takes longer than filling."""
        return self.helper and self.tools.swap_min <= self.tools.refill_min


def refill_stops(
    sweep: Sweep, tank_l: float, flow: Flow, *, now_min: float = 0.0
) -> frozenset[int]:
    """Before which passes the tank, holding `tank_l` now, is filled.

    The oldest edge of this field and of each that `flow` sees ahead is as young as any
    choice makes it, to 0.01 min, or within `flow.comfort_min`; then fillings are fewest over
    all of them, then walking. A filling before a first pass costs no live edge. A field
    planned before, or begun by `now_min`, keeps its fillings while they last
    (`refills_again`). Raises `Unanswerable` when one band alone needs more than a tank.
    """
    if not sweep.to_spray:
        return frozenset()
    run = tank_run(sweep, flow)
    if max(run.need_l) > flow.filled_l + _HAIR_L:
        raise Unanswerable(
            f"One band takes {volume_words(max(run.need_l))} and a tank gives "
            f"{volume_words(flow.filled_l)} before its reserve.",
            remedies=["Narrower bands, or a larger tank."],
        )
    now = tank_l - TANK_RESERVE * flow.tools.tank_l
    if sweep.begun or sweep.stops is not None:
        return stops_again(sweep, now, flow, now_min)
    runs = [run]
    for later in flow.ahead[:LOOK_AHEAD]:
        next_run = tank_run(later, flow)
        if max(next_run.need_l) > flow.filled_l + _HAIR_L:
            break
        runs.append(next_run)
    found = best_stops(runs, filled_l=flow.filled_l, now_l=now, enough_min=flow.comfort_min)
    assert found is not None  # every pass of every run fits a tank
    return frozenset(_worth_it(run.need_l, found[0], now, flow))


def _worth_it(need_l: Sequence[float], stops: Stops, now_l: float, flow: Flow) -> Stops:
    """The fillings without those inside the field that spare the reserve a dip."""
    dip_l = DIP * flow.tools.tank_l
    kept = stops
    for stop in sorted(stops, reverse=True):
        fewer = tuple(each for each in kept if each != stop)
        if stop > 0 and _lasts(need_l, fewer, now_l + dip_l, flow.filled_l + dip_l):
            kept = fewer
    return kept


def _lasts(need_l: Sequence[float], stops: Stops, now_l: float, filled_l: float) -> bool:
    """Whether no stretch between fillings takes more than the tank gives."""
    left = now_l
    for index, need in enumerate(need_l):
        left = (filled_l if index in stops else left) - need
        if left < -_HAIR_L:
            return False
    return True


def tank_run(sweep: Sweep, flow: Flow) -> TankRun:
    """The sweep as a tank sees it: asked for by each of the fields before it, reckoned once."""
    key = (flow.l_per_m2, flow.swaps, flow.tools)
    if key not in sweep.tank_runs:
        sweep.tank_runs[key] = _tank_run(sweep, flow)
    return sweep.tank_runs[key]


def _tank_run(sweep: Sweep, flow: Flow) -> TankRun:
    times = _times_without_fillings(sweep, flow.tools)
    count = len(sweep.passes)
    return TankRun(
        tuple(each.wetted_m2 * flow.l_per_m2 for each in sweep.passes),
        (0.0, *(pause_before_min(sweep, index, flow) for index in range(1, count))),
        tuple(0.0 if flow.swaps else 2 * _way_out_m(sweep, index) for index in range(count)),
        # Halves planned for two are one after the other here: the later one meets the earlier.
        tuple(pair for pair in sweep.table.ages_by_pair(times) if pair[0] < pair[1]),
    )


def age_with_min(sweep: Sweep, stops: Iterable[int], flow: Flow) -> float:
    """The oldest edge when fillings fall before these passes, walks out and in guessed. [min]"""
    places = set(stops)
    times, paused = [], 0.0
    for index, (start, minutes) in enumerate(_times_without_fillings(sweep, flow.tools)):
        if index in places:
            paused += pause_before_min(sweep, index, flow)
        times.append((start + paused, minutes))
    return sweep.table.peak_age_min(times)


def _times_without_fillings(sweep: Sweep, tools: PlanTools) -> list[tuple[float, float]]:
    """Start and duration of each pass, walks between them counted, straight. [min]"""
    now = 0.0
    times = []
    last: Point | None = None
    for each in sweep.passes:
        if last is not None:
            now += gap_m(last, each.path[0]) / tools.walk_m_min
        minutes = each.minutes(tools)
        times.append((now, minutes))
        now += minutes
        last = each.path[-1]
    return times


def pause_before_min(sweep: Sweep, index: int, flow: Flow) -> float:
    """How long a filling before this pass takes, the walk out and in guessed. [min]"""
    if flow.swaps:
        return flow.tools.swap_min
    return flow.tools.refill_min + 2 * _way_out_m(sweep, index) / flow.tools.walk_m_min


def _way_out_m(sweep: Sweep, index: int) -> float:
    return sweep.depth_m * (len(sweep.passes) - index)
