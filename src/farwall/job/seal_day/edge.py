"""How long a sealer's edge lives on this job's floor, and which hours refuse it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta

from farwall.air.clocks import DRAUGHT, SUN
from farwall.errors import Unanswerable
from farwall.evidence import Span
from farwall.facts.plan import OpenTime, RoomOpenTime
from farwall.facts.settled import SettledCoat
from farwall.job.lasting import Lasting
from farwall.job.seal_day.films import wet_edge
from farwall.nouns import dataclass

Refusing = Callable[[datetime], tuple[str, ...]]
"""What stands against sealing at a moment; nothing where it may be done."""


def never(_moment: datetime) -> tuple[str, ...]:
    """Nothing is refused."""
    return ()


@dataclass(frozen=True)
class SealLasting(Lasting):
    """As `Lasting`, for a sealer: minutes of its wet edge, and hours in which it may be laid."""

    refusing: Refusing = never

    def refusal(self, rooms: tuple[str, ...], at_min: float) -> Unanswerable | None:  # noqa: ARG002
        """Why nothing may be sealed at that minute, the same in every room; or None."""
        against = self.refusing(self.starts_at + timedelta(minutes=at_min))
        if not against:
            return None
        return Unanswerable(against[0], remedies=against[1:])

    def open_times(
        self, rooms: tuple[str, ...], coat: SettledCoat, from_min: float, to_min: float
    ) -> tuple[RoomOpenTime, ...]:
        """As `Lasting`; a refused hour leaves the edge what it is, for the verdict refuses it."""
        if self.refusing is never:
            return super().open_times(rooms, coat, from_min, to_min)
        return replace(self, refusing=never).open_times(rooms, coat, from_min, to_min)

    def of_floor(self, room: str, at_min: float, *, sunny: bool = False) -> Span:
        """The wet edge in a room, sun and draught counted. [min]"""
        found = self.job.room(room)
        span = wet_edge(self.job.job.sealer, self.conditions_in(room, at_min))
        factor = (SUN if found.sun or sunny else 1.0) * (DRAUGHT if found.draught else 1.0)
        likely, high = (span.low if end is None else end for end in (span.likely, span.high))
        return Span(factor * span.low, factor * likely, factor * high, span.rank, span.source)

    def _of_room(
        self,
        room: str,
        coat: SettledCoat,  # noqa: ARG002 - the same for each
        at_min: float,
        *,
        sunny: bool = False,
        drop_s: float | None = None,  # noqa: ARG002 - a film lies on the slab, whatever it drinks
    ) -> OpenTime:
        span = self.of_floor(room, at_min, sunny=sunny)
        low, likely = round(span.low, 2), round(span.likely or span.low, 2)
        high = round(span.high or span.low, 2)
        return OpenTime(low, likely, high, span.rank.value, span.source)
