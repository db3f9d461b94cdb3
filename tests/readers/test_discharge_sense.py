"""Days, ends and kinds of chromium in what a job says of its waste water."""

import pytest

from farwall.readers.discharge_sense import discharge_mistakes


def places(**raw):
    return [one.where for one in discharge_mistakes(raw)]


WORD = {"way": "sewer", "who": "A", "office": "B", "on": "2027-05-01"}


def test_what_agrees_is_no_mistake():
    raw = {
        "discharge": {
            "words": [{**WORD, "until": "2027-06-01", "limits": {"least_ph": 5, "most_ph": 10}}],
            "tests": [{"on": "2027-05-04", "chromium_mg_l": 2, "chromium_vi_mg_l": 1}],
        },
        "stains": [{"id": "s", "chromate": True, "sheet_read": "2027-05-01",
                    "contents": [{"substance": "sodium dichromate", "mass_percent_low": 5}]}],
    }  # fmt: skip
    assert places(**raw) == []


@pytest.mark.parametrize(
    ("discharge", "where"),
    [
        ({"words": [{**WORD, "on": "May 1"}]}, "discharge.words[0].on"),
        ({"words": [{**WORD, "until": "2027-04-30"}]}, "discharge.words[0].until"),
        ({"words": [WORD, {"limits": {"least_ph": 9, "most_ph": 6}}]},
         "discharge.words[1].limits.least_ph"),
        ({"tests": [{"on": "2027-13-01"}]}, "discharge.tests[0].on"),
        ({"tests": [{"chromium_mg_l": 1, "chromium_vi_mg_l": 2}]},
         "discharge.tests[0].chromium_vi_mg_l"),
    ],
)  # fmt: skip
def test_a_mistake_is_told_in_its_place(discharge, where):
    assert places(discharge=discharge) == [where]


def test_a_dichromate_and_a_no_do_not_go_together():
    row = {"substance": "potassium dichromate", "mass_percent_low": 9, "mass_percent_high": 5}
    found = places(stains=[{"id": "s", "chromate": False, "contents": [row]}])
    assert found == ["stains[0].contents[0].mass_percent_low", "stains[0].chromate"]


@pytest.mark.parametrize("raw", [{"discharge": 3}, {"discharge": {"words": "x", "tests": [1]}},
                                 {"stains": [{"contents": 5}]}])  # fmt: skip
def test_what_is_no_discharge_is_left_to_others(raw):
    assert places(**raw) == []
