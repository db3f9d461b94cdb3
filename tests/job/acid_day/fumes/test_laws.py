"""What holds for the fumes of any stain, house and warmth that a job can tell."""

import json
import math
from dataclasses import replace

from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.acid_day.fumes.fumes_house import STAIN, fumes, planned

from farwall.facts.contents import Content
from farwall.facts.job import Site, Survey
from farwall.facts.plain import plain
from farwall.job.acid_day.fumes import fumes_said

PERCENT = st.floats(0.0, 38.0)
CONTENT = st.builds(
    Content,
    st.sampled_from(
        ["iron(III) chloride", "copper(II) chloride", "sodium dichromate", "calcium chloride",
         "phosphoric acid", "other"]
    ),
    st.none() | st.floats(0, 30),
    st.none() | st.floats(0, 40),
)  # fmt: skip
SITES = st.builds(Site, st.sampled_from([None, "shut", "open"]), st.none() | st.integers(0, 20))


@settings(max_examples=15)
@given(
    st.none() | PERCENT, st.none() | PERCENT, st.lists(CONTENT, max_size=3), SITES,
    st.floats(-5, 45), st.sampled_from([None, True, False]),
    st.none() | st.floats(1.0, 1.4),
)  # fmt: skip
def test_any_job_has_finite_ranges_in_order_and_can_be_written(
    low, high, contents, site, slab_c, chromate, density
):
    stain = replace(
        STAIN, hcl_percent_low=low, hcl_percent_high=high, contents=tuple(contents),
        chromate=chromate, density_kg_l=density,
    )  # fmt: skip
    found = fumes(
        stains=(stain,), site=site, survey=Survey(slab_c=slab_c, air_c=slab_c, rh_percent=50.0)
    )
    ends = [one for one in (low, high) if one is not None]
    if not found.rooms:
        assert ends
        assert max(ends) < 1e-3
        assert "no hydrochloric acid" in fumes_said(found, us=True)[0]
        return
    assert all(
        0 <= r.low <= r.likely <= r.high < 1e6
        for room in found.rooms for r in (room.peak_ppm, room.mean_15_ppm)
    )  # fmt: skip
    assert found.to_air_percent is not None
    assert found.to_air_percent.likely <= 100
    assert all(math.isfinite(at.high) for room in found.rooms for at in room.curve)
    assert json.loads(json.dumps(plain(found), allow_nan=False))
    assert fumes_said(found, us=True)


@settings(max_examples=5)
@given(st.floats(2.0, 15.0), st.floats(1.1, 2.0))
def test_a_stronger_stain_never_clears_the_air(percent, times):
    def peaks(strength):
        stain = replace(STAIN, hcl_percent_low=strength, hcl_percent_high=strength)
        return [one.peak_ppm.likely for one in fumes(stains=(stain,)).rooms]

    assert all(
        strong >= weak * 0.995
        for weak, strong in zip(peaks(percent), peaks(percent * times), strict=True)
    )


@settings(max_examples=5)
@given(st.integers(0, 10))
def test_one_more_fan_never_raises_the_worst_room(fans):
    job, _ = planned()
    assert job.site.house == "shut"
    fewer, more = (
        max(r.peak_ppm.likely for r in fumes(site=Site(house="open", fans=n)).rooms)
        for n in (fans, fans + 1)
    )
    assert more <= fewer * 1.005
