"""Job files: a sound one comes back as it was, anything else is refused with all its mistakes."""

from __future__ import annotations

import copy
import json
import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from pydantic import ValidationError
from tests.strategies.jobs import jobs

from farwall.errors import Refused
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.floor.geojson import floor_collection
from farwall.readers import job_json
from farwall.readers.job_json import job_from, job_to_dict, job_to_text, read_job

SQUARE = {"type": "Polygon", "coordinates": [[[0, 0], [4, 0], [4, 3], [0, 3], [0, 0]]]}
SMALL = {
    "version": 1,
    "floor": {
        "rooms": [{"id": "hall", "polygon": SQUARE}],
        "openings": [
            {"id": "front", "kind": "outside", "line": [[1, 0], [2, 0]], "rooms": ["hall"]}
        ],
    },
    "exits": [{"id": "out", "opening": "front"}],
}

anything = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=6),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=6), inner),
    max_leaves=12,
)


def small(**changes: object) -> dict[str, object]:
    return {**copy.deepcopy(SMALL), **changes}


def refusal_of(data: object) -> list[str]:
    with pytest.raises(Refused) as refusal:
        job_from(data, "a job")
    return [str(one) for one in refusal.value.mistakes]


def job_or_refused(data: object) -> None:
    try:
        answer = job_from(data, "noise")
    except Refused as refusal:
        answer = refusal
    assert isinstance(answer, Job) or all(one.what for one in answer.mistakes)


@given(jobs())
def test_a_job_comes_back_from_its_file_as_it_was(job):
    assert job_from(job_to_dict(job), "a job") == job
    assert job_from(json.loads(job_to_text(job)), "a job") == job


@given(jobs())
def test_writing_is_stable(job):
    assert job_to_text(job_from(job_to_dict(job), "a job")) == job_to_text(job)


@given(jobs())
def test_every_sound_job_can_be_settled(job):
    settled = settle(job)
    assert settled.coats
    assert all(math.isfinite(coat.l_per_m2) and coat.l_per_m2 > 0 for coat in settled.coats)
    assert set(settled.survey.rooms) == {room.id for room in job.floor.rooms}


@given(anything)
def test_any_json_gives_a_job_or_a_refusal(data):
    job_or_refused(data)


@given(jobs(), st.data())
def test_a_job_with_anything_in_any_place_gives_a_job_or_a_refusal(job, data):
    raw = job_to_dict(job)
    node, key = raw, data.draw(st.sampled_from(sorted(raw)))
    for _ in range(data.draw(st.integers(0, 6))):
        inner = node[key]
        if isinstance(inner, dict) and inner:
            node, key = inner, data.draw(st.sampled_from(sorted(inner)))
        elif isinstance(inner, list) and inner:
            node, key = inner, data.draw(st.integers(0, len(inner) - 1))
    node[key] = data.draw(anything)
    job_or_refused(raw)


@given(
    st.binary(max_size=60) | st.text(max_size=60).map(lambda text: text.encode("utf-8", "replace"))
)
def test_any_file_gives_a_job_or_a_refusal(tmp_path_factory, raw):
    path = tmp_path_factory.mktemp("noise") / "job.json"
    path.write_bytes(raw)
    with pytest.raises(Refused):
        read_job(path)


def test_a_file_that_is_not_there_is_refused_calmly(tmp_path):
    with pytest.raises(Refused, match="Check the name") as refusal:
        read_job(tmp_path / "nowhere.json")
    assert refusal.value.about == "nowhere.json cannot be read."


def test_a_byte_order_mark_does_no_harm(tmp_path):
    path = tmp_path / "job.json"
    path.write_bytes(b"\xef\xbb\xbf" + json.dumps(SMALL).encode())
    assert read_job(path).exits[0].opening == "front"


@pytest.mark.parametrize(
    ("section", "us", "si", "value"),
    [
        # Hand-worked from the exact factors: 1 gal = 3.785411784 L, 1 ft = 0.3048 m.
        ("tools", {"tank_gal": 2}, "tank_l", 7.570823568),
        ("tools", {"band_ft": 4}, "band_m", 1.2192),
        ("tools", {"spray_ft2_min": 30}, "spray_m2_min", 2.7870912),
        ("tools", {"overlap_in": 8}, "overlap_m", 0.2032),
        ("survey", {"slab_f": 70}, "slab_c", 21.111111),
        ("survey", {"air_speed_mph": 10}, "air_speed_m_s", 4.4704),
    ],
)
def test_a_us_twin_is_converted_once(section, us, si, value):
    job = job_from(small(**{section: us}), "a job")
    assert getattr(getattr(job, section), si) == pytest.approx(value, rel=1e-7)


def test_coverage_and_added_acid_have_twins_too():
    coat = {"id": "a", "stain": "s", "cut": "1:1", "ft2_per_gal": 200, "added_acid_ml_per_l": 62.5}
    job = job_from(small(coats=[coat]), "a job")
    assert job.coats[0].m2_per_l == pytest.approx(4.9085, abs=1e-4)
    assert job.coats[0].added_acid_fl_oz_per_gal == pytest.approx(8.0)  # hand-worked: 62.5 x 0.128


def test_a_twin_that_is_no_number_is_named_as_it_was_written():
    (said,) = refusal_of(small(tools={"tank_gal": "2"}))
    assert said.startswith("tools.tank_gal: A number is expected")


def test_two_us_twins_of_one_key_are_one_too_many():
    raw = small()
    raw["floor"]["openings"][0].update(width_ft=3, width_in=36)
    (said,) = refusal_of(raw)
    assert "`width_ft` and `width_in` are both given" in said


def test_an_open_ring_is_closed_and_a_clockwise_one_turned():
    ring = [[0, 0], [0, 3], [4, 3], [4, 0]]
    raw = small()
    raw["floor"]["rooms"][0]["polygon"] = {"type": "Polygon", "coordinates": [ring]}
    (made,) = job_from(raw, "a job").floor.rooms[0].polygon.coordinates
    assert made == ((0, 0), (4, 0), (4, 3), (0, 3), (0, 0))


def test_a_hole_runs_clockwise():
    hole = [[1, 1], [2, 1], [2, 2], [1, 2], [1, 1]]
    raw = small()
    raw["floor"]["rooms"][0]["polygon"]["coordinates"].append(hole)
    polygon = job_from(raw, "a job").floor.rooms[0].polygon
    assert polygon.coordinates[1] == tuple(tuple(point) for point in reversed(hole))
    assert polygon.shape.area == pytest.approx(11)  # hand-worked: 12 - 1


def test_text_is_never_taken_for_a_number_nor_a_number_for_yes():
    said = refusal_of(small(tools={"tank_l": "12"}, crew={"helper": 1}))
    assert len(said) == 2


def test_a_job_without_stains_may_name_them_in_its_coats():
    coats = [{"id": "a", "stain": "straw", "cut": "1:2"}]
    settled = settle(job_from(small(coats=coats), "a job"))
    assert [stain.id for stain in settled.stains] == ["straw"]
    assert "stains" in [ground.name for ground in settled.grounds]


def test_a_thousand_mistakes_are_counted_and_the_first_hundred_told():
    coats = [{"id": f"c{n}", "stain": "s", "cut": "no"} for n in range(1000)]
    said = refusal_of(small(coats=coats))
    assert len(said) == 101
    assert said[-1].startswith("and 900 more")


def test_a_mistake_does_not_hide_another_one_elsewhere():
    raw = small(starts_at="tomorrow", tools={"tank_l": -1}, wishes={"order": ["attic"]})
    raw["floor"]["rooms"][0]["polygon"] = 7
    places = [said.split(":")[0] for said in refusal_of(raw)]
    assert sorted(places) == [
        "floor.rooms[0].polygon",
        "starts_at",
        "tools.tank_l",
        "wishes.order[0]",
    ]


def test_a_floor_may_be_a_geojson_collection_and_bring_its_exits():
    sound = job_from(small(), "a job")
    collection = floor_collection(sound.floor, sound.exits)
    job = job_from({"version": 1, "floor": collection}, "a job")
    assert (job.floor, job.exits) == (sound.floor, sound.exits)


def test_what_is_wrong_with_a_feature_is_told_by_its_place_and_hides_nothing_else():
    sound = job_from(small(), "a job")
    collection = floor_collection(sound.floor, sound.exits)
    collection["features"][0]["properties"]["kind"] = "rooom"
    raw = {"version": 1, "floor": collection, "tools": {"tank_l": -1}}
    places = [said.split(":")[0] for said in refusal_of(raw | {"exits": SMALL["exits"]})]
    assert places == ["floor.features[0].properties.kind", "tools.tank_l"]


def test_rooms_that_overlap_are_found_beside_other_mistakes():
    raw = small(tools={"tank_l": -1})
    raw["floor"]["rooms"].append({"id": "den", "polygon": SQUARE})
    said = refusal_of(raw)
    assert any("overlap" in one for one in said)
    assert any(one.startswith("tools.tank_l") for one in said)


def places(data: object, at: tuple[str | int, ...] = ()) -> list[tuple[str | int, ...]]:
    """All places of a document but the whole of it."""
    each = data.items() if isinstance(data, dict) else ()
    each = enumerate(data) if isinstance(data, list) else each
    return [place for key, value in each for place in ((*at, key), *places(value, (*at, key)))]


@given(st.data(), jobs(), st.booleans())
def test_key_by_key_a_job_is_judged_as_the_whole_of_it_is(data, job, left_out):
    raw = job_to_dict(job)
    *way, last = data.draw(st.sampled_from(places(raw)))
    holder = raw
    for step in way:
        holder = holder[step]
    if left_out:
        del holder[last]
    else:
        holder[last] = data.draw(anything.filter(finite))
    assert judged_by_key(raw) == judged_whole(raw)


def finite(value: object) -> bool:
    return all(one not in json.dumps(value) for one in ("NaN", "Infinity"))


def judged_by_key(raw):
    told, faults = job_json.judged(raw)
    return faults or Job(**told)


def judged_whole(raw):
    try:
        return job_json.adapter().validate_json(json.dumps(raw), strict=True)
    except ValidationError as error:
        return error.errors(include_url=False)
