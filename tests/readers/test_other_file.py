"""A file of another kind in the place of a job is named as what it is."""

import json

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.errors import Refused
from farwall.facts.plain import plain
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import job_from, read_job
from farwall.readers.plan_json import plan_to_dict


def refusal(data):
    with pytest.raises(Refused) as refused:
        job_from(data, "it")
    return [str(one) for one in refused.value.mistakes]


def test_a_plan_is_told_to_be_one_and_not_key_by_key():
    (told,) = refusal(json.loads(json.dumps(plan_to_dict(plan_job(job(TWO_ROOMS))))))
    assert told == (
        "This is a plan, not the job it was made from. "
        "Name the job, such as the job.json that was planned."
    )


@pytest.mark.parametrize(
    ("data", "words"),
    [
        ({"type": "FeatureCollection", "features": []}, "This is a drawing, not a job."),
        ({"version": 1, "sprayers": [], "stock": []}, "This is a van, not a job."),
    ],
)
def test_so_are_a_drawing_and_a_van(data, words):
    (told,) = refusal(data)
    assert told.startswith(words)


def test_what_might_be_a_job_is_told_what_it_lacks():
    assert any("`floor` is missing" in one for one in refusal({"version": 1, "exits": []}))


@pytest.mark.parametrize("encoding", ["utf-8-sig", "utf-16", "utf-16-le", "utf-16-be"])
def test_a_job_is_read_as_any_editor_saves_it(tmp_path, encoding):
    path = tmp_path / "job.json"
    facts = job(TWO_ROOMS, name="Casa del Olmo, n.º 4")
    path.write_bytes(json.dumps(plain(facts), ensure_ascii=False).encode(encoding))
    assert read_job(path).name == facts.name


@pytest.mark.parametrize(
    ("name", "data", "words"),
    [
        ("house.dxf", b"0\nSECTION\n2\nENTITIES\n\xe9\n", "This is a drawing, not a job."),
        ("house.ifc", b"ISO-10303-21;\nHEADER;", "This is a drawing, not a job."),
        ("walk.txt", b"walk, tape in feet\nroom Hall\n", "This is a drawing, not a job."),
        ("plan.dwg", b"AC1027\x00\xff\xfe", "This is a DWG drawing, not a job."),
        ("job.json", b'{"version": 1,}', "Not JSON"),
        ("note.txt", b"call the owner", "Not JSON"),
    ],
)
def test_a_file_that_is_no_json_is_named_as_what_it_is(name, data, words, tmp_path):
    path = tmp_path / name
    path.write_bytes(data)
    with pytest.raises(Refused) as refused:
        read_job(path)
    assert words in str(refused.value.mistakes[0])
