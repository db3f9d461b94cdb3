"""Hours as a noun: plain values."""

from __future__ import annotations

from farwall.nouns import dataclass
from farwall.price.hours import TaskHours


@dataclass(frozen=True)
class RoomHours:
    """A room's likely hours: those that go with its own floor and walls, without the job's own."""

    room: str
    name: str
    area_m2: float
    hours: float


@dataclass(frozen=True)
class Hours:
    """All tasks in their order; in all, low and high within which four jobs in five end.

    people: on site · days: working days on site, low, likely, high, as one house alone with mild
    days or as the calendar has it (`days_from`) · visits: all trips, with those before the work.
    """

    tasks: tuple[TaskHours, ...]
    warnings: tuple[str, ...] = ()
    low_h: float = 0.0
    high_h: float = 0.0
    people: int = 2
    days: tuple[int, int, int] = (0, 0, 0)
    visits: tuple[int, int, int] = (0, 0, 0)
    days_from: str = ""
    rooms: tuple[RoomHours, ...] = ()

    @property
    def likely_h(self) -> float:
        """Person-hours in all, most likely."""
        return sum(one.likely_h for one in self.tasks)
