"""The list of the morning and the sign for a door: what they say, in both languages, one page."""

import json
import re
from dataclasses import replace

import pytest
from tests.acid.test_worn import ADA, PAIR
from tests.midday import EXAMPLES, day_of
from tests.papers.acid.ground import overlapping, pages_of

from farwall.facts.job import Stain
from farwall.facts.workers import Emergency, Worker
from farwall.job.acid_day.fumes import Fumes
from farwall.job.acid_day.fumes.noun import KeptOut, Range, Sprayer
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.people import people_of
from farwall.papers.acid.people_sheet import (
    COLUMNS,
    keep_out_data,
    keep_out_pdf,
    people_data,
    people_pdf,
)
from farwall.papers.acid.people_words import free_min, people_clock, person_lines
from farwall.readers.job_json import read_job

JOB = read_job(EXAMPLES / "quince-street" / "job.json")
PLAN = day_of("quince-street")
ANN = replace(ADA, name="Ann Vint", duties=("mixes", "sprays"),
              cartridge=replace(PAIR, change_after_min=90, used_min=20))  # fmt: skip
BO = replace(ADA, id="bo", name="Bo Tarn", duties=("helps", "scrubs"), clean_shaven=False,
             trained="")  # fmt: skip
CY = Worker("cy", "Cy Orme", ("stands by",), trained="2026-05-01")
TOLD = Emergency("555 0142", "555 0199", eyewash_at="laundry door")


class Day:
    """An acid day of people alone."""

    def __init__(self, ground):
        self.people = people_of(ground)
        self.fumes = Fumes()


def ground(*workers, language="en", units="us", plan=PLAN, **parts):
    wishes = replace(JOB.wishes, language=language, units=units)
    return Ground(replace(JOB, workers=workers, wishes=wishes, **parts), plan)


def data(*workers, language="en", **parts):
    found = ground(*workers, language=language, **parts)
    return people_data(found, people_of(found), language=language)


def test_each_person_has_a_box_for_what_the_duties_ask_and_none_else():
    rows = data(ANN, BO, CY)["rows"]
    boxes = [[one["box"] for one in row["cells"]] for row in rows]
    assert boxes[0] == [True] * len(COLUMNS)
    apron = [item for item, _ in COLUMNS].index("apron")
    assert boxes[1] == [at != apron for at in range(len(COLUMNS))]
    assert sum(boxes[2]) == 1
    notes = {item: one["note"] for (item, _), one in zip(COLUMNS, rows[1]["cells"], strict=True)}
    assert notes["clean-shaven"] == "missing"
    assert notes["training"] == "ask"
    assert notes["fit test"] == "2026-06-01"
    assert [one["no"] for one in rows[1]["cells"]].count(True) == 1


def test_the_pair_and_the_minute_of_a_new_one_stand_in_the_table_of_minutes():
    row = data(ANN)["rows"][0]
    assert row["used"] == "20 / 90 min"
    assert row["new"].endswith("pm")


def test_chromate_adds_a_column_for_the_hygienist():
    columns = data(ANN, stains=(Stain("light", chromate=True), Stain("dark")))["columns"]
    assert columns[-1] == "hygienist"
    assert "hygienist" not in data(ANN)["columns"]


def test_looks_are_the_spraying_minutes_of_the_plan():
    looks = data(ANN, CY)["looks"]
    assert [len(one["times"]) for one in looks] == [5, 5]
    assert looks[0]["times"] == ["8:16", "8:31", "8:46", "9:01", "9:05"]


def test_no_number_is_filled_in_and_those_told_stand_there():
    assert {value for _, value in data(ANN)["numbers"]} == {""}
    assert "555 0142" in {value for _, value in data(ANN, emergency=TOLD)["numbers"]}


def english_left(value):
    """All texts but names, and what the firm wrote."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for key, one in value.items():
            if key not in {"job", "name", "paper", "lang", "phrases", "stands_by", "eyewash_at"}:
                yield from english_left(one)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from english_left(one)


@pytest.mark.parametrize("who", [(ANN, BO, CY), (), (replace(ANN, cartridge=None, gloves=""),)])
def test_in_spanish_nothing_stays_english(who):
    english = {one for one in english_left(data(*who)) if re.search(r"[a-z]{3,} [a-z]{2,}", one)}
    spanish = set(english_left(data(*who, language="es")))
    assert sorted(english & spanish) == []


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("who", [(), (ANN, BO, CY)])
def test_both_papers_are_one_page(language, units, who):
    found = ground(*who, language=language, units=units, emergency=TOLD)
    for make in (people_pdf, keep_out_pdf):
        content = make(found, Day(found))
        assert content == make(found, Day(found))
        assert re.findall(rb"/Count (\d+)", content) == [b"1"]


def test_the_sign_has_both_languages_the_hour_rounded_up_and_the_firm_s_number():
    """By hand: rinsed and aired Friday 15:57, so 4 pm; never an hour too early."""
    found = ground(ANN, emergency=TOLD)
    told = keep_out_data(found, people_of(found))
    assert told["free"] == {"en": "Friday, May 15, 4:00 pm", "es": "viernes 15 de mayo, 4:00 p. m."}
    assert told["number"] == "555 0142"
    assert keep_out_data(ground(ANN), people_of(ground(ANN)))["number"] == ""
    metric = ground(ANN, units="metric")
    assert keep_out_data(metric, people_of(metric))["free"]["en"] == "Friday, 15 May, 16:00"


def test_a_floor_that_is_left_has_no_hour_on_the_sign():
    left = ground(ANN, plan=replace(PLAN, left=PLAN.fields[:1]))
    assert keep_out_data(left, people_of(left))["free"] == {"en": "", "es": ""}


def air(likely=7.0, high=40.0, kept=()):
    return Fumes(sprayer=Sprayer(60.0, Range(1.0, likely, high), Range(0, 1, 2)), kept_out=kept)


@pytest.mark.parametrize(
    ("likely", "high", "no", "says"),
    [(7, 19, False, ""), (7, 40, False, "by the hygienists' ceiling this respirator is for 20"),
     (46, 90, True, "more than this respirator is for")],
)  # fmt: skip
def test_air_is_held_against_what_the_respirator_is_for_by_hand(likely, high, no, says):
    """A half face: 10 times 2 ppm are 20; 10 times 5 ppm are 50, capped at 45."""
    found = ground(ANN, CY)
    people = people_of(found)
    clock = people_clock(PLAN, "us")
    ann, cy = people.people
    told = [
        one for one in person_lines(ann, clock, air(likely, high)) if "Where somebody" in one[1]
    ]
    assert [one[0] for one in told] == ([no] if says else [])
    assert all(says in one[1] for one in told)
    assert not any("Where somebody" in one for _, one in person_lines(cy, clock, air(46, 90)))


def test_the_air_may_keep_the_door_shut_for_longer_than_the_rinse():
    found = ground(ANN)
    people = people_of(found)
    rinsed = people.keep_out.rinsed_likely_min + 60
    late = people.keep_out.rinsed_late_min + 60
    shut = KeptOut("second", 400.0, "hcl-hygienists", rinsed + 200, late + 300)
    assert free_min(people, air(kept=(shut,))) == (rinsed + 200, late + 300)
    early = replace(shut, likely_min=500.0, high_min=600.0)
    assert free_min(people, air(kept=(early,))) == (rinsed, late)
    between = replace(shut, next_min=600.0, likely_min=None)
    assert free_min(people, air(kept=(between,))) == (rinsed, late)
    never = replace(shut, likely_min=None, high_min=None)
    assert free_min(people, air(kept=(never,))) == (None, None)
    assert keep_out_data(found, people, fumes=air(kept=(never,)))["free"]["en"] == ""
    assert keep_out_data(found, people, fumes=air(kept=(shut,)))["free"]["en"].startswith("Fri")


def test_what_is_set_is_plain_json():
    json.dumps(data(ANN, BO, CY))


def test_what_an_eyewash_gives_is_told_litres_first_in_a_metric_job():
    word = "gives a minute, 0.4 gal (1.5 L) or more"
    assert data(ANN, units="metric")["phrases"][word] == "gives a minute, 1.5 L (0.4 gal) or more"
    assert data(ANN, language="es")["phrases"][word] == "da por minuto, 0.4 gal (1.5 L) o más"
    assert data(ANN)["phrases"] == {}


@pytest.mark.parametrize("language", ["en", "es"])
def test_first_aid_and_its_numbers_are_not_parted_and_long_names_keep_to_their_rows(language):
    """With five at work first aid began at the foot of one page and ended on the next; a name of
    two lines stood over the line above it."""
    who = [replace(ANN, id=f"w{n}", name=f"Bartholomew Featherstone {n} of the Lower Meadow")
           for n in range(5)]  # fmt: skip
    found = ground(*who, language=language, emergency=TOLD)
    content = people_pdf(found, Day(found))
    first, last = {"en": ("First aid", "Everybody else"),
                   "es": ("Primeros auxilios", "Los demás")}[language]  # fmt: skip
    (page,) = [one for one in pages_of(content) if first in one]
    assert last in page
    assert "555 0142" in page
    assert overlapping(content) == []
