"""The fumes of a day as a caution of its plan: a line or two beside the others on the run sheet.

A plan is laid without it; whoever prints one adds it, for the time is not spent on each
of a thousand plans that nobody reads. Pure.
"""

from __future__ import annotations

from dataclasses import replace

from farwall.acid.limits import LIMITS
from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.acid_day.fumes import words
from farwall.job.acid_day.fumes.air_told import air_needed
from farwall.job.acid_day.fumes.cases import ends
from farwall.job.acid_day.fumes.day_of import day_of, ranged
from farwall.job.acid_day.fumes.laid import no_acid, patches_of
from farwall.job.acid_day.fumes.noun import AirNeeded, Fumes, worst_of
from farwall.job.acid_day.fumes.said import figure, ppm
from farwall.job.acid_day.ground import Ground

NO_MEASUREMENT = "A figure is no respirator and no measurement."


def with_fumes(plan: Plan, job: Job, weather: WeatherFile | Forecast | None = None) -> Plan:
    """The plan with its fumes among the cautions; as it is where nothing that fumes is sprayed."""
    found = fumes_caution(Ground(job, plan, weather))
    return replace(plan, cautions=(*plan.cautions, *found)) if found else plan


def fumes_caution(ground: Ground) -> tuple[str, ...]:
    """The worst room with its range, the air that holds the hygienists' ceiling, what a figure is
    not; and that nobody begins where the high end is dangerous at once. The same figures as those
    of `fumes_of`, with no more reckoned than they take."""
    settled = settle(ground.job)
    patches = patches_of(ground.plan, ground.job.floor.rooms)
    if not patches or no_acid(settled, patches):
        return ()
    day = day_of(ground, settled, patches)
    peaks = ends(day.course.cases.max(axis=0))
    told = [ranged(peaks, n) for n in range(len(peaks[2]))]
    worst = worst_of(told)
    peak = told[worst]
    where = f"Fumes, house {day.air.house.standing}: {ground.job.floor.rooms[worst].label}"
    line = f"{where} {ppm(peak)} at its worst ({Fumes.rank}, and a wide one)."
    us = ground.job.wishes.units == "us"
    at_once = LIMITS["hcl-at-once"].ppm or 0.0
    at_high_end = (words.AT_ONCE,) if peak.high > at_once else ()
    return (f"{line} {_air(air_needed(day), us=us)} {NO_MEASUREMENT}", *at_high_end)


def _air(needed: AirNeeded, *, us: bool) -> str:
    changes, limit = needed.air_changes_h, LIMITS[needed.limit].ppm or 0.0
    both = [(needed.flow_cfm, "cfm"), (needed.flow_m3_h, "m³/h")]
    (first, unit), (second, other) = both if us else both[::-1]
    return (
        f"Air wanted to hold {limit:g} ppm: about {figure(changes.likely)} air changes an hour "
        f"({figure(changes.low)} to {figure(changes.high)}), {figure(first.likely)} {unit} "
        f"({figure(first.low)} to {figure(first.high)}), {figure(second.likely)} {other}."
    )
