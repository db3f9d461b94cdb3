"""The invented floors with more read beside the strip: what is read is read, and not the truth."""

import pytest

from farwall.bench.floors_drawn import TEST, TUNING, drawn
from farwall.bench.floors_read import WAYS, score_read
from farwall.bench.floors_score import score_floors, strip_of
from farwall.bench.floors_true import tiles_of

SEEDS = range(1, 25)


@pytest.fixture(scope="module")
def scores():
    return {one.clock: one for one in score_read(SEEDS, ("nothing more", "vane", "tile"))}


def test_with_nothing_more_read_it_is_the_clocks_own_score(scores):
    own = {one.clock: one for one in score_floors(SEEDS)}
    for name in ("dry to recoat", "dry to neutralise"):
        here, there = scores[f"{name}, closet: nothing more"], own[name]
        assert here.error_after == pytest.approx(there.error_after)
        assert here.within_before == pytest.approx(there.within_before)


def test_every_way_is_scored_from_a_closet_and_in_the_room(scores):
    assert len(scores) == 12
    assert {one.floors for one in scores.values()} == {len(SEEDS)}


def test_a_reading_moves_the_answer(scores):
    for where in ("closet", "room"):
        told = [
            scores[f"dry to recoat, {where}: {way}"] for way in ("nothing more", "vane", "tile")
        ]
        assert len({one.error_after for one in told}) == 3


def test_a_tile_knows_nothing_of_how_the_stained_floor_gives_off():
    """The same air over two floors that differ in that alone dries the same tile."""
    from dataclasses import replace

    floor = drawn(3)
    other = replace(floor, true=replace(floor.true, leaving=2 * floor.true.leaving))
    first, second = tiles_of([floor]), tiles_of([other])
    for one, two in zip(first, second, strict=True):
        assert float(two[0]) == pytest.approx(float(one[0]), rel=0.15)  # its film is colder


def test_a_strip_and_its_room_are_read_at_the_strips_hour():
    floors = [drawn(seed) for seed in (1, 2)]
    closet, room = tiles_of([strip_of(one) for one in floors])
    assert closet == pytest.approx(room, rel=0.2)


def test_the_ways_are_told_once_and_the_halves_do_not_meet():
    assert len(set(WAYS)) == len(WAYS)
    assert not set(TUNING) & set(TEST)
