"""A small house with windows: a west and an east room of 6 m × 4 m, and a dark hall between."""

from __future__ import annotations

from dataclasses import replace

from tests.strategies.jobs import box

from farwall.facts.job import Crew, Job, Place, Survey
from farwall.floor.nouns import Exit, Floor, Opening, Room, Window

WEST = Window(((0.0, 0.8), (0.0, 3.2)), 0.2, 2.0, id="west-window")
EAST = Window(((14.0, 0.8), (14.0, 3.2)), 0.2, 2.0, id="east-window")


def sun_floor(*windows: Window, north_deg: float | None = 0.0) -> Floor:
    rooms = (
        Room("west", box(0, 0, 6, 4), "West room"),
        Room("hall", box(6, 0, 2, 4), "Hall"),
        Room("east", box(8, 0, 6, 4), "East room"),
    )
    openings = (
        Opening("west-door", "door", ((6.0, 2.6), (6.0, 3.5)), ("west", "hall")),
        Opening("east-door", "door", ((8.0, 2.6), (8.0, 3.5)), ("east", "hall")),
        Opening("way-out", "outside", ((6.5, 0.0), (7.5, 0.0)), ("hall",)),
    )
    return Floor(rooms, openings, windows=windows, north_deg=north_deg)


def sun_job(*windows: Window, at: str = "15:30", day: str = "2026-06-21", **facts: object) -> Job:
    """The house on a day of clear sky at 40° N, on the clock of its own meridian."""
    usual: dict[str, object] = {
        "survey": Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0),
        "crew": Crew(helper=True),
        "place": Place(40.0, -105.0),
        "starts_at": f"{day}T{at}:00-07:00",
    }
    floor = sun_floor(*(windows or (WEST, EAST)))
    return Job(1, floor, (Exit("out", "way-out"),), **(usual | facts))  # type: ignore[arg-type]


def covered(job: Job) -> Job:
    windows = tuple(replace(one, covered=True) for one in job.floor.windows)
    return replace(job, floor=replace(job.floor, windows=windows))
