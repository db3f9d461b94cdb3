"""Waits watched within the very coat: nearer in time and place tells more."""

from dataclasses import replace

from farwall.bench.floors_drawn import drawn
from farwall.bench.floors_same_coat import _earlier, score_same_coat
from farwall.bench.floors_score import score_floors

_SEEDS = range(1, 81)


def test_the_first_place_is_stained_twenty_to_ninety_minutes_before_and_nothing_else_changes():
    for seed in _SEEDS:
        was, now = drawn(seed), _earlier(drawn(seed))
        assert 20 <= (now.room_at_h - now.closet_at_h) * 60 <= 90
        assert repr(replace(now, closet_at_h=was.closet_at_h)) == repr(was)


def test_the_coat_s_own_far_end_tells_more_than_its_first_room_and_that_more_than_a_closet_s():
    closet = {one.clock: one for one in score_floors(_SEEDS)}
    coat = {one.clock: one for one in score_same_coat(_SEEDS)}
    for name in ("dry to recoat", "dry to neutralise"):
        first, end = (coat[f"{name}, {where} of the coat"] for where in ("first room", "far end"))
        assert first.floors > 60
        assert end.error_after < first.error_after < closet[name].error_after
