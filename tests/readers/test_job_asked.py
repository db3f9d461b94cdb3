"""Answers about the slab, the sealer and the day agree with themselves and with the floor."""

from __future__ import annotations

import pytest
from tests.job.go.jobs import GOOD

from farwall.errors import Refused
from farwall.readers.job_asked import asked_mistakes
from farwall.readers.job_json import job_from, job_to_dict


def mistakes(**parts):
    raw = job_to_dict(GOOD)
    for key, values in parts.items():
        raw[key] = {**raw.get(key, {}), **values}
    return [str(one) for one in asked_mistakes(raw)]


def test_a_job_in_which_all_was_told_has_none_and_comes_back_as_it_was():
    assert mistakes() == []
    assert job_from(job_to_dict(GOOD), "it") == GOOD


@pytest.mark.parametrize(
    ("part", "values", "where", "what"),
    [
        ("survey", {"patches": [{"id": "p", "room": "frnt"}], "patched": True},
         "survey.patches[0].room", "front"),
        ("survey", {"patches": [{"id": "p", "room": "front"}, {"id": "p", "room": "back"}],
                    "patched": True}, "survey.patches[1].id", "already taken"),
        ("survey", {"patches": [{"id": "p", "room": "front"}]}, "survey.patched", "are listed"),
        ("survey", {"moisture": [{"kind": "meter", "room": "cellar"}]},
         "survey.moisture[0].room", "cellar"),
        ("survey", {"moisture": [{"kind": "F2170", "sheet": "dry"}]},
         "survey.moisture[0]", "slab_rh_percent"),
        ("watch", {"coat": "two"}, "watch.coat", "one"),
        ("sealer", {"recoat_from_h": 8, "recoat_to_h": 2}, "sealer", "above"),
        ("sealer", {"least_slab_c": 30, "most_slab_c": 20}, "sealer", "above"),
        ("morning", {"slab_low_c": 20, "slab_high_c": 18}, "morning", "above"),
    ],
)  # fmt: skip
def test_a_disagreement_is_told_with_its_place_and_what_is_known(part, values, where, what):
    told = mistakes(**{part: values})
    assert len(told) == 1
    assert told[0].startswith(f"{where}: ")
    assert what in told[0]


def test_a_coat_may_be_one_of_the_stand_ins_when_none_is_listed():
    raw = job_to_dict(GOOD)
    del raw["coats"]
    assert list(asked_mistakes({**raw, "watch": {"coat": "coat-2"}})) == []
    assert len(list(asked_mistakes({**raw, "watch": {"coat": "coat-3"}}))) == 1


@pytest.mark.parametrize("spoilt", [7, None, [], "words", {"patches": 3, "moisture": {}}])
def test_spoilt_parts_are_left_to_the_other_checks(spoilt):
    parts = ("survey", "sealer", "morning", "watch")
    assert list(asked_mistakes(dict.fromkeys(parts, spoilt))) == []


def test_us_twins_of_answers_are_understood():
    raw = job_to_dict(GOOD)
    raw["survey"]["moisture"] = [{"kind": "F1869", "vapour_lb_1000ft2_24h": 3}]
    raw["sealer"] = {"type": "epoxy", "least_slab_f": 55, "least_margin_f": 5.4}
    job = job_from(raw, "it")
    assert job.survey.moisture[0].vapour_ug_m2_s == pytest.approx(3 * 56.5096, rel=1e-5)
    assert job.sealer.least_margin_k == pytest.approx(3.0)
    raw["sealer"]["least_slab_c"] = 12.0
    with pytest.raises(Refused, match="both given"):
        job_from(raw, "it")
