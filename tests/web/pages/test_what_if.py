"""What would change a plan: remedies as facts, tries, and a way back."""

from dataclasses import replace

import pytest
from tests.web.pages.office import two_rooms
from tests.web.pages.shown_house import house

from farwall.facts.plan import Remedy
from farwall.readers.job_json import job_from
from farwall.web.pages.facts import with_these
from farwall.web.pages.what_if import what_ifs


@pytest.fixture(scope="module")
def shown():
    return house()


def with_remedy(shown, one):
    field = replace(shown.plan.fields[0], verdict="cannot", remedies=(one,))
    return replace(shown, plan=replace(shown.plan, fields=(field, *shown.plan.fields[1:])))


def job_with(change):
    return job_from(with_these(two_rooms(), change.settings), "it")


def test_every_try_that_is_offered_makes_facts_that_differ_and_can_be_read(shown):
    tries = [one for one in what_ifs(shown) if one.settings]
    assert len(tries) >= 4
    before = job_from(two_rooms(), "it")
    assert all(job_with(one) != before for one in tries)
    assert len({one.key for one in tries}) == len(tries)


@pytest.mark.parametrize(
    ("remedy", "what"),
    [
        (Remedy("helper", "A helper."), lambda job: job.crew.helper),
        (Remedy("two", "Two."), lambda job: job.crew.sprayers == 2),
        (Remedy("bands", "Bands of 2' 9\" (0.85 m)."), lambda job: job.tools.band_m == 0.85),
        (Remedy("bands", "Bands of 0.85 m (2' 9\")."), lambda job: job.tools.band_m == 0.85),
        (Remedy("stop-line", "A cut.", line=((0.0, 1.5), (4.0, 1.5))),
         lambda job: job.floor.saw_cuts[-1].line == ((0.0, 1.5), (4.0, 1.5))),
        (Remedy("hour", "Begin this field at 6:00: an edge then lives 9 min."),
         lambda job: job.starts_at.startswith("2026-06-08T05:5") or "T06:0" in job.starts_at),
        (Remedy("hour", "Begin this field at 6:00 pm: an edge then lives 9 min."),
         lambda job: job.starts_at.startswith("2026-06-08T17:5") or "T18:0" in job.starts_at),
    ],
)  # fmt: skip
def test_a_remedy_that_is_a_fact_is_put_into_the_facts(shown, remedy, what):
    first = what_ifs(with_remedy(shown, remedy))[0]
    assert first.needed
    assert what(job_with(first))


def test_a_helper_who_is_there_already_is_no_change_to_try(shown):
    job = replace(shown.job, crew=replace(shown.job.crew, helper=True))
    leans = Remedy("helper", "Only with the helper who swaps tanks.")
    first = what_ifs(replace(with_remedy(shown, leans), job=job))[0]
    assert "Only with the helper" in first.what
    assert first.key == ""


def test_a_remedy_that_is_no_fact_has_no_button(shown):
    first = what_ifs(with_remedy(shown, Remedy("sample", "Time the sheen loss of a sample.")))[0]
    assert first.key == ""


def test_windows_are_offered_to_be_filmed_only_where_there_are_any(shown):
    assert not [one for one in what_ifs(shown) if "covered" in one.key]


def test_a_try_is_a_new_version_with_both_plans_beside_and_goes_back(own):
    text = own.get("/houses/two").text
    key = text.split('name="what" value="')[1].split('"')[0]
    own.post("/houses/two/try", data={"version": "1", "what": key})
    assert len(own.book.versions("two")) == 2
    text = own.get("/houses/two").text
    assert "Against facts 1 (" in text
    assert "Both plans side by side" in text
    assert "Take back to facts 1" in text
    own.post("/houses/two/back", data={"version": "2", "to": "1"})
    assert own.book.facts("two", 3) == own.book.facts("two", 1)
    assert "Against facts 2 (" in own.get("/houses/two").text


@pytest.mark.parametrize(
    ("path", "form"),
    [
        ("try", {"version": "1", "what": "crew.sprayers=9"}),
        ("try", {"version": "1", "what": ""}),
        ("try", {"version": "7", "what": "crew.sprayers=2"}),
        ("back", {"version": "1", "to": "12"}),
        ("back", {"version": "1", "to": "-1"}),
        ("back", {"version": "1", "to": "x"}),
    ],
)
def test_what_was_never_offered_is_refused_and_nothing_is_kept(own, path, form):
    assert own.post(f"/houses/two/{path}", data=form).status_code in {404, 422}
    assert len(own.book.versions("two")) == 1


def test_back_to_the_same_facts_makes_no_version(own):
    own.post("/houses/two/back", data={"version": "1", "to": "1"})
    assert len(own.book.versions("two")) == 1


def test_an_hour_earlier_is_told_with_the_half_of_the_day_where_the_day_has_both(shown):
    plan = replace(shown.plan, starts_at="2026-06-08T13:30:00+00:00")
    late = replace(shown, plan=plan, job=replace(shown.job, starts_at=plan.starts_at))
    units = {one.what for one in what_ifs(late) if "an hour earlier" in one.what}
    assert units == {f"Begin at {late.clock.time(-60)}, an hour earlier"}
