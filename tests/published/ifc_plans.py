"""Real building models for the tests, and what was reckoned of them beforehand."""

import json
import lzma
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from farwall.facts.reading import Reading
from farwall.job.from_reading import job_from_reading
from farwall.readers.job_json import job_from, job_to_text

PLANS = Path(__file__).parent / "data" / "plans"
Json = dict[str, Any]


def copied(name: str) -> tuple[bytes, Json]:
    """A model that may be copied, and its reference."""
    reference = json.loads((PLANS / "reference_ifc.json").read_text())[name]
    return lzma.decompress((PLANS / f"{name}.xz").read_bytes()), reference


def in_place(shared: Callable[[str], Path], name: str) -> tuple[bytes, Json]:
    """A model that may not be copied, read in ../shared, and its reference."""
    reference = json.loads(shared("data/plans/reference.json").read_text())[name]
    return shared(f"data/plans/{name}").read_bytes(), reference


def assert_every_space(reading: Reading, reference: Json) -> None:
    """Area to 0.1 % of the polygon, corners, holes, storey, floor height and stated area."""
    storeys = {storey.id: storey.name for storey in reading.storeys}
    assert len(reading.floor.rooms) == reference["space_count"] == len(reference["spaces"])
    for space in reference["spaces"]:
        room = reading.floor.room_by_id[space["global_id"]]
        shape = room.polygon.shape
        assert shape.area == pytest.approx(space["geometry_area_m2"], rel=1e-3), space["name"]
        assert len(shape.interiors) == space["holes"]
        assert len(shape.exterior.coords) - 1 == space["corners"]
        assert storeys[room.storey] == space["storey"]
        assert reading.levels_m[room.id] == pytest.approx(space["floor_z_m"], abs=0.001)
        stated = reading.stated[room.id].area_m2
        assert stated == pytest.approx(space["stated_area_m2"], abs=0.0006)
        assert space["name"] in room.name


def assert_every_door(reading: Reading, reference: Json) -> None:
    """The space on each side, one where the other side is outside; the width."""
    number = {space["global_id"]: space["number"] for space in reference["spaces"]}
    assert len(reference["doors"]) == reference["door_count"]
    for door in reference["doors"]:
        opening = reading.floor.opening_by_id[door["global_id"]]
        wanted = sorted(side for side in (door["side_a"], door["side_b"]) if side is not None)
        assert sorted(number[room] for room in opening.rooms) == wanted, door
        assert opening.kind == ("door" if len(wanted) == 2 else "outside")
        assert opening.width_m == pytest.approx(door["width_m"], abs=0.001)


def assert_storeys_and_windows(reading: Reading, reference: Json) -> None:
    """Names and elevations of all storeys, and how many windows there are."""
    told = {(s["name"], s["elevation_m"]) for s in reference["storeys"]}
    assert {(s.name, s.elevation_m) for s in reading.storeys} == told
    assert len(reading.floor.windows) == reference["window_count"]


def codes(reading: Reading) -> set[str]:
    """The codes of all notes."""
    return {note.code for note in (*reading.mended, *reading.left, *reading.asks)}


def words(reading: Reading, code: str) -> list[str]:
    """What is said under a code."""
    every = (*reading.mended, *reading.left, *reading.asks)
    return [note.what for note in every if note.code == code]


def assert_storeys_make_jobs(reading: Reading, *storeys: str) -> None:
    """Each of these storeys is written as a job and read back as one."""
    for storey in storeys:
        job = job_from_reading(reading, storey=storey)
        assert job_from(json.loads(job_to_text(job)), "job").floor == job.floor
