"""The book itself: places on both sides, one word for one thing, cautions whole."""

import re
from pathlib import Path

import pytest

from farwall.job import cautions
from farwall.job.seal_day import cautions as seal_cautions
from farwall.papers.run_sheet import lists
from farwall.papers.run_sheet.in_language import template_words
from farwall.phrasebook import in_spanish
from farwall.phrasebook.matching import PLACE
from farwall.phrasebook.phrases import phrases
from farwall.phrasebook.places import HOLE

BOOK = phrases()
GLOSSARY = Path(__file__).parents[2] / "docs" / "glossary.es.md"


def odd(english):
    """What a pair has on one side alone: places, numbers, words between backquotes."""
    spanish = BOOK[english]
    looks = (PLACE.findall, numbers, re.compile(r"`[^`]*`").findall)
    return [look for look in looks if sorted(look(spanish)) != sorted(look(english))]


def test_the_spanish_has_the_places_numbers_and_words_of_files_of_the_english():
    assert len(BOOK) > 1500
    assert [one for one in BOOK if odd(one) or not BOOK[one].strip()] == []


def numbers(text):
    return sorted(re.findall(r"\d+(?:[.,:]\d+)*", PLACE.sub("", text)))


def rows():
    """English word, Spanish forms, sentences of the book in which another word is meant."""
    for line in GLOSSARY.read_text(encoding="utf-8").splitlines():
        cells = [cell.strip() for cell in line.strip("|").split("|")]
        if line.startswith("|") and len(cells) == 4 and cells[3].strip("-") not in {"", "stem"}:
            yield cells[0], cells[1], cells[3]


ANOTHER_SENSE = re.compile(
    r"room-free|[Mm]ake room|no room|septic tank|[Mm]ix ticket|fly ash|in the mix gives|"
    r"sealer\.type|patch that looks|sun patch|unstained patch|"
    r"patch that was never stained|tube with narrow bands"
)
"""Where an English word of the trade is used in another sense than the trade's."""


@pytest.mark.parametrize(("english", "spanish", "stem"), list(rows()))
def test_a_word_of_the_trade_has_its_one_spanish_word(english, spanish, stem):
    assert stem in spanish
    word = re.compile(rf"\b{re.escape(english)}s?\b", re.IGNORECASE)
    meant = [one for one in BOOK if " " in english or not ANOTHER_SENSE.search(one)]
    held = [one for one in meant if word.search(one)]
    assert held
    assert [one for one in held if stem.lower() not in BOOK[one].lower()] == []


SAFETY = [
    *cautions.ALWAYS, cautions.CHROMATE, cautions.UNKNOWN_SHEET, cautions.ADDED_ACID,
    cautions.SPARE, cautions.NO_SPARE, *seal_cautions.ALWAYS, *seal_cautions.SOLVENT,
    seal_cautions.UNKNOWN, seal_cautions.TOO_MUCH,
    *(one.format(maybe=maybe) for one in seal_cautions.SENSITISERS.values()
      for maybe in ("", seal_cautions._MAYBE)),
    *lists.EVENING, *lists.morning("us"), *lists.morning("metric"), *lists.CARRY,
    lists.DRIP_INSIDE, lists.DRIP_OUTSIDE, lists.MID_FIELD, lists.SUN, *lists.EMERGENCY,
]  # fmt: skip


@pytest.mark.parametrize("caution", SAFETY)
def test_whatever_can_hurt_is_said_whole(caution):
    assert in_spanish(re.sub(r"\{\w+\}", HOLE, caution)) is not None


def test_acid_goes_into_the_water_in_spanish_too():
    said = in_spanish(cautions.ALWAYS[1])
    assert said.startswith("El ácido se echa al agua, nunca el agua al ácido.")
    assert "Nunca con cloro" in said
    assert in_spanish(lists.morning("us")[5]).startswith("Primero el agua en la tina")


def test_every_word_of_the_templates_is_in_the_book():
    assert len(template_words()) > 30
    assert [one for one in template_words() if in_spanish(one) is None] == []


def test_the_log_has_one_word_in_spanish_and_other_is_nothing_unknown():
    """Hours of another kind, and what a caller names, are no unknown material."""
    assert in_spanish("other") == "otra cosa"
    closed = (
        "Closed with the log, this job teaches the next ones: coverage, pace, waits, hours "
        "(farwall learn)."
    )
    for said in ("No log was given: what it took is to be written in by hand.", closed):
        assert "bitácora" in (in_spanish(said) or "")
