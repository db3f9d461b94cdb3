"""Invented houses for the papers of the office: twelve rooms with a whole log, twenty-five with
names of sixty letters, names in other scripts, and one of which nothing optional is told."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cache

import shapely
from tests.job.story.entries import Log
from tests.midday import EXAMPLES, day_of
from tests.shapes import TWO_ROOMS

from farwall.facts.job import Coat, Job, Stain, Wishes
from farwall.facts.plan import Plan
from farwall.floor.geometry import polygon_geometry
from farwall.floor.nouns import Exit, Floor, Opening, Room
from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.papers.office.ground import PaperGround
from farwall.readers.job_json import read_job

SIDE_M = 3.0
LONG = "Breakfast room beside the garden stairs, behind the old pantr"[:60]
UNBROKEN = "Fruehstueckszimmernebenderaltenspeisekammerhinterdemgartenhaus"[:60]
OTHER_SCRIPTS = (
    "غرفة المعيشة", "חדר שינה", "浴室と洗面所", "거실", "客厅和餐厅", "مطبخ", "מסדרון",
    "Küche", "Ванная", "書斎", "유틸리티", "Ντουλάπα",
)  # fmt: skip
HERE = "https://book.example/houses/7"


@dataclass(frozen=True)
class House:
    """Facts, plan and log of an invented house."""

    job: Job
    plan: Plan
    log: tuple = ()

    def ground(self, *, language="en", paper="us-letter", units="us", screens=HERE, **more):
        """What papers are written from."""
        wishes = replace(self.job.wishes, language=language, paper=paper, units=units)
        job = replace(self.job, wishes=wishes, **more)
        told = story(self.plan, self.log) if self.log else None
        ground = OfficeGround(job, self.plan, story=told, kept=tuple(self.log))
        return PaperGround(ground, language, screens=screens)


@cache
def twelve() -> House:
    """Sorrel Rise with every kind of entry that a paper shows."""
    job, plan = read_job(EXAMPLES / "sorrel-rise" / "job.json"), day_of("sorrel-rise")
    return House(replace(job, revision=3), plan, tuple(whole_log(job, plan).kept))


def whole_log(job: Job, plan: Plan) -> Log:
    """A day with batches, a drip, washing, sealing, hours, hand-over and a call-back."""
    log, rooms = Log(plan), [room.id for room in job.floor.rooms]
    coats = [coat.id for coat in plan.inputs.coats]
    for n, coat in enumerate(coats):
        at_min = -20.0 + 120.0 * n
        log("mixed", at_min, coat=coat, litres=31.0, lot=f"L-7{n}2 and L-7{n}3", cut="1:1",
            boxed=True)  # fmt: skip
        log("coat-done", at_min + 100, coat=coat, left_over_l=1.4)
    log("drip", 30, where="beside the island, one hand wide", room=rooms[0])
    log("neutralised", 1400, base="bicarbonate", litres=60.0)
    log("strip-read", 1401, of="tap", ph=7.6)
    for n, room in enumerate(rooms):
        for number in (1, 2, 3):
            rag = "clean" if number == 3 else "grey"
            log("rinsed", 1420 + 60 * number + n, room=room, ph=6.8 + 0.3 * number, rag=rag,
                round=number)  # fmt: skip
    log("dry-swiped", 2800, powder=False)
    log("dry", 2900, clock="dry-down")
    log("reading", 2905, slab_c=18.0, air_c=22.0, rh_percent=45.0)
    log("sealed", 2960, round=1, litres=28.0, lot="S-4410")
    log("reading", 3200, slab_c=17.0, air_c=23.0, rh_percent=66.0)
    log(
        "sealed", 3260, round=2, litres=27.0, room=rooms[1], lot="S-4411", sealer="Clear Two"
    )  # fmt: skip
    log("waste", 3300, drum="1", litres=180.0, way="hauled", ph=8.2, who="city works, desk 4")
    for task, hours in (("mask", 9.5), ("clean", 12.0), ("rinse", 16.0), ("coat", 5.0)):
        log("hours", 3400, task=task, hours=hours, people=2)
    log("handed-over", 3500)
    log("called-back", 90000, what="white haze by the garden door", hours=3.0)
    return log


def grid_floor(count: int = 5) -> tuple[Floor, Exit]:
    """Square rooms in rows, a door from each to the next along a winding way, the way out last."""
    places = [(x, y) for y in range(count) for x in (range(count) if y % 2 == 0
              else reversed(range(count)))]  # fmt: skip
    rooms = tuple(
        Room(f"r{n}", polygon_geometry(shapely.box(
            x * SIDE_M, y * SIDE_M, (x + 1) * SIDE_M - 0.12, (y + 1) * SIDE_M - 0.12
        )), f"{n} {UNBROKEN if n % 3 == 0 else LONG}"[:60])
        for n, (x, y) in enumerate(places)
    )  # fmt: skip
    doors = tuple(
        Opening(f"d{n}", "door", _between(places[n], places[n + 1]), (f"r{n}", f"r{n + 1}"),
                width_m=0.8)
        for n in range(len(places) - 1)
    )  # fmt: skip
    x, y = places[-1]
    top = (y + 1) * SIDE_M - 0.12
    out = Opening("out", "outside", ((x * SIDE_M + 1, top), (x * SIDE_M + 1.9, top)),
                  (f"r{len(places) - 1}",), width_m=0.9)  # fmt: skip
    return Floor(rooms=rooms, openings=(*doors, out)), Exit("front", "out")


def _between(one: tuple[int, int], two: tuple[int, int]):
    """The line of a door in the wall between two neighbours of the grid."""
    (x0, y0), (x1, y1) = one, two
    if y0 == y1:
        x = max(x0, x1) * SIDE_M - 0.06
        return ((x, y0 * SIDE_M + 1.0), (x, y0 * SIDE_M + 1.8))
    y = max(y0, y1) * SIDE_M - 0.06
    return ((x0 * SIDE_M + 1.0, y), (x0 * SIDE_M + 1.8, y))


@cache
def long_names() -> House:
    """Twenty-five rooms, every name of sixty letters, a third of them one word."""
    floor, out = grid_floor()
    job = Job(
        version=1, floor=floor, exits=(out,), id="long", name=UNBROKEN,
        starts_at="2027-05-03T07:30:00-05:00",
        stains=(Stain("brown", name=LONG, lots=("L-0001 of the second delivery",)),),
        coats=(Coat("first", "brown", "1:1"),), wishes=Wishes(notes=LONG),
    )  # fmt: skip
    plan = plan_job(job)
    return House(job, plan, tuple(whole_log(job, plan).kept))


@cache
def other_scripts() -> House:
    """Sorrel Rise with names from right to left, in Chinese, Japanese and Korean."""
    known = twelve()
    names = dict(zip((one.id for one in known.job.floor.rooms), OTHER_SCRIPTS, strict=True))

    def named(rooms: tuple[Room, ...]) -> tuple[Room, ...]:
        return tuple(replace(room, name=names[room.id]) for room in rooms)

    floor = replace(known.job.floor, rooms=named(known.job.floor.rooms))
    inputs = known.plan.inputs
    inputs = replace(inputs, floor=replace(inputs.floor, rooms=named(inputs.floor.rooms)))
    plan = replace(known.plan, inputs=inputs, job="منزل الحديقة 庭の家")
    job = replace(known.job, floor=floor, name="منزل الحديقة 庭の家")
    return House(job, plan, known.log)


@cache
def bare() -> House:
    """Two rooms and a way out; nothing else is told."""
    job = Job(version=1, floor=TWO_ROOMS.floor, exits=TWO_ROOMS.exits)
    return House(job, plan_job(job))
