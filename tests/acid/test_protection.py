"""What a respirator may hold back: factor times ceiling, capped where life is at stake."""

from typing import get_args

import pytest

from farwall.acid.protection import DANGEROUS_PPM, HYGIENISTS_PPM, LEGAL_PPM, holds
from farwall.facts.workers import Respirator


@pytest.mark.parametrize(
    ("kind", "legal", "hygienists"),
    [("half face", 45.0, 20.0), ("full face", 45.0, 45.0), ("powered hood", 45.0, 45.0)],
)
def test_factor_times_ceiling_by_hand_factors_from_memory(kind, legal, hygienists):
    """10 x 5 = 50 and 50 x 5 = 250 ppm, both past the 45 ppm that are immediately dangerous;
    10 x 2 = 20; 25 x 2 = 50 again past it. Factors of 29 CFR 1910.134 Table 1 from memory."""
    found = holds(kind)
    assert (found.legal_ppm, found.hygienists_ppm) == (legal, hygienists)


@pytest.mark.parametrize("kind", get_args(Respirator))
def test_no_cartridge_is_for_air_that_is_immediately_dangerous(kind):
    assert HYGIENISTS_PPM < LEGAL_PPM < holds(kind).legal_ppm <= DANGEROUS_PPM


def test_the_ceilings_are_those_of_the_reference(shared):
    rows = shared("reference/exposure_limits.csv").read_text().splitlines()
    named = {"OSHA PEL": LEGAL_PPM, "ACGIH TLV": HYGIENISTS_PPM}
    for limit, value in named.items():
        row = next(one for one in rows if one.startswith("hydrogen chloride") and limit in one)
        assert float(row.split(",")[4]) == value
