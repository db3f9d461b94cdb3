"""Air for the solvent of a coat."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.job.go.jobs import GOOD

from farwall.facts.sealer import Sealer
from farwall.job.seal_day.airing import ASK, CEILING_M, FLAME, air_for


def found(**told):
    job = replace(GOOD, sealer=Sealer(type="solvent acrylic", **told))
    return air_for(job, "seal-1", litres=2.0, minutes=40.0)


def test_air_changes_by_hand():
    """By hand: 600 g/L × 2 L in 40 min is 30 g/min; 24 m² × 2.6 m = 62.4 m³; a limit of 500 mg/m³
    asks for 30,000 mg/min × 60 / (62.4 × 500) = 57.7 changes an hour, 3,600 m³/h."""
    one = found(solvent_g_l=600, solvent_limit_mg_m3=500)
    assert one.release_g_min == 30
    area = sum(room.polygon.shape.area for room in GOOD.floor.rooms)
    assert one.flow_m3_h == pytest.approx(3600)
    assert one.air_changes_per_h == pytest.approx(3600 / (CEILING_M * area), abs=0.1)
    assert FLAME in one.warnings


def test_without_a_release_it_is_asked_for_and_nothing_is_guessed():
    assert found(solvent_g_l=600).air_changes_per_h is None
    assert found().warnings == (ASK,)


def test_a_sealer_without_solvent_needs_no_such_figure():
    job = replace(GOOD, sealer=Sealer(type="water acrylic"))
    assert air_for(job, "seal-1", litres=2.0, minutes=40.0) is None
