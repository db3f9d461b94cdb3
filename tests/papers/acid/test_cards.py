"""The cards: readable at 2 m, one a page, whole in both languages, nothing filled in unasked."""

import re
from dataclasses import replace
from types import SimpleNamespace

import pytest
from tests.papers.acid.ground import (
    BLANK,
    DAY,
    FULL,
    PLAN,
    ground,
    letters_of,
    mixes,
    outside,
    overlapping,
    pages_of,
)  # fmt: skip

from farwall.facts.workers import Emergency
from farwall.job.acid_day.neutralising import neutralising_of
from farwall.papers.acid.cards.deck import deck_of
from farwall.papers.acid.cards.mishaps import dose_said
from farwall.papers.acid.cards.sheet import CAP_HEIGHT_EM, LEAST_PT, STEP_PT, TITLE_PT, cards_pdf
from farwall.papers.acid.cards.working import BATCHES_ON_A_CARD
from farwall.papers.acid.labels.sheet import labels_pdf
from farwall.papers.run_sheet.sheet import run_sheet_home
from farwall.web.pages.told import reads_english

MM = 72 / 25.4
FOR_THE_HAND_PT = 9.5


@pytest.fixture(scope="module")
def pdf():
    return cards_pdf(ground(), DAY)


@pytest.fixture(scope="module")
def crowded():
    """Long names, much acid, the longest words of a firm that the facts let through."""
    told = replace(FULL.emergency, address="Lot 7, " + "Juniper Row behind the tower, " * 6)
    job = replace(FULL, emergency=told, stains=(replace(FULL.stains[0], chromate=True),))
    return ground(job, mixes=mixes(5, acid_l=0.75), language="es")


def card_count(of):
    return len(deck_of(of, DAY))


def test_each_card_takes_one_page_in_each_language(pdf, crowded):
    assert len(pages_of(pdf)) == 2 * card_count(ground())
    assert len(pages_of(cards_pdf(crowded, DAY))) == 2 * card_count(crowded)


LONG = "Juniper Row behind the tower, third gate, "
AS_MUCH_AS_THE_FACTS_TAKE = Emergency(
    "0" * 40, "1" * 40, "2" * 40, (LONG * 9)[:160], "W" * 200, eyewash_at=(LONG * 9)[:120]
)
"""Every word as long as the facts allow, one of them without a space."""


@pytest.mark.parametrize("units", ["us", "metric"])
def test_the_longest_words_of_a_firm_take_no_page_more_and_stay_on_it(units):
    told = replace(FULL, emergency=AS_MUCH_AS_THE_FACTS_TAKE)
    coats = tuple(replace(one, stain="W" * 80) for one in PLAN.inputs.coats)
    plan = replace(PLAN, job="M" * 300, inputs=replace(PLAN.inputs, coats=coats))
    of = replace(ground(told, units=units, mixes=mixes(4, acid_l=0.5)))
    of = replace(of, plan=replace(plan, mixes=of.plan.mixes))
    pdf = cards_pdf(of, DAY)
    assert len(pages_of(pdf)) == 2 * card_count(of)
    labels = labels_pdf(of)
    assert [*outside(pdf), *outside(labels)] == []
    assert [*overlapping(pdf), *overlapping(labels)] == []


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("job", [BLANK, FULL])
def test_each_card_takes_one_page_whatever_was_told(units, job):
    of = ground(job, units=units)
    assert len(pages_of(cards_pdf(of, DAY))) == 2 * card_count(of)


def test_at_two_metres_everything_but_the_line_for_the_hand_is_read_z535_2_section_9_2_3(pdf):
    """1/300 of the distance is 6.67 mm for a message, 1/150 is 13.3 mm for what signals."""
    for page in letters_of(pdf):
        large = [one for one in page if one.size_pt > FOR_THE_HAND_PT and one.char.strip()]
        assert len(large) > 20
        assert min(one.size_pt for one in large) >= LEAST_PT - 0.01
        assert max(one.size_pt for one in large) >= TITLE_PT - 0.01
        capitals = [one.high_pt for one in large if one.char in "EHILTDPBF"]
        assert min(capitals) >= 2000 / 300 * MM * 0.99


def test_steps_stand_at_a_250th_of_the_distance_or_larger(crowded):
    for page, card in zip(
        letters_of(cards_pdf(crowded, DAY)), twice(deck_of(crowded, DAY)), strict=True
    ):
        numbered = {one.size_pt for one in page if one.char.isalpha()}
        if card.steps:
            assert (
                min(s for s in numbered if s > FOR_THE_HAND_PT)
                >= (LEAST_PT if card.note or card.table else STEP_PT) - 0.01
            )


def twice(cards):
    return [card for card in cards for _ in range(2)]


def test_a_capital_is_as_high_as_the_font_says_and_as_the_page_shows(pdf):
    """sCapHeight over unitsPerEm in the file; boxes on a page are rounded outward, by up to 2 %."""
    font = (run_sheet_home() / "fonts" / "OpenSans-Regular.ttf").read_bytes()
    tables = {font[k : k + 4]: int.from_bytes(font[k + 8 : k + 12]) for k in range(12, 300, 16)}
    high = int.from_bytes(font[tables[b"OS/2"] + 88 : tables[b"OS/2"] + 90])
    assert high / int.from_bytes(font[tables[b"head"] + 18 : tables[b"head"] + 20]) == CAP_HEIGHT_EM
    shares = [one.high_pt / one.size_pt for one in letters_of(pdf)[0] if one.char in "EH"]
    assert shares
    assert all(share == pytest.approx(CAP_HEIGHT_EM, abs=0.02) for share in shares)


@pytest.mark.parametrize(("first", "title"), [("en", "Call for help"), ("es", "Pida ayuda")])
def test_the_language_of_the_job_comes_first(first, title):
    pages = pages_of(cards_pdf(ground(language=first), DAY))
    assert title in pages[0]
    assert title not in pages[1]


def texts(card, language):
    rows = [name for one in card.batches for name, _ in one.lines]
    said = [
        card.title,
        *card.steps,
        card.boxed,
        card.note,
        card.never,
        *card.table,
        *rows,
        *(one.name for one in card.blanks),
        *(one.name for one in card.batches),
    ]
    return [one.by(language) for one in said if one is not None]


CARDS = deck_of(ground(mixes=mixes(5, acid_l=0.75)), DAY)


@pytest.mark.parametrize("card", CARDS, ids=[card.key for card in CARDS])
def test_a_card_is_whole_in_both_languages(card):
    english, spanish = texts(card, "en"), texts(card, "es")
    assert all(one.strip() for one in (*english, *spanish))
    assert [one for one in spanish if reads_english(one)] == []
    same = {e for e, s in zip(english, spanish, strict=True) if e == s}
    assert same <= {"10 s", "15 min", "Hospital"}
    for e, s in zip(english, spanish, strict=True):
        assert re.findall(r"\d+", e) == re.findall(r"\d+", s)


@pytest.mark.parametrize("card", CARDS, ids=[card.key for card in CARDS])
def test_words_are_few_and_a_respirator_is_never_called_a_mask(card):
    assert len(card.steps) <= 5
    for language in ("en", "es"):
        said = " ".join(texts(card, language)).lower()
        assert not re.search(r"\bmasks?\b|máscara|mascarilla|cubrebocas", said)
        assert all(len(one.by(language)) <= 62 for one in card.steps)


def test_nothing_is_filled_in_that_nobody_told():
    said = " ".join(pages_of(cards_pdf(ground(BLANK), DAY)))
    assert not re.search(r"\b911\b|1.800|\b\d{3}[ -]\d{4}\b", said)


def test_what_the_firm_told_stands_on_the_cards(pdf):
    pages = pages_of(pdf)
    for told in ("555 0142", "555 0199", "555 0177", "Juniper Row", "Heron Street", "laundry door"):
        assert told in pages[0]
        assert told in pages[1]
    assert "Call 555 0142" in pages[2]


def test_the_same_job_gives_the_same_bytes(pdf):
    assert cards_pdf(ground(), DAY) == pdf


def card(key, of=None):
    return next(one for one in deck_of(of or ground(), DAY) if one.key == key)


def test_nothing_is_neutralised_on_a_body_and_nothing_is_hosed():
    assert "Never neutralise on skin or in eyes" in card("eyes").never.en
    assert "15 minutes" in card("eyes").steps[0].en
    drip = " ".join(texts(card("drip-outside"), "en"))
    assert [one for one in ("No hose", "no source", "Fumes, and scars") if one not in drip] == []
    assert "flood" not in drip.lower()


def test_water_comes_before_stain_and_stain_before_acid():
    batch = card("batches-1", ground(mixes=mixes(1, acid_l=0.5))).batches[0]
    assert [name.en for name, _ in batch.lines] == ["Water", "Stain", "Muriatic"]
    steps = [one.en for one in card("mixing").steps]
    assert next(k for k, s in enumerate(steps) if "Water in" in s) < next(
        k for k, s in enumerate(steps) if s.startswith("Stain into the water")
    )


@pytest.mark.parametrize("count", [0, 1, 2, 3, 7])
def test_every_batch_stands_on_a_card_once(count):
    cards = [one for one in deck_of(ground(mixes=mixes(count)), DAY) if one.key.startswith("batch")]
    assert sum(len(one.batches) for one in cards) == count
    assert all(len(one.batches) <= BATCHES_ON_A_CARD for one in cards)
    names = [one.name.en for each in cards for one in each.batches]
    assert len(set(names)) == count


@pytest.mark.parametrize(("acid", "word"), [(0.5, "Added acid"), (0.0, "Stain into water")])
def test_added_acid_is_warned_of_on_its_card(acid, word):
    assert word in card("batches-1", ground(mixes=mixes(1, acid_l=acid))).never.en


@pytest.mark.parametrize(
    ("chromate", "note", "never"),
    [(True, None, "hygienist first"), (None, "nobody told", "No fit"), (False, None, "No fit")],
)
def test_chromate_changes_what_is_worn(chromate, note, never):
    job = replace(FULL, stains=(replace(FULL.stains[0], chromate=chromate),))
    wear = card("wear-spray", ground(job))
    assert (note in wear.note.en) if note else wear.note is None
    assert never in wear.never.en


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("job", [BLANK, FULL])
def test_no_letter_lies_on_another(units, job):
    assert overlapping(cards_pdf(ground(job, units=units, mixes=mixes(3, acid_l=0.75)), DAY)) == []


@pytest.mark.parametrize("units", ["us", "metric"])
def test_batches_with_acid_keep_the_size_of_steps(units):
    of = ground(units=units, mixes=mixes(5, acid_l=0.75))
    pdf = cards_pdf(of, DAY)
    keys = [one.key for one in twice(deck_of(of, DAY))]
    pages = [p for p, key in zip(letters_of(pdf), keys, strict=True) if key.startswith("batch")]
    assert len(pages) == 6
    for page in pages:
        assert min(one.size_pt for one in page if one.char.isdigit() and one.size_pt > 9.5) >= (
            LEAST_PT - 0.01
        )
        assert max(one.size_pt for one in page if one.char.isdigit()) >= STEP_PT - 0.01


def test_the_dose_of_the_trade_by_hand():
    """1 lb for 1.7 L: 3.785 / 1.7 = 2.227 lb a gallon, 0.4536 / 1.7 = 0.267 kg a litre, upward."""
    assert "1 gal: 2.3 lb" in card("spill").boxed.en
    assert "1 L: 0.3 kg" in card("spill", ground(units="metric")).boxed.en
    assert "1 gal: 2.0 lb" in dose_said(2.0 * 0.45359237 / 3.785411784, "us", of_this_stain=True).en


def day(*stains):
    """An acid day that reckoned these stains: id, acid and salts in mol/L."""
    rows = tuple(SimpleNamespace(stain=s, acid_high=a, salts_high=b) for s, a, b in stains)
    return SimpleNamespace(neutralising=SimpleNamespace(stains=rows))


def test_the_dose_of_this_job_is_that_of_its_worst_told_stain_by_hand():
    """(3.0 + 2.0) mol/L x 84.0 g/mol is 0.42 kg/L: 3.505 lb a gallon, upward 3.6."""
    first, second = FULL.stains[0].id, FULL.stains[1].id
    cards = deck_of(ground(), day((first, 3.0, 2.0), (second, 1.0, 0.0), ("nobody's", 9.0, 9.0)))
    said = next(one for one in cards if one.key == "spill").boxed
    assert said.en == "Bicarbonate for this job's stain, 1 gal: 3.6 lb or more"
    assert said.es == "Bicarbonato para tinte de esta obra, 1 gal: 3.6 lb o más"


def test_a_stain_of_untold_strength_leaves_the_dose_of_the_trade():
    job = replace(FULL, stains=(replace(FULL.stains[0], hcl_percent_high=None),))
    cards = deck_of(ground(job), day((FULL.stains[0].id, 9.0, 9.0)))
    assert "10 % stain" in next(one for one in cards if one.key == "spill").boxed.en


@pytest.mark.parametrize(("minutes", "said"), [(None, "alone."), (5.0, "every 5 min.")])
def test_the_minutes_of_looking_in_stand_where_they_were_told(minutes, said):
    job = replace(FULL, emergency=replace(FULL.emergency, look_in_min=minutes))
    assert card("call", ground(job)).never.en.endswith(said)


def test_the_acid_day_itself_is_understood():
    of = ground()
    real = SimpleNamespace(neutralising=neutralising_of(of))
    worst = max(one.acid_high + one.salts_high for one in real.neutralising.stains)
    said = next(one for one in deck_of(of, real) if one.key == "spill").boxed.en
    figure = float(re.search(r"gal: ([\d.]+) lb", said)[1])
    assert "this job's stain" in said
    assert worst * 84.006 / 1000 * 3.785411784 / 0.45359237 <= figure < 100
    assert figure - worst * 84.006 / 1000 * 3.785411784 / 0.45359237 < 0.11
