"""Each rule of the day, once when it speaks and once when it is silent."""

from dataclasses import replace
from types import SimpleNamespace

import pytest
from tests.job.live.test_now import JOB, PLAN, at, morning
from tests.job.story.entries import Log

from farwall.job.live.rules import watch_of
from farwall.job.live.say import said_now
from farwall.job.story.noun import Story
from farwall.phrasebook import said_whole, speaking


def rules(found, *, stop=None):
    return {one.rule for one in found.advice if stop is None or one.stop is stop}


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("word", "about", "rule"),
    [
        ("fizz", {"seen": False}, "fizz"),
        ("reading", {"slab_c": 30.5}, "slab"),
        ("reading", {"slab_c": 9.0}, "slab"),
        ("mixed", {"coat": "first", "litres": 1.0, "added": "bleach"}, "liquids"),
        ("mixed", {"coat": "first", "litres": 1.0, "added": "ammonia"}, "liquids"),
        ("mixed", {"coat": "first", "litres": 1.0, "added": "another stain"}, "liquids"),
        ("mixed", {"coat": "first", "litres": 1.0, "added": "unknown"}, "liquids"),
        # Nobody told of this house whether the sheet names an oxidiser: unknown means refused.
        ("mixed", {"coat": "first", "litres": 1.0, "added": "muriatic acid"}, "liquids"),
        ("coat-judged", {"coat": "first", "look": "darker"}, "wet look"),
        ("hurt", {"what": "splash in the eye"}, "hurt"),
    ],
)
def test_what_stops_the_day(word, about, rule):
    """No source: the rules of the trade for the day."""
    log = morning()
    assert rules(at(log, 16.4), stop=True) == set()
    log(word, 16.35, **about)
    assert rule in rules(at(log, 16.4), stop=True)


@pytest.mark.parametrize(
    ("word", "about"),
    [
        ("fizz", {"seen": True}),
        ("reading", {"slab_c": 22.0}),
        ("mixed", {"coat": "first", "litres": 1.0, "added": "water"}),
        ("coat-judged", {"coat": "first", "look": "lighter"}),
        ("hurt", {"what": "a cut", "done": "washed, plaster"}),
    ],
)
def test_what_does_not(word, about):
    log = morning()
    log(word, 16.35, **about)
    assert rules(at(log, 16.4), stop=True) == set()


def test_a_dirty_rag_or_a_sour_rinse_keeps_the_sealer_off():
    for about, stops in (({"rag": "grey"}, True), ({"ph": 6.0}, True),
                         ({"ph": 7.0, "rag": "clean"}, False)):  # fmt: skip
        log = Log(PLAN)
        log("rinsed", 1000, **about)
        assert ("rinsed clean" in rules(at(log, 1001), stop=True)) is stops


def test_sealer_waits_for_a_slab_above_its_dew_point_and_its_label():
    """By hand: 21 °C and 70 % have a dew point of 15.3 °C; 17 °C lies 1.7 K above it."""
    log = Log(PLAN)
    log("rinsed", 1000, ph=7.0, rag="clean")
    log("reading", 1100, slab_c=17.0, air_c=21.0, rh_percent=70.0)
    assert "dew point" in rules(at(log, 1101), stop=True)
    log("reading", 1150, slab_c=18.2, air_c=21.0, rh_percent=70.0)  # 2.9 K: 5 °F, and no 3 K
    assert "dew point" in rules(at(log, 1151), stop=True)
    log("reading", 1200, slab_c=19.0, air_c=21.0, rh_percent=50.0)
    assert rules(at(log, 1201), stop=True) == set()
    log("reading", 1300, slab_c=9.5, air_c=21.0, rh_percent=30.0)
    assert "sealer cold" in rules(at(log, 1301), stop=True)


@pytest.mark.parametrize(("slab_c", "stops"), [(9.9, True), (10.0, False), (10.5, False)])
def test_without_a_label_no_sealer_goes_on_a_slab_below_fifty_degrees(slab_c, stops):
    """By hand: 50 °F are 10 °C; 21 °C and 30 % have a dew point of 2.8 °C, far below."""
    log = Log(PLAN)
    log("rinsed", 1000, ph=7.0, rag="clean")
    log("reading", 1100, slab_c=slab_c, air_c=21.0, rh_percent=30.0)
    assert ("sealer cold" in rules(at(log, 1101), stop=True)) is stops
    log("handed-over", 1150)
    assert "sealer cold" not in rules(at(log, 1151))


def test_what_the_sealers_label_says_wins_by_hand():
    """By hand: 16 °C lie below the label's 18 °C; 21 °C and 50 % have a dew point of 10.2 °C, so
    that 16 °C are 5.8 K above it: more than 3 K and less than the label's 7 K."""
    log = Log(PLAN)
    log("rinsed", 1000, ph=7.0, rag="clean")
    log("reading", 1100, slab_c=16.0, air_c=21.0, rh_percent=50.0)
    assert rules(at(log, 1101), stop=True) == set()
    strict = replace(JOB, sealer=replace(JOB.sealer, least_slab_c=18.0, least_margin_k=7.0))
    assert rules(at(log, 1101, job=strict), stop=True) == {"sealer cold", "dew point"}


@pytest.mark.parametrize(
    ("late_min", "told"),
    [
        (-0.01, set()),
        (0.0, set()),
        (0.01, {"dead edge"}),
        (30.0, {"dead edge"}),
        (30.01, {"quiet log"}),
    ],
)
def test_an_edge_is_dead_past_its_minute_and_half_an_hour_later_the_log_is_quiet(late_min, told):
    log = morning(fields=7)
    last = PLAN.fields[7].bands[5]
    log("band-done", last.end_min, band=last.id)
    (due,) = (one.at_min for one in at(log, last.end_min).alarms if one.kind == "edge")
    found = rules(at(log, due + late_min))
    assert found & {"dead edge", "quiet log"} == told


@pytest.mark.parametrize(("from_min", "told"), [(70.0, True), (85.0, False), (60.0, False)])
def test_sun_that_a_late_day_lets_in_is_told_by_hand(from_min, told):
    """By hand: the last field is planned from 44.9 to 65.3 min and begun at 60: it ends about 80.
    Sun at 70 min would have come after the plan's end and now comes before it; at 85 it comes
    after both, and at 60 the plan has reckoned with it."""
    *others, last = PLAN.fields[:8]
    sunny = replace(last.open_times[0], polygon=last.bands[0].polygon, from_min=from_min)
    last = replace(last, open_times=(*last.open_times, sunny))
    plan = replace(PLAN, fields=(*others, last, *PLAN.fields[8:]))
    assert ("sun" in rules(at(morning(fields=7), 60.0, plan=plan))) is told


def test_a_slab_that_is_too_cold_outweighs_a_bead_that_stands():
    log = morning()
    log("drop-tested", 16.3, drop_s=75.0)
    log("reading", 16.35, slab_c=9.0)
    stops = [one.rule for one in at(log, 16.4).advice if one.stop]
    assert stops.index("slab") < stops.index("drop")


@pytest.mark.parametrize(("factor", "odd"), [(1.65, False), (1.75, True), (0.5, True)])
def test_odd_is_what_lies_far_off_on_either_side_by_hand(factor, odd):
    """By hand: 3.5 times 0.149 is 0.522 in the logarithm: 1.69 times, or 0.59 times."""
    assert ("odd look" in rules(at(morning(factor), 16.4))) is odd


@pytest.mark.parametrize(("took_min", "told"), [(4.0, False), (4.01, True), (5.0, True)])
def test_a_band_of_more_than_half_the_open_time_is_told_by_hand(took_min, told):
    """By hand: an edge of the fifth field lives 8 min at the least; half of them are 4."""
    assert PLAN.fields[4].open_time_min.low == 8.0
    log = morning()
    log("field-started", 16.5, field="first.5")
    log("band-done", 17.5, band="first.5.1")
    log("band-done", 17.5 + took_min, band="first.5.2")
    assert ("band time" in rules(at(log, 17.6 + took_min))) is told


@pytest.mark.common_practice
def test_a_coat_that_is_right_stops_what_was_still_to_come_and_says_nothing_when_all_is_done():
    """No source: stop where the wet look is right, even if two coats were quoted."""
    log = morning()
    log("coat-judged", 16.35, coat="first", look="right")
    (found,) = (one for one in at(log, 16.4).advice if one.rule == "wet look")
    assert found.do == "Stop there, even if two coats were quoted."
    whole = Log(PLAN)
    for band in (band for field in PLAN.fields for band in field.bands):
        whole("band-done", band.end_min, band=band.id)
    end = max(field.end_min for field in PLAN.fields)
    whole("coat-judged", end + 60, coat=PLAN.fields[-1].coat, look="right")
    assert "wet look" not in rules(at(whole, end + 61))


def test_a_look_that_no_slab_explains_asks_to_be_read_again():
    """By hand: this plan's spread, 15 %, is 0.149 in the logarithm; 3.5 of it is 1.69 times."""
    assert [g.value for g in PLAN.grounds if g.name == "wishes.spread_percent"] == ["15"]
    assert "odd look" not in rules(at(morning(1.6), 16.4))
    assert "odd look" in rules(at(morning(2.2), 16.4))


def test_a_bead_in_the_next_field_keeps_it_shut():
    rooms = {**JOB.survey.rooms}
    room = PLAN.fields[4].rooms[0]
    rooms[room] = replace(next(iter(rooms.values())), drop_s=75.0)
    job = replace(JOB, survey=replace(JOB.survey, rooms=rooms))
    assert "drop" in rules(at(morning(), 16.4, job=job), stop=True)


@pytest.mark.parametrize("where", [{}, {"room": True}], ids=["anywhere", "in the room"])
def test_a_drop_timed_over_the_coat_below_is_held_to_before_what_the_job_tells(where):
    room = PLAN.fields[4].rooms[0]
    about = {"room": room} if where else {}
    log = morning()
    log("drop-tested", 16.38, drop_s=75.0, coat="first", **about)
    assert "drop" in rules(at(log, 16.4), stop=True)
    log("drop-tested", 16.39, drop_s=20.0, coat="first", **about)
    assert "drop" not in rules(at(log, 16.4))
    log("drop-tested", 16.395, drop_s=75.0, room="another")
    assert "drop" not in rules(at(log, 16.4))


def test_every_rule_names_its_rank_and_source():
    log = morning()
    log("fizz", 16.3, seen=False)
    log("reading", 16.35, slab_c=31.0)
    found = at(log, 16.4).advice
    assert found
    assert all(one.rank and one.source and one.do for one in found)
    weights = [one.weight for one in found if one.stop]
    assert weights == sorted(weights, reverse=True)


def test_a_slab_read_alone_hides_no_damp_air_by_hand():
    """By hand: 21 °C and 70 % have a dew point of 15.3 °C; the slab, read again without the air,
    lies 1.2 K above it at 16.5 and 4.2 K above it at 19.5 °C."""
    log = Log(PLAN)
    log("rinsed", 1000, ph=7.0, rag="clean")
    log("reading", 1100, slab_c=17.0, air_c=21.0, rh_percent=70.0)
    log("reading", 1150, slab_c=16.5)
    assert "dew point" in rules(at(log, 1151), stop=True)
    log("reading", 1160, air_c=21.0)  # no dew point without its damp
    assert "dew point" in rules(at(log, 1161), stop=True)
    log("reading", 1200, slab_c=19.5)
    assert "dew point" not in rules(at(log, 1201))
    log("reading", 1300, air_c=21.0, rh_percent=90.0)  # dew point 19.3 °C
    assert "dew point" in rules(at(log, 1301), stop=True)


def test_a_band_is_timed_between_two_ends_that_were_entered():
    """The two bands before the third lie where the plan has them: how long it took is not known."""
    log = morning()
    log("field-started", 16.5, field="first.5")
    log("band-done", 30.0, band="first.5.3")
    assert "band time" not in rules(at(log, 30.1))
    log("band-done", 36.0, band="first.5.4")
    assert "band time" in rules(at(log, 36.1))


@pytest.mark.parametrize(
    ("begun", "at_min", "from_min", "to_min", "told"),
    [
        # the last field takes 20.4 min; the one before is done 10.1 min after it is begun
        (False, 55.0, 74.0, None, True),
        (False, 55.0, 76.0, None, False),
        (True, 55.0, 84.0, None, True),
        (True, 55.0, 87.0, None, False),
        (False, 90.0, 70.0, 91.0, True),
        (False, 90.0, 70.0, 90.0, False),
        (True, 90.0, 70.0, 99.0, False),
        (True, 90.0, 70.0, 101.0, True),
    ],
)
def test_sun_reaches_the_next_field_after_the_one_in_hand_and_goes_again_by_hand(
    begun, at_min, from_min, to_min, told
):
    """By hand: begun at once at 55 the last field is done about 75; after the seventh, about 86.
    Sun that has left the floor by then is no news."""
    *others, last = PLAN.fields[:8]
    sunny = replace(
        last.open_times[0], polygon=last.bands[0].polygon, from_min=from_min, to_min=to_min
    )
    last = replace(last, open_times=(*last.open_times, sunny))
    plan = replace(PLAN, fields=(*others, last, *PLAN.fields[8:]))
    log = morning(fields=6 if begun else 7)
    if begun:
        log("field-started", at_min, field="first.7")
    assert ("sun" in rules(at(log, at_min, plan=plan))) is told


@pytest.mark.parametrize(
    ("in_hand", "known", "left"),
    [(False, True, (3.0, 12.0)), (True, True, (None, None)), (False, False, (None, None))],
)
def test_what_is_left_is_held_against_a_field_only_at_its_stop_line(in_hand, known, left):
    """Inside a field, or where nobody looked, the rule of the mix left over has nothing to say."""
    standing = SimpleNamespace(
        story=Story("2026-01-01T08:00"),
        next_field=SimpleNamespace(area_m2=12.0),
        in_hand=SimpleNamespace() if in_hand else None,
        litres=SimpleNamespace(have_l=3.0, known=known),
        coat="first",
    )
    watch = watch_of(standing)
    assert (watch.left_l, watch.left_m2) == left


def test_an_edge_that_was_feathered_out_stops_nobody_any_more():
    """The day went on saying *stop and feather it out* for half an hour after it was."""
    log = morning(fields=7)
    last, following = PLAN.fields[7].bands[5:7]
    log("band-done", last.end_min, band=last.id)
    dead = last.end_min + 12.0
    assert "dead edge" in rules(at(log, dead), stop=True)
    log("feathered", dead, field=PLAN.fields[7].id)
    found = at(log, dead + 1.0)
    assert rules(found) & {"dead edge", "feathered"} == {"feathered"}
    assert not found.stops
    assert [one for one in found.alarms if one.kind == "edge"] == []
    told = said_now(PLAN, found).splitlines()[0]
    assert "field 1.8 is feathered out: plan the rest again, then go on with band 1.8.7." in told
    with speaking("es"):
        assert said_whole(told)
    log("band-done", dead + 3.0, band=following.id)
    went_on = at(log, dead + 3.1)
    assert rules(went_on) & {"dead edge", "feathered"} == set()
    assert [one for one in went_on.alarms if one.kind == "edge"]


def test_another_field_feathered_out_says_nothing_of_this_one():
    log = morning(fields=7)
    last = PLAN.fields[7].bands[5]
    log("band-done", last.end_min, band=last.id)
    log("feathered", last.end_min + 12.0, field=PLAN.fields[2].id)
    assert "dead edge" in rules(at(log, last.end_min + 12.1), stop=True)


def test_a_field_left_for_another_that_is_done_asks_for_the_tap_and_stops_nobody():
    """The last band of field 1.2 was not tapped, then 1.3 was done: *stop and feather it out* came
    for an edge that was long sprayed over."""
    log = morning(fields=1)
    second, third = PLAN.fields[1:3]
    log("band-done", second.bands[-2].end_min, band=second.bands[-2].id)
    log("field-started", third.start_min, field=third.id)
    log("field-done", third.end_min, field=third.id)
    found = at(log, third.end_min + 9.0)
    assert rules(found) & {"dead edge", "quiet log"} == {"quiet log"}
    assert not found.stops
    told = said_now(PLAN, found)
    assert "enter what was sprayed since: field 1.2 stands open in the log." in told
    with speaking("es"):
        assert all(said_whole(one) for one in told.splitlines())
