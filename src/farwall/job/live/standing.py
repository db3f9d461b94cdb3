"""Where the day stands: coat and field in hand, next band and field, what is left of the mix."""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property

from farwall.facts.plan import Band, Field, Plan
from farwall.facts.so_far import BandDone, ClosedRoom, Past, SoFar
from farwall.job.live.noun import InHand
from farwall.job.live.stained import Stained, stained
from farwall.job.live.thirst import LEAST_SPAN_L, belief_of, inside
from farwall.job.mix_needs import planned_mixed_l
from farwall.job.story.noun import CoatStory, Level, Sprayed, Story
from farwall.job.story.say import clock
from farwall.job.story.whose import two_spray
from farwall.mix.thirst import Thirst
from farwall.nouns import dataclass

_EMPTY = Level(0.0, 0.0, 0.0, 0.0, 0, 0.0, 0.0)
"""Nothing mixed, nothing used."""


@dataclass(frozen=True)
class Standing:
    """The plan against the story at one minute; `us`: told in US units, hours by am and pm."""

    plan: Plan
    story: Story
    at_min: float
    us: bool = True

    def clock(self, minute: float) -> str:
        """A minute of the plan by the clock on the wall, in the manner of the job."""
        return clock(self.plan, minute, us=self.us)

    @cached_property
    def done(self) -> dict[str, Sprayed]:
        """Every band done, by id."""
        return self.story.done()

    @cached_property
    def coat(self) -> str:
        """The coat in hand: begun and not done, else the first not done, else the last. Once the
        floor is stained, the last that was begun."""
        coats = [coat.id for coat in self.plan.inputs.coats]
        if self.stained and self.stained.coat:
            return self.stained.coat
        left = {f.coat for f in self.plan.fields if any(b.id not in self.done for b in f.bands)}
        begun = [coat for coat in reversed(coats) if self._begun(coat) and coat in left]
        return next(iter([*begun, *[coat for coat in coats if coat in left]]), coats[-1])

    @cached_property
    def stained(self) -> Stained | None:
        """What in the log ends the staining, though the plan may have more; None while nothing."""
        return stained(self.plan, self.story)

    def _begun(self, coat: str) -> bool:
        told = self.story.coat(coat)
        return told is not None and bool(told.fields)

    @cached_property
    def own(self) -> list[Field]:
        """The fields of the coat in hand, in order."""
        return sorted((f for f in self.plan.fields if f.coat == self.coat), key=lambda f: f.order)

    @cached_property
    def coat_story(self) -> CoatStory | None:
        """What is entered of the coat in hand."""
        return self.story.coat(self.coat)

    @cached_property
    def begun_ids(self) -> set[str]:
        """Fields of the coat that are begun, be it only by word."""
        told = self.coat_story
        return {one.field for one in told.fields} if told is not None else set()

    def left_of(self, field: Field) -> list[Band]:
        """Its bands that are to do."""
        return [band for band in field.bands if band.id not in self.done]

    @cached_property
    def in_hand(self) -> Field | None:
        """The field that is begun and not done; the last one begun where there are several;
        none on a floor that is stained."""
        if self.stained:
            return None
        told = self.coat_story
        order = [one.field for one in told.fields] if told is not None else []
        open_ = [f for f in self.own if f.id in order and self.left_of(f)]
        return max(open_, key=lambda f: order.index(f.id), default=None)

    @cached_property
    def feathered_min(self) -> float | None:
        """When the edge of the field in hand was feathered out last; None where it was not."""
        field = self.in_hand
        if field is None:
            return None
        ids = {"", field.id, *(band.id for band in field.bands)}
        told = [
            one.at_min for one in self.story.of("feathered")
            if {one.text("field"), one.text("band")} <= ids
        ]  # fmt: skip
        return max(told, default=None)

    @property
    def stands_feathered(self) -> bool:
        """Whether the field in hand was feathered out and not gone on with since."""
        field, at_min = self.in_hand, self.feathered_min
        done = [self.done[b.id].end_min for b in field.bands if b.id in self.done] if field else []
        return at_min is not None and bool(done) and at_min >= max(done)

    @cached_property
    def to_come(self) -> list[Field]:
        """The fields of the coat that are not begun, in order; none on a floor that is stained."""
        if self.stained:
            return []
        return [f for f in self.own if f.id not in self.begun_ids and self.left_of(f)]

    @cached_property
    def closed(self) -> dict[str, float | None]:
        """Rooms closed now, until when if that was told."""
        return {one.room: one.until_min for one in self.story.closed_at(self.at_min)}

    @cached_property
    def next_field(self) -> Field | None:
        """The field to begin next: the first in order with no closed room, else the first."""
        free = [f for f in self.to_come if not set(f.rooms) & set(self.closed)]
        return next(iter([*free, *self.to_come]), None)

    @cached_property
    def next_band(self) -> Band | None:
        """The band to spray next, of the field in hand, else of the next one."""
        field = self.in_hand or self.next_field
        return min(self.left_of(field), key=lambda b: b.start_min) if field else None

    @cached_property
    def belief(self) -> Thirst:
        """The belief of the coat's thirst after all that was looked at."""
        return belief_of(self.plan, self.coat, self.coat_story)

    @cached_property
    def mix_belief(self) -> Thirst:
        """By which more is mixed: of the rest of the last field, once that was looked into."""
        field, told = self.in_hand, self.coat_story
        if field is None or self.to_come or told is None or not told.levels:
            return self.belief
        before = len(told.done) - sum(band.id in self.done for band in field.bands)
        start = next((one for one in reversed(told.levels) if one.bands == before), None)
        last = told.levels[-1]
        if start is None or last.planned_l - start.planned_l < LEAST_SPAN_L:
            return self.belief
        used = last.mixed_l - start.mixed_l + start.hand_l - last.hand_l
        if used <= 0:
            return self.belief
        at_start = belief_of(self.plan, self.coat, told, bands=before)
        return inside(at_start, done_l=last.planned_l - start.planned_l, used_l=used)

    @cached_property
    def litres(self) -> InHand:
        """What is left of the mix now."""
        told = self.coat_story
        if told is None or (told.mixed_l is None and not told.levels):
            return InHand(max(self._planned_hand_l, 0.0), None, None, known=False)
        last = told.levels[-1] if told.levels else _EMPTY
        if told.tub_look is not None:
            tank = min(max(self._hand_l(told, last, told.tub_look) - told.tub_look.tub_l, 0.0),
                       self._tanks_l)  # fmt: skip
            last = replace(told.tub_look, tank_l=tank)
        have = self._hand_l(told, last)
        if not told.levels:
            return InHand(have, told.tub_l, None, known=False)
        tank_l = told.tank_l
        if tank_l is None and told.tub_l is not None:
            tank_l = min(max(have - told.tub_l, 0.0), self._tanks_l)
        return InHand(have, told.tub_l, tank_l, known=True)

    @property
    def _tanks_l(self) -> float:
        """What all tanks hold."""
        return self.plan.inputs.tools.tank_l * (2 if two_spray(self.plan) else 1)

    def _hand_l(self, told: CoatStory, last: Level, then: Level | None = None) -> float:
        """What is left of what was left at `last`: now, or at a later look."""
        mixed = (told.mixed_l or last.mixed_l) if then is None else then.mixed_l
        upto = None if then is None else then.bands
        since = self._planned_l(told, last.bands, upto) * self.belief.factor
        return max(last.hand_l + mixed - last.mixed_l - since, 0.0)

    def _planned_l(self, told: CoatStory, first: int, upto: int | None = None) -> float:
        """What the plan has for the bands done since so many were, until so many are."""
        bands = {band.id: band for field in self.own for band in field.bands}
        return sum(bands[one.band].litres for one in told.done[first:upto] if one.band in bands)

    @cached_property
    def _planned_hand_l(self) -> float:
        mixed = planned_mixed_l(self.plan, self.coat, self.begun_ids, self.done)
        told = self.coat_story
        return mixed - (self._planned_l(told, 0) if told is not None else 0.0)

    @cached_property
    def as_midday(self) -> tuple[Plan, SoFar]:
        """The plan with this past, and the day so far, for what asks as in mid-day."""
        litres = self.litres
        tank = litres.tank_l or 0.0
        ordered = sorted(self.done.values(), key=lambda one: (one.start_min, one.end_min))
        closed = tuple(ClosedRoom(room, until) for room, until in self.closed.items())
        so_far = SoFar(
            at_min=max(self.at_min, 0.0),
            tank_l=tank,
            tub_l=max(litres.have_l - tank, 0.0),
            closed=closed,
        )
        past = Past(
            at_min=so_far.at_min,
            coat=self.coat,
            done=tuple(BandDone(one.band, one.start_min, one.end_min) for one in ordered),
            at=(0.0, 0.0),
            tank_l=tank,
            tub_l=so_far.tub_l,
            closed=closed,
            left=(),
            past_hash="",
        )
        return replace(self.plan, so_far=past), so_far

    def m2_left(self) -> float:
        """Floor of the coat in hand that is to do."""
        return sum(b.polygon.shape.area for f in self.own for b in self.left_of(f))
