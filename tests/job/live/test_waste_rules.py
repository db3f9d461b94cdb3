"""What the log of the waste water asks for, by the newest entry of each drum."""

from dataclasses import replace
from datetime import date

import pytest
from tests.job.acid_day.waste_house import JOB, WORD, ground
from tests.job.story.entries import Log

from farwall.facts.discharge import Discharge
from farwall.job.live.waste_rules import waste_advice
from farwall.job.story import story
from farwall.phrasebook import in_spanish

ALLOWED = replace(JOB, discharge=Discharge((WORD,)))
DAY = date(2027, 5, 4)


def reasons(job, *entries, day=DAY):
    log = Log(ground().plan)
    for n, about in enumerate(entries):
        log("waste", 600.0 + n, **{"drum": "1", "litres": 100.0, **about})
    return [one.reason for one in waste_advice(job, story(ground().plan, log.kept), day)]


def test_a_sewer_with_a_written_word_is_silent():
    assert reasons(ALLOWED, {"way": "sewer", "ph": 8.0}) == []


@pytest.mark.parametrize(
    "word",
    [None, replace(WORD, in_writing=False), replace(WORD, until="2027-05-03"),
     replace(WORD, way="hauled")],
)  # fmt: skip
def test_a_sewer_without_one_is_told(word):
    job = replace(JOB, discharge=Discharge(() if word is None else (word,)))
    (told,) = reasons(job, {"way": "sewer"})
    assert "no written word" in told


def test_the_federal_floor_of_a_sewer():
    (told,) = reasons(ALLOWED, {"way": "sewer", "ph": 4.5, "ph_before": 8.0})
    assert told == "Drum 1 went to the sewer at pH 4.5, and nothing below 5 may."
    assert reasons(ALLOWED, {"way": "sewer", "ph": 5.0}) == []


@pytest.mark.parametrize(("ph", "told"), [(12.4, 0), (12.5, 1), (13.0, 1), (40.0, 0)])
def test_lye_in_a_sewer_is_told_too(ph, told):
    """Published: 40 CFR 261.22(a)(1); a pH above 14 is a slip of entry."""
    found = reasons(ALLOWED, {"way": "sewer", "ph": ph})
    assert len(found) == told
    assert all("at or above 12.5 it is hazardous waste, D002." in one for one in found)
    assert [one for one in found if in_spanish(one) is None] == []


@pytest.mark.parametrize(("ph", "told"), [(1.5, 1), (12.5, 1), (2.5, 0), (9.0, 0)])
def test_a_drum_that_is_hazardous_by_its_ph(ph, told):
    assert len(reasons(JOB, {"way": "kept in the drum", "ph_before": ph})) == told


def test_the_newest_entry_of_a_drum_counts():
    kept = {"way": "kept in the drum", "ph_before": 1.0}
    assert reasons(JOB, kept, {"way": "kept in the drum", "ph": 8.0}) == []
    assert len(reasons(JOB, kept, {"way": "kept in the drum", "drum": "2", "ph": 8.0})) == 1


def test_hauled_asks_for_its_paper():
    (told,) = reasons(JOB, {"way": "hauled"})
    assert "no manifest" in told
    assert reasons(JOB, {"way": "hauled", "manifest": "M-7"}) == []


def test_all_of_it_has_its_spanish():
    told = reasons(JOB, {"way": "sewer", "ph": 4.0}, {"way": "hauled", "drum": "2 of 3"},
                   {"way": "kept in the drum", "drum": "left", "ph": 1.0})  # fmt: skip
    assert len(told) == 4
    assert [one for one in told if in_spanish(one) is None] == []


def test_nothing_stops_the_spraying():
    log = Log(ground().plan)
    log("waste", 600.0, drum="1", litres=100.0, way="sewer", ph=1.0)
    found = list(waste_advice(JOB, story(ground().plan, log.kept), None))
    assert len(found) == 2
    assert not any(one.stop for one in found)
