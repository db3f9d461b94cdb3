"""The score of the clocks on the invented floors: watching helps, the nearer the better."""

from farwall.bench.floors_score import score_floors, score_same_room, score_second_coat


def test_watching_a_closet_helps_its_drying_clocks():
    scores = {one.clock: one for one in score_floors(range(1, 61))}
    for name in ("dry to recoat", "dry to neutralise", "dry-down before sealing"):
        assert scores[name].error_after < 0.8 * scores[name].error_before


def test_a_first_coat_tells_of_the_second_and_a_closet_s_two_tell_how():
    alone, closet_too = score_second_coat(range(1, 61))
    assert alone.floors == closet_too.floors == 60
    assert closet_too.error_after < alone.error_after < alone.error_before


def test_the_same_room_tells_more_than_a_closet():
    closet = {one.clock: one for one in score_floors(range(1, 61))}
    room = {one.clock: one for one in score_same_room(range(1, 61))}
    assert {f"{name}, same room" for name in closet} == set(room)
    for name in ("dry to recoat", "dry-down before sealing", "open time"):
        assert room[f"{name}, same room"].error_after < closet[name].error_after
        assert room[f"{name}, same room"].error_before == closet[name].error_before
