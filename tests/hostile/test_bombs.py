"""Every hostile file that has a name gets a calm sentence from a process that was shut in."""

import re

import pytest
from tests.hostile.bombs import Bomb, bombs

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_content

LIGHT = [bomb for bomb in bombs() if not bomb.heavy]
HEAVY = [bomb for bomb in bombs() if bomb.heavy]


def answer_to(bomb: Bomb) -> Reading | Refused:
    try:
        return read_content(bomb.make(), name="bomb")
    except Refused as refusal:
        return refusal


def said(answer: Reading | Refused) -> str:
    if isinstance(answer, Refused):
        return " ".join(map(str, answer.mistakes))
    notes = (*answer.mended, *answer.left, *answer.asks)
    return " ".join(f"{note.code}: {note.what}" for note in notes)


def insist_calm(bomb: Bomb, *, fell: bool = False) -> None:
    answer = answer_to(bomb)
    words = said(answer)
    assert re.search(bomb.words, words), words
    assert not re.search(r"Traceback|Error\b|Exception|passwd|root:", words)
    if not fell:
        assert "broke off" not in words
    if isinstance(answer, Refused):
        assert all(mistake.remedy for mistake in answer.mistakes)


@pytest.mark.parametrize("bomb", LIGHT, ids=lambda bomb: bomb.name)
def test_a_hostile_file_gets_a_calm_sentence(bomb: Bomb) -> None:
    insist_calm(bomb)


@pytest.mark.slow
@pytest.mark.parametrize("bomb", HEAVY, ids=lambda bomb: bomb.name)
def test_a_hostile_file_that_costs_much_gets_one_too(bomb: Bomb) -> None:
    """Here a library may end its process for want of memory: then this is what is told."""
    insist_calm(bomb, fell=True)


def test_the_names_are_all_different() -> None:
    names = [bomb.name for bomb in bombs()]
    assert len(set(names)) == len(names) >= 30
