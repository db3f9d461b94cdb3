"""What a closed call-back teaches, and how taught weights order causes."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.papers.office import houses

from farwall.cli.learn_words import told_lessons
from farwall.facts.call_back_signs import CALL_BACK_CAUSES, WEIGHTS
from farwall.facts.lessons import Lessons, SignWeight
from farwall.facts.log_words import WORDS
from farwall.job.call_back.causes import CAUSES
from farwall.job.call_back.closed import closed_call_back
from farwall.job.call_back.noun import Call, Sign
from farwall.job.call_back.say import said, weighed
from farwall.job.call_back.triage import ranked, score, triage_of, weights_of
from farwall.job.closed import closed_job
from farwall.job.story import story
from farwall.job.story.noun import Happened
from farwall.phrasebook import speaking, told
from farwall.readers.lessons_json import lessons_from

MONTH_MIN = 30.44 * 24 * 60


def house():
    one = houses.twelve()
    return one.job, one.plan, story(one.plan, one.log)


def taught(kind, weight, n=5):
    return SignWeight(kind, weight, 0.0, weight + 1, WEIGHTS[kind], n, "learned", "told")


def test_causes_of_the_log_are_those_of_the_table():
    assert tuple(one.id for one in CAUSES) == CALL_BACK_CAUSES
    cause = next(one for one in WORDS["called-back"].may if one.key == "cause")
    assert cause.choices == CALL_BACK_CAUSES


def test_without_a_cause_only_what_and_hours_are_told():
    job, plan, tale = house()
    found = closed_call_back(job, plan, tale, Happened("x", "called-back", 9e4, {"what": "haze"}))
    assert (found.what, found.cause, found.for_it, found.for_others) == ("haze", "", {}, {})


def test_signs_of_the_records_are_held_against_the_cause_by_hand():
    """The second coat lay 0.7 K above the dew point: it speaks for cold or wet sealing alone."""
    job, plan, tale = house()
    last = tale.last("handed-over").at_min
    entry = Happened("x", "called-back", last + 2 * MONTH_MIN,
                     {"what": "white haze", "cause": "cold or wet sealing"})  # fmt: skip
    found = closed_call_back(job, plan, tale, entry)
    assert (found.for_it["margin"], found.for_others["margin"]) == (1.0, 0.0)
    assert found.for_it["when"] == 1.0  # months one to three
    named = sum("month 1-3" in one.speaks_for.get("when", ()) for one in CAUSES) - 1
    assert found.for_others["when"] == pytest.approx(named / (len(CAUSES) - 1))
    other = Happened("x", "called-back", last + 2 * MONTH_MIN, {"what": "w", "cause": "wear"})
    assert closed_call_back(job, plan, tale, other).for_it["margin"] == 0.0


def test_the_closed_job_carries_it_and_a_file_of_lessons_keeps_the_weights():
    from farwall.facts.plain import plain
    from farwall.learn.lessons import lessons_of

    one = houses.twelve()
    kept = [*one.log]
    job, plan, tale = house()
    last = tale.of("called-back")[-1]
    with_cause = tuple(
        each if each.id != last.id
        else Happened(each.id, each.word, each.at_min, {**each.about, "cause": "residue"})
        for each in tale.happened
    )  # fmt: skip
    from dataclasses import replace

    closed = closed_job(job, plan, replace(tale, happened=with_cause), job_id="a", kept=kept)
    assert closed.called_back[-1].cause == "residue"
    lessons = lessons_of([closed])
    assert {"margin", "ph", "rag", "when"} <= {each.kind for each in lessons.signs}
    assert lessons_from(plain(lessons), "kept").signs == lessons.signs
    shown = told_lessons(lessons)
    assert "Signs of call-backs" in shown
    assert shown.count("learned from 1 closed call-back") == len(lessons.signs)


def test_without_lessons_the_guesses_weigh_and_nothing_is_said():
    job, plan, tale = house()
    found = triage_of(job, plan, tale, Call(look="haze"))
    assert weights_of(None) == dict(WEIGHTS) == weights_of(Lessons(1))
    assert (found.rank, found.call_backs, weighed(found)) == ("common practice", 0, "")
    assert found == triage_of(job, plan, tale, Call(look="haze"), Lessons(1))


def test_taught_weights_order_the_causes_and_n_is_said_in_both_languages():
    signs = {"look": Sign("look", "haze", "."), "cleaner": Sign("cleaner", "ammonia", "."),
             "margin": Sign("margin", "small", ".")}  # fmt: skip
    lessons = Lessons(1, signs=(taught("cleaner", 0.5, 7), taught("margin", 5.0, 3)))
    first, _ = ranked(signs, weights_of(lessons))
    assert first[0].cause == "cold or wet sealing"
    assert {one.cause for one in ranked(signs)[0] if one.place == 1} == {
        "cleaner", "cold or wet sealing",
    }  # fmt: skip
    job, plan, tale = house()
    found = triage_of(job, plan, tale, Call(look="haze"), lessons)
    assert (found.rank, found.call_backs) == ("learned", 7)
    assert found.source == "weights learned from 7 closed call-backs"
    assert weighed(found) in said(found)
    with speaking("es"):
        assert told(weighed(found)).startswith("Los indicios pesan según 7 llamadas")


@given(
    st.dictionaries(st.sampled_from(sorted(WEIGHTS)), st.floats(0, 8), max_size=8),
    st.sampled_from(CAUSES),
    st.data(),
)
def test_one_more_sign_for_a_cause_never_lowers_it_with_any_weights(weights, cause, data):
    if not cause.speaks_for:
        return
    kind = data.draw(st.sampled_from(sorted(cause.speaks_for)))
    value = data.draw(st.sampled_from(sorted(cause.speaks_for[kind])))
    known = {**WEIGHTS, **weights}
    base = [Sign("look", min(cause.looks), ".")]
    more = [*base, Sign(kind, value, ".")]
    place = sum(score(one, base, known) > score(cause, base, known) for one in CAUSES)
    assert sum(score(one, more, known) > score(cause, more, known) for one in CAUSES) <= place
