"""What a sheet adds to a kind; what is not told never takes a trait away."""

import pytest

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.things import left_over, names_no_oxidiser, thing_of
from farwall.facts.contents import Content
from farwall.facts.job import Stain
from farwall.facts.materials import Material


def test_a_stain_is_free_of_oxidisers_only_when_both_were_answered():
    listed = (Content("iron(III) chloride", 5, 10),)
    assert names_no_oxidiser(Stain("a", chromate=False, oxidiser=False))
    assert not names_no_oxidiser(Stain("a", contents=listed, sheet_read="2027-01-04"))
    assert not names_no_oxidiser(Stain("a"))
    assert not names_no_oxidiser(Stain("a", chromate=False))
    assert not names_no_oxidiser(Stain("a", oxidiser=False))
    assert not names_no_oxidiser(Stain("a", contents=listed))
    assert not names_no_oxidiser(Stain("a", chromate=True, oxidiser=False))


@pytest.mark.parametrize(
    "substance",
    ["sodium dichromate", "potassium dichromate", "nitric acid", "hydrogen peroxide",
     "other oxidiser", "other"],
)  # fmt: skip
def test_an_oxidiser_on_the_list_wins_over_two_answers_of_no(substance):
    stain = Stain("a", chromate=False, oxidiser=False, contents=(Content(substance, 1, 5),),
                  sheet_read="2027-01-04")  # fmt: skip
    assert not names_no_oxidiser(stain)
    tub = [thing_of(Material("w", "water", sheet_read=True)),
           thing_of(Material("s", "stain", stain="a", sheet_read=True), stain),
           thing_of(Material("m", "muriatic acid", sheet_read=True))]  # fmt: skip
    assert may_pour(tub).word == "refused"


@pytest.mark.parametrize(
    ("ph", "trait"), [(1.5, "strong acid"), (4.0, "spent acid"), (11.0, "alkali"), (13.0, "lye")]
)
def test_a_ph_told_adds_what_it_means(ph, trait):
    cleaner = Material("c", "neutral cleaner", sheet_ph=ph)
    assert trait in thing_of(cleaner).traits
    assert thing_of(Material("c", "neutral cleaner")).traits < thing_of(cleaner).traits


def test_a_sour_cleaner_meets_no_bleach_and_sour_rinse_water_stays_sour_whatever_is_told():
    bleach = thing_of(Material("b", "bleach"))
    assert may_pour([thing_of(Material("c", "neutral cleaner", sheet_ph=4)), bleach]).word == (
        "refused"
    )
    told = thing_of(Material("r", "rinse water", sheet_ph=7))
    assert "spent acid" in told.traits


def test_two_makers_mixtures_of_one_kind_are_two_things_and_two_bags_of_bicarbonate_one():
    cleaners = [thing_of(Material(name, "alkaline cleaner", sheet_read=True)) for name in "ab"]
    bags = [thing_of(Material(name, "bicarbonate")) for name in "ab"]
    assert may_pour(cleaners).word == "refused"
    assert may_pour(bags).word != "refused"


def test_a_sheet_that_was_read_takes_the_warning_away():
    warned = may_pour([thing_of(Material("b", "bicarbonate"))])
    read = may_pour([thing_of(Material("b", "bicarbonate", sheet_read=True))])
    assert (warned.word, read.word) == ("allowed with warning", "allowed")


def test_what_was_left_keeps_its_traits():
    bleach = thing_of(Material("b", "bleach"))
    assert left_over(bleach).traits == bleach.traits
    assert left_over(bleach).left
