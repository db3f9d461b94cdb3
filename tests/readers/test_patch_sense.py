"""Patches of a job: where they lie, what is decided, all mistakes told with their place."""

from __future__ import annotations

import re

import pytest
from tests.job.go.jobs import GOOD, surveyed
from tests.shapes import box

from farwall.errors import Refused
from farwall.facts.plain import plain
from farwall.facts.slab import Patch
from farwall.readers.job_json import job_from, job_to_dict
from farwall.readers.patch_sense import patch_mistakes

DRY = "leave for another colour"


def outline(*corners):
    return plain(box(*corners))


def raw(*patches):
    told = job_to_dict(GOOD)
    told["survey"] |= {"patched": True, "patches": list(patches)}
    return told


def patch(name="p", room="front", polygon=(1, 1, 2, 2), **more):
    told = {"id": name, "room": room, **more}
    return {**told, "polygon": outline(*polygon)} if polygon else told


def test_a_patch_comes_back_as_it_was_told():
    job = surveyed(
        patched=True,
        patches=(Patch("t", "back", "trench", 40.0, 3.0, box(1, 4, 2, 5), "stain and disclose"),),
    )
    assert job_from(job_to_dict(job), "it") == job


@pytest.mark.parametrize(
    ("patches", "where", "what"),
    [
        ([patch(polygon=(1, 4, 2, 5))], "survey.patches[0].polygon", 'It lies in "back"'),
        ([patch(polygon=(11, 4, 12, 5))], "survey.patches[0].polygon", "Draw it on that room"),
        ([patch(polygon=None, decision=DRY)], "survey.patches[0].polygon", "outline is missing"),
        ([patch(), patch("q", polygon=(1.5, 1, 3, 2), decision=DRY)], "survey.patches[1]",
         "0.50 m² of it also lie"),
        ([patch(polygon=(0, 0, 4, 3), decision=DRY)], "survey.patches[0]", "Nothing of room"),
    ],
)  # fmt: skip
def test_each_mistake_is_told_with_its_place_and_what_to_do(patches, where, what):
    told = [str(one) for one in patch_mistakes(raw(*patches))]
    assert len(told) == 1
    assert told[0].startswith(f"{where}: ")
    assert what in told[0]
    with pytest.raises(Refused, match=re.escape(where)):
        job_from(raw(*patches), "it")


def test_all_mistakes_of_all_patches_come_at_once():
    crossed = {"type": "Polygon", "coordinates": [[[0, 0], [2, 2], [2, 0], [0, 2], [0, 0]]]}
    told = raw(
        patch(polygon=(1, 4, 2, 5)),
        {**patch("q"), "polygon": crossed, "decision": "paint it"},
        patch("r", polygon=None, decision=DRY, drop_s=-1),
    )
    with pytest.raises(Refused) as refused:
        job_from(told, "it")
    words = str(refused.value)
    for part in ("patches[0].polygon", "patches[1].polygon", "patches[1].decision",
                 "patches[2].polygon", "patches[2].drop_s"):  # fmt: skip
        assert part in words


def test_patches_decided_alike_may_lie_over_each_other_and_touch_otherwise():
    assert not list(patch_mistakes(raw(patch(), patch("q", polygon=(1.5, 1, 3, 2)))))
    beside = patch("q", polygon=(2, 1, 3, 2), decision=DRY)
    assert not list(patch_mistakes(raw(patch(), beside)))


@pytest.mark.parametrize("spoilt", [None, 7, [], "words", [7], {"patches": 3}])
def test_spoilt_parts_are_left_to_the_other_checks(spoilt):
    assert list(patch_mistakes({"floor": spoilt, "survey": spoilt})) == []


def test_a_floor_has_one_main_window():
    told = job_to_dict(GOOD)
    window = {"line": [[0, 1], [0, 2]], "main": True}
    told["floor"]["windows"] = [window, {"line": [[0, 1], [0, 2]]}, window]
    with pytest.raises(Refused, match=r"windows\[2\].main"):
        job_from(told, "it")
