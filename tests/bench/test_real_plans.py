"""Real plans: read where they lie, or told why not."""

import pytest

from farwall.bench.real_plans import OUR_FOLDER, OUR_PLAN, real_cases


def test_the_plan_that_comes_with_the_source_is_a_case_with_the_facts_of_the_bench():
    cases, unread = real_cases()
    assert [case.name for case in cases] == [OUR_PLAN]
    assert unread == ()
    job = cases[0].job
    assert len(job.floor.rooms) == 16
    assert job.tools.band_m == 1.1
    assert job.samples


def test_without_the_source_it_is_told_and_nothing_else_breaks(tmp_path):
    cases, unread = real_cases(ours=tmp_path)
    assert cases == ()
    assert [(one.name, one.why.split(":")[0]) for one in unread] == [(OUR_PLAN, "not there")]


def test_a_folder_is_read_in_place_and_what_cannot_be_read_is_listed(tmp_path):
    (tmp_path / "house.dwg").write_bytes(b"AC1032 and more")
    (tmp_path / "notes.txt").write_text("not a plan at all")
    (tmp_path / "copy.dxf").write_bytes((OUR_FOLDER / OUR_PLAN).read_bytes())
    before = sorted(tmp_path.iterdir())
    cases, unread = real_cases(tmp_path)
    assert [case.name for case in cases] == ["copy.dxf", OUR_PLAN]
    assert [one.name for one in unread] == ["house.dwg"]
    assert unread[0].why.startswith("not read yet: This is a DWG")
    assert sorted(tmp_path.iterdir()) == before


def test_a_folder_that_is_not_there_is_an_error_of_the_system(tmp_path):
    with pytest.raises(FileNotFoundError):
        real_cases(tmp_path / "nowhere")


@pytest.mark.needs_shared
def test_the_folder_of_plans_beside_the_project(shared):
    cases, unread = real_cases(shared("data/plans"))
    named = {one.name for one in unread} | {case.name.split(",")[0] for case in cases}
    assert len(named) >= 10
    assert OUR_PLAN in {case.name for case in cases}
