"""What is said of a sealer by what it holds."""

from __future__ import annotations

import pytest

from farwall.facts.sealer import Sealer
from farwall.job.seal_day.cautions import ALWAYS, SOLVENT, UNKNOWN, cautions_for_sealer


def said(**told):
    return " ".join(cautions_for_sealer(Sealer(**told)))


def test_no_unvented_heater_whatever_the_sealer():
    for kind in ("water acrylic", "solvent acrylic", "penetrating", None):
        assert "No unvented heater, ever" in said(type=kind)


@pytest.mark.parametrize(
    "words",
    ["heavier than air", "pilot lights", "Switches, plugs", "ignition-proof", "organic vapour",
     "closed metal can"],
)  # fmt: skip
def test_solvent_brings_each_of_its_cautions_and_water_none(words):
    assert words in said(type="solvent acrylic")
    assert words not in said(type="water acrylic")
    assert words in said(type="water acrylic", solvent=True)


def test_hardeners_are_named_as_possible_until_the_sheet_says():
    assert "Isocyanates may be in this type" in said(type="water epoxy and urethane")
    assert "Isocyanates: they" in said(type="water epoxy and urethane", isocyanate=True)
    assert "socyanates" not in said(type="water epoxy and urethane", isocyanate=False)
    assert "Epoxy amines" in said(type="epoxy")


def test_a_sealer_nobody_named_is_taken_to_hold_all():
    found = cautions_for_sealer(Sealer())
    assert UNKNOWN in found
    assert set(SOLVENT) <= set(found)
    assert found[0] == ALWAYS[0]
