"""Minutes in a respirator: by hand, and the same for any order, doubling and striking."""

import random
from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.story.entries import Log
from tests.midday import day_of

from farwall.facts.log import Entry, Kept
from farwall.facts.workers import Cartridge, Worker
from farwall.job.story import story
from farwall.job.story.say import told
from farwall.job.story.wearing import LONGEST_ON_MIN, wearing

PLAN = day_of("quince-street")
ADA = Worker("ada", "Ada Lovage", ("sprays",), cartridge=Cartridge(change_after_min=120))


def worn(log, at_min=None, workers=()):
    return wearing(story(PLAN, log.kept), at_min=at_min, workers=workers)


def test_minutes_between_on_and_off_and_up_to_now_by_hand():
    """On 10 to 40, and from 50; at 62 that is 30 + 12 = 42 min."""
    log = Log(PLAN)
    log("respirator-on", 10, person="Ada")
    log("respirator-off", 40, person="Ada")
    log("respirator-on", 50, person="ada ")
    (one,), odd = worn(log, 62)
    assert (one.minutes, one.on, one.minutes_by_day) == (42, True, (("2026-05-14", 42),))
    assert odd == ()


def test_a_new_pair_counts_from_its_own_minute_by_hand():
    """On 0 to 60, changed at 45, on again 70 to 80: 15 + 10 = 25 min in the new pair."""
    log = Log(PLAN)
    log("respirator-on", 0, person="Ada")
    log("cartridge-changed", 45, person="Ada", change_after_min=180)
    log("respirator-off", 60, person="Ada")
    log("respirator-on", 70, person="Ada")
    log("respirator-off", 80, person="Ada")
    (one,), _ = worn(log)
    assert (one.minutes, one.pair_min, one.pair_since_min, one.pair_limit_min) == (70, 25, 45, 180)


def test_two_people_are_two_and_one_of_several_names_is_one():
    log = Log(PLAN)
    log("respirator-on", 0, person="ada")
    log("respirator-on", 1, person="Bo")
    log("respirator-off", 5, person="Ada Lovage")
    log("respirator-off", 9, person="Bo")
    found, _ = worn(log, workers=(ADA,))
    assert [(one.person, one.minutes) for one in found] == [("Ada Lovage", 5), ("Bo", 8)]
    log("respirator-on", 20, person="sprayer")
    assert [one.on for one in worn(log, 21, (ADA,))[0]] == [True, False]


def test_what_cannot_be_so_is_told_and_stops_nothing():
    log = Log(PLAN)
    log("respirator-off", 2, person="Ada")
    log("respirator-on", 5, person="Ada")
    log("respirator-on", 8, person="Ada")
    log("respirator-off", 15, person="Ada")
    (one,), odd = worn(log)
    assert one.minutes == 10
    assert len(odd) == 2
    assert set(odd) <= set(story(PLAN, log.kept).contradictions)


def test_a_forgotten_off_is_capped_and_the_next_day_is_counted_by_itself_by_hand():
    """On at 0 and never off; on at 1440 for 30 min: 720 + 30, on two days."""
    log = Log(PLAN)
    log("respirator-on", 0, person="Ada")
    log("respirator-on", 1440, person="Ada")
    log("respirator-off", 1470, person="Ada")
    (one,), odd = worn(log)
    assert one.minutes == LONGEST_ON_MIN + 30
    assert one.minutes_by_day == (("2026-05-14", 720), ("2026-05-15", 30))
    assert len(odd) == 1
    left = Log(PLAN)
    left("respirator-on", 0, person="Ada")
    assert (worn(left, 5000)[0][0].minutes, worn(left, 5000)[0][0].on) == (LONGEST_ON_MIN, False)


def test_a_spell_over_midnight_is_parted_by_the_clock_of_the_house_by_hand():
    """The plan begins at 8:00; 950 min later it is 23:50: 10 min of one day, 20 of the next."""
    log = Log(PLAN)
    log("respirator-on", 950, person="Ada")
    log("respirator-off", 980, person="Ada")
    (one,), _ = worn(log)
    assert one.minutes_by_day == (("2026-05-14", 10), ("2026-05-15", 20))


def test_the_story_tells_it():
    log = Log(PLAN)
    log("respirator-on", 10, person="Ada")
    log("respirator-off", 40, person="Ada")
    lines = told(PLAN, story(PLAN, log.kept), us=True).splitlines()
    assert "Respirator, Ada: 30 min on 2026-05-14; pair on now 30 min." in lines


WORDS = ("respirator-on", "respirator-off", "cartridge-changed")
EVENTS = st.lists(
    st.tuples(st.sampled_from(WORDS), st.integers(0, 900), st.sampled_from(["Ada", "Bo"])),
    max_size=24,
)


def by_the_minute(events, now):
    """The plain model: each person's minutes counted one by one, taken off at the first off."""
    found = {}
    for person in {one[2] for one in events}:
        on, own, minutes, pair = None, [e for e in events if e[2] == person], 0, 0
        for minute in range(now + 1):
            if on is not None and minute - on <= LONGEST_ON_MIN and minute > 0:
                minutes += 1
                pair += 1
            for word, at, _ in own:
                if at != minute:
                    continue
                if word == "respirator-on" and (on is None or minute - on > LONGEST_ON_MIN):
                    on = minute
                elif word == "respirator-off":
                    on = None
                elif word == "cartridge-changed":
                    pair = 0
        found[person] = (minutes, pair)
    return found


@settings(max_examples=60, deadline=None)
@given(EVENTS, st.randoms(use_true_random=False), st.integers(0, 200))
def test_any_order_doubling_and_striking_tells_the_same(events, rng, later):
    """Held to a count minute by minute: late, doubled and shuffled entries change nothing, and
    struck ones count not."""
    events = sorted(events, key=lambda one: one[1])
    log = Log(PLAN)
    for word, at, person in events:
        log(word, at, person=person)
    standing = list(events)
    if events and rng.random() < 0.5:
        gone = rng.randrange(len(events))
        log("struck", events[gone][1], entry=log.kept[gone].entry.id, counted=0)
        del standing[gone]
    now = max([one[1] for one in events], default=0) + later
    sent = [*log.kept, *rng.sample(log.kept, len(log.kept) // 2)]
    rng.shuffle(sent)
    found, odd = wearing(story(PLAN, sent), at_min=now)
    straight = wearing(story(PLAN, log.kept), at_min=now)
    assert (found, odd) == straight
    model = by_the_minute(standing, now)
    assert {one.person: (one.minutes, one.pair_min) for one in found} == {
        name: (pytest.approx(minutes), pytest.approx(pair))
        for name, (minutes, pair) in model.items()
    }
    for one in found:
        for (_, end), (begin, _) in zip(one.spells, one.spells[1:], strict=False):
            assert end <= begin
        assert sum(minutes for _, minutes in one.minutes_by_day) == pytest.approx(one.minutes)


@given(EVENTS, st.integers(-12, 14), st.integers(-12, 14))
@settings(max_examples=25, deadline=None)
def test_the_offset_in_which_a_phone_writes_its_minutes_changes_nothing(events, one, other):
    start = datetime.fromisoformat(PLAN.starts_at)

    def written(hours):
        zones = [timezone(timedelta(hours=hours)), start.tzinfo]
        kept = []
        for n, (word, at, person) in enumerate(sorted(events, key=lambda each: each[1])):
            moment = (start + timedelta(minutes=at)).astimezone(zones[n % 2])
            entry = Entry(f"id-{n:03d}", "quince", word, moment.isoformat(), device="d",
                          number=n + 1, about={"person": person})  # fmt: skip
            kept.append(Kept(entry, n, moment.isoformat(), 0.0))
        random.Random(hours).shuffle(kept)
        return wearing(story(PLAN, kept), at_min=1000)

    assert written(one) == written(other)


def test_who_sprays_without_a_name_is_told_as_the_sprayer():
    """The phone enters `sprayer` where nobody told a name."""
    log = Log(PLAN)
    log("respirator-off", 3, person="sprayer")
    told = story(PLAN, log.kept).contradictions
    assert told == ("The respirator of the sprayer is told to be off, and was not on.",)
