"""The day as it is planned from the facts: which samples, of which cut, over which, what to mix."""

from __future__ import annotations

from collections.abc import Iterator
from string import ascii_uppercase

from farwall.errors import Refused
from farwall.facts.default_table import STARTS_AT
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.facts.samples import Sample
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.job.colour.sample_day.cuts import ladder_cuts
from farwall.job.colour.sample_day.jug import jug_mix
from farwall.job.colour.sample_day.marks import marks_told
from farwall.job.colour.sample_day.nouns import Course, Planned
from farwall.job.colour.sample_day.squares import SIDE_M, Place, places_of
from farwall.job.colour.sample_day.waits import waits_of

MOST_COATS = 3
"""Coats that are tried over one another; a further one is an accent, tried by hand."""
MOST_PLACES = 6
"""Sets of three that a day plans: more than eighteen squares are no day's work (our guess)."""


def course_of(job: Job, plan: Plan | None = None) -> Course:
    """The planned day of a job: three cuts for each coat, side by side, in each place.

    A square is named by a letter, its sample by letter and number of the coat: `B2` is the second
    coat on half of square B, over `B1`. Samples that the facts tell of by other names come after
    them. plan: whose clocks are taken where there is one. Raises Refused for a cut that is none.
    """
    settled = settle(job)
    planned = tuple(_planned(job, settled))
    names = {one.id.casefold() for one in planned}
    others = tuple(
        _told(one, settled) for one in job.samples if one.id.casefold() not in names
    )  # fmt: skip
    return Course(
        starts_at=job.starts_at or STARTS_AT,
        samples=(*planned, *others),
        waits=waits_of(job, plan),
        told={one.id: marks for one in job.samples if (marks := marks_told(one))},
    )


def _planned(job: Job, settled: SettledJob) -> Iterator[Planned]:
    coats = settled.coats[:MOST_COATS]
    places = places_of(job, coats=len(coats))[:MOST_PLACES]
    for number, coat in enumerate(coats, 1):
        for nth, place in enumerate(places):
            yield from _three(coat, number, place, nth, deep=len(coats))


def _three(
    coat: SettledCoat, number: int, place: Place, nth: int, *, deep: int
) -> Iterator[Planned]:
    """Three cuts of a coat in one place; each coat leaves a square of the one beneath bare."""
    area_m2 = round(SIDE_M**2 * (deep - number + 1), 3)
    for k, (rung, cut) in enumerate(ladder_cuts(coat.cut)):
        square = ascii_uppercase[nth * 3 + k]
        yield Planned(
            id=f"{square}{number}", square=square, coat=coat.id, stain=coat.stain.id, cut=cut,
            rung=rung, over=f"{square}{number - 1}" if number > 1 else "",
            room=place.room, why=place.why, area_m2=area_m2, m2_per_l=coat.m2_per_l,
            mix=jug_mix(cut, area_m2=area_m2, m2_per_l=coat.m2_per_l),
        )  # fmt: skip


def _told(one: Sample, settled: SettledJob) -> Planned:
    """A sample that the facts tell of under a name of its own."""
    coat = next((each for each in settled.coats if each.id == one.coat), settled.coats[0])
    cut, area_m2 = one.cut or coat.cut, one.area_m2 or SIDE_M**2
    try:
        mix = jug_mix(cut, area_m2=area_m2, m2_per_l=coat.m2_per_l)
    except Refused:
        mix = None  # a cut that was written otherwise is shown as it was
    return Planned(
        one.id, one.id, coat.id, one.stain or coat.stain.id, cut, "", one.over or "",
        one.room or "", "", round(area_m2, 3), coat.m2_per_l, mix,
    )  # fmt: skip
