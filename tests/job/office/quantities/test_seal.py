"""Sealer and floor finish by coat."""

from __future__ import annotations

import math

import pytest
from tests.job.office.quantities.grounds import ground, lines, planned

from farwall.facts.sealer import Sealer, SealTools
from farwall.job.seal_day.day import seal_day
from farwall.units import L_PER_US_GAL, M2_PER_FT2


@pytest.mark.parametrize(
    "sealer", [Sealer(type="water acrylic", coats=2), Sealer(name="clear", m2_per_l=9.0, coats=1)]
)
def test_the_seal_day_opens_the_same_litres(sealer):
    """The seal day counts laps band by band: ends of strips and half strips move it by 6 %."""
    of = ground(sealer=sealer)
    line = lines(of)["sealer"]
    day = seal_day(of.job)
    likely = math.fsum(one.likely_l for one in day.sealing.coats)
    ready = math.fsum(one.ready_l for one in day.sealing.coats)
    assert line.likely == pytest.approx(likely, rel=0.06)
    assert line.ready == pytest.approx(ready, rel=0.06)


def test_coats_and_coverage_by_hand():
    """24 m² at 8 m²/L with laps of 0.1 m in 1.0 m: 3.3 L a coat."""
    tools = SealTools(band_m=1.0, overlap_m=0.1)
    line = lines(ground(sealer=Sealer(m2_per_l=8.0, coats=3, tools=tools)))["sealer"]
    area = sum(field.area_m2 for field in planned()[1].fields if field.coat == "first")
    assert area == pytest.approx(24.0)
    assert line.likely == pytest.approx(3 * 3.3)
    assert [one.coat for one in line.shares] == ["seal-1", "seal-2", "seal-3"]
    assert math.fsum(one.ready for one in line.shares) == pytest.approx(line.ready)
    assert line.low < line.likely < line.high


@pytest.mark.common_practice
def test_two_thin_coats_of_finish_and_a_quart_for_the_owner_by_hand():
    """Common practice, no source: 258.3 ft² twice at 2,000 ft²/gal; ready at 1,500 ft²/gal."""
    of = ground()
    line = lines(of)["finish"]
    area_ft2 = of.measured.net_m2 / M2_PER_FT2
    assert line.likely == pytest.approx(2 * area_ft2 / 2000 * L_PER_US_GAL)
    assert line.ready == pytest.approx((2 * area_ft2 / 1500 + 0.25) * L_PER_US_GAL)


def test_a_sealer_that_leaves_no_film_has_no_finish_and_finish_alone_is_one_line():
    assert "finish" not in lines(ground(sealer=Sealer(type="penetrating")))
    alone = lines(ground(sealer=Sealer(type="floor finish")))
    assert "sealer" not in alone
    assert alone["finish"].shares[0].coat == "seal-1"


def test_a_coat_more_is_never_less():
    few, more = (lines(ground(sealer=Sealer(coats=n))) for n in (1, 2))
    for id_ in ("sealer", "applicators"):
        assert few[id_].ready < more[id_].ready
