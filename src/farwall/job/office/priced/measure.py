"""What to measure so that a price gets narrower: by what drives its spread."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.facts.job import Job
from farwall.job.office.priced.noun import Driver
from farwall.price.costs import HOUR, HOUSE, PRICES, SECOND_TRIP, VISITS
from farwall.price.hours import WORDS
from farwall.price.risk import Outcome

SHOWN = 6
"""Drivers that are told; the rest explain little."""
MEASURE = {
    HOUSE: "Walk the floor with a wet rag and drops in every room before you quote: a dirty or "
    "thirsty house is slow in all of its tasks.",
    HOUR: "Reckon your own loaded hour from last year's books and tell it under rates.",
    PRICES: "Read in a price list of your sellers.",
    VISITS: "Tell what a trip to the site costs you.",
    SECOND_TRIP: "Look at the weather of the sealing night, and have the other trades sign the "
    "lock of the house.",
    "sealer": "Name the sealer and read in its price.",
    "stain": "Lay a sample on this slab: it says how much the floor drinks.",
    "washing and waste": "Settle in writing where the rinse water goes, and what hauling costs.",
    "call-back: residue": "Scrub the sample as hard as the floor, and seal no room before its "
    "white rag stays clean.",
    "call-back: moisture": "Test the slab for moisture in a closet of every pour.",
    "call-back: colour": "Have a sealed sample on this very slab signed before you quote.",
    WORDS["clean"]: "Clean one square metre of the worst room and time it.",
    WORDS["mask"]: "Count openings, tubs and stairs on the plan, and say which walls need full "
    "height.",
    WORDS["wash"]: "Count the rinses that the sample takes until the rag is clean.",
    WORDS["coat"]: "Time the spraying of the sample with the tools of the job.",
    WORDS["seal"]: "Time a coat of sealer on the sample.",
    WORDS["travel"]: "Write down what trips, calls and papers take on this job.",
}
SIGNED = "The sample is signed: keep it on site and judge every coat beside it."
TESTED = "The slab was tested: read the meter again on the day before you seal."
SCRUBBED = "The sample was scrubbed: seal no room before its white rag stays clean."
CLOSE = "Close jobs with their hours by task: they become your own ranges."


def drivers_of(found: Outcome, job: Job) -> tuple[Driver, ...]:
    """The greatest first, each with what would narrow it; what the job has measured already is
    not asked again."""
    known = dict(_done(job))
    return tuple(
        Driver(
            one.name, round(100 * one.share, 1),
            known.get(one.name) or MEASURE.get(one.name, CLOSE),
        )
        for one in found.drives[:SHOWN]
    )  # fmt: skip


def _done(job: Job) -> Iterator[tuple[str, str]]:
    survey = job.survey
    if survey.sample_signed:
        yield "call-back: colour", SIGNED
    if survey.moisture:
        yield "call-back: moisture", TESTED
    if survey.sample_scrub is not None:
        yield "call-back: residue", SCRUBBED


def together(found: Outcome) -> float:
    """Per cent of the spread that nothing explains alone."""
    return round(max(0.0, 100 * (1 - sum(one.share for one in found.drives))), 1)
