"""Does a field fit, and if not, what would make it possible: `remedies` weighs what would."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import field
from functools import cached_property, partial

from farwall.beside import Beside, at_once
from farwall.facts.plan import Remedy, Verdict
from farwall.floor.nouns import Exit, Floor
from farwall.nouns import dataclass
from farwall.spray.lives import Held
from farwall.spray.remedies.case import NARROWER, TIGHT, Case, CoatFacts, Outcome, Trial
from farwall.spray.remedies.offer import Cost, OtherFacts, Otherwise
from farwall.spray.remedies.places import long_way_m, middle_cut
from farwall.spray.remedies.stops import Places
from farwall.spray.schedule import Timed
from farwall.spray.sweeps import Pieces

__all__ = [
    "NARROWER",
    "Case",
    "CoatFacts",
    "Judge",
    "Otherwise",
    "Places",
    "long_way_m",
    "middle_cut",
]


def _nothing_refused(_pieces: Pieces, _at_min: float) -> tuple[Remedy, ...]:
    return ()


def _nothing_else(_pieces: Pieces, _at_min: float, _peak_min: float) -> tuple[Otherwise, ...]:
    return ()


def _no_price(_litres: float) -> None:
    return None


def _nothing_more() -> tuple[Remedy, ...]:
    return ()


_BOTH, _HELPED = "Only with both sprayers at work", "Only with the helper who swaps tanks"


def _leans_on(code: str, words: str, without: Outcome | None) -> Remedy:
    """What a field that fits leans on; without: the field as it would be sprayed otherwise.

    Nothing is to be changed here, so that the age of the edge without it stands in the words.
    """
    if without is None:
        return Remedy(code, f"{words}.")
    age = f"{without.peak_age_min:.1f} min"
    return Remedy(code, f"{words}: without, the oldest edge is {age} old.")


@dataclass(frozen=True)
class Weighed:
    """A verdict, the remedies it rests on, and how to find what would leave more room.

    told: both of the former; it is asked once, and may wait for work that was begun.
    """

    told: Callable[[], tuple[Verdict, tuple[Remedy, ...]]]
    more: Callable[[], tuple[Remedy, ...]] = _nothing_more

    @cached_property
    def _told(self) -> tuple[Verdict, tuple[Remedy, ...]]:
        return self.told()

    @property
    def verdict(self) -> Verdict:
        """Whether the field fits, and with what."""
        return self._told[0]

    @property
    def remedies(self) -> tuple[Remedy, ...]:
        """What the verdict rests on."""
        return self._told[1]

    @property
    def is_tight(self) -> bool:
        """Whether it holds by so little that more room is sought."""
        return self.more is not _nothing_more


@dataclass(frozen=True)
class Judge:
    """Weighs each field against its budget.

    `refused` says of a field at a minute why its slab may not be stained at all
    and what might change that; empty when it may. `other_facts` tells under what other
    conditions its edge would live longer, `cost` what litres more cost. `places` is shared by
    the coats of a house, for they are cut at the same lines.
    """

    floor: Floor
    exits: tuple[Exit, ...]
    refused: Callable[[Pieces, float], tuple[Remedy, ...]] = _nothing_refused
    other_facts: OtherFacts = _nothing_else
    cost: Cost = _no_price
    places: Places | None = field(default=None, compare=False)

    @cached_property
    def _places(self) -> Places:
        return self.places or Places(self.floor, self.exits)

    def verdict(self, case: Case, timed: Timed, held: Held) -> tuple[Verdict, tuple[Remedy, ...]]:
        """The verdict and, where it is not a plain yes with room to spare, what would help."""
        found = self.weighed(case, timed, held)
        return found.verdict, (*found.remedies, *found.more())

    def weighed(self, case: Case, timed: Timed, held: Held, beside: Beside = at_once) -> Weighed:
        """The verdict and what it rests on; what would leave more room only when asked.

        beside: begins the remedies of a field that does not hold.
        """
        from farwall.spray.remedies import table  # it plans by fittings, which ask for no verdict

        means = table.Means(self._places, self.other_facts, self.cost)
        for at_min in (case.day.minute, timed.bands[-1].end_min):
            refused = self.refused(case.step.pieces, at_min)
            if refused:
                hours = table.remedies_of_conditions(case, means)
                return settled("cannot", (*refused, *hours))
        lives = case.coat.lives(case.step.pieces, case.day.minute, timed.bands[-1].end_min)
        trial = Trial(case, _as_it_stands(case, timed, held), lives.tightest.low)
        if held.spare_min < 0:
            return Weighed(beside(partial(table.remedies_that_fit, trial, means)))
        more = _nothing_more
        if held.share > 1 - TIGHT:
            more = partial(table.remedies_for_more_room, trial, means, beside)
        if any(band.sprayer == 2 for band in timed.bands):
            one = trial.timed(case.coat.tools, helper=case.coat.helper, sprayers=1)
            if one is None or one.spare_min < 0:
                return settled("two", (_leans_on("two", _BOTH, one),), more)
        begins = timed.bands[0].start_min
        if not case.coat.helper or all(refill.at_min <= begins for refill in timed.refills):
            return settled("fits", (), more)  # filled before the first stroke no edge waits
        alone = trial.timed(case.coat.tools, helper=False)
        if alone is not None and alone.spare_min >= 0:
            return settled("fits", (), more)
        return settled("helper", (_leans_on("helper", _HELPED, alone),), more)


def settled(
    verdict: Verdict,
    remedies: tuple[Remedy, ...],
    more: Callable[[], tuple[Remedy, ...]] = _nothing_more,
) -> Weighed:
    """What is weighed already."""
    return Weighed(lambda: (verdict, remedies), more)


def _as_it_stands(case: Case, timed: Timed, held: Held) -> Outcome:
    ends = max([timed.bands[-1].end_min, *(walk.path[-1][2] for walk in timed.walks)])
    litres = case.sweep.wetted_m2 * case.coat.l_per_m2
    return Outcome(timed.peak_age_min, ends - case.day.minute, litres, held.spare_min)
