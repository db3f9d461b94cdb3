"""What a sample drank, worked out by hand; what is missing gives nothing."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.facts.drank import drank, made_with
from farwall.facts.job import Coat, Stain
from farwall.facts.samples import Sample

COATS = (Coat("first", "dark", "1:1"), Coat("second", "dark", "1:3"))
SHEET = (Stain("dark", density_kg_l=1.2),)


def of(sample, stains=SHEET):
    return drank(sample, made_with(sample, COATS, stains))


def test_measured_out_by_hand():
    """0.36 m² took 72 mL: 0.36 / 0.072 = 5 m² a litre."""
    found = of(Sample("a", coat="first", area_m2=0.36, laid_ml=72))
    assert (found.by, found.density_told) == ("measured out", True)
    assert math.isclose(found.m2_per_l, 5.0)
    assert math.isclose(found.l_per_m2, 0.2)


def test_weighed_by_hand():
    """1:1 of a stain of 1.2 kg/L: (1.2 + 1.0)/2 = 1.1 kg/L; 0.110 kg is 100 mL; on 0.5 m²: 5."""
    weighed = Sample("a", coat="first", area_m2=0.5, sprayer_before_kg=3.11, sprayer_after_kg=3.0)
    found = of(weighed)
    assert math.isclose(found.m2_per_l, 5.0)
    assert (found.low, found.high) == (found.m2_per_l, found.m2_per_l)
    # Cut 1:3 in its own right: (1.2 + 3)/4 = 1.05 kg/L.
    own = Sample("b", coat="first", cut="1:3", area_m2=0.5, sprayer_before_kg=3.105,
                 sprayer_after_kg=3.0)  # fmt: skip
    assert math.isclose(of(own).m2_per_l, 5.0)


def test_weighed_without_a_sheet_has_a_range_and_says_so():
    """1:1 with the stain at 1.05 to 1.33 kg/L: the mix at 1.025 to 1.165, usually 1.1."""
    one = Sample("a", coat="first", area_m2=0.5, sprayer_before_kg=3.11, sprayer_after_kg=3.0)
    found = of(one, stains=())
    assert not found.density_told
    assert math.isclose(found.low, 0.5 / 0.11 * 1.025)
    assert math.isclose(found.high, 0.5 / 0.11 * 1.165)
    assert math.isclose(found.m2_per_l, 5.0)


def test_told_goes_before_measured_out_and_that_before_weighed():
    both = Sample("a", coat="first", area_m2=0.36, laid_ml=72, sprayer_before_kg=3.0,
                  sprayer_after_kg=2.0)  # fmt: skip
    assert of(both).by == "measured out"
    told = Sample("a", coat="first", m2_per_l=4.0, area_m2=0.36, laid_ml=72)
    assert (of(told).m2_per_l, of(told).by) == (4.0, "told")


def test_coverage_that_was_filled_in_is_still_known_by_its_weighing():
    one = Sample("a", coat="first", area_m2=0.5, sprayer_before_kg=3.11, sprayer_after_kg=3.0)
    found = of(one, stains=())
    assert of(replace(one, m2_per_l=found.m2_per_l), stains=()) == found
    assert of(replace(one, m2_per_l=found.m2_per_l * 1.01), stains=()).by == "told"


@pytest.mark.parametrize(
    "one",
    [
        Sample("a", coat="first"),
        Sample("a", coat="first", area_m2=0.4),
        Sample("a", coat="first", laid_ml=70),
        Sample("a", coat="first", area_m2=0.4, sprayer_before_kg=3.0),
        Sample("a", coat="first", area_m2=0.4, sprayer_before_kg=3.0, sprayer_after_kg=3.0),
        Sample("a", area_m2=0.4, sprayer_before_kg=3.0, sprayer_after_kg=2.9),
        Sample("a", coat="first", cut="strong", area_m2=0.4, sprayer_before_kg=3.0,
               sprayer_after_kg=2.9),
    ],
)  # fmt: skip
def test_too_little_told_gives_nothing(one):
    assert of(one) is None


def test_a_sample_of_no_coat_takes_the_only_one_there_is():
    assert made_with(Sample("a"), COATS[:1], ()).cut == "1:1"
    assert made_with(Sample("a"), COATS, ()).cut == ""
    assert made_with(Sample("a", stain="light", cut="1:4"), COATS, ()).stain == "light"


@given(
    area=st.floats(0.05, 5), grams=st.integers(5, 2000), density=st.floats(1.0, 1.4),
    parts=st.integers(0, 9),
)  # fmt: skip
def test_what_was_weighed_out_of_a_measured_volume_says_the_same(area, grams, density, parts):
    """Lay a volume of known mix: by volume and by its weight the coverage is one."""
    cut, litres = f"1:{parts}", grams / 1000
    kg_l = (density + parts * 1.0) / (1 + parts)
    stains = (Stain("dark", density_kg_l=density),)
    by_volume = of(Sample("a", coat="first", cut=cut, area_m2=area, laid_ml=litres * 1000), stains)
    by_weight = of(
        Sample("a", coat="first", cut=cut, area_m2=area, sprayer_before_kg=4.0 + litres * kg_l,
               sprayer_after_kg=4.0),
        stains,
    )  # fmt: skip
    assert math.isclose(by_volume.m2_per_l, by_weight.m2_per_l, rel_tol=1e-9)
