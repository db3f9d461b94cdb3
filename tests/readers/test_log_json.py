"""Entries of the log from JSON and words: in SI, every mistake at once, written and read back."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.midday import day_of

from farwall.errors import Refused
from farwall.facts.log import Entry
from farwall.facts.log_words import WORDS
from farwall.readers.log_json import (
    Head,
    entries_from,
    entries_from_text,
    entry_from_words,
    entry_to_line,
)

HEAD = Head("id-1", "quince", "2026-05-14T09:12:00-06:00", "Ada", "desk", 3)


@pytest.fixture(scope="module")
def plan():
    return day_of("quince-street")


def refused(call, *args):
    with pytest.raises(Refused) as refusal:
        call(*args)
    return [str(one) for one in refusal.value.mistakes]


@pytest.mark.parametrize("word", ["band-done", "band_done", "band done", "Band Done"])
def test_words_are_read_with_gallons_turned_to_litres(word, plan):
    entry = entry_from_words(word, ["band=first.6.4", "tank_gal=1.5"], HEAD, plan)
    assert entry.word == "band-done"
    assert entry.about == {"band": "first.6.4", "tank_l": pytest.approx(5.67811767)}
    assert (entry.id, entry.who, entry.number) == ("id-1", "Ada", 3)


def test_fahrenheit_miles_and_gallons_have_twins_that_are_exact():
    reading = entry_from_words("reading", ["slab_f=77", "air_speed_mph=10"], HEAD)
    assert reading.about == {"slab_c": 25.0, "air_speed_m_s": 4.4704}
    mixed = entry_from_words("mixed", ["coat=first", "gal=2", "added=muriatic-acid"], HEAD)
    assert mixed.about["litres"] == pytest.approx(7.57082357)
    assert mixed.about["added"] == "muriatic acid"


def test_every_mistake_comes_at_once_each_with_what_to_do(plan):
    told = ["band=first.6.44", "tank_gal=9000", "tnk=3", "loose", "tank_gal=2"]
    found = refused(entry_from_words, "band-done", told, HEAD, plan)
    text = "\n".join(found)
    assert len(found) == 5
    assert "the plan has no band 1.6.44" in text
    assert "Did you mean 1.6.4?" in text
    assert "9000 gal is out of range" in text
    assert "`tnk` is not known here. Did you mean `tank_l`?" in text
    assert "loose: this is no key=value" in text
    assert "tank_gal: it is told twice" in text


def test_what_must_be_carried_is_asked_for_with_an_example_of_the_plan(plan):
    assert refused(entry_from_words, "room-closed", [], HEAD, plan) == [
        "room-closed: `room` is missing: the room. Such as room=bed-1."
    ]


def test_litres_and_gallons_are_not_both_taken():
    found = refused(entry_from_words, "filled", ["litres=3", "gal=1"], HEAD)
    assert found == ["`litres` and `gal` are both given. Keep one of the two."]


def test_an_unknown_word_names_the_nearest():
    found = refused(entry_from_words, "band-dun", ["band=x"], HEAD)
    assert found == ["band-dun: this is no word of the log. Did you mean `band-done`?"]


def test_json_may_be_one_entry_a_list_or_lines():
    one = {"id": "a", "job": "j", "word": "note", "at": HEAD.at, "about": {"text": "hello"}}
    two = {**one, "id": "b"}
    assert [e.id for e in entries_from_text(json.dumps(one))] == ["a"]
    assert [e.id for e in entries_from_text(json.dumps([one, two], indent=1))] == ["a", "b"]
    lines = json.dumps(one) + "\n" + json.dumps(two) + "\n"
    assert [e.id for e in entries_from_text(lines)] == ["a", "b"]


def test_mistakes_in_json_name_their_place():
    good = {"id": "a", "job": "j", "word": "note", "at": HEAD.at, "about": {"text": "hello"}}
    bad = {"id": "", "job": "j", "word": "filed", "at": "9:12", "nummer": 1, "number": -1}
    text = "\n".join(refused(entries_from, [good, bad, 7]))
    for told in (
        "[1]: `nummer` is not a key here. Did you mean `number`?",
        "[1].id: this text is empty",
        '[1].at: "9:12" is no moment',
        "[1].number: a whole number from 0 on",
        "[1].word: this is no word of the log. Did you mean `filled`?",
        "[2]: an entry is an object, not 7",
    ):
        assert told in text


def test_mistakes_in_lines_name_the_line():
    good = json.dumps({"id": "a", "job": "j", "word": "handed-over", "at": HEAD.at})
    found = refused(entries_from_text, f"{good}\n{{not json\n{good}")
    assert any(one.startswith("line 2") for one in found)


@pytest.mark.parametrize("value", [True, "5", None, [1], float("nan"), -1])
def test_litres_are_a_number_from_nothing_on(value):
    raw = {"id": "a", "job": "j", "word": "filled", "at": HEAD.at, "about": {"litres": value}}
    assert len(refused(entries_from, raw)) == 1


@pytest.mark.parametrize(
    ("typed", "kept"),
    [("1290", "1290"), ("$1,290.50", "1290.50"), ("12,5", "12.5"), ("-200.00", "-200.00")],
)
def test_an_amount_is_kept_as_text_in_plain_digits(typed, kept):
    assert entry_from_words("paid", [f"amount={typed}"], HEAD).about == {"amount": kept}


@pytest.mark.parametrize("value", [12.5, 3, "", "12.505", "1e3", "ten", "1,29", True, "١٢"])
def test_what_is_no_amount_as_text_is_refused(value):
    raw = {"id": "a", "job": "j", "word": "paid", "at": HEAD.at, "about": {"amount": value}}
    assert len(refused(entries_from, raw)) == 1


def test_square_feet_are_the_twin_of_square_metres():
    told = ["amount=6100", "agreed_by=Ada", "area_ft2=1180"]
    assert entry_from_words("accepted", told, HEAD).about["area_m2"] == pytest.approx(109.6256)


def _value(one):
    kinds = {
        "yes": st.booleans(), "count": st.integers(0, 1000), "rooms": st.just(["bath"]),
        "hash": st.just("0" * 64), "choice": st.sampled_from(one.choices or ("-",)),
        "celsius": st.floats(-30, 70), "percent": st.floats(0, 100), "ph": st.floats(0, 14),
        "m_s": st.floats(0, 40), "kg_m2_h": st.floats(0, 5), "m2_per_l": st.floats(0.1, 200),
        "m2": st.floats(0.2, 500), "l_min": st.floats(0, 200), "lightness": st.floats(0, 100),
        "colour_axis": st.floats(-150, 150), "de": st.floats(0, 100), "ml": st.floats(1, 20_000),
        "spot_m2": st.floats(0.01, 20), "place_m": st.floats(-1000, 1000),
        "amount": st.integers(-(10**9), 10**9).map(lambda n: f"{n // 100}.{n % 100:02d}"),
    }  # fmt: skip
    texts = {"field", "band", "coat", "room", "entry", "text"}
    usual = st.text("abcäß .-", min_size=1).filter(str.strip)
    return usual if one.kind in texts else kinds.get(one.kind, st.floats(0, 500))


@st.composite
def any_entry(draw):
    word = WORDS[draw(st.sampled_from(sorted(WORDS)))]
    keys = [*word.must, *[one for one in word.may if draw(st.booleans())]]
    about = {one.key: draw(_value(one)) for one in keys}
    about = {k: float(f"{v:.9g}") if isinstance(v, float) else v for k, v in about.items()}
    return Entry("id", "job", word.name, HEAD.at, number=draw(st.integers(0, 99)), about=about)


@given(any_entry())
def test_what_is_written_reads_back_for_every_word_and_all_it_carries(entry):
    assert entries_from_text(entry_to_line(entry)) == (entry,)


@given(st.recursive(st.none() | st.booleans() | st.floats() | st.text(max_size=5),
                    lambda x: st.lists(x, max_size=3)
                    | st.dictionaries(st.sampled_from(["id", "job", "word", "at", "about", "x"]),
                                      x, max_size=5)))  # fmt: skip
def test_whatever_is_handed_over_is_an_entry_or_a_refusal(data):
    try:
        found = entries_from(data)
    except Refused:
        return
    assert all(isinstance(one, Entry) and one.word in WORDS for one in found)
