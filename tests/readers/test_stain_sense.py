"""A stain's sheet that contradicts itself, and acid that it forbids."""

import pytest

from farwall.readers.stain_sense import stain_mistakes


def told(*contents, acid=None, **stain):
    listed = [{"substance": name, **shares} for name, shares in contents]
    coats = [{"id": "c", "stain": "s", "added_acid_fl_oz_per_gal": acid}]
    raw = {"stains": [{"id": "s", "contents": listed, **stain}], "coats": coats}
    return [(one.where, one.what) for one in stain_mistakes(raw)]


def test_a_sheet_in_order_is_left_alone():
    assert told(("iron(II) chloride", {"mass_percent_low": 5, "mass_percent_high": 30}),
                acid=8, chromate=False, oxidiser=False, hcl_percent_low=10) == []  # fmt: skip


@pytest.mark.parametrize(
    ("stain", "substance", "words"),
    [
        ({"chromate": True}, "other", "names chromate"),
        ({}, "sodium dichromate", "names chromate"),
        ({"oxidiser": True}, "other", "give off chlorine"),
        ({}, "hydrogen peroxide", "give off chlorine"),
        ({}, "nitric acid", "give off chlorine"),
    ],
)
def test_acid_is_refused_where_the_sheet_tells_or_lists_what_forbids_it(stain, substance, words):
    ((where, what),) = told((substance, {}), acid=0.5, **stain)
    assert where == "coats[0]"
    assert words in what
    assert told((substance, {}), acid=0, **stain) == []


def test_both_reasons_are_told_at_once():
    assert len(told(("potassium dichromate", {}), acid=8, oxidiser=True)) == 2


def test_chromium_three_is_no_chromate():
    assert told(("chromium(III) chloride", {}), acid=8) == []


def test_told_none_and_listed_contradict():
    ((where, what),) = told(("hydrogen peroxide", {}), oxidiser=False)
    assert where == "stains[0].oxidiser"
    assert "hydrogen peroxide" in what


def test_ends_the_wrong_way_round_and_more_than_there_is():
    (first,) = told(("other", {}), hcl_percent_low=9, hcl_percent_high=3)
    assert first[0] == "stains[0]"
    assert "above the high one" in first[1]
    (second,) = told(("other", {"mass_percent_low": 90}), hcl_percent_low=20)
    assert "110 %" in second[1]


@pytest.mark.parametrize("raw", [{}, {"stains": 3, "coats": "x"}, {"stains": [1, {"contents": 2}]}])
def test_what_is_no_list_is_passed_over(raw):
    assert list(stain_mistakes(raw)) == []
