"""What is wrong with an entry of the log, in Spanish: whole, for each word and each of its keys."""

import pytest
from tests.midday import day_of

from farwall.facts.log_words import WORDS
from farwall.phrasebook import in_spanish
from farwall.readers.log_values import Ids, checked

WRONG = ("x", "", "x" * 9999, -1e9, 4.5, True, [], [3])


@pytest.mark.parametrize("word", WORDS.values(), ids=WORDS)
def test_what_is_wrong_with_a_value_is_said_whole_in_spanish(word):
    """What is missing is told by its blank on the page (`web.pages.log_form.slips_of`)."""
    ids = Ids.of(day_of("fennel-court"))
    told = [
        (mistake.what, mistake.remedy)
        for one in word.carried
        for value in WRONG
        for mistake in checked(word, {one.key: value}, ids, ("entry",))[1]
        if "is missing" not in mistake.what
    ]
    assert told or not word.carried
    english = [part for pair in told for part in pair if part and in_spanish(part) is None]
    assert english == []
