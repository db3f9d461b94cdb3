"""The people of an acid day: a word for each duty, what stops, what nobody told."""

import re
from dataclasses import replace

import pytest
from tests.acid.test_worn import ADA, PAIR
from tests.midday import EXAMPLES, day_of

from farwall.facts.job import Crew, Stain
from farwall.facts.washing import Washing
from farwall.facts.workers import Emergency, Worker
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.people import people_of, people_said
from farwall.readers.job_json import read_job

JOB = read_job(EXAMPLES / "quince-street" / "job.json")
PLAN = day_of("quince-street")
ADA = replace(ADA, duties=("mixes", "sprays"))
BO = replace(ADA, id="bo", name="Bo", duties=("helps", "scrubs"))
CY = Worker("cy", "Cy", ("stands by",), trained="2026-05-01")
TOLD = Emergency("000 invented", "111 invented", eyewash_at="kitchen sink")


def people(*workers, plan=PLAN, **parts):
    return people_of(Ground(replace(JOB, workers=workers, **parts), plan))


def test_a_crew_in_order_stops_nothing_and_asks_nothing():
    found = people(ADA, BO, CY, emergency=TOLD)
    assert (found.stops, found.warnings, found.stands_by) == ((), (), ("Cy",))
    assert {word.word for one in found.people for word in one.duties} == {"may"}


def test_the_day_of_the_plan_judges_not_that_of_today():
    later = replace(PLAN, starts_at="2026-06-02T08:00:00-06:00")
    assert people(ADA).people[0].duties[1].word == "may"
    found = people(ADA, plan=later)
    assert found.people[0].duties[1].word == "not yet"
    assert found.stops == tuple(
        f"Ada may not {verb} yet: the last fit test, 2025-06-01, held until 2026-06-01."
        for verb in ("mix a batch", "spray stain")
    )


@pytest.mark.parametrize(
    ("starts", "word"),
    [("2026-06-01T23:59:00-06:00", "may"), ("2026-06-02T00:01:00-06:00", "not yet"),
     ("2026-06-01T23:59:00+13:00", "may")],
)  # fmt: skip
def test_the_day_is_that_of_the_house_s_clock(starts, word):
    found = people(ADA, plan=replace(PLAN, starts_at=starts))
    assert found.people[0].duties[1].word == word


def test_nobody_told_of_is_asked_for_and_stops_nothing():
    found = people()
    assert found.stops == ()
    assert any("Nobody told who works with the acid" in one for one in found.warnings)


def test_nobody_works_alone():
    assert people(ADA, crew=Crew(second_adult=False)).stops[0].startswith("Nobody works alone")
    assert people(ADA, crew=Crew(second_adult=False, helper=True)).stops == ()


def test_who_is_inside_breathes_the_spraying_minutes_and_who_scrubs_does_not():
    found = people(ADA, BO, CY)
    minutes = {one.name: one.spraying_min for one in found.people}
    spells = sum(end - begin for begin, end in found.spray_spells_min)
    assert minutes == {"Ada": round(spells, 1), "Bo": round(spells, 1), "Cy": 0.0}


def test_the_strictest_look_of_all_duties_is_shown_once():
    both = replace(ADA, duties=("sprays", "scrubs"), cartridge=replace(PAIR, ammonia=False))
    found = people(both, washing=Washing(base="ammonia water")).people[0]
    assert [(one.duty, one.word) for one in found.duties] == [
        ("sprays", "may"), ("scrubs", "not yet"),
    ]  # fmt: skip
    looked = {one.item: one.state for one in found.looked}
    assert looked["cartridges"] == "missing"
    assert len(looked) == len(found.looked)


def test_chromate_adds_a_word_to_first_aid_and_asks_for_a_hygienist():
    found = people(ADA, stains=(Stain("light", chromate=True), Stain("dark")))
    assert len(found.first_aid) == 5
    assert "hygienist" in " ".join(found.people[0].duties[0].why)


def test_no_number_is_ever_filled_in():
    found = people(ADA)
    assert [one.value for one in found.numbers] == [""] * 5
    assert sum("none is filled in here" in one for one in found.warnings) == 2
    said = "\n".join(people_said(found, us=True))
    assert "911" not in said
    assert "000 invented" in "\n".join(people_said(people(ADA, emergency=TOLD), us=True))


def test_the_terminal_says_what_stops_first_and_who_stays_out():
    told = replace(ADA, clean_shaven=False)
    found = people(told, CY, emergency=TOLD)
    lines = people_said(found, us=False, coats=("first", "second"))
    assert lines[0].startswith("NO: Ada may not mix a batch yet: hair under")
    assert any(one.startswith("Owner, pets and other trades stay out") for one in lines)
    assert any("coat 1 8:16, 8:31, 8:46, 9:01, 9:05" in one for one in lines)
    lines = people_said(found, us=True, coats=("first", "second"))
    assert any("coat 1 8:16 am, 8:31 am, 8:46 am, 9:01 am, 9:05 am" in one for one in lines)
    out = next(one for one in lines if "stay out" in one)
    assert re.search(r"not before 2026-05-\d\d \d+:\d\d [ap]m", out)
