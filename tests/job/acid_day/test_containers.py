"""What jugs, pails and drums say of themselves, from what the job tells."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.papers.acid.ground import BLANK, FULL, PLAN, STAINS, ground, mixes

from farwall.acid.mixture_hazards import HYDROCHLORIC_ACID
from farwall.facts.contents import Content
from farwall.facts.job import Stain
from farwall.facts.materials import Material
from farwall.job.acid_day.containers import STAIN_KG_L, containers_of, shares_percent


def stain(**told):
    return Stain(id=PLAN.inputs.coats[0].stain, **told)


def batch(told, *, acid_l=0.0, cut=None):
    """The container of one batch of this stain."""
    job = replace(FULL, stains=(told, *STAINS))
    one = mixes(1, acid_l=acid_l)[0]
    if cut is not None:
        one = replace(one, stain_l=cut[0], water_l=cut[1])
    return containers_of(ground(replace(job, stains=(told,)), mixes=(one,)))[0]


KNOWN = {"hcl_percent_low": 5.0, "hcl_percent_high": 15.0, "density_kg_l": 1.25, "chromate": False}


def test_a_told_stain_is_a_burn_and_eats_metal():
    one = batch(stain(**KNOWN, contents=(Content("iron(III) chloride", 10.0, 20.0),)))
    assert {"H290", "H314"} <= set(one.codes)
    assert one.signal == "danger"
    assert one.pictograms[0] == "ghs05"
    assert one.unknown == ()


def test_water_takes_the_airways_off_by_hand():
    """1 L of 1.25 kg/L at 15 % with 1 L of water: 0.1875 / 2.25 is 8.3 %; neat it is 15 %."""
    contents = (Content("iron(III) chloride", 10.0, 20.0),)
    neat = batch(stain(**KNOWN, contents=contents), cut=(1.0, 0.0))
    cut = batch(stain(**KNOWN, contents=contents), cut=(1.0, 1.0))
    assert "H335" in neat.codes
    assert "H335" not in cut.codes


def test_added_acid_brings_it_back_by_hand():
    """0.5 L of acid: (0.1875 + 0.5 * 1.16 * 0.3145) / (2.25 + 0.58) is 13.1 %."""
    one = batch(stain(**KNOWN, contents=(Content("other", 1, 2),)), cut=(1.0, 1.0), acid_l=0.5)
    assert "H335" in one.codes


@pytest.mark.parametrize("percent", [0.2, 5.0])
def test_chromate_brings_health_hazard_and_is_never_cut_away(percent):
    told = stain(
        **{**KNOWN, "chromate": True}, contents=(Content("sodium dichromate", 0.1, percent),)
    )
    one = batch(told, cut=(1.0, 1.0))
    assert {"H350", "H340", "H334"} <= set(one.codes)
    if percent == 5.0:
        assert "ghs08" in one.pictograms


def test_chromate_without_a_share_is_taken_at_its_worst():
    one = batch(stain(**{**KNOWN, "chromate": True}))
    assert {"ghs05", "ghs06", "ghs08", "ghs09"} <= set(one.pictograms)
    assert "H330" in one.codes


def test_what_the_sheet_leaves_open_is_as_high_as_the_rest_leaves_room_for_by_hand():
    """100 less 10 of copper less 5 of acid leaves 85 for dichromate with its own low end in it."""
    told = stain(
        hcl_percent_low=5.0,
        hcl_percent_high=10.0,
        contents=(
            Content("sodium dichromate", 5.0, None),
            Content("copper(II) chloride", 10.0, 12.0),
        ),
    )
    assert shares_percent(told) == {
        "sodium dichromate": 85.0, "copper(II) chloride": 12.0, HYDROCHLORIC_ACID: 10.0,
    }  # fmt: skip


def test_an_oxidiser_has_its_flame():
    assert "ghs03" in batch(stain(**KNOWN, oxidiser=True)).pictograms
    assert "ghs03" in batch(stain(**KNOWN, contents=(Content("other oxidiser", 1, 2),))).pictograms
    assert "ghs03" not in batch(stain(**KNOWN)).pictograms


def test_what_nobody_told_is_named_and_it_burns_all_the_same():
    one = containers_of(ground(BLANK))[0]
    assert one.unknown == ("strength", "chromate", "contents")
    assert one.codes == ("H290", "H314")
    assert batch(stain(hcl_percent_high=10.0)).unknown == ("chromate", "contents")


def test_ammonia_and_muriatic_acid_only_where_the_job_has_them():
    kinds = [one.kind for one in containers_of(ground(BLANK))]
    assert kinds.count("batch") == len(PLAN.mixes)
    assert {"muriatic acid", "ammonia water"} & set(kinds) == set()
    assert {"muriatic acid", "ammonia water"} < {one.kind for one in containers_of(ground(FULL))}
    has = replace(BLANK, materials=(Material("a", "ammonia water"),))
    assert "ammonia water" in {one.kind for one in containers_of(ground(has))}
    boosted = containers_of(ground(BLANK, mixes=mixes(1, acid_l=0.1)))
    assert "muriatic acid" in {one.kind for one in boosted}


def test_rinse_water_claims_no_class():
    last = containers_of(ground())[-1]
    assert (last.kind, last.codes, last.pictograms, last.signal) == ("rinse water", (), (), None)
    assert "iron(III) chloride" in last.holds


@given(
    low=st.one_of(st.none(), st.floats(0, 30)),
    high=st.one_of(st.none(), st.floats(30, 60)),
    acid=st.floats(0, 40),
)
def test_a_share_lies_between_its_low_end_and_the_whole(low, high, acid):
    told = stain(
        hcl_percent_low=acid, hcl_percent_high=acid,
        contents=(Content("copper(II) chloride", low, high),),
    )  # fmt: skip
    share = shares_percent(told)["copper(II) chloride"]
    assert (low or 0.0) <= share <= 100.0
    if high is not None:
        assert share == high
    else:
        assert share == pytest.approx(100.0 - acid)


def test_a_density_that_nobody_told_is_the_heavy_end():
    assert STAIN_KG_L == 1.3
