"""Hours of a job: tasks, their sum with its range, rooms, days."""

from __future__ import annotations

import math

from farwall.evidence import Rank
from farwall.job.office.columns import columns
from farwall.job.office.ground import OfficeGround
from farwall.job.office.hours.days import days_from
from farwall.job.office.hours.noun import Hours, RoomHours
from farwall.job.office.hours.sizes import RoomSize, rooms_of, sizes_of
from farwall.job.office.masking import Masked
from farwall.job.office.scope import Scope, scope_of
from farwall.price.costs import APART, HOUSE
from farwall.price.hours import Sizes, TaskHours, hours_of_sizes
from farwall.price.risk import FEWER, Costs, Part, outcome
from farwall.price.usual import EARLY_VISITS

BY_WALL = ("mask", "hand-over")
"""Tasks that go with the wall of a room; washing has its own sum, all others go with the floor."""


def hours_of(ground: OfficeGround, masked: Masked, scope: Scope | None = None) -> Hours:
    """Hours of the job, or of what an offer holds."""
    chosen = scope or scope_of(ground)
    sizes = sizes_of(ground, masked, chosen)
    tasks = hours_of_sizes(sizes, ground.lessons)
    rooms = rooms_of(ground, masked, chosen)
    low, likely, high = (round(one) for one in sizes.site_days)
    ends = outcome(spread_of(tasks), draws=FEWER, drives=False)
    return Hours(
        tasks=tasks,
        warnings=_warnings(tasks, sizes),
        low_h=round(ends.low, 3),
        high_h=round(ends.high, 3),
        people=sizes.people,
        days=(low, likely, high),
        visits=(low + EARLY_VISITS, likely + EARLY_VISITS, high + EARLY_VISITS),
        days_from=days_from(ground, chosen),
        rooms=_rooms(tasks, rooms),
    )


def spread_of(tasks: tuple[TaskHours, ...]) -> Costs:
    """The hours as a question of what they may come to: a house is quick or slow in all of them."""
    return Costs(
        tuple(
            Part(
                one.task, one.low_h, one.likely_h, one.high_h,
                common="" if one.id in APART else HOUSE,
            )
            for one in tasks
        )
    )  # fmt: skip


def room_shares(rooms: tuple[RoomSize, ...], task: str) -> tuple[float, ...]:
    """What share of a task falls to each room."""
    if task == "wash":
        return tuple(one.wash_share for one in rooms)
    by_wall = task in BY_WALL and any(one.wall_m for one in rooms)
    weights = [one.wall_m if by_wall else one.area_m2 for one in rooms]
    total = math.fsum(weights) or 1.0
    return tuple(one / total for one in weights)


def _rooms(tasks: tuple[TaskHours, ...], rooms: tuple[RoomSize, ...]) -> tuple[RoomHours, ...]:
    hours = [0.0] * len(rooms)
    for task in tasks:
        if task.id in (*APART, "set-up"):
            continue
        for n, part in enumerate(room_shares(rooms, task.id)):
            hours[n] += task.likely_h * part
    return tuple(
        RoomHours(one.room, one.name, one.area_m2, round(much, 3))
        for one, much in zip(rooms, hours, strict=True)
    )


def _warnings(tasks: tuple[TaskHours, ...], sizes: Sizes) -> tuple[str, ...]:
    found = []
    if not any(one.rank == Rank.LEARNED.value for one in tasks):
        found.append(
            "No hours were learned yet: these are common practice with no source, and guesses. "
            "Close jobs with their hours by task, and they become your own."
        )
    if not sizes.coat_min:
        found.append("No coat of stain is in it.")
    return tuple(found)


def hours_said(found: Hours) -> tuple[str, ...]:
    """Lines for a terminal."""
    lines = columns(
        [
            ("Task, hours of one person", "likely", "low to high", "rests on"),
            *(
                (one.task, f"{one.likely_h:.1f}", f"{one.low_h:.1f} to {one.high_h:.1f}",
                 f"{one.rank}: {one.rule}")
                for one in found.tasks
            ),
        ],
        right=(1, 2),
    )  # fmt: skip
    low, likely, high = found.days
    return (
        *lines,
        "",
        f"In all {found.likely_h:.0f} h, four jobs in five {found.low_h:.0f} to {found.high_h:.0f}",
        f"{likely} days on site ({low} to {high}) with {found.people} people, {found.days_from}",
        *found.warnings,
    )
