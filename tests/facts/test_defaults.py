"""Filling a job's gaps: what is told wins, what was sampled wins over that, and all is said."""

from __future__ import annotations

from dataclasses import replace

import pytest

from farwall.facts.defaults import own_stain_words, settle
from farwall.facts.job import (
    Coat,
    Container,
    Crew,
    Job,
    Prices,
    RoomSurvey,
    Stain,
    Survey,
    Tools,
    Wishes,
)
from farwall.facts.samples import Sample
from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Exit, Floor, Opening, Room

SQUARE = PolygonGeometry((((0, 0), (4, 0), (4, 3), (0, 3), (0, 0)),))
FLOOR = Floor(
    rooms=(Room("hall", SQUARE),),
    openings=(Opening("front", "outside", ((1, 0), (2, 0)), ("hall",)),),
)
BARE = Job(version=1, floor=FLOOR, exits=(Exit("out", "front"),))
TWO_COATS = replace(
    BARE,
    stains=(Stain("sand"), Stain("bark")),
    coats=(Coat("first", "sand", "1:1"), Coat("second", "bark", "1:2")),
)


def ground(settled, name):
    """The one ground of that name."""
    (found,) = [one for one in settled.grounds if one.name == name]
    return found


@pytest.mark.common_practice
def test_a_bare_job_gets_two_coats_of_two_colours_light_first():
    settled = settle(BARE)
    assert [coat.cut for coat in settled.coats] == ["1:1", "1:2"]
    assert [coat.stain.id for coat in settled.coats] == ["light", "dark"]
    # Hand-worked: 200 ft2/gal x 0.09290304 m2/ft2 / 3.785411784 L/gal = 4.9085 m2/L.
    assert settled.coats[0].m2_per_l == pytest.approx(4.9085, abs=1e-4)
    assert settled.coats[1].m2_per_l == pytest.approx(7.3628, abs=1e-4)


@pytest.mark.common_practice
def test_a_bare_job_gets_a_trade_sprayer_and_a_trade_pace():
    tools = settle(BARE).tools
    assert tools.tank_l == pytest.approx(7.571, abs=1e-3)  # 2 gal
    assert tools.band_m == pytest.approx(1.1)
    assert tools.spray_m2_min == pytest.approx(2.787, abs=1e-3)  # 30 ft2/min
    assert tools.overlap_m == pytest.approx(0.2)


def test_every_default_says_its_rank_and_none_claims_to_be_measured():
    settled = settle(BARE)
    assert {one.rank for one in settled.grounds} == {"common practice", "guess"}
    assert ground(settled, "tools.walk_m_min").rank == "guess"
    assert ground(settled, "tools.tank_l").source == "common-practice"


def test_a_told_value_wins_and_is_said_to_be_told():
    settled = settle(replace(BARE, tools=Tools(tank_l=10.0)))
    assert settled.tools.tank_l == 10.0
    assert ground(settled, "tools.tank_l").rank == "measured here"


def test_a_samples_coverage_wins_over_the_coats_own_and_over_the_default():
    coat = Coat("only", "sand", "1:1", m2_per_l=6.0)
    told = replace(BARE, coats=(coat,), stains=(Stain("sand"),))
    sampled = replace(told, samples=(Sample("s1", coat="only", m2_per_l=4.0),))
    assert settle(told).coats[0].m2_per_l == 6.0
    assert settle(told).coats[0].rank == "from memory"
    assert settle(sampled).coats[0].m2_per_l == pytest.approx(4.0)
    assert settle(sampled).coats[0].rank == "measured here"
    assert settle(sampled).l_per_m2 == {"only": pytest.approx(0.25)}


def test_two_samples_of_one_coat_give_their_geometric_mean():
    samples = (Sample("s1", coat="first", m2_per_l=4.0), Sample("s2", coat="first", m2_per_l=9.0))
    settled = settle(replace(TWO_COATS, samples=samples))
    assert settled.coats[0].m2_per_l == pytest.approx(6.0)  # hand-worked: sqrt(4 x 9)


def test_a_sample_without_a_coat_bears_on_coverage_only_when_there_is_one_coat():
    stray = (Sample("s1", m2_per_l=4.0),)
    assert settle(replace(TWO_COATS, samples=stray)).coats[0].samples == ()
    alone = replace(TWO_COATS, coats=TWO_COATS.coats[:1], samples=stray)
    assert settle(alone).coats[0].m2_per_l == pytest.approx(4.0)


def test_the_sample_that_lost_its_sheen_soonest_speaks_for_the_coat():
    samples = (
        Sample("slow", coat="first", sheen_loss_min=12.0),
        Sample("quick", coat="first", sheen_loss_min=7.0),
    )
    sample = settle(replace(TWO_COATS, samples=samples)).coats[0].sample
    assert sample is not None
    assert sample.id == "quick"


def test_the_spread_is_smaller_only_when_every_coat_was_sampled():
    one = (Sample("s1", coat="first", m2_per_l=5.0),)
    both = (*one, Sample("s2", coat="second", m2_per_l=7.0))
    assert settle(TWO_COATS).spread_percent == 20
    assert settle(replace(TWO_COATS, samples=one)).spread_percent == 20
    assert settle(replace(TWO_COATS, samples=both)).spread_percent == 15
    assert settle(replace(TWO_COATS, wishes=Wishes(spread_percent=30.0))).spread_percent == 30
    assert [c.spread_percent for c in settle(replace(TWO_COATS, samples=one)).coats] == [15, 20]


def test_a_weak_tip_slows_the_pace_and_a_strong_one_does_not_quicken_it():
    # Hand-worked: 0.5 L/min x 4.9085 m2/L (the thirstier coat) = 2.454 m2/min < 2.787.
    assert settle(replace(BARE, tools=Tools(tip_l_min=0.5))).tools.spray_m2_min == pytest.approx(
        2.4543, abs=1e-4
    )
    assert settle(replace(BARE, tools=Tools(tip_l_min=5.0))).tools.spray_m2_min == pytest.approx(
        2.787, abs=1e-3
    )


def test_a_pace_that_the_tip_cannot_give_is_said_and_kept():
    settled = settle(replace(BARE, tools=Tools(tip_l_min=0.5, spray_m2_min=4.0)))
    assert settled.tools.spray_m2_min == 4.0
    assert "2.45 m2/min" in settled.warnings[0]


def test_a_room_takes_its_own_drop_time_then_the_houses_then_the_default():
    survey = Survey(drop_s=8.0, rooms={"hall": RoomSurvey(drop_s=30.0, sun=True)})
    assert settle(BARE).room("hall").drop_s == 12.0
    assert settle(BARE).room("hall").drop_told is False
    assert settle(replace(BARE, survey=Survey(drop_s=8.0))).room("hall").drop_s == 8.0
    own = settle(replace(BARE, survey=survey)).room("hall")
    assert (own.drop_s, own.sun, own.drop_told) == (30.0, True, True)


def test_when_only_the_air_was_read_the_slab_is_guessed_alike_and_says_so():
    settled = settle(replace(BARE, survey=Survey(air_c=10.0)))
    assert settled.survey.slab_c == 10.0
    assert ground(settled, "survey.slab_c").rank == "guess"
    assert ground(settled, "survey.air_c").rank == "measured here"


def test_a_stain_without_a_container_of_its_own_gets_invented_ones():
    prices = Prices(containers=(Container(3.785, "58.00", "sand"),))
    settled = settle(replace(TWO_COATS, prices=prices))
    assert [one.price for one in settled.containers_for("sand")] == ["58.00"]
    assert len(settled.containers_for("bark")) == 2


def test_the_start_is_the_jobs_else_the_callers_else_a_plain_stand_in():
    dated = replace(BARE, starts_at="2027-05-04T07:30:00-06:00")
    other = "2027-06-01T08:00:00-06:00"
    assert settle(dated, starts_at=other).starts_at == dated.starts_at
    assert settle(BARE, starts_at=other).starts_at == other
    assert settle(BARE).starts_at.startswith("2001-01-01T08:00")


def test_a_default_that_is_written_into_the_job_gains_no_rank_by_it():
    written = replace(
        TWO_COATS,
        tools=Tools(tank_l=7.571, walk_m_min=40.0),
        coats=(replace(TWO_COATS.coats[0], m2_per_l=4.909), TWO_COATS.coats[1]),
    )
    settled = settle(written)
    assert ground(settled, "tools.tank_l").rank == "common practice"
    assert ground(settled, "tools.walk_m_min").rank == "guess"
    assert ground(settled, "coats.first.m2_per_l").rank == "common practice"
    assert settled.tools.tank_l == 7.571


def test_a_house_without_a_second_adult_is_warned_of():
    assert any(
        "Nobody works alone" in said
        for said in settle(replace(BARE, crew=Crew(second_adult=False))).warnings
    )
    assert settle(BARE).warnings == ()


def test_a_weighed_sample_counts_as_measured_and_its_density_is_noted_where_no_sheet_told_it():
    """0.11 kg of a 1:1 mix of 1.2 kg/L are 100 mL; on half a square metre that is 5 m²/L."""
    weighed = Sample("s1", coat="first", area_m2=0.5, sprayer_before_kg=3.11, sprayer_after_kg=3.0)
    settled = settle(replace(TWO_COATS, samples=(weighed,)))
    first, rests_on = settled.coats[0], ground(settled, "coats.first.m2_per_l")
    assert (rests_on.rank, rests_on.source) == ("measured here", "sample s1")
    assert first.samples[0].m2_per_l == first.m2_per_l
    assert first.spread_percent < settled.coats[1].spread_percent
    noted = [one for one in settled.grounds if one.name.endswith("density_kg_l")]
    assert [(one.value, one.rank) for one in noted] == [("1.2", "from memory")]
    sheets = tuple(replace(one, density_kg_l=1.2) for one in settled.stains)
    told = settle(replace(TWO_COATS, samples=(weighed,), stains=sheets))
    assert told.coats[0].m2_per_l == pytest.approx(5.0)
    assert not [one for one in told.grounds if one.name.endswith("density_kg_l")]


def test_names_of_the_default_stains_are_words_of_ours_and_all_others_the_users():
    stains = (Stain("light", "light colour"), Stain("s", "umber"), Stain("bare"))
    assert own_stain_words(stains) == {"light", "s", "umber", "bare"}
