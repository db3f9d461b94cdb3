"""Readings beside a strip and beside the coat: what they do to a wait, by laws and by hand."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.beside import NOTHING, TISSUE, Beside, carried_beside, spread_beside
from farwall.air.waits import DRY_DOWN, NEUTRALISE, RECOAT, carried
from farwall.facts.log_words import TISSUE as TOLD
from farwall.facts.log_words import WORDS

PACES = st.floats(0.2, 5.0)


@given(st.floats(0.1, 5.0), PACES, PACES)
def test_without_readings_it_is_what_it_was(share, seen, asked):
    plain = carried(RECOAT, share, pace_seen=seen, pace_asked=asked)
    told = carried_beside(RECOAT, share, pace_seen=seen, pace_asked=asked, beside=NOTHING)
    assert told == pytest.approx(plain)
    assert spread_beside(RECOAT, NOTHING) == RECOAT


@given(st.floats(0.05, 1.0), st.floats(0.05, 1.0), PACES, PACES)
def test_a_tile_that_loses_more_here_makes_the_wait_shorter(seen, asked, pace_seen, pace_asked):
    paces = {"pace_seen": pace_seen, "pace_asked": pace_asked}
    slow, quick = (
        carried_beside(RECOAT, 1.0, beside=Beside(tile_seen=seen, tile_asked=one), **paces)
        for one in (asked, asked * 1.5)
    )
    assert quick < slow


def test_by_hand_a_tile_that_loses_twice_as_much():
    """Equal paces by the plan, the tile twice as quick: 2^-0.65 = 0.637 of the share."""
    twice = Beside(tile_seen=0.1, tile_asked=0.2)
    found = carried_beside(RECOAT, 1.0, pace_seen=1.0, pace_asked=1.0, beside=twice)
    assert found == pytest.approx(0.637, abs=1e-3)


@pytest.mark.parametrize("wait", [RECOAT, NEUTRALISE])
def test_the_more_is_read_the_less_one_occasion_differs(wait):
    ways = [
        NOTHING,
        Beside(air=True),
        Beside(tile_seen=0.1, tile_asked=0.1),
        Beside(tile_seen=0.1, tile_asked=0.1, film_ratio=1.0),
    ]
    spreads = [spread_beside(wait, one).spread.occasion for one in ways]
    assert spreads == sorted(spreads, reverse=True)
    assert len(set(spreads)) == len(spreads)


def test_a_dry_down_knows_no_film_and_a_dry_tile_tells_nothing():
    thick = Beside(film_ratio=2.0)
    assert carried_beside(DRY_DOWN, 1.0, pace_seen=1, pace_asked=1, beside=thick) == 1.0
    assert spread_beside(DRY_DOWN, thick) == DRY_DOWN
    assert not Beside(tile_seen=0.0, tile_asked=0.2).tile


def test_the_words_of_the_tissue_are_those_of_the_log():
    assert tuple(word for word, _ in TISSUE) == TOLD
    speeds = [speed for _, speed in TISSUE]
    assert speeds == sorted(speeds)
    keys = {one.key for one in WORDS["reading"].carried}
    assert {"tissue", "tile_kg_m2_h", "air_speed_m_s"} <= keys
