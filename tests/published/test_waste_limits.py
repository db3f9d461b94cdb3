"""Federal limits of waste water, and two local bands, against the rules as quoted row by row."""

import re

from tests.published.tables import table

from farwall.acid.waste_limits import FEDERAL, LOCAL_PH

ROWS = {row["rule"]: row for row in table("waste_limits")}


def first_number(rule):
    return float(re.search(r"\d+(?:\.\d+)?", ROWS[rule]["value"])[0])


def test_40_cfr_261_22_corrosive_by_ph():
    """Printed figures of a law: no tolerance."""
    assert FEDERAL["acid-ph"].value == first_number(
        "hazardous corrosive (D002): aqueous and pH at or below"
    )
    assert FEDERAL["alkaline-ph"].value == first_number(
        "hazardous corrosive (D002): aqueous and pH at or above"
    )


def test_40_cfr_261_22_corrosive_to_steel():
    rule = "hazardous corrosive (D002): liquid that corrodes SAE 1020 steel faster than"
    assert FEDERAL["steel-mm-year"].value == first_number(rule)
    assert "55 degC" in ROWS[rule]["value"]
    assert "55 °C" in FEDERAL["steel-mm-year"].says


def test_40_cfr_403_5_sewer_floor_and_heat():
    assert FEDERAL["sewer-ph"].value == first_number(
        "sewer (federal floor): no discharge with pH lower than"
    )
    assert FEDERAL["sewer-c"].value == first_number("sewer heat: treatment plant inlet at most")


def test_epa_memo_1993_aqueous():
    assert FEDERAL["free-water-percent"].value == first_number("test of aqueous: at least")


def test_local_ordinances_bands_of_ph():
    bands = {
        tuple(map(float, re.findall(r"\d+\.\d", row["value"])))
        for row in table("waste_limits")
        if row["rule"].startswith("a city may be stricter")
    }
    assert len(bands) == 2
    assert bands <= set(LOCAL_PH)


def test_every_row_is_looked_at():
    """By hand: six rules above and two bands are the eight rows of the table."""
    assert len(table("waste_limits")) == 8
