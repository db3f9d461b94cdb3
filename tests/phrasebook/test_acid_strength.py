"""What is said of strength is said whole in Spanish too."""

import pytest

from farwall.job.acid_day.strength import words
from farwall.job.cautions import OXIDISER
from farwall.mix.batch import OXIDISER_UNKNOWN, no_acid_with_oxidiser
from farwall.phrasebook import in_spanish

NAMES = frozenset({"wet sand", "coat-1"})
VALUES = {"stain": "wet sand", "coat": "coat-1", "percent": "60", "low": "1.05", "high": "1.33",
          "celsius": "44"}  # fmt: skip
SAID = [getattr(words, name) for name in dir(words) if name.isupper()]


@pytest.mark.parametrize("text", SAID)
def test_each_word_of_strength(text):
    spanish = in_spanish(text.format(**VALUES), NAMES)
    assert spanish is not None
    for value in NAMES:
        assert (value in spanish) == (value in text.format(**VALUES))


@pytest.mark.parametrize("text", [OXIDISER, OXIDISER_UNKNOWN, no_acid_with_oxidiser("").what])
def test_what_is_said_of_oxidisers(text):
    spanish = in_spanish(text, frozenset())
    assert spanish is not None
    assert "cloro" in spanish
