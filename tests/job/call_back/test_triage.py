"""Laws of the order of causes: evidence for a cause never lowers it, the unknown never narrows."""

from __future__ import annotations

from dataclasses import fields, replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.midday import EXAMPLES, day_of

from farwall.job.call_back import QUESTIONS, Call, triage_of
from farwall.job.call_back.causes import BY_ID, CAUSES, WEIGHTS
from farwall.job.call_back.noun import Sign
from farwall.job.call_back.records import RoomRecords
from farwall.job.call_back.signs import AGE_WORDS, signs_of
from farwall.job.call_back.triage import ranked
from farwall.job.story.noun import Story
from farwall.readers.job_json import read_job

VALUES = {
    "look": ("haze", "footprints", "peeling", "dull", "white salts", "mat marks", "spots", "powder",
             "scratches", "colour", "lines", "crack"),
    "when": tuple(AGE_WORDS), "winter": ("yes", "no"),
    "where": ("door", "window", "lanes", "wet room", "walls", "joints", "under something", "spot",
              "all over"),
    "wet": ("yes", "no"),
    "cleaner": ("water", "neutral", "ammonia", "bleach", "vinegar", "pine", "solvent", "steam",
                "other"),
    "rug": ("none", "breathable", "rubber"),
    "ph": ("low", "in", "high"), "rag": ("clean", "dirty"), "powder": ("none", "seen"),
    "rinses": ("few", "enough"), "margin": ("small", "enough"), "slab": ("cold", "warm"),
    "air": ("damp", "dry"), "dried": ("seen", "not seen"), "sealer": ("usual", "thick", "thin"),
    "stain": ("as planned", "much"), "finish": ("laid", "none"), "damp": ("damp", "dry"),
    "copper": ("yes", "no"),
}  # fmt: skip
"""Every value that a sign of each kind can have."""


@st.composite
def known(draw):
    """Some kinds answered, others not."""
    kinds = draw(st.sets(st.sampled_from(sorted(VALUES))))
    return {
        kind: Sign(kind, draw(st.sampled_from(VALUES[kind])), f"{kind} is known") for kind in kinds
    }


def places(signs):
    likely, _ = ranked(signs)
    return {one.cause: one.place for one in likely}


@given(known(), st.sampled_from(CAUSES), st.data())
def test_one_more_sign_for_a_cause_never_lowers_its_place(signs, cause, data):
    open_ = sorted((set(cause.speaks_for) | {"look"}) - set(signs))
    before = places(signs)
    if cause.id not in before or not open_:
        return
    kind = data.draw(st.sampled_from(open_))
    speaks = cause.looks if kind == "look" else cause.speaks_for[kind]
    more = {**signs, kind: Sign(kind, data.draw(st.sampled_from(sorted(speaks))), "one more")}
    assert places(more)[cause.id] <= before[cause.id]


@given(known(), st.data())
def test_an_answer_taken_back_widens_and_never_narrows(signs, data):
    if not signs:
        return
    kind = data.draw(st.sampled_from(sorted(signs)))
    fewer = {one: sign for one, sign in signs.items() if one != kind}
    assert set(places(signs)) <= set(places(fewer))


def test_who_knows_nothing_has_every_cause_in_the_first_place():
    likely, out = ranked({})
    assert {one.place for one in likely} == {1}
    assert len(likely) == len(CAUSES)
    assert out == ()


@given(known())
def test_places_follow_the_scores_and_every_cause_is_either_left_or_ruled_out(signs):
    likely, out = ranked(signs)
    scores = [one.score for one in likely]
    assert scores == sorted(scores, reverse=True)
    for one in likely:
        assert one.place == 1 + sum(score > one.score for score in scores)
    assert len(likely) + len(out) == len(CAUSES)


@pytest.mark.parametrize("cause", CAUSES, ids=lambda one: one.id)
def test_the_table_speaks_of_known_signs_and_of_each_once(cause):
    for told in (cause.speaks_for, cause.against, cause.rules_out):
        for kind, values in told.items():
            assert values <= set(VALUES[kind]), kind
    for kind, values in cause.speaks_for.items():
        assert not values & cause.against.get(kind, frozenset())
        assert not values & cause.rules_out.get(kind, frozenset())
    assert cause.looks <= set(VALUES["look"])


def test_every_kind_has_a_weight_and_every_question_its_answers():
    assert set(VALUES) == set(WEIGHTS)
    for one in QUESTIONS:
        if one.key in VALUES and one.answers:
            assert set(one.answers) - {"other"} <= set(VALUES[one.key])
    assert set(BY_ID) == {one.id for one in CAUSES}


def first(call, records=()):
    likely, _ = ranked({one.kind: one for one in (*signs_of(call), *records)})
    return likely[0].cause


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("call", "records", "cause"),
    [
        (Call(look="haze", where="door", months=0.2), (Sign("margin", "small", "2 °F"),),
         "cold or wet sealing"),
        (Call(look="peeling", where="door", months=2), (Sign("rag", "dirty", "grey"),), "residue"),
        (Call(look="dull", where="lanes", months=6), (Sign("finish", "none", "none"),),
         "no finish"),
        (Call(look="white salts", winter="yes", where="walls", months=8),
         (Sign("damp", "damp", "wet mat"),), "salts"),
        (Call(look="haze", where="all over", cleaner="ammonia", months=5), (), "cleaner"),
        (Call(look="mat marks", rug="rubber", where="under something", months=1), (), "rug"),
        (Call(look="footprints", where="lanes", months=0.1), (), "walked on early"),
    ],
)  # fmt: skip
def test_the_call_backs_of_the_trade_by_month_are_named_first(call, records, cause):
    """Common practice of the trade, no source: week one, months one to three, six, winter."""
    assert first(call, records) == cause


def test_what_rules_a_cause_out_is_told_with_it():
    _, out = ranked({one.kind: one for one in signs_of(Call(look="mat marks", rug="none"))})
    assert ("No rug, mat or rubber foot is there." in dict(out).values()) is True


def test_without_a_log_it_says_nothing_of_the_house_and_asks_on():
    job, plan = read_job(EXAMPLES / "quince-street" / "job.json"), day_of("quince-street")
    found = triage_of(job, plan, None, Call(look="haze"))
    assert found.records == ()
    assert {"when", "where", "cleaner", "room", "photo"} <= set(found.ask)
    assert "look" not in found.ask
    everything = triage_of(job, plan, None, replace(
        Call(look="haze", where="door", wet="no", cleaner="water", rug="none", months=1.0,
             room=job.floor.rooms[0].id, photo="yes", winter="no"),
    ))  # fmt: skip
    assert everything.ask == ()


def test_an_empty_log_gives_no_record_of_washing_or_sealing():
    job, plan = read_job(EXAMPLES / "quince-street" / "job.json"), day_of("quince-street")
    signs = RoomRecords(job, plan, Story(plan.starts_at), job.floor.rooms[0].id).signs()
    assert {one.kind for one in signs} <= {"damp", "copper"}


def test_what_the_caller_says_is_a_sign_for_each_answer():
    call = Call(look="haze", where="door", wet="no", cleaner="other", rug="none", winter="no",
                months=1.0)  # fmt: skip
    answered = [one.name for one in fields(Call) if getattr(call, one.name) not in ("", None)]
    assert len(signs_of(call)) == len(answered)
    assert signs_of(Call()) == ()
