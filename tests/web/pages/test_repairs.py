"""What an import found: every code of the readers has its offer, or can only be seen."""

from __future__ import annotations

import re
from importlib.resources import files

from farwall.facts.reading import Note
from farwall.web.pages.repairs import OFFERS, answered, offers_told, reading_document
from farwall.web.words import words

SEEN_ONLY = {"recovered", "doubles-dropped", "origin-moved", "not-read", "degrees-to-metres"}


def codes():
    """Every code of a note in the readers' source."""
    folder = files("farwall.readers")
    texts = [one.read_text() for one in folder.iterdir() if one.name.endswith(".py")]
    texts += [one.read_text() for one in (folder / "dxf").iterdir() if one.name.endswith(".py")]
    return {code for text in texts for code in re.findall(r'[nN]ote\(\s*"([a-z-]+)"', text)}


def test_every_code_of_the_readers_has_its_offer():
    found = codes()
    assert len(found) > 20
    assert found - set(OFFERS) - SEEN_ONLY == set()
    assert set(OFFERS) - found == set()


def test_the_words_of_every_offer_are_there():
    keys = {key for offer in OFFERS.values() for key in (offer.yes, offer.no) if key}
    assert keys <= set(words("en"))


def test_an_answer_that_is_none_is_passed_over():
    notes = {"left": [Note("no-leaf", "The opening has no leaf.", (1.0, 2.0))]}
    document = reading_document(notes, unit="in", facts=3)
    assert offers_told(document)[0]["at"] == [1.0, 2.0]
    for told in (None, [], {"0": "maybe"}, {"1": "yes"}, {"0": {}}):
        assert answered(document, told)["answers"] == {}
    assert answered(document, {"0": "no"})["answers"] == {"0": "no"}
    assert offers_told(None) == []
