"""Entries in words: in English the very words of `farwall log`, in Spanish none is left out."""

import re
from dataclasses import replace

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.log import Entry, Kept
from farwall.facts.log_words import WORDS
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.job.story.noun import Happened
from farwall.job.story.say import told, what_of
from farwall.web.pages.log_form import GROUPS
from farwall.web.pages.log_words import (
    Names,
    choice_told,
    entry_told,
    field_told,
    minute_told,
    short_name,
    sums_told,
)
from farwall.web.words import LANGUAGE, words

START = "2026-06-08T08:00:00+00:00"
VALUES = {
    "litres": 11.4, "kg": 7.25, "minutes": 42.0, "hours": 3.5, "celsius": 19.4, "percent": 48.0,
    "m_s": 0.3,
    "kg_m2_h": 0.25,
    "count": 2, "ph": 7.5, "field": "a.1", "band": "a.1.2", "coat": "a", "room": "hall",
    "entry": "01900000-0000-7000-8000-00000000abcd", "text": "by the door", "yes": True,
    "metres": 3.0, "seconds": 8, "l_min": 1.6, "m2": 109.6, "amount": "1290.50",
    "lightness": 41.5, "colour_axis": 12.25, "de": 0.8, "ml": 180, "spot_m2": 0.37, "place_m": 2.5,
}  # fmt: skip


@pytest.fixture(scope="module")
def plan():
    return plan_job(job(TWO_ROOMS, id="two", starts_at=START))


def about(word):
    return {
        one.key: one.choices[0] if one.kind == "choice" else VALUES[one.kind]
        for one in WORDS[word].carried
        if one.kind != "hash"
    }


@pytest.mark.parametrize("word", list(WORDS))
def test_an_entry_says_what_the_command_says(plan, word):
    room = plan.inputs.floor.rooms[0].id
    told_ = about(word)
    told_ |= {"room": room} if "room" in told_ else {}
    for carried in (told_, {}):
        one = Happened("id", word, 3.0, carried)
        for units in ("us", "metric"):
            said = what_of(plan, one, us=units == "us")
            assert entry_told(one, Names.of(plan), units) == said


def test_a_word_of_a_later_version_is_told_as_it_stands(plan):
    one = Happened("id", "no-such-word", 3.0, {"odd_key": 3})
    assert entry_told(one, Names.of(plan), "us") == what_of(plan, one, us=True)


def test_what_it_comes_to_is_what_the_command_comes_to(plan):
    field = plan.fields[0]
    said = [
        ("mixed", {"coat": field.coat, "litres": 6.0}),
        ("filled", {"tank_l": 4.0, "tub_l": 2.0}),
        ("field-done", {"field": field.id, "tank_l": 1.0, "tub_l": 2.0}),
        ("hours", {"task": "coat", "hours": 2.5}),
    ]
    kept = [
        Kept(Entry(f"id-{n}", "two", word, f"2026-06-08T08:{10 + n}:00+00:00", number=n,
                   device="d", about=carried), n, START, 0.0)
        for n, (word, carried) in enumerate(said, 1)
    ]  # fmt: skip
    found = story(plan, kept)
    for units, hour in (("us", r" used by \d+:\d\d am:?"), ("metric", r" used by \d+:\d\d[:.]")):
        lines = told(plan, found, us=units == "us").splitlines()
        sums = list(sums_told(plan, found, units))
        assert len(sums) >= 2
        assert [one for one in sums if one not in lines] == []
        assert re.search(hour, sums[0])


def test_the_form_offers_every_word_of_the_log_once():
    offered = [word for _, names in GROUPS for word in names]
    assert sorted(offered) == sorted(WORDS)


def test_what_is_asked_for_in_english_is_what_the_table_of_words_says():
    for word in WORDS.values():
        for one in word.carried:
            assert field_told(word.name, one) == one.what
            assert [choice_told(each) for each in one.choices] == list(one.choices)


def test_in_spanish_nothing_of_the_log_stays_english():
    token = LANGUAGE.set("es")
    try:
        english, spanish = words("en"), words("es")
        own = [key for key in english if key.startswith("log-")]
        assert [key for key in own if key not in spanish] == []
        assert entry_told(Happened("i", "dry", 1, {"clock": "recoat"}), Names({}), "us") == (
            "seco: espera otra mano"
        )
    finally:
        LANGUAGE.reset(token)


def test_a_clean_rag_is_no_task_of_cleaning_in_spanish():
    token = LANGUAGE.set("es")
    try:
        assert (choice_told("clean", "rag"), choice_told("clean", "task")) == ("limpio", "limpiar")
    finally:
        LANGUAGE.reset(token)


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_word_has_a_name_for_the_tape(language):
    """A word without a short name of its own broke the page of its house."""
    before = LANGUAGE.set(language)
    try:
        names = [short_name(one) for one in WORDS]
    finally:
        LANGUAGE.reset(before)
    assert all(names)


def test_a_minute_is_told_in_the_manner_of_the_house_and_the_language(plan):
    """By hand: the plan begins at 8:00; 330 min later it is half past one."""
    begun = replace(plan, starts_at="2026-06-08T08:00:00+00:00")
    assert minute_told(begun, 330, "us") == "1:30 pm"
    assert minute_told(begun, 330, "metric") == "13:30"
    token = LANGUAGE.set("es")
    try:
        assert minute_told(begun, 330, "us") == "1:30 p. m."
    finally:
        LANGUAGE.reset(token)
