"""Statements, pictograms and signal words."""

import pytest

from farwall.acid.hazards import (
    HAZARDS,
    PICTOGRAM_OF,
    PRECAUTIONS,
    SIGNALS,
    WARNS,
    pictograms,
    signal,
)

ALL = {**HAZARDS, **PRECAUTIONS, **SIGNALS}


@pytest.mark.parametrize("code", sorted(ALL))
def test_every_code_has_both_languages(code):
    both = ALL[code]
    assert both.en.strip()
    assert both.es.strip()
    assert both.en != both.es


def test_no_two_codes_say_the_same():
    for language in ("en", "es"):
        said = [getattr(one, language) for one in ALL.values()]
        twice = {one for one in said if said.count(one) > 1}
        assert twice <= {"Provoca daños en los órganos tras exposiciones prolongadas o repetidas"}


def test_what_warns_and_what_has_a_pictogram_is_a_statement():
    assert set(HAZARDS) > WARNS
    assert set(PICTOGRAM_OF) <= set(HAZARDS)
    assert HAZARDS.keys() - PICTOGRAM_OF.keys() == {"H412"}


@pytest.mark.parametrize(
    ("codes", "shown"),
    [
        (("H314", "H290"), ("ghs05",)),
        (("H314", "H335"), ("ghs05", "ghs07")),
        (("H314", "H319"), ("ghs05",)),
        (("H301", "H312"), ("ghs06",)),
        (("H301", "H312", "H335"), ("ghs06", "ghs07")),
        (("H334", "H317"), ("ghs08",)),
        (("H317",), ("ghs07",)),
        (("H410", "H272"), ("ghs03", "ghs09")),
        (("H412",), ()),
    ],
)
def test_a_worse_pictogram_stands_for_a_lesser_un_ghs_1_4_10_5_3_1_from_memory(codes, shown):
    assert pictograms(codes) == shown


@pytest.mark.parametrize("code", ["H315", "H319", "H335", "H302", "H317"])
def test_the_exclamation_mark_stands_where_nothing_worse_does(code):
    assert pictograms((code,)) == (PICTOGRAM_OF[code],) == ("ghs07",)


def test_one_danger_is_enough():
    assert signal(("H302", "H314")) == "danger"
    assert signal(("H302", "H319")) == "warning"
    assert signal(("H412",)) is None
    assert signal(()) is None


def test_a_code_that_is_not_known_is_an_error():
    with pytest.raises(KeyError):
        pictograms(("H999",))
