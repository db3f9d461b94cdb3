"""What a sheet names: told, or listed; a list without it proves nothing."""

import pytest

from farwall.facts.contents import Content
from farwall.facts.job import Stain


@pytest.mark.parametrize(
    ("told", "substance", "holds"),
    [
        (None, "iron(II) chloride", None),
        (False, "iron(II) chloride", False),
        (None, "sodium dichromate", True),
        (False, "potassium dichromate", True),
        (True, "other", True),
        (None, "chromium(III) chloride", None),
    ],
)
def test_chromate(told, substance, holds):
    assert Stain("s", chromate=told, contents=(Content(substance),)).names_chromate is holds


@pytest.mark.parametrize("substance", ["nitric acid", "hydrogen peroxide", "other oxidiser"])
def test_oxidisers(substance):
    assert Stain("s", contents=(Content(substance),)).names_oxidiser is True
    assert Stain("s", contents=(Content(substance),)).names_chromate is None


def test_chromate_is_told_apart_from_other_oxidisers():
    assert Stain("s", contents=(Content("sodium dichromate"),)).names_oxidiser is None
