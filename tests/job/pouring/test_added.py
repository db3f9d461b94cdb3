"""What the log says went into a tub, before the gate."""

from dataclasses import replace

import pytest
from tests.job.pouring.test_listed import SAND

from farwall.facts.job import Coat, Stain
from farwall.job.pouring.added import added_to_tub, chief_reason

READ = Stain("sand", chromate=False, oxidiser=False)
BLUE = Stain("blue", chromate=True)


@pytest.mark.parametrize("added", ["bleach", "ammonia", "another stain", "unknown"])
@pytest.mark.parametrize("stain", [READ, Stain("sand"), replace(BLUE, id="sand")])
def test_what_has_no_place_in_a_tub_is_refused_whatever_the_stain(added, stain):
    verdict = added_to_tub(replace(SAND, stains=(stain,)), added)
    assert verdict.word == "refused"
    assert chief_reason(verdict).what


@pytest.mark.parametrize(
    ("stain", "word"),
    [
        (READ, "allowed with warning"),
        (replace(READ, chromate=True), "refused"),
        (replace(READ, oxidiser=True), "refused"),
        (replace(READ, chromate=None), "refused"),
        (replace(READ, oxidiser=None), "refused"),
    ],
)
def test_added_acid_needs_both_answers_to_be_no(stain, word):
    assert added_to_tub(replace(SAND, stains=(stain,)), "muriatic acid").word == word


def test_the_coat_says_which_stain_is_meant_and_without_it_the_strictest_counts():
    job = replace(
        SAND, stains=(READ, BLUE), coats=(Coat("one", "sand", "1:1"), Coat("two", "blue", "1:2"))
    )
    assert added_to_tub(job, "muriatic acid", coat="one").word == "allowed with warning"
    assert added_to_tub(job, "muriatic acid", coat="two").word == "refused"
    assert added_to_tub(job, "muriatic acid").word == "refused"
