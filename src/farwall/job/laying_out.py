"""What is sprayed in one go, and in which order: the same for every coat of a job."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cache

from farwall.beside import Beside, at_once
from farwall.facts.settled import SettledCoat
from farwall.job.ground import JobGround, rooms_of
from farwall.nouns import dataclass
from farwall.spray.fields import COMFORT, Budget, Cut, cut_into_fields
from farwall.spray.order import BudgetAt, Order, Step, order_fields
from farwall.spray.sweeps import Pieces, Sweeps


@dataclass(frozen=True)
class LaidOut:
    """Fields and their order, and what they were weighed by."""

    cut: Cut
    order: Order
    sweeps: Sweeps
    budget: Callable[..., float]
    """Minutes an edge may wait in a field of these pieces, begun at this minute (else 0)."""


def laid_out(
    ground: JobGround,
    wanted: Sequence[str] = (),
    cut_by: Callable[[Sweeps, Budget], Cut] = cut_into_fields,
    *,
    beside: Beside = at_once,
) -> LaidOut:
    """Fields and their order, the same for every coat: judged by the tightest coat.

    Raises `Unanswerable` as `plan_job` does.
    """
    settled = ground.settled
    tools, crew = settled.tools, settled.job.crew
    thirst = max(settled.l_per_m2.values())
    sweeps = Sweeps(ground.world, tools, thirst, crew.helper, beside=beside)

    @cache
    def in_hour(pieces: Pieces, hour: int) -> float:
        """What the oldest edge may wait, so that each room's own part of it may wait there."""
        rooms = rooms_of(ground.world, pieces)
        if ground.lasting.refusal(rooms, 60.0 * hour) is not None:
            return 0.01
        low = {
            room: min(_low(ground, room, coat, hour) for coat in settled.coats) for room in rooms
        }
        if len(set(low.values())) == 1:
            return max(min(low.values()), 0.01)
        parts = sweeps.room_parts(pieces)
        return max(min(low[room] / max(parts.get(room, 1.0), 1e-3) for room in rooms), 0.01)

    def budget(pieces: Pieces, at_min: float = 0.0) -> float:
        changes = ground.lasting.hours or ground.lasting.sunlight
        return in_hour(pieces, int(at_min // 60) if changes else 0)

    cut = cut_by(sweeps, budget)
    while True:
        order = order_fields(cut.fields, sweeps, budget, wanted=wanted)
        walked = [sweeps.walked(step.pieces, step.exit) for step in order.steps]
        if all(walked):
            _level_the_tightest(order, sweeps, budget)
            return LaidOut(cut, order, sweeps, budget)


def _low(ground: JobGround, room: str, coat: SettledCoat, hour: int) -> float:
    return ground.lasting.shortest((room,), coat, 60.0 * hour).low


def _level_the_tightest(order: Order, sweeps: Sweeps, budget: BudgetAt) -> None:
    """Begin to level the field that needs most of its budget: a later coat may ask for it."""

    def share(step: Step) -> float:
        return sweeps.age_min(step.pieces, step.exit) / budget(step.pieces, 0.0)

    tightest = max(order.steps, key=share)
    if share(tightest) > COMFORT:
        sweeps.sweeper(tightest.pieces, tightest.exit).begin_levelling(sweeps.beside)
