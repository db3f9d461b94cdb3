"""The fumes of a planned day: what raises them, what lowers them, what is always said."""

import re
from dataclasses import replace

import pytest
from tests.job.acid_day.fumes.fumes_house import BARE, STAIN, fumes, peak, planned, stained

from farwall.facts.contents import Content
from farwall.facts.job import Coat, Site
from farwall.facts.materials import Material
from farwall.facts.washing import Washing
from farwall.job.acid_day.fumes import fumes_of, fumes_said
from farwall.job.acid_day.fumes.words import STANDING
from farwall.job.acid_day.ground import Ground


def test_every_room_has_a_range_a_peak_and_a_curve():
    found = fumes()
    job, plan = planned()
    assert [one.room for one in found.rooms] == [room.id for room in job.floor.rooms]
    sprayed = {room for field in plan.fields for room in field.rooms}
    for room in found.rooms:
        assert 0 < room.peak_ppm.low < room.peak_ppm.likely < room.peak_ppm.high
        assert room.mean_15_ppm.likely <= room.peak_ppm.likely * 1.001
        assert max(at.likely for at in room.curve) <= room.peak_ppm.likely * 1.006
        assert room.sprayed == (room.room in sprayed)
        assert [at.at_min for at in room.curve] == sorted(at.at_min for at in room.curve)


def test_ends_told_the_wrong_way_round_are_never_taken_for_no_acid():
    turned = stained(hcl_percent_low=12.0, hcl_percent_high=0.0)
    assert turned.rooms
    assert peak(turned) == peak(stained(hcl_percent_low=0.0, hcl_percent_high=12.0))


def test_the_air_is_clear_of_a_lower_limit_later():
    for room in fumes().rooms:
        by = {one.limit: one.likely_min for one in room.below}
        assert by["hcl-at-once"] <= by["hcl-law"] <= by["hcl-hygienists"] <= by["hcl-smell"]


def test_acid_that_is_laid_is_the_mix_of_the_plan():
    """By hand: litres of each coat, 1.2 kg/L of 10 % stain at 1:1 and 1:2; all volumes add up."""
    _, plan = planned()
    litres = {"first": 0.0, "second": 0.0}
    for field in plan.fields:
        litres[field.coat] += sum(band.litres for band in field.bands)
    grams = (litres["first"] / 2 + litres["second"] / 3) * 1.2 * 0.10 * 1000
    found = fumes()
    assert found.acid_g == pytest.approx(grams, rel=0.005)
    assert 0 < found.to_air_percent.low < found.to_air_percent.high < 100


def test_the_more_the_house_is_aired_the_less_it_holds():
    ways = fumes().ways
    assert [one.air_changes_h for one in ways] == sorted(one.air_changes_h for one in ways)
    peaks = [one.peak_ppm.likely for one in ways]
    assert peaks == sorted(peaks, reverse=True)
    assert [one.stands for one in ways] == [True, False, False, False]


def test_as_it_stands_is_the_way_that_it_was_told_to_stand():
    aired = fumes(site=Site(house="open", fans=1))
    (own,) = [one for one in aired.ways if one.stands]
    assert peak(aired) == pytest.approx(own.peak_ppm.likely, rel=0.02)
    assert peak(aired) < peak(fumes())


def test_a_way_of_its_own_stands_among_the_usual_ones():
    """Shut with two fans is none of the usual ways: it is put where its air belongs."""
    found = fumes(site=Site(house="shut", fans=2))
    (own,) = [one for one in found.ways if one.stands]
    assert (own.key, own.fans) == ("shut-fans", 2)
    assert len(found.ways) == 5
    changes = [one.air_changes_h for one in found.ways]
    assert changes == sorted(changes)


def test_stronger_stain_and_added_acid_give_off_more():
    weak, strong = (stained(hcl_percent_low=p, hcl_percent_high=p) for p in (5.0, 15.0))
    assert peak(strong) > 2 * peak(weak)
    job, _ = planned()
    boosted = fumes(coats=tuple(replace(coat, added_acid_fl_oz_per_gal=8.0) for coat in job.coats))
    assert peak(boosted) > 1.3 * peak(fumes())
    assert any("fumes rise" in one for one in boosted.warnings)


def test_contents_of_the_sheet_are_counted():
    """Calcium chloride is bound to no metal that keeps its chloride: it presses acid out."""
    rich = (Content("calcium chloride", 35.0, 35.0),)
    assert stained(contents=rich).rooms != stained(contents=BARE).rooms


def test_who_sprays_breathes_at_least_what_the_rooms_hold():
    found = fumes()
    assert found.sprayer is not None
    _, plan = planned()
    minutes = sum(band.end_min - band.start_min for f in plan.fields for band in f.bands)
    assert found.sprayer.minutes == pytest.approx(minutes, rel=0.1)
    assert found.sprayer.mean_8_h_ppm.likely < found.sprayer.mean_15_ppm.likely


def test_air_for_the_ceiling_by_hand():
    """Three times G/C: grams a minute over 3 mg/m³."""
    one = fumes().needed
    assert one is not None
    assert one.flow_m3_h.likely == pytest.approx(
        3 * one.release_g_min.likely * 60e3 / 3.0, rel=0.01
    )
    assert one.flow_cfm.likely == pytest.approx(one.flow_m3_h.likely / 1.699, rel=0.01)


def test_the_house_is_kept_out_of_after_each_coat():
    found = fumes()
    assert [one.coat for one in found.kept_out] == ["first", "second"]
    first, last = found.kept_out
    assert first.next_min is not None
    assert last.next_min is None
    assert last.high_min is None or last.likely_min is None or last.high_min >= last.likely_min


def test_what_it_rests_on_is_told_with_ranks_the_weightiest_first():
    found = fumes().unknowns
    assert {one.key for one in found} == {
        "strength", "lime", "salts", "open-time", "mist", "transfer", "air", "doors",
    }  # fmt: skip
    spread = [one.peak_to_ppm / one.peak_from_ppm for one in found]
    assert spread == sorted(spread, reverse=True)
    ranks = {one.key: one.rank for one in found}
    assert ranks["lime"] == ranks["mist"] == ranks["air"] == "guess"
    (strength,) = [one for one in found if one.key == "strength"]
    assert (strength.low, strength.likely, strength.high) == (8.0, 10.0, 12.0)


def test_a_respirator_a_reading_and_open_air_are_always_asked_for():
    for found in (fumes(), fumes(site=Site(house="open", fans=3))):
        assert set(STANDING) <= set(found.warnings)


def test_a_silent_sheet_and_a_house_of_which_nothing_was_told_are_said():
    job, plan = planned()
    untold = replace(job, stains=(replace(STAIN, hcl_percent_low=None, hcl_percent_high=None),))
    found = fumes_of(Ground(replace(untold, site=Site()), plan))
    assert any("umber was not entered" in one for one in found.warnings)
    assert any("shut was taken" in one for one in found.warnings)
    assert not any("not entered" in one for one in fumes().warnings)


def test_danger_at_once_is_said_when_the_high_end_passes_it():
    found = stained(hcl_percent_low=18.0, hcl_percent_high=22.0)
    assert max(one.peak_ppm.high for one in found.rooms) > 45
    assert any("dangerous at once" in one for one in found.warnings)


def test_chromate_stands_against_its_own_limit():
    """By hand: mist is 0.2 % of a 5.5 % dichromate stain, over half a sphere of 1 m at 0.1 m/s."""
    found = stained(chromate=True, contents=(Content("sodium dichromate", 5.0, 6.0),)).chromate
    assert found is not None
    assert found.told
    assert (found.limit_ug_m3, found.action_ug_m3) == (5.0, 2.5)
    _, plan = planned()
    bands = [(f.coat, band) for f in plan.fields for band in f.bands]
    share = {"first": 1 / 2, "second": 1 / 3}
    stain_l = sum(share[coat] * band.litres for coat, band in bands)
    minutes = sum(max(band.end_min - band.start_min, 0.1) for _, band in bands)
    grams = stain_l * 1.2 * 1000 * 0.055 * 0.397 * 0.002
    passing = 0.5 * 6.283 * 0.1 * 60
    wanted = grams / minutes / passing * 1e6
    assert found.while_spraying_ug_m3.likely == pytest.approx(wanted, rel=0.12)
    assert found.mean_8_h_ug_m3.likely > 5


def test_chromate_that_is_only_named_is_guessed_and_none_is_none():
    assert fumes().chromate is None
    named = stained(chromate=True)
    assert named.chromate is not None
    assert not named.chromate.told
    assert any("1926.1126" in one for one in named.warnings)


def test_ammonia_is_told_only_where_it_is_used():
    assert fumes().ammonia is None
    by_word = fumes(washing=Washing(base="ammonia water")).ammonia
    in_hand = fumes(materials=(Material("a", "ammonia water"),)).ammonia
    assert by_word == in_hand is not None
    assert by_word.over_liquid_ppm.likely > 300


def test_another_way_of_saying_the_same_coats_is_the_same_air():
    """A coat of 1:1 is a coat of 2:2."""
    same = fumes(coats=(Coat("first", "umber", "2:2"), Coat("second", "umber", "2:4")))
    assert same.rooms == fumes().rooms


def test_said_in_lines():
    found = fumes()
    lines = fumes_said(found, us=True)
    assert any("worst room" in one for one in lines)
    assert sum("peak" in one for one in lines) == len(found.rooms)
    assert not any("e+" in one for one in lines)


@pytest.mark.parametrize("us", [True, False])
def test_every_hour_is_told_in_the_manner_of_the_job(us):
    found = fumes()
    hours = re.findall(r"\b(\d+):\d\d\b( [ap]m)?", "\n".join(fumes_said(found, us=us)))
    assert len(hours) > len(found.rooms)
    assert {bool(half) for _, half in hours} == {us}
    assert not any(hour.startswith("0") and len(hour) > 1 for hour, _ in hours)


def test_a_plan_that_sprays_nothing_says_so():
    job, plan = planned()
    found = fumes_of(Ground(job, replace(plan, fields=())))
    assert found.rooms == ()
    assert fumes_said(found, us=True)[0].startswith("Nothing is sprayed")
