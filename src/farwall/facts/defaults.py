"""Fill the gaps of a job, and say for each figure whether it was told or is a default.

What was measured on this slab wins over what a coat claims, and that over
the default of the table. The start comes from the job; the core knows no
clock, so a caller that wants another stand-in than the documented one hands
it over.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from farwall.evidence import Rank
from farwall.facts import default_table as table
from farwall.facts.drank import drank, made_with
from farwall.facts.job import Coat, Container, Job, Stain
from farwall.facts.ledger import Ledger, is_default
from farwall.facts.morning import by_morning
from farwall.facts.plan import PlanTools
from farwall.facts.samples import Sample
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.facts.settled_survey import settled_survey
from farwall.units import l_from_gal

DEFAULT_STAINS = (Stain(id="light", name="light colour"), Stain(id="dark", name="dark colour"))
DEFAULT_CUTS = ("1:1", "1:2")
ALONE = (
    "The job says that no second adult is on site. Nobody works alone with acid: "
    "this plan is for a day on which somebody is there."
)


def own_stain_words(stains: Iterable[Stain]) -> frozenset[str]:
    """Ids and names of stains that are the user's own; the names of the default stains are words
    of ours, which another language changes, also where a job that we wrote tells them."""
    words = {word for stain in stains for word in (stain.id, stain.name)}
    return frozenset(words - {stain.name for stain in DEFAULT_STAINS} - {""})


def settle(job: Job, *, starts_at: str = table.STARTS_AT) -> SettledJob:
    """The job with every gap filled, and the grounds of each figure.

    `starts_at` (ISO 8601 with offset) is taken when the job names no start.
    """
    ledger = Ledger()
    job, since_morning = by_morning(job)
    ledger.warnings.extend(since_morning)
    stains, coats = stains_and_coats(job)
    _note_stand_ins(ledger, job, stains, coats)
    if not job.crew.second_adult:
        ledger.warnings.append(ALONE)
    spread = job.wishes.spread_percent
    settled_coats = tuple(
        _settled_coat(ledger, number, coat, stains, job.samples, alone=len(coats) == 1, told=spread)
        for number, coat in enumerate(coats, 1)
    )
    return SettledJob(
        job=job,
        tools=_settled_tools(ledger, job, settled_coats),
        stains=stains,
        coats=settled_coats,
        survey=settled_survey(ledger, job),
        certainty_percent=ledger.settle(job.wishes.certainty_percent, table.CERTAINTY_PERCENT),
        spread_percent=_settled_spread(ledger, spread, settled_coats),
        containers=_settled_containers(ledger, job, stains),
        starts_at=_settled_start(ledger, job, starts_at),
        grounds=tuple(ledger.grounds),
        warnings=tuple(ledger.warnings),
    )


def stains_and_coats(job: Job) -> tuple[tuple[Stain, ...], tuple[Coat, ...]]:
    """The stains and coats of a job, stand-ins made where it names none.

    No coats: two coats of two colours, light at 1:1 and dark at 1:2. A coat
    whose stain is not listed gets a stain of that id.
    """
    stains = job.stains or (() if job.coats else DEFAULT_STAINS)
    coats = job.coats or coats_by_default(stains)
    listed = {stain.id for stain in stains}
    missing = dict.fromkeys(coat.stain for coat in coats if coat.stain not in listed)
    return (*stains, *(Stain(id=name) for name in missing)), coats


def coats_by_default(stains: tuple[Stain, ...]) -> tuple[Coat, ...]:
    """Two coats: the first stain at 1:1, the second (or the only one again) at 1:2."""
    return tuple(
        Coat(id=f"coat-{number}", stain=stains[min(number, len(stains)) - 1].id, cut=cut)
        for number, cut in enumerate(DEFAULT_CUTS, 1)
    )


def _note_stand_ins(
    ledger: Ledger, job: Job, stains: tuple[Stain, ...], coats: tuple[Coat, ...]
) -> None:
    """Say when stains or coats are stand-ins, also when they stand in the job in writing."""
    if not job.stains or stains == DEFAULT_STAINS:
        named = ", ".join(stain.id for stain in stains)
        ledger.note("stains", named, "", Rank.GUESS, table.OUR_GUESS)
    if not job.coats or _said(coats) == _said(coats_by_default(stains)):
        named = ", ".join(f"{coat.id} of {coat.stain} at {coat.cut}" for coat in coats)
        ledger.note("coats", named, "", Rank.PRACTICE, table.PRACTICE)


def _said(coats: tuple[Coat, ...]) -> list[tuple[str, str, str]]:
    return [(coat.id, coat.stain, coat.cut) for coat in coats]


def _settled_coat(
    ledger: Ledger,
    number: int,
    coat: Coat,
    stains: tuple[Stain, ...],
    samples: tuple[Sample, ...],
    *,
    alone: bool,
    told: float | None,
) -> SettledCoat:
    own = _own_samples(ledger, coat, stains, samples, alone=alone)
    measured = [one.m2_per_l for one in own if one.m2_per_l is not None]
    name = f"coats.{coat.id}.m2_per_l"
    default = table.coverage_default(number)
    if measured:
        # The middle of a log-normal quantity is its geometric mean.
        value = math.exp(math.fsum(map(math.log, measured)) / len(measured))
        which = ", ".join(one.id for one in own if one.m2_per_l is not None)
        rank, source = Rank.MEASURED, f"sample {which}"
    elif coat.m2_per_l is not None and not is_default(coat.m2_per_l, default):
        value, rank, source = coat.m2_per_l, Rank.MEMORY, "told with the coat, not sampled here"
    else:
        value = default.usual if coat.m2_per_l is None else coat.m2_per_l
        rank, source = default.rank, default.source
    ledger.note(name, value, "m2/L", rank, source)
    spread = table.SPREAD_SAMPLED_PERCENT if measured else table.SPREAD_UNSAMPLED_PERCENT
    return SettledCoat(
        coat=coat,
        stain=next(stain for stain in stains if stain.id == coat.stain),
        cut=coat.cut,
        m2_per_l=value,
        l_per_m2=1.0 / value,
        rank=rank.value,
        spread_percent=spread.usual if told is None else told,
        samples=own,
    )


def _own_samples(
    ledger: Ledger,
    coat: Coat,
    stains: tuple[Stain, ...],
    samples: tuple[Sample, ...],
    *,
    alone: bool,
) -> tuple[Sample, ...]:
    """The samples of a coat; coverage that follows from what was laid on them is filled in."""
    found = []
    for one in samples:
        if one.coat != coat.id and not (alone and one.coat is None):
            continue
        made = made_with(one, (coat,), stains)
        told = drank(one, made)
        if told is not None and not told.density_told:
            ledger.settle_once(f"stains.{made.stain}.density_kg_l", table.STAIN_DENSITY_KG_L)
        found.append(one if told is None else replace(one, m2_per_l=told.m2_per_l))
    return tuple(found)


def _settled_spread(ledger: Ledger, told: float | None, coats: tuple[SettledCoat, ...]) -> float:
    sampled = all(any(one.m2_per_l for one in coat.samples) for coat in coats)
    return ledger.settle(
        told, table.SPREAD_SAMPLED_PERCENT if sampled else table.SPREAD_UNSAMPLED_PERCENT
    )


def _settled_tools(ledger: Ledger, job: Job, coats: tuple[SettledCoat, ...]) -> PlanTools:
    told = {name: getattr(job.tools, name) for name in table.TOOLS}
    values = {name: ledger.settle(told[name], table.TOOLS[name]) for name in told}
    tip = job.tools.tip_l_min
    if tip is None:
        return PlanTools(**values)
    ledger.note("tools.tip_l_min", tip, "L/min", Rank.MEASURED, "told as tools.tip_l_min")
    most = tip * min(coat.m2_per_l for coat in coats)
    if values["spray_m2_min"] <= most:
        return PlanTools(**values)
    if told["spray_m2_min"] is None:
        # A tip can hold a person back; a generous one does not make them faster.
        ledger.grounds = [one for one in ledger.grounds if one.name != "tools.spray_m2_min"]
        ledger.note(
            "tools.spray_m2_min", most, "m2/min", Rank.MEASURED, "what the tip lets through"
        )
        return PlanTools(**{**values, "spray_m2_min": most})
    if job.morning.tip_l_min is not None:
        ledger.grounds = [one for one in ledger.grounds if one.name != "tools.spray_m2_min"]
        ledger.note(
            "tools.spray_m2_min", most, "m2/min", Rank.MEASURED, "what the tip gave this morning"
        )
        ledger.warnings.append(
            f"The tip gave {tip:.2f} L/min this morning: {most:.2f} m2/min are sprayed, not "
            f"{values['spray_m2_min']:g}."
        )
        return PlanTools(**{**values, "spray_m2_min": most})
    ledger.warnings.append(
        f"The tip gives {tip:g} L/min, enough for {most:.2f} m2/min, but the job says "
        f"{values['spray_m2_min']:g} m2/min. Measure both with water, one minute into a jug."
    )
    return PlanTools(**values)


def _settled_containers(
    ledger: Ledger, job: Job, stains: tuple[Stain, ...]
) -> tuple[Container, ...]:
    told = job.prices.containers
    unsold = [s.id for s in stains if not any(one.stain in {"", s.id} for one in told)]
    for one in told:
        name = f"container of {one.size_l:g} L" + (f" of {one.stain}" if one.stain else "")
        ledger.note(
            name, one.price, job.prices.currency, Rank.MEASURED, "told in prices.containers"
        )
    if not unsold:
        return told
    made = tuple(
        Container(size_l=l_from_gal(size_gal), price=price, stain=stain_id)
        for stain_id in ([""] if not told else unsold)
        for size_gal, price in table.CONTAINERS_GAL
    )
    for one in made:
        name = f"container of {one.size_l:.3g} L" + (f" of {one.stain}" if one.stain else "")
        ledger.note(name, one.price, job.prices.currency, Rank.GUESS, "invented price")
    return (*told, *made)


def _settled_start(ledger: Ledger, job: Job, stand_in: str) -> str:
    if job.starts_at is not None:
        ledger.note("starts_at", job.starts_at, "", Rank.MEASURED, "told as starts_at")
        return job.starts_at
    ledger.note("starts_at", stand_in, "", Rank.GUESS, "no start was told; a stand-in")
    return stand_in
