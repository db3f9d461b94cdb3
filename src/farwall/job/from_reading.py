"""From a drawing that was read to a job that can be planned: the floor, and defaults in writing.

Stains, coats, crew and tools are written out with their default values, so
that a person sees what to change; being written down gives them no better
rank. The survey stays empty: what nobody measured is not in the file.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import fields, replace
from typing import Any

import shapely

from farwall.errors import Mistake, Refused
from farwall.facts.defaults import settle
from farwall.facts.job import Crew, Job, Tools
from farwall.facts.reading import MISPLACED, Reading, Storey
from farwall.floor.geometry import Point
from farwall.floor.nouns import Exit, Floor, Opening
from farwall.floor.thresholds import join_thresholds


def job_from_reading(
    reading: Reading, *, storey: str | None = None, job_id: str = "", exits_told: bool = False
) -> Job:
    """The job of one storey: its floor with thresholds joined, its ways out, all else by default.

    `storey` is an id or a name, and may be left out when only one storey has
    rooms. With `exits_told` a floor without a way out is let through, for the
    caller is about to name one.

    Raises Refused when nothing can be planned on: no room, no scale, a choice
    of storeys, no way out. What the reader asked is repeated there.
    """
    about = "No job can be made of this drawing yet."
    if mistakes := _unusable(reading):
        raise Refused(*mistakes, about=about)
    chosen = _chosen(reading, storey)
    if isinstance(chosen, Mistake):
        raise Refused(chosen, about=about)
    floor = join_thresholds(_one_storey(reading.floor, chosen, reading.fixture_storeys))
    kept = floor.opening_by_id
    exits = tuple(way for way in reading.exits if way.opening in kept)
    if not exits and not exits_told:
        raise Refused(_no_way_out(floor), about=about)
    return written_out(_bare(floor, exits, job_id))


def written_out(job: Job) -> Job:
    """The job with stains, coats, crew and tools in writing, defaults to four digits."""
    settled = settle(job)
    tools: dict[str, Any] = {
        entry.name: _four_digits(getattr(settled.tools, entry.name))
        for entry in fields(Tools)
        if getattr(job.tools, entry.name) is None and hasattr(settled.tools, entry.name)
    }
    return replace(
        job,
        stains=settled.stains,
        coats=tuple(
            replace(one.coat, m2_per_l=_four_digits(one.m2_per_l))
            if one.coat.m2_per_l is None and not one.samples
            else one.coat
            for one in settled.coats
        ),
        tools=replace(job.tools, **tools),
    )


def _bare(floor: Floor, exits: tuple[Exit, ...], job_id: str) -> Job:
    return Job(version=1, floor=floor, exits=exits, id=job_id, crew=Crew())


def _four_digits(value: float) -> float:
    return float(f"{value:.4g}")


def _unusable(reading: Reading) -> list[Mistake]:
    asked = {note.code: note.what for note in reading.asks}
    mistakes = []
    if reading.scale_m_per_unit is None:
        what = "The drawing does not say how long its unit is."
        mistakes.append(Mistake("scale", what, asked.get("scale", "Say --scale METRES_PER_UNIT.")))
    beside = sum(note.code == MISPLACED for note in reading.left)
    if beside:
        what = f"{beside} of its rooms are drawn beside their walls and doors."
        mistakes.append(Mistake("--floors", what, "Say --floors shell: it reads what lies there."))
    if not reading.floor.rooms:
        remedy = asked.get("tracing", "Trace the rooms by hand.")
        mistakes.append(Mistake("rooms", "No room was found in it.", remedy))
    return mistakes


def _chosen(reading: Reading, storey: str | None) -> Storey | Mistake | None:
    """The storey meant, None when the drawing has no storeys, a mistake when it is not clear."""
    built = {room.storey for room in reading.floor.rooms}
    with_rooms = [one for one in reading.storeys if one.id in built]
    names = ", ".join(_storey_name(one) for one in with_rooms)
    if storey is None:
        if len(with_rooms) < 2:
            return with_rooms[0] if with_rooms else None
        return Mistake(
            "--storey", f"The drawing has {len(with_rooms)} storeys.", f"Name one: {names}."
        )
    wanted = storey.casefold()
    for one in with_rooms:
        if wanted in {one.id.casefold(), one.name.casefold()}:
            return one
    return Mistake("--storey", f'There is no storey "{storey}" with rooms.', f"It has: {names}.")


def _storey_name(storey: Storey) -> str:
    return storey.name or storey.id


def _one_storey(floor: Floor, storey: Storey | None, fixture_storeys: Mapping[str, str]) -> Floor:
    """The rooms of a storey with what lies in or on them: as told, else by what touches them."""
    rooms = tuple(room for room in floor.rooms if storey is None or room.storey == storey.id)
    if len(rooms) == len(floor.rooms):
        return floor
    ids = {room.id for room in rooms}
    ground = shapely.unary_union([room.polygon.shape for room in rooms]).buffer(0.5)
    return replace(
        floor,
        rooms=rooms,
        openings=tuple(one for one in floor.openings if _leads_only_to(one, ids)),
        fixtures=tuple(
            one
            for one in floor.fixtures
            if shapely.intersects(ground, one.polygon.shape)
            and (storey is None or fixture_storeys.get(one.id, storey.id) == storey.id)
        ),
        saw_cuts=tuple(one for one in floor.saw_cuts if _touches(ground, one.line)),
        windows=tuple(
            one
            for one in floor.windows
            if (one.room in ids if one.room else _touches(ground, one.line))
        ),
    )


def _leads_only_to(opening: Opening, room_ids: set[str]) -> bool:
    return bool(opening.rooms) and set(opening.rooms) <= room_ids


def _touches(ground: shapely.Geometry, line: Sequence[Point]) -> bool:
    return bool(shapely.intersects(ground, shapely.LineString(line)))


def _no_way_out(floor: Floor) -> Mistake:
    outside = [one.id for one in floor.openings if one.kind == "outside"]
    if outside:
        remedy = f"Name one: exits.0.opening={outside[0]} exits.0.id=out."
    else:
        remedy = "Draw an outside door, or add one to the floor by hand, and name it as an exit."
    return Mistake("exits", "No way out is drawn, and nobody may be shut in.", remedy)
