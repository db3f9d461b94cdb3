"""What a litre of stain takes, by hand; what nobody told is told as such."""

from dataclasses import replace

import pytest
from tests.job.acid_day.neutralising.grounds import EARTH

from farwall.acid.bases import BASES
from farwall.facts.contents import Content
from farwall.facts.job import Stain
from farwall.job.acid_day.neutralising.stains import stain_dose, strength_of_stain

SODA = BASES["NaHCO3"]


def test_a_gallon_of_stain_by_hand():
    """10 % in 1.15 kg/L over 36.458 g/mol is 3.154 mol/L: 1.003 kg of bicarbonate on a gallon,
    2.2 lb, as the trade's own reckoning has it."""
    found = stain_dose(EARTH, SODA)
    assert found.acid_low == found.acid_high == pytest.approx(3.154, abs=0.001)
    assert found.kg_l_high * 3.785411784 == pytest.approx(1.003, abs=0.001)
    assert found.co2_l_high == pytest.approx(3.154 * 24.055, rel=1e-3)
    assert found.source == "told in the job"


def test_salts_add_to_the_high_end_by_hand():
    """20 to 30 % FeCl3: 1150 g/L × 0.3 over 162.195, three times, is 6.38 mol/L; the low end
    as crystals, 0.2 over 270.285, is 2.55."""
    rusty = replace(EARTH, contents=(Content("iron(III) chloride", 20, 30),))
    found = stain_dose(rusty, SODA)
    assert (found.salts_low, found.salts_high) == pytest.approx((2.553, 6.381), abs=0.002)
    assert found.kg_l_high == pytest.approx((3.154 + 6.381) * 0.084006, rel=1e-3)
    assert found.contents_told


def test_a_sheet_that_nobody_read_gives_the_range_of_sheets_seen():
    found = strength_of_stain(Stain(id="x"))
    assert found.acid == pytest.approx((50 * 1.05 / 36.458, 200 * 1.33 / 36.458))
    assert (found.rank, found.source) == ("from memory", "stain-sheets")


def test_one_end_told_is_both_ends():
    found = strength_of_stain(Stain(id="x", hcl_percent_high=12, density_kg_l=1.2))
    assert found.acid[0] == found.acid[1]
