"""Classes as safety sheets quote them, against what the rules make of the neat substance."""

import pytest

from farwall.acid.mixture_hazards import HYDROCHLORIC_ACID, hazard_codes

QUOTED = [
    pytest.param(
        {HYDROCHLORIC_ACID: 32.0},
        ("H290", "H314", "H335"),
        id="hydrochloric acid 31 to 33 percent, a sheet of 2022, quoted",
    ),
    pytest.param(
        {"sodium dichromate": 100.0},
        ("H301", "H312", "H314", "H317", "H330", "H334", "H340", "H350", "H360", "H372", "H410"),
        id="sodium dichromate, an encyclopaedia's list after annex VI, quoted, but for H272",
    ),
]
"""H272 of a dry salt says nothing of its solution and is left to the sheet."""


@pytest.mark.parametrize(("shares", "codes"), QUOTED)
def test_classes_quoted_after_clp_annex_vi(shares, codes):
    assert hazard_codes(shares) == codes
