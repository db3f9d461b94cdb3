"""What a job's plan stands on: its floor in pieces, its settled facts, how long things last."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.default_table import STARTS_AT
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.settled import SettledJob
from farwall.floor.nouns import Floor
from farwall.job.in_view import in_view
from farwall.job.lasting import Lasting, lasting_of
from farwall.job.other_facts import OtherFacts
from farwall.job.patches import cut_off_by_patches, planned_floor, with_drops
from farwall.nouns import dataclass
from farwall.spray.building import build_world
from farwall.spray.sweeps import Pieces
from farwall.spray.world import World


@dataclass(frozen=True)
class JobGround:
    """The floor of a job and how long things last on it."""

    settled: SettledJob
    floor: Floor
    world: World
    lasting: Lasting
    others: OtherFacts


def ground_of(
    job: Job,
    weather: WeatherFile | Forecast | None,
    *,
    lessons: Lessons | None = None,
    sprayer: str = "",
) -> JobGround:
    """The floor of a job, its gaps filled (`job.lessons`), and how long things last on it."""
    settled = settle(job, starts_at=_stand_in(weather))
    if lessons is not None:
        from farwall.job.lessons import with_lessons  # most jobs are planned without

        settled = with_lessons(settled, lessons, person=sprayer)
    floor = planned_floor(job)
    lasting = lasting_of(settled, weather)
    others = OtherFacts(job, settled, weather, lasting)
    return JobGround(settled, floor, world_of(job, floor), lasting, others)


def world_of(job: Job, floor: Floor) -> World:
    """Pieces and seams of a planned floor, with what is known of suction and of the view on them.

    Raises `Unanswerable` where a patch that is left dry shuts floor off.
    """
    world = with_drops(build_world(floor, job.exits), job)
    cut_off_by_patches(job, floor, world)
    return in_view(world, floor)


def _stand_in(weather: WeatherFile | Forecast | None) -> str:
    """The start when the job tells none: with weather a mild month, on the file's own clock."""
    if weather is None:
        return STARTS_AT
    if isinstance(weather, Forecast):
        return weather.starts_at.isoformat()
    clock = timezone(timedelta(hours=weather.place.utc_offset_h))
    return datetime(2001, 5, 15, 8, tzinfo=clock).isoformat()


def rooms_of(world: World, pieces: Pieces) -> tuple[str, ...]:
    """The rooms that these pieces of floor lie in, by id."""
    return tuple(sorted({world.pieces[name].room for name in pieces}))
