"""What to do now with a floor's colour: the weakest safe coat that closes the gap, wait, or stop.

A use case: from facts, plan and log to a verdict with its litres and its reasons. Pure.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.colour.belief import believe
from farwall.colour.next_coat import CLOSED, NextCoat, Outlook, Way, chosen_of
from farwall.colour.nouns import Belief
from farwall.colour.sealed import sealing
from farwall.errors import Unanswerable
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.job.colour.aside import alike_judged, light_coat, mean_lab, strong_coat
from farwall.job.colour.asked import (
    Asked,
    insist_known,
    named_coat,
    next_planned,
    rooms_asked,
    settled_of,
)
from farwall.job.colour.grounds import RoomsAlike, outlooks_of, rooms_alike, together
from farwall.job.colour.laid import LaidCoat, RoomCoats, laid_by_room
from farwall.job.colour.library import prior_of
from farwall.job.colour.limits import (
    FULL_COATS,
    NO_DROPS,
    drops_since,
    limits_of,
    neutralised_since,
)
from farwall.job.colour.litres import litres_of
from farwall.job.colour.next_noun import NextAnswer, OtherStain
from farwall.job.colour.seen import Ask, Gathered, Patch, gathered
from farwall.job.colour.standard import Standard, standard_of
from farwall.job.colour.ways import habit, ways_of
from farwall.job.story import story as story_of
from farwall.job.story.noun import Story
from farwall.nouns import dataclass

DARK_RANGE = 3.0
"""L below the sample at which a patch is too dark: a guess at the natural range of a stained
floor."""
MUCH_OFF = 4.0
"""CIEDE2000 by which another stain may end farther from the sample and still be spoken of."""
WAITED_FOR = ("looked", "dwell", "drop", "neutralised")


CAUTIONS = (
    "Too dark is final: no water and no scrub brings a stained floor back.",
    "The sheet of the stain in hand, local codes and licensed practice win over all of this.",
    "Lay it in the closet first, on the sample, and look at it clean and wet before the floor.",
    "The chances rest on guesses that were tried on invented floors only.",
)


def colour_next(asked: Asked) -> NextAnswer:
    """The verdict. Raises Refused for a room, coat or stain that is not there; Unanswerable where
    samples or standard are missing, with what to measure."""
    insist_known(asked)
    story = story_of(asked.plan, asked.kept) if asked.kept else None
    found = gathered(asked.job, asked.plan, asked.kept, story)
    sealed = sealing(found.pairs)
    standard, asks = standard_of(found, sealed)
    if standard is None or not found.patches:
        reason = "No next coat can be told: no sample of this slab is known by dose and wet look."
        if found.patches:
            reason = "No next coat can be told: there is no sample that the floor is held against."
        raise Unanswerable(reason, remedies=[one.what for one in (*found.asks, *asks)])
    case = _Case.of(asked, story, found, standard)
    return case.answer(asks, sealed)


@dataclass(frozen=True)
class _Case:
    """One question with all that it is judged from."""

    asked: Asked
    found: Gathered
    standard: Standard
    settled: SettledJob
    laid: RoomCoats
    rooms: tuple[str, ...]
    coat: str
    alike: tuple[RoomsAlike, ...]
    belief: Belief
    learned_from: int
    neutralised: bool
    timed: Mapping[str, float]

    @classmethod
    def of(cls, asked: Asked, story: Story | None, found: Gathered, standard: Standard) -> _Case:
        settled = settled_of(asked)
        laid = laid_by_room(asked.plan, story, named=named_coat(asked, story))
        rooms = rooms_asked(asked, laid)
        coat = asked.coat or next_planned(asked.plan, laid[rooms[0]])
        alike = rooms_alike(settled, asked.plan, found, laid, rooms)
        prior, learned_from = prior_of(asked.job, found.stains, asked.lessons)
        places = tuple(dict.fromkeys(one.place for one in alike if one.place != "floor"))
        belief = believe(found.seen, stains=len(found.stains), prior=prior, rooms=places)
        return cls(
            asked, found, standard, settled, laid, rooms, coat, alike, belief, learned_from,
            neutralised=story is not None and neutralised_since(story, rooms, laid),
            timed=drops_since(story, rooms, laid) if story is not None else NO_DROPS,
        )  # fmt: skip

    @property
    def coats(self) -> tuple[LaidCoat, ...]:
        """What lies on the first of the rooms."""
        return self.laid[self.rooms[0]]

    @property
    def dark_range(self) -> float:
        """Narrower where the standard's own wet look is not sure."""
        return max(1.0, DARK_RANGE - self.standard.unsure_l)

    def answer(self, asks: tuple[Ask, ...], sealed: object) -> NextAnswer:
        """All of it."""
        stains, unsampled = self._stains()
        judged = {one: self._judged(one) for one in stains}
        stain = self._best(stains, judged)
        parts, whole = judged[stain]
        looks = self._looks()
        limits = limits_of(
            self.settled, self.rooms, looks, self.standard, coats=len(self.coats),
            neutralised=self.neutralised, timed=self.timed,
        )  # fmt: skip
        held = [one for one in limits if one.holds is False and one.code in WAITED_FOR]
        ways = tuple(one for one in whole.ways if one.way is not None)
        extra = self._outlooks(stain, (habit(self._number(stain), self._m2_per_l(stain)),))
        strong = strong_coat(whole.stop, ways)
        lay = whole.verdict == "lay" and whole.chosen.way is not None
        return NextAnswer(
            job=self.asked.job.id,
            verdict="wait" if held and whole.stop.gap > CLOSED else whole.verdict,
            would=whole.verdict,
            why=whole.why,
            coat=self.coat,
            stain=stain,
            stain_name=self._name(stain),
            rooms=self.rooms,
            left_out=() if self.asked.room else tuple(
                one for one in self.laid if one not in self.rooms
            ),
            coats=self.coats,
            chosen=whole.chosen,
            stop=whole.stop,
            habit=extra[0],
            strong=strong,
            light=light_coat(ways, strong),
            litres=litres_of(
                self.settled, self.asked.plan, self._planned(stain), whole.chosen.way, self.rooms
            ) if lay and whole.chosen.way is not None else None,
            alike=tuple(
                alike_judged(one, found, whole, looks, self.standard) for one, found in parts
            ),
            others=tuple(
                OtherStain(one, other.verdict, other.why, other.chosen)
                for one, (_, other) in judged.items()
                if one != stain and other.chosen.away <= whole.chosen.away + MUCH_OFF
            ),
            standard=self.standard,
            sealing=sealed,  # type: ignore[arg-type]
            floor_now=mean_lab(looks) if looks else whole.stop.lab,
            floor_seen=bool(looks),
            dark_range=self.dark_range,
            limits=limits,
            asks=(*self.found.asks, *asks, *unsampled, *self._asks(looks)),
            cautions=CAUTIONS,
            found=self.found,
            learned_from=self.learned_from,
        )  # fmt: skip

    def _stains(self) -> tuple[tuple[str, ...], tuple[Ask, ...]]:
        """Stains that are weighed, the planned one first; only those sampled here."""
        planned = next((c.stain for c in self.asked.plan.inputs.coats if c.id == self.coat), "")
        wanted = [self.asked.stain] if self.asked.stain else [planned, *self.found.stains]
        named = tuple(dict.fromkeys(filter(None, wanted)))
        sampled = tuple(one for one in named if self.found.sampled(one))
        missing = [one for one in named[:1] if one not in sampled]
        asks = tuple(
            Ask("stain-sample", f"Lay a sample of {self._name(one)} on this slab and look at it "
                "clean and wet: without one it is not weighed.")
            for one in missing
        )  # fmt: skip
        if not sampled:
            reason = "No next coat can be told: no sample of its stain was seen on this slab."
            raise Unanswerable(reason, remedies=[one.what for one in (*self.found.asks, *asks)])
        return sampled, asks

    def _best(self, stains: Sequence[str], judged: Mapping[str, tuple[object, NextCoat]]) -> str:
        """The planned stain; where nothing is planned, the one that ends nearest the sample."""
        planned = next((c.stain for c in self.asked.plan.inputs.coats if c.id == self.coat), "")
        if planned in stains:
            return planned
        lay = [one for one in stains if judged[one][1].verdict == "lay"] or list(stains)
        return min(lay, key=lambda one: judged[one][1].chosen.away)

    def _judged(self, stain: str) -> tuple[list[tuple[RoomsAlike, tuple[Outlook, ...]]], NextCoat]:
        ways = ways_of(
            self._number(stain), self._m2_per_l(stain), accent=len(self.coats) >= FULL_COATS
        )
        parts = [(one, self._in(one, (None, *ways))) for one in self.alike]
        stop, *rest = together(parts)
        return parts, chosen_of(stop, tuple(rest))

    def _outlooks(self, stain: str, ways: Sequence[Way | None]) -> tuple[Outlook, ...]:
        del stain
        return together([(one, self._in(one, ways)) for one in self.alike])

    def _in(self, alike: RoomsAlike, ways: Sequence[Way | None]) -> tuple[Outlook, ...]:
        return outlooks_of(
            self.belief, alike, ways, sample_lab=self.standard.lab,
            sample_blur=self.standard.blur, dark_range=self.dark_range, stains=self.found.stains,
        )  # fmt: skip

    def _number(self, stain: str) -> int:
        return self.found.stains.index(stain)

    def _name(self, stain: str) -> str:
        return next((s.name or s.id for s in self.settled.stains if s.id == stain), stain)

    def _planned(self, stain: str) -> SettledCoat:
        """The coat whose coverage, thirst and fields are taken: the one decided, else the last
        of that stain, else the last."""
        own = [one for one in self.settled.coats if one.id == self.coat]
        alike = [one for one in self.settled.coats if one.stain.id == stain]
        return (own or alike[-1:] or list(self.settled.coats[-1:]))[0]

    def _m2_per_l(self, stain: str) -> float:
        return self._planned(stain).m2_per_l

    def _looks(self) -> tuple[Patch, ...]:
        """Looks at these rooms, or at the floor as one, with the coats that are on now."""
        now = [one.coat for one in self.coats]
        own = [
            one for one in self.found.of_floor
            if [coat.coat for coat in one.coats] == now
            and (one.room is None or one.room in self.rooms)
        ]  # fmt: skip
        return tuple(own)

    def _asks(self, looks: Sequence[Patch]) -> tuple[Ask, ...]:
        asks = []
        if not looks:
            what = "Look at six spots of the floor clean and wet, with a target in the photo."
            asks.append(Ask("floor-look", what))
        elif all(one.seen.spread_l is None for one in looks):
            what = "Look at six spots of the floor and not one: how patchy it is, they say."
            asks.append(Ask("floor-spots", what))
        if any(not one.with_target for one in self.found.patches):
            what = "Put a target into every photo: a colour read without one is a guess."
            asks.append(Ask("target", what))
        return tuple(asks)
