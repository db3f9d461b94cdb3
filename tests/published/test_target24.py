"""The common target of 24 patches, its three published sets: xyY as printed, Lab with their white.

The tables are carried by the library colour-science, which names the publications. Chromaticities
are printed to five decimals here; Lab is computed with the white x 0.3457, y 0.3585, whose four
decimals move b of a light patch by some hundredths.
"""

import pytest
from tests.published.tables import table

from farwall.colour.targets.common24 import NAMES, SETS, common_24

ROWS = table("colour/target24_xyY_Lab")
OURS = {
    "target_2005": "2005",
    "average_of_30_targets": "average-of-30",
    "target_after_nov2014": "after-2014",
}


@pytest.mark.parametrize("row", ROWS, ids=lambda row: f"{row['set']} {row['patch_name']}")
def test_a_published_patch(row):
    values, place = OURS[row["set"]], int(row["patch"]) - 1
    assert row["patch_name"].startswith(NAMES[place])
    printed = [float(row[key]) for key in "xyY"]
    assert SETS[values][place] == pytest.approx(printed, abs=2e-5)
    wanted = [float(row[key]) for key in "Lab"]
    assert common_24(values).patches[place].lab == pytest.approx(wanted, abs=0.06)
