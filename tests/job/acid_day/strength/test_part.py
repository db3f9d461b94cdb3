"""The strength of a plan's coats and tubs: what is told, what is asked, what is warned of."""

import pytest
from tests.shapes import PLAIN_ROOM
from tests.spray.hand_floors import job

from farwall.facts.contents import Content
from farwall.facts.job import Coat, Stain, Survey
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.strength import strength_of, strength_said
from farwall.job.acid_day.strength.part import WARM, share_of
from farwall.job.plan_job import plan_job
from farwall.mix.batch import (
    ADDED_ACID_WARNINGS,
    CHROMATE_UNKNOWN,
    ORDER_OF_MIXING,
    make_batch,
)
from farwall.mix.cut import Cut

READ = Stain(
    "sand", "wet sand", 10.0, 15.0, 1.2, chromate=False, oxidiser=False,
    contents=(Content("iron(III) chloride", 5, 15),), sheet_read="2027-05-01",
)  # fmt: skip


def told(*stains, acid=None, air_c=None):
    coats = tuple(
        Coat(f"c{n}", stain.id, "1:1", added_acid_fl_oz_per_gal=acid)
        for n, stain in enumerate(stains, 1)
    )
    asked = job(PLAIN_ROOM, stains=stains, coats=coats, survey=Survey(air_c=air_c))
    return strength_of(Ground(asked, plan_job(asked)))


@pytest.fixture(scope="module")
def known():
    return told(READ)


def test_a_sheet_that_was_read_asks_nothing(known):
    (coat,) = known.coats
    assert coat.warnings == ()
    assert coat.figures is not None
    assert coat.figures.tub_percent.high < 15
    assert coat.rank == "published"
    assert known.order == ORDER_OF_MIXING
    assert known.sheets[0].sheet_read == "2027-05-01"


def test_every_tub_of_the_plan_is_there_and_its_heat_goes_with_its_litres(known):
    assert known.tubs
    for tub in known.tubs:
        assert tub.total_l == pytest.approx(tub.water_l + tub.stain_l)
        per_l = known.coats[0].figures.heat_kj_per_l
        assert tub.heat_kj.high == pytest.approx(per_l.high * tub.total_l)


def test_it_agrees_with_the_mixes_of_the_plan():
    """Those take water at 1 kg/L and the acid at 1.16: 0.05 points of percent."""
    stain = Stain("moss", hcl_percent_low=5.0, hcl_percent_high=15.0, density_kg_l=1.2)
    (coat,) = told(stain, acid=8).coats
    batch = make_batch(
        cut=Cut(1, 1), total_l=4, acid_ml_per_l=62.5, stain_hcl_percent=(5.0, 15.0),
        stain_density_kg_l=1.2, chromate=False, oxidiser=False,
    )  # fmt: skip
    assert coat.figures.tub_percent.low == pytest.approx(batch.hcl_percent_low, abs=0.05)
    assert coat.figures.tub_percent.high == pytest.approx(batch.hcl_percent_high, abs=0.05)


def test_what_nobody_told_is_asked_and_not_made_up():
    found = told(Stain("moss"))
    (coat,) = found.coats
    assert coat.figures is None
    assert coat.neat_percent is None
    assert found.tubs[0].heat_kj is None
    assert any("was not told" in words for words in coat.warnings)
    assert any("No day was told" in words for words in coat.warnings)
    assert any("strength unknown" in line for line in strength_said(found))


def test_density_and_salts_that_nobody_told_are_named():
    (coat,) = told(Stain("moss", hcl_percent_high=12.0)).coats
    assert any("1.05 to 1.33 kg/L" in words for words in coat.warnings)
    assert any("press out" in words for words in coat.warnings)
    assert coat.rank == "from memory"


def test_added_acid_carries_its_warnings_first():
    (coat,) = told(Stain("moss", hcl_percent_low=5.0, hcl_percent_high=10.0), acid=8).coats
    assert coat.warnings[:3] == ADDED_ACID_WARNINGS
    assert CHROMATE_UNKNOWN in coat.warnings
    assert coat.figures.times_by_acid.low > 1.5
    assert coat.figures.tub_percent.high > coat.figures.cut_percent.high


def test_a_warm_tub_is_told():
    strong = Stain("moss", hcl_percent_low=36.0, hcl_percent_high=38.0, density_kg_l=1.2)
    (coat,) = told(strong, air_c=30.0).coats
    assert coat.figures.tub_c.high > WARM.value
    assert any("let it cool" in words for words in coat.warnings)


def test_a_share_beyond_what_is_known_is_no_figure():
    (coat,) = told(Stain("moss", hcl_percent_high=60.0)).coats
    assert coat.figures is None
    assert any("more than the tool knows" in words for words in coat.warnings)


def test_one_end_stands_for_both():
    assert share_of(Stain("s", hcl_percent_high=12.0)).low == 12
    assert share_of(Stain("s")) is None


def test_lines_name_strength_warmth_and_order(known):
    lines = "\n".join(strength_said(known))
    for words in ("% HCl", "mol/m²", "°F", "L water", "then", "Water in the tub first"):
        assert words in lines
