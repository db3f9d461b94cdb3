"""The table of remedies of one field: what is tried, when it is enough, in what order it stands."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from functools import partial

from farwall.beside import Beside, at_once
from farwall.errors import Unanswerable
from farwall.facts.plan import OpenTime, Remedy, RoomOpenTime, Verdict
from farwall.nouns import dataclass
from farwall.spray.fitting import fitting
from farwall.spray.lives import Lives
from farwall.spray.refills import Flow
from farwall.spray.remedies.case import Case, Outcome, Trial
from farwall.spray.remedies.crew import with_helper, with_narrower_bands, with_two
from farwall.spray.remedies.offer import Cost, Offer, OtherFacts, Otherwise, by_price
from farwall.spray.remedies.stops import Places, at_a_cut, at_a_stop
from farwall.spray.sweeps import Pieces

_ENOUGH = 3
"""A field that fits is offered no saw cut once so many cheaper remedies help. Guess."""


@dataclass(frozen=True)
class Means:
    """What remedies are made of: places to stop, other facts of slab and air, prices."""

    places: Places
    other_facts: OtherFacts
    cost: Cost


def remedies_that_fit(trial: Trial, means: Means) -> tuple[Verdict, tuple[Remedy, ...]]:
    """For a field whose edge dies: the verdict and all that was tried, what works first.

    The verdict is the first that works of: a helper, a second sprayer, one more stop line.
    """
    offers = [*_of_people(trial), *_of_facts(trial, means), *_of_places(trial, means)]
    works = {offer.code for offer in offers if offer.works and offer.sure}
    verdict: Verdict = "cannot"
    for word, codes in _VERDICTS:
        if works & codes:
            verdict = word
            break
    return verdict, _table(trial, offers, means)


_VERDICTS: tuple[tuple[Verdict, frozenset[str]], ...] = (
    ("helper", frozenset({"helper"})),
    ("two", frozenset({"two"})),
    ("stop-line", frozenset({"stop-line", "stop-here"})),
)


def remedies_for_more_room(
    trial: Trial, means: Means, beside: Beside = at_once
) -> tuple[Remedy, ...]:
    """For a field that fits by little: what leaves more to spare, by price.

    Saw cuts are tried only while fewer than three others help. beside: tries narrower bands
    beside all else.
    """
    bands = beside(partial(with_narrower_bands, trial))
    offers = [*_of_people(trial), *_of_facts(trial, means)]
    there = at_a_stop(trial, means.places)
    offers += [offer for offer in (bands(), there) if offer is not None]
    if len(_helpful(trial, offers)) < _ENOUGH:
        cut = at_a_cut(trial, means.places)
        offers += [cut] if cut is not None else []
    return _table(trial, _helpful(trial, offers), means)


def remedies_of_conditions(case: Case, means: Means) -> tuple[Remedy, ...]:
    """For a slab that may not be stained at this hour: another hour, if any will do."""
    found = _alone(case)
    if found is None:
        return ()
    trial = Trial(case, found, 0.0)
    offers = [offer for offer in _of_facts(trial, means) if offer.code == "hour" and offer.works]
    return _table(trial, offers, means)


def _alone(case: Case) -> Outcome | None:
    trial = Trial(case, Outcome(0.0, 0.0, 0.0), 0.0)
    return trial.timed(case.coat.tools, helper=case.coat.helper)


def _helpful(trial: Trial, offers: list[Offer]) -> list[Offer]:
    return [
        offer for offer in offers if not offer.sure or offer.gains(trial.stands, trial.budget_min)
    ]


def _table(trial: Trial, offers: list[Offer], means: Means) -> tuple[Remedy, ...]:
    ranked = by_price(offers, trial.stands)
    return tuple(offer.remedy(trial.stands, means.cost) for offer in ranked)


def _of_people(trial: Trial) -> Iterator[Offer]:
    if not trial.case.coat.helper:
        yield with_helper(trial)
    if trial.case.coat.sprayers < 2:
        yield with_two(trial)


def _of_places(trial: Trial, means: Means) -> Iterator[Offer]:
    for offer in (at_a_stop(trial, means.places), at_a_cut(trial, means.places)):
        if offer is not None:
            yield offer


def _of_facts(trial: Trial, means: Means) -> Iterator[Offer]:
    case = trial.case
    peak = trial.stands.peak_age_min
    for other in means.other_facts(case.step.pieces, case.day.minute, peak):
        found = _replanned(trial, other)
        if found is not None:
            yield Offer(
                other.code,
                other.what,
                found,
                other.lasting.low,
                caution=other.caution,
                sure=other.sure,
            )


def _replanned(trial: Trial, other: Otherwise) -> Outcome | None:
    """The field under other facts of slab and air; as it stands where that is good enough.

    A longer budget leaves bands and walks as they are; only a thirstier coat, or an edge that
    still dies, is planned anew.
    """
    if other.l_per_m2 is None and trial.works(trial.stands, other.lasting.low):
        return trial.stands
    return _fitted(trial, other.lasting, other.l_per_m2)


def _fitted(trial: Trial, lasting: OpenTime, l_per_m2: float | None) -> Outcome | None:
    case = trial.case
    thirst = case.coat.l_per_m2 if l_per_m2 is None else l_per_m2
    need_l = case.sweep.wetted_m2 * thirst
    flow = Flow(case.coat.id, thirst, case.coat.helper, case.coat.tools, need_l)
    try:
        done = fitting(_living(case, lasting), flow, "trial")
    except Unanswerable:
        return None
    minutes = done.after.minute - case.day.minute
    litres = done.sweep.wetted_m2 * thirst
    return Outcome(done.timed.peak_age_min, minutes, litres, done.held.spare_min)


def _living(case: Case, lasting: OpenTime) -> Case:
    """The same case, its edges living as long as told in every room and minute."""

    def lives(pieces: Pieces, from_min: float, to_min: float) -> Lives:
        own = case.coat.lives(pieces, from_min, to_min)

        def like(one: RoomOpenTime) -> RoomOpenTime:
            return replace(one, low=lasting.low, likely=lasting.likely, high=lasting.high)

        return Lives(tuple(like(one) for one in own.open_times), own.floors)

    return replace(case, coat=replace(case.coat, lives=lives))
