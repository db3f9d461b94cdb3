"""Days of people that are days, and people told apart."""

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.errors import Refused
from farwall.readers.job_json import job_from, job_to_dict


def mistakes(*workers):
    raw = {**job_to_dict(job(TWO_ROOMS)), "workers": list(workers)}
    try:
        job_from(raw, "job.json")
    except Refused as refusal:
        return [str(one) for one in refusal.mistakes]
    return []


@pytest.mark.parametrize("day", ["2026-02-29", "4.5.2027", "20270504", "soon", "2027-W18-2"])
def test_a_day_that_is_none_is_told_where_it_stands(day):
    for key in ("fit_tested", "cleared", "trained", "exposure_settled"):
        (found,) = mistakes({"id": "ada", key: day})
        assert f"workers[0].{key}" in found
        assert "Write it such as 2027-05-04." in found
    (found,) = mistakes({"id": "ada", "cartridge": {"opened": day}})
    assert "workers[0].cartridge.opened" in found


def test_days_that_are_days_and_none_at_all_are_taken():
    assert mistakes({"id": "ada", "fit_tested": "2028-02-29"}, {"id": "bo", "cleared": ""}) == []


@pytest.mark.parametrize(
    "second", [{"id": "ada"}, {"id": "ADA "}, {"id": "b", "name": "ada"}, {"id": "ada lovage"}]
)
def test_two_people_of_one_name_are_told_apart_first(second):
    (found,) = mistakes({"id": "ada", "name": "Ada Lovage"}, second)
    assert "workers[1]" in found


def test_one_whose_id_is_the_name_is_one():
    assert mistakes({"id": "Ada", "name": "Ada"}, {"id": "Bo", "name": ""}) == []
