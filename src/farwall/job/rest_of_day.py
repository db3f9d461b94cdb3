"""The rest of a day over all its coats: done ones kept, the others from now on."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from functools import cached_property

from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, Plan
from farwall.facts.so_far import ClosedRoom
from farwall.job.again_fields import first_min, last_min, moved
from farwall.job.coat_again import Again, CoatAgain, Remains, Stand
from farwall.job.daylight import Daylight
from farwall.job.past import Settled
from farwall.job.so_far_sense import whole_fields
from farwall.nouns import dataclass
from farwall.spray.kept import pieces_of

_ROUNDED_MIN = 0.1
"""Beginnings of coats are rounded to a tenth of a minute."""


@dataclass(frozen=True)
class RestOfDay:
    """A plan in mid-day: where it stands, and which rooms are closed.

    light: of its days; None: until the evening of the calendar.
    """

    plan: Plan
    state: Settled
    closed: tuple[ClosedRoom, ...]
    light: Daylight | None = None

    @cached_property
    def again(self) -> Again:
        """What all its coats share."""
        return Again(self.plan, self.closed)

    def remains(self) -> Remains:
        """Past and rest of every coat. Raises `Unanswerable`, and `Refused` for a place on wet."""
        coats = [coat.id for coat in self.plan.inputs.coats]
        here = coats.index(self.state.coat)
        fields: list[Field] = []
        for coat in coats[:here]:
            fields += CoatAgain(self.again, coat, Stand.below(self.state, coat)).remains().fields
        left: list[Field] = []
        why: dict[str, str] = {}
        if self.state.past or here == 0:
            now = CoatAgain(self.again, self.state.coat, Stand.of(self.state)).remains()
            fields += now.fields
            left, why = list(now.left), dict(now.why)
        else:
            left = [field for field in self.plan.left if coats.index(field.coat) < here]
            here -= 1
        for before, coat in zip(coats[here:], coats[here + 1 :], strict=False):
            found = self._later(coat, before, fields, left)
            fields += found.fields
            left += found.left
            why.update(found.why)
        return Remains(tuple(fields), tuple(left), why)

    def _later(
        self, coat: str, before: str, fields: Sequence[Field], left: Sequence[Field]
    ) -> Remains:
        """A coat that is not begun: as planned, later when it has to be, less what is left bare."""
        own = [field for field in whole_fields(self.plan) if field.coat == coat]
        if not own:
            return Remains((), (), {})
        bare = [pieces_of(self.again.world, field) for field in left if field.coat == before]
        skipped = {
            field.id for field in own if any(pieces_of(self.again.world, field) & b for b in bare)
        }
        back = {field.id for field in self.plan.left if field.coat == coat}
        planned = first_min([field for field in own if field.id not in back] or own)
        begins = max(self._begins(before, fields, planned), self.state.at_min)
        begins = self._in_the_light(begins, planned, last_min(own) - first_min(own))
        still_closed = any(is_closed_at(room.until_min, begins) for room in self.closed)
        same_sun = begins == planned or self.plan.sun is None  # else it is held to another hour's
        if not skipped and not still_closed and not back and same_sun and self._same_crew(own):
            return Remains(tuple(moved(field, begins - planned) for field in own), (), {})
        waiting = tuple(field for field in own if field.id not in skipped)
        stand = Stand.before_coat(self.state, begins, waiting)
        found = CoatAgain(self.again, coat, stand).remains()
        reason = f"coat {numbered(self.plan, before)} is not on it yet."
        return Remains(
            found.fields,
            (*found.left, *(field for field in own if field.id in skipped)),
            {**found.why, **dict.fromkeys(sorted(skipped), reason)},
        )

    def _same_crew(self, fields: Sequence[Field]) -> bool:
        """Whether as many are there as these fields were planned for."""
        second = self.state.second
        if second is None or second.stays:
            return True
        return not any(band.sprayer == 2 for field in fields for band in field.bands)

    def _in_the_light(self, begins: float, planned: float, lasts: float) -> float:
        """A coat that was planned by day and comes late waits for a morning rather than go dark."""
        light = self.light or Daylight(datetime.fromisoformat(self.plan.starts_at))
        if begins == planned or not light.holds(planned, lasts):
            return begins
        return round(light.begins(begins, lasts), 1)

    def _begins(self, before: str, fields: Sequence[Field], planned: float) -> float:
        """When the coat after `before` may begin: as planned, or later as that one ended."""
        own = [field for field in fields if field.coat == before]
        old = [field for field in self.plan.fields if field.coat == before]
        clock = next((c for c in self.plan.clocks if c.coat == before), None)
        if not own or clock is None:
            return planned
        ended, was = last_min(own), last_min(old)
        high = clock.high_min
        if high is not None and abs(was + high - planned) <= _ROUNDED_MIN:
            begins = round(ended + high, 1)
            return planned if abs(begins - planned) <= _ROUNDED_MIN else begins
        likely = clock.low_min if clock.likely_min is None else clock.likely_min
        dry = likely if high is None else high
        if ended + dry <= planned + _ROUNDED_MIN:
            return planned
        if was + dry <= planned + _ROUNDED_MIN:
            return round(ended + dry, 1)
        return max(planned, planned + ended - was)  # the plan itself did not wait so long


def is_closed_at(until_min: float | None, at_min: float) -> bool:
    """Whether a room closed until then (None: nobody said until when) is closed at a minute."""
    return until_min is None or until_min > at_min
