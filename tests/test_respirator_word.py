"""A respirator is called so: a mask is what is put on a wall."""

import re
from pathlib import Path

import pytest

from farwall.job.cautions import ALWAYS
from farwall.phrasebook.phrases import phrases
from farwall.web.words import words

ROOT = Path(__file__).resolve().parents[1]
NOUN = re.compile(
    r"\b(the|a|an|half|full|dust|face|gas) masks?\b|mascarilla|máscara", re.IGNORECASE
)


def test_no_screen_calls_a_respirator_a_mask():
    texts = [text for tongue in ("en", "es") for text in words(tongue).values()]
    texts += [text for pair in phrases().items() for text in pair]
    assert len(texts) > 3000
    assert [text for text in texts if NOUN.search(text)] == []


@pytest.mark.parametrize("page", sorted((ROOT / "docs").glob("acid*.md")), ids=lambda p: p.name)
def test_no_page_on_acid_calls_a_respirator_a_mask(page):
    assert not NOUN.search(page.read_text(encoding="utf-8"))


def test_the_standing_caution_names_fit_test_and_cartridges():
    assert any("a fit-tested respirator with acid-gas and P100 cartridges" in one for one in ALWAYS)
