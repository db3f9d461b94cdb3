"""What an import found: every code of the readers has its offer, or can only be seen."""

from __future__ import annotations

import ast
import re
from pathlib import Path

from tests.strategies.jobs import box

from farwall import readers
from farwall.facts.reading import Note
from farwall.job.repairs import ACTS, SEEN_ONLY
from farwall.web.pages.repairs import OFFERS, answered, offers_told, reading_document
from farwall.web.words import words

SOURCE = Path(readers.__file__).parents[1]
"""Where notes are made: readers, and the home of what goes out and comes back."""


def notes_in(path):
    """The first argument of every `Note(…)` in a file, as the source has it."""
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Call) and ast.unparse(node.func) in {"Note", "reading.Note"}:
            yield node.args[0] if node.args else None


def codes():
    """Every code of a note in the readers' source, in whatever folder; told codes are found too."""
    found = set()
    for path in [*SOURCE.glob("readers/**/*.py"), *SOURCE.glob("job/*.py")]:
        for code in notes_in(path):
            if isinstance(code, ast.Constant):
                found.add(code.value)
            else:  # passed on: the codes stand where the maker of the note is called
                calls = re.findall(
                    r'(?:[nN]otes?|\.drop)\(\s*"([a-z]+(?:-[a-z]+)*)"', path.read_text("utf-8")
                )
                assert calls, f"{path}: the code of this note cannot be found"
                found.update(calls)
    return found


def test_every_code_of_the_readers_has_its_offer():
    found = codes()
    assert len(found) > 20
    assert found - set(OFFERS) - SEEN_ONLY == set()
    assert set(OFFERS) - found == set()
    assert not SEEN_ONLY & set(OFFERS)


def test_every_offer_has_acts_and_every_act_an_offer():
    assert set(OFFERS) == set(ACTS)
    for code, offer in OFFERS.items():
        assert offer.yes or offer.no, code
        assert not ACTS[code].no or offer.no, code


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


def test_a_slab_that_was_left_out_is_handed_on_with_its_shape():
    slab = box(20.0, 0.0, 2.0, 3.0)
    notes = {"left": [Note("outside-slab", "Porch (6.0 m²) …", (21.0, 1.0), slab)]}
    (offer,) = offers_told(reading_document(notes, unit="in", facts=1))
    assert offer["no_act"] == "room-here"
    assert offer["shape"]["coordinates"][0] == [list(p) for p in slab.coordinates[0]]
