"""When a stained floor can be sealed at the earliest: the clocks from the first stroke to dry-down.

Stain, its waits, the dwell, rinsing, then the dry-down, each by the conditions of its own hours and
by what was watched on this floor. The floor itself wins: even light colour, meter, pH, white rag.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from farwall.air.waits import DRY_DOWN
from farwall.evidence import Rank
from farwall.facts.plan import Clock
from farwall.facts.settled import SettledCoat
from farwall.job.lasting import Lasting
from farwall.job.waits import Waits
from farwall.job.wet_below import free_from
from farwall.nouns import dataclass

_WITH_WALKS = 1.5
"""Minutes of a coat over those of its spraying alone, for walks and fillings: a guess."""


@dataclass(frozen=True)
class Earliest:
    """When the floor has dried down after its rinse: low, likely and high end.

    None where the clock comes to no end. `rinsed_at`: when it begins.
    """

    rinsed_at: datetime
    at_low: datetime
    at_likely: datetime | None
    at_high: datetime | None
    rank: str
    source: str

    @property
    def sure_at(self) -> datetime:
        """The late end; where there is none the longest that the clock counts."""
        if self.at_high is not None:
            return self.at_high
        return self.rinsed_at + timedelta(minutes=DRY_DOWN.longest_min)


def earliest_of(lasting: Lasting) -> Earliest:
    """The dry-down of a job before any plan of it: its coats take as long as their spraying and
    half of it more (a guess, minutes in a wait of a day)."""
    waits, job = Waits(lasting), lasting.job
    area_m2 = sum(room.polygon.shape.area for room in job.job.floor.rooms)
    coat_min = _WITH_WALKS * area_m2 / job.tools.spray_m2_min
    begins, dry = 0.0, None
    for coat in job.coats:
        ends = begins + coat_min
        last = coat is job.coats[-1]
        dry = waits.dry(coat, ends, last=last)
        if last:
            return _after(waits, coat, ends, dry, lasting.starts_at)
        begins = free_from(begins, ends, dry)
    raise AssertionError("a settled job has a coat")


def earliest_from(clocks: tuple[Clock, ...], starts_at: datetime) -> Earliest | None:
    """The same from the clocks of a plan that was made; None where it has no dry-down."""
    down = next((one for one in clocks if one.name == DRY_DOWN.name), None)
    return None if down is None or down.begins_min is None else _read(down, starts_at)


def _after(
    waits: Waits, coat: SettledCoat, ends_min: float, dry: Clock, starts_at: datetime
) -> Earliest:
    found = earliest_from(waits.after(coat, ends_min, dry), starts_at)
    assert found is not None
    return found


def _read(down: Clock, starts_at: datetime) -> Earliest:
    rinsed = starts_at + timedelta(minutes=down.begins_min or 0.0)

    def at(minutes: float | None) -> datetime | None:
        return None if minutes is None else rinsed + timedelta(minutes=minutes)

    refused = down.likely_min is None and down.low_min <= 0
    low = at(DRY_DOWN.longest_min if refused else down.low_min)
    assert low is not None
    rank = down.rank or Rank.PRACTICE.value
    return Earliest(rinsed, low, at(down.likely_min), at(down.high_min), rank, down.source)
