"""Two phones on one day's log: nothing lost in any interleaving, and one thing counts once."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.job.story.entries import Log
from tests.midday import bands_of, day_of, day_of_two

from farwall.job.live.standing import Standing
from farwall.job.story import story
from farwall.job.story.doubled import SAME_MIN
from farwall.phrasebook import in_spanish

PLAN = day_of("quince-street")
OFF_S = {"finisher": 240.0, "helper": -150.0}
"""How far the clocks of the two phones are off: some minutes apart."""


def phones():
    return {name: Log(PLAN, name) for name in OFF_S}


def told(logs, plan=PLAN):
    return story(plan, [one for log in logs.values() for one in log.kept])


def mixed_on(logs, *minutes, litres=(5.9, 5.9)):
    for (name, log), at, each in zip(logs.items(), minutes, litres, strict=True):
        log("mixed", at, off_s=OFF_S[name], coat="first", litres=each)


def test_one_batch_entered_by_both_counts_once_and_is_told():
    logs = phones()
    mixed_on(logs, -12, -11)
    found = told(logs)
    assert found.coat("first").mixed_l == found.coat("first").tub_l == 5.9
    assert [one.id for one in found.doubled] == ["helper-0001"]
    assert found.contradictions == (
        (
            "Coat 1: a batch of 5.9 L came from two phones and counts once; if there were two, "
            "enter the other again."
        ),
    )


def test_two_batches_apart_are_two_and_so_are_two_on_one_phone():
    logs = phones()
    mixed_on(logs, -12, -12 + SAME_MIN)
    assert told(logs).coat("first").mixed_l == 11.8
    log = Log(PLAN)
    for at in (-12, -11):
        log("mixed", at, coat="first", litres=5.9)
    assert story(PLAN, log.kept).coat("first").mixed_l == 11.8


@pytest.mark.parametrize(
    ("word", "about", "counted"),
    [
        ("hours", {"task": "coat", "hours": 4.0, "people": 2}, lambda s: s.hours_h["coat"] == 4.0),
        ("sealed", {"round": 1, "litres": 11.0}, lambda s: len(s.of("sealed")) == 1),
        ("waste", {"drum": "1", "litres": 180.0, "way": "hauled"},
         lambda s: len(s.of("waste")) == 1),
        ("neutralised", {"litres": 20.0}, lambda s: len(s.of("neutralised")) == 1),
        ("scrubbed", {"passes": 2}, lambda s: len(s.of("scrubbed")) == 1),
        ("vacuumed", {"litres": 90.0}, lambda s: len(s.of("vacuumed")) == 1),
        ("standby", {"hours": 2.0, "why": "plumber"}, lambda s: len(s.of("standby")) == 1),
        ("change", {"what": "hall too", "agreed_by": "Kim", "amount": "200.00"},
         lambda s: len(s.of("change")) == 1),
        ("paid", {"amount": "500.00"}, lambda s: len(s.of("paid")) == 1),
        ("called-back", {"what": "haze", "hours": 2.0}, lambda s: len(s.of("called-back")) == 1),
    ],
)  # fmt: skip
def test_whatever_adds_up_counts_once_from_two_phones_and_twice_from_one(word, about, counted):
    logs = phones()
    for (name, log), at in zip(logs.items(), (900, 901), strict=True):
        log(word, at, off_s=OFF_S[name], **about)
    found = told(logs)
    assert counted(found)
    (odd,) = found.contradictions
    assert f"entered as {word} came from two phones" in odd
    assert in_spanish(odd) is not None
    one = Log(PLAN)
    for at in (900, 901):
        one(word, at, **about)
    assert not counted(story(PLAN, one.kept))


def test_the_second_batch_entered_again_as_told_counts():
    logs = phones()
    mixed_on(logs, -12, -11)
    logs["helper"]("mixed", -10.5, off_s=OFF_S["helper"], coat="first", litres=5.9)
    assert told(logs).coat("first").mixed_l == 11.8


def test_batches_that_differ_both_count_and_are_asked_about():
    logs = phones()
    mixed_on(logs, -12, -11, litres=(5.9, 4.9))
    found = told(logs)
    assert found.coat("first").mixed_l == pytest.approx(10.8)
    assert "batches of 5.9 L and 4.9 L at nearly the same time" in found.contradictions[0]


def test_whoever_undoes_the_batch_that_both_entered_leaves_the_other():
    for name, off_s in OFF_S.items():
        logs = phones()
        mixed_on(logs, -12, -11)
        logs[name]("struck", -10, off_s=off_s, entry=f"{name}-0001")
        found = told(logs)
        assert found.coat("first").mixed_l == 5.9
        assert found.doubled == ()


def test_what_one_phone_carries_more_is_kept():
    logs = phones()
    logs["finisher"]("filled", 5, off_s=OFF_S["finisher"])
    logs["helper"]("filled", 6, off_s=OFF_S["helper"], tank_l=7.0)
    found = told(logs)
    assert [one.about for one in found.of("filled")] == [{"tank_l": 7.0}]
    assert found.coats == () or found.coats[0].tank_l in (7.0, None)


def test_where_two_spray_both_tanks_may_be_filled_at_once():
    plan = day_of_two("quince-street", helper=True)
    logs = phones()
    for name, log in logs.items():
        log("filled", 5, off_s=OFF_S[name])
    assert len(told(logs, plan).of("filled")) == 2
    named = phones()
    for name, log in named.items():
        log("filled", 5, off_s=OFF_S[name], sprayer="blue")
    assert len(told(named, plan).of("filled")) == 1


def test_a_band_undone_on_one_phone_and_told_by_the_other_is_done_and_said_to_be():
    logs = phones()
    for name, log in logs.items():
        log("band-done", 3, off_s=OFF_S[name], band="first.1.2")
    logs["helper"]("struck", 4, off_s=OFF_S["helper"], entry="helper-0001")
    found = told(logs)
    assert "first.1.2" in found.done()
    assert found.contradictions == (
        (
            "Undone on one phone, 1.1.2 was entered on another too and counts as done; if it is "
            "not, strike that entry as well."
        ),
    )
    logs["finisher"]("struck", 5, off_s=OFF_S["finisher"], entry="finisher-0001")
    assert told(logs).done() == {}
    assert told(logs).contradictions == ()


def test_a_band_or_field_that_both_tap_is_nothing_odd_but_an_hour_later_it_is():
    for word, about in (
        ("field-started", {"field": "first.1"}),
        ("band-done", {"band": "first.1.2"}),
    ):
        for later, odd in ((1.0, 0), (60.0, 1)):
            logs = phones()
            logs["helper"](word, 3, off_s=OFF_S["helper"], **about)
            logs["finisher"](word, 3 + later, off_s=OFF_S["finisher"], **about)
            assert len(told(logs).contradictions) == odd


def test_a_slip_that_was_undone_and_then_truly_done_is_nothing_odd():
    logs = phones()
    logs["helper"]("band-done", 3, off_s=OFF_S["helper"], band="first.1.2")
    logs["helper"]("struck", 4, off_s=OFF_S["helper"], entry="helper-0001")
    logs["finisher"]("band-done", 6, off_s=OFF_S["finisher"], band="first.1.2")
    assert told(logs).contradictions == ()


def test_a_batch_entered_by_both_asks_for_more_mix_in_time():
    """By hand: 5.9 L there, and not 11.8; a tub believed full would run dry in mid-field."""
    logs = phones()
    mixed_on(logs, -12, -11)
    logs["finisher"]("field-done", 2, off_s=OFF_S["finisher"], field="first.1")
    planned = sum(band.litres for band in bands_of(PLAN, 0) if band.id.startswith("first.1."))
    have = Standing(PLAN, told(logs), 2.0).litres.have_l
    assert have == pytest.approx(5.9 - planned, abs=0.2)


WHAT = st.sampled_from([
    ("band-done", {"band": "first.1.2"}), ("band-done", {"band": "first.2.1"}),
    ("field-done", {"field": "first.1"}), ("mixed", {"coat": "first", "litres": 5.9}),
    ("mixed", {"coat": "first", "litres": 4.1}), ("filled", {"tank_l": 7.0}), ("filled", {}),
    ("rinsed", {"room": "bath", "ph": 7.0}), ("tank-weighed", {"tank_l": 2.0}), ("struck", {}),
])  # fmt: skip
TAPS = st.lists(st.tuples(st.sampled_from(sorted(OFF_S)), st.floats(0.1, 5.0), WHAT), max_size=14)


@settings(deadline=None, max_examples=150)
@given(taps=TAPS, dice=st.randoms(use_true_random=False))
def test_two_logs_in_any_interleaving_tell_one_story_and_nothing_is_lost(taps, dice):
    logs, at = phones(), 0.0
    for name, apart, (word, about) in taps:
        at += apart
        last = logs[name].kept[-1].entry.id if logs[name].kept else "nothing"
        carried = {"entry": last} if word == "struck" else about
        logs[name](word, at, off_s=OFF_S[name], **carried)
    every = [one for log in logs.values() for one in log.kept]
    found = story(PLAN, every)
    came = [*every, *(dice.choice(every) for _ in range(3 if every else 0))]
    dice.shuffle(came)
    assert story(PLAN, came) == found
    parts = [*found.happened, *found.struck, *found.doubled]
    assert sorted(one.id for one in parts) == sorted(one.entry.id for one in every)
    for one in found.doubled:
        same = [o for o in found.of(one.word) if o.device != one.device
                and 0 <= one.at_min - o.at_min < SAME_MIN]  # fmt: skip
        assert same, "what counts not again stands on another phone"


def test_a_log_from_two_phones_is_told_line_by_line():
    from farwall.job.story.say import told as said

    logs = phones()
    mixed_on(logs, -12, -11)
    lines = said(PLAN, told(logs), us=False).splitlines()
    assert any(line.startswith("  told by two phones: 7:49 mixed: coat 1") for line in lines)
