"""Stain by colour, coat and field: the plan's own need."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import pytest
from tests.job.office.quantities.grounds import FACTS, ground, lines, planned
from tests.job.sums.sums import reckon
from tests.shapes import PLAIN_ROOM, TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Coat, Stain, Wishes
from farwall.facts.samples import Sample
from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.units import ft2_from_m2, ft2_per_gal_from_m2_per_l


def test_a_line_is_what_the_plan_buys():
    told = lines(ground())
    for one in planned()[1].buying["stains"]:
        line = told[f"stain:{one['stain']}"]
        assert line.ready == one["ready_l"]
        assert line.likely == pytest.approx(one["likely_l"], rel=1e-9)
        assert line.lots == tuple(one["lots"])


def test_its_coats_need_what_the_plan_reckoned_without_being_scaled():
    """Without the purchase beside it the same figure comes of the plan's mixes and grounds."""
    told, plan = planned()
    bare = OfficeGround(told, replace(plan, buying={"certainty_percent": 99.0, "stains": []}))
    for id_, line in lines(ground()).items():
        if line.kind == "stain":
            assert lines(bare)[id_].ready == pytest.approx(line.ready, rel=1e-9)


def test_a_coat_that_was_sampled_has_a_spread_of_its_own():
    """15 % beside the 20 % of the coat that was not: each is reckoned by its own."""
    sample = Sample("closet", coat="first", m2_per_l=4.5)
    told = job(TWO_ROOMS, **FACTS, samples=(sample,))
    plan = plan_job(told)
    bare = replace(plan, buying={"certainty_percent": 99.0, "stains": []})
    found = lines(OfficeGround(told, bare))
    for one in plan.buying["stains"]:
        assert found[f"stain:{one['stain']}"].ready == pytest.approx(one["ready_l"], rel=1e-9)
    sampled, other = found["stain:earth"], found["stain:slate"]
    assert sampled.ready / sampled.likely < other.ready / other.likely


def test_fields_sum_to_the_job():
    for line in lines(ground()).values():
        if line.kind == "stain":
            assert {one.field for one in line.shares} >= {"first.1"} or line.coat == "second"
            assert math.fsum(one.likely for one in line.shares) == pytest.approx(line.likely)
            assert math.fsum(one.ready for one in line.shares) == pytest.approx(line.ready)


def test_a_field_takes_its_bands_by_hand():
    """Bands of its coat in litres, half of it stain at 1:1, a third at 1:2."""
    plan, told = planned()[1], lines(ground())
    for id_, share_of_stain in (("stain:earth", 1 / 2), ("stain:slate", 1 / 3)):
        for one in told[id_].shares:
            field = next(f for f in plan.fields if (f.id, f.coat) == (one.field, one.coat))
            litres = sum(band.litres for band in field.bands)
            assert one.likely == pytest.approx(litres * share_of_stain)


def test_one_field_of_one_coat_is_the_sum_need():
    """`reckon need` by area, coverage, spread and certainty says the same litres, to the digit."""
    told = job(
        PLAIN_ROOM, stains=(Stain("earth"),), coats=(Coat("only", "earth", "1:1", m2_per_l=5.0),),
        wishes=Wishes(certainty_percent=97.0, spread_percent=18.0),
    )  # fmt: skip
    plan = plan_job(told)
    assert len(plan.fields) == 1
    litres = sum(band.litres for band in plan.fields[0].bands)
    need = reckon(
        "need", area_ft2=ft2_from_m2(litres * 5.0), ft2_per_gal=ft2_per_gal_from_m2_per_l(5.0),
        spread_percent=18.0, certainty_percent=97.0,
    )  # fmt: skip
    line = lines(OfficeGround(told, plan))["stain:earth"]
    assert line.likely == pytest.approx(need["likely_l"] / 2, rel=1e-9)
    assert line.ready == pytest.approx(need["mix_l"] / 2, rel=1e-9)


def test_more_certainty_never_less_stain():
    ready = []
    for certainty in (50, 80, 90, 95, 99, 99.9):
        told = job(TWO_ROOMS, **FACTS, wishes=Wishes(certainty_percent=certainty))
        told_lines = lines(OfficeGround(told, plan_job(told)))
        ready.append([told_lines[id_].ready for id_ in ("stain:earth", "stain:slate")])
    for fewer, more in itertools.pairwise(ready):
        assert all(a <= b + 1e-9 for a, b in zip(fewer, more, strict=True))
    assert ready[0][0] < ready[-1][0]


def test_the_range_holds_the_likely_and_grows_with_the_spread():
    narrow = job(TWO_ROOMS, **FACTS, wishes=Wishes(spread_percent=8))
    wide = job(TWO_ROOMS, **FACTS, wishes=Wishes(spread_percent=30))
    small, large = (
        lines(OfficeGround(one, plan_job(one)))["stain:earth"] for one in (narrow, wide)
    )
    for one in (small, large):
        assert one.low < one.likely < one.high
    assert large.high / large.low > small.high / small.low > 1


def test_its_rank_is_no_better_than_the_coverage_and_the_spread():
    assert lines(ground())["stain:earth"].rank == "guess"


def test_added_acid_has_a_line_where_it_is_told():
    """8 fl oz a gallon of cut mix is a sixteenth of it, by hand."""
    coat = Coat("only", "earth", "1:1", m2_per_l=5.0, added_acid_fl_oz_per_gal=8.0)
    told = job(PLAIN_ROOM, stains=(Stain("earth", chromate=False, oxidiser=False),), coats=(coat,))
    found = lines(OfficeGround(told, plan_job(told)))
    acid, stain = found["added-acid"], found["stain:earth"]
    assert acid.likely == pytest.approx(2 * stain.likely / 16)
    assert acid.ready > acid.likely
    assert "sheet does not cover it" in acid.rule
    assert "added-acid" not in lines(ground())


def test_a_field_that_is_not_sprayed_takes_nothing():
    told, plan = planned()
    fewer = replace(plan, fields=tuple(one for one in plan.fields if one.coat == "first"))
    assert "stain:slate" not in lines(OfficeGround(told, fewer))
