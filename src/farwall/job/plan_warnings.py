"""Warnings of a plan that come from more than one of its parts, as sentences."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.job import Job
from farwall.facts.plan import Field
from farwall.job.airing import airing_warnings
from farwall.job.ground import JobGround
from farwall.job.patches import JOINT
from farwall.job.site import heater_warnings
from farwall.job.slab_words import slab_warnings, weather_warnings
from farwall.job.sun_slab_words import sun_slab_warnings
from farwall.spray.plain_bands import wish_for


def warnings_of_ground(
    job: Job, weather: WeatherFile | Forecast | None, ground: JobGround
) -> tuple[str, ...]:
    """What slab, air and house of a job warn of, before any field is laid."""
    world = ground.world
    found = [
        *weather_warnings(job, weather, ground.lasting.starts_at),
        *slab_warnings(ground.lasting),
        *sun_slab_warnings(ground.lasting),
        *heater_warnings(job),
        *airing_warnings(ground.lasting, ground.settled.coats[0]),
    ]
    if isinstance(weather, WeatherFile) and job.starts_at is None:
        found.append(
            "The job tells no start: the weather of 15 May, 8:00, was taken. Put starts_at into "
            "the job, such as 2026-05-15T08:00:00-06:00."
        )
    found.extend(
        f"Nothing can stop at the {_cut_named(cut)}: it does not run from wall to wall, or it ends "
        "in a doorway."
        for cut in world.unused_cuts
    )
    if not job.crew.second_adult and not job.crew.helper:
        found.append("Nobody works alone: a second adult has to be within call.")
    return tuple(found)


def _cut_named(cut: str) -> str:
    return cut if cut.startswith(JOINT) else f"saw cut {cut or 'without a name'}"


def resting(job: Job, fields: Sequence[Field]) -> list[str]:
    """Where two are on the crew and one of them has nothing to spray."""
    if job.crew.sprayers < 2:
        return []
    alone = sum(all(band.sprayer == 1 for band in field.bands) for field in fields)
    if not alone:
        return []
    words = (
        f"One sprays and the other rests or fills tanks in {alone} of {len(fields)} fields: two "
        "have no room there, or are no quicker and leave no younger edge."
    )
    return [words]


def unheld(job: Job, fields: Sequence[Field]) -> Iterator[str]:
    """Wishes for plain bands that a field cannot have, and those that name no field or room."""
    wishes = job.wishes
    for field in fields:
        wish = wish_for(wishes.bands, wishes.bands_in, field.id, field.rooms)
        if wish == "best" or any(one.name == "plain" and one.chosen for one in field.choices):
            continue
        plain = [one for one in field.choices if one.name == "plain"]
        why = (
            f"their edge would be {-plain[0].margin_min:.1f} min too old"
            if plain
            else "nobody can walk them there"
        )
        yield f"Field {field.id} keeps the best bands, though plain ones are wished for: {why}."
    known = {field.id for field in fields} | {room for field in fields for room in field.rooms}
    for name in sorted(set(wishes.bands_in) - known):
        yield f"wishes.bands_in names {name!r}, which is no field and no room of this plan."
