"""Which sprayer is taken, and why one is left in the van."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.facts.van import Flow, Van, VanSprayer
from farwall.job.van.sprayers import chosen, condition

GOOD = VanSprayer("blue", "acid-proof", 7.6, "02", uses=3, flows=(Flow("2026-04-01", 0.70),))
SPRAYERS = st.builds(
    VanSprayer,
    id=st.uuids().map(str),
    kind=st.sampled_from(["cheap", "acid-proof"]),
    tank_l=st.sampled_from([7.6, 11.4]),
    tip=st.sampled_from(["", "02"]),
    uses=st.integers(0, 40),
    seals_at=st.integers(0, 20),
    flows=st.lists(
        st.builds(Flow, on=st.just("2026-04-01"), l_min=st.floats(0.3, 1.5)), max_size=3
    ).map(tuple),
    unsound=st.sampled_from(["", "", "its hose leaks"]),
)


def worn(one, l_min):
    return replace(one, flows=(*one.flows, Flow("2026-05-01", l_min, one.uses)))


@pytest.mark.common_practice
def test_a_cheap_one_lasts_one_or_two_jobs():
    """Common practice, no source: a cheap sprayer lasts one or two jobs, the seals go first."""
    words = [condition(replace(GOOD, kind="cheap", uses=n)).word for n in range(4)]
    assert words == ["sound", "watch", "no", "no"]


@pytest.mark.common_practice
def test_seals_made_for_acid_last_ten_to_thirty_jobs_and_new_ones_begin_anew():
    """Common practice, no source: 10 to 30 jobs when flushed every day."""
    assert condition(replace(GOOD, uses=9)).word == "sound"
    assert condition(replace(GOOD, uses=10)).word == "watch"
    assert condition(replace(GOOD, uses=30)).word == "no"
    assert condition(replace(GOOD, uses=30, seals_at=25)).word == "sound"


def test_a_tip_that_gives_a_tenth_more_is_replaced_published():
    """Extension services' slides on nozzles: replace a tip at 10 % more flow than new."""
    assert condition(worn(GOOD, 0.70 * 1.09)).word == "sound"
    state = condition(worn(GOOD, 0.70 * 1.11))
    assert state.word == "no"
    assert state.flow_change == pytest.approx(0.11)


def test_the_spare_is_the_one_most_alike_by_hand():
    """By hand: green differs by 0.01/0.70, red by 0.13/0.70, which is told when it must do."""
    green = replace(GOOD, id="green", uses=5, flows=(Flow("2026-04-01", 0.71),))
    red = replace(GOOD, id="red", uses=4, flows=(Flow("2026-04-01", 0.83),))
    first, spare, mind = chosen(Van((GOOD, red, green)), tank_l=7.6, wanted_l_min={})
    assert (first, spare, mind) == ("blue", "green", ())
    first, spare, mind = chosen(Van((GOOD, red)), tank_l=7.6, wanted_l_min={})
    assert (first, spare) == ("blue", "red")
    assert "differ by 19 %" in mind[0]


def test_one_alone_has_no_spare_and_none_sound_is_told():
    assert "no sound spare" in " ".join(chosen(Van((GOOD,)), tank_l=7.6, wanted_l_min={})[2])
    bad = replace(GOOD, unsound="its hose leaks")
    assert chosen(Van((bad,)), tank_l=7.6, wanted_l_min={}) == (
        "", "", ("No sprayer in the van is sound: buy two alike.",)
    )  # fmt: skip


def test_the_pace_that_a_flow_asks_for_by_hand():
    """By hand: 0.70 L/min where 0.50 is wanted lays 0.5 at 140 % of the pace."""
    mind = chosen(Van((GOOD,)), tank_l=7.6, wanted_l_min={"1": 0.5, "2": 0.72})[2]
    assert any(
        "140 % of the planned pace" in one and "coat 1 wants 0.13 gal/min" in one for one in mind
    )
    assert not any("coat 2" in one for one in mind)


@given(st.lists(SPRAYERS, max_size=6))
def test_what_is_taken_is_never_one_that_is_not_fit(sprayers):
    van = Van(tuple(sprayers))
    first, spare, _ = chosen(van, tank_l=7.6, wanted_l_min={"first": 0.6})
    fit = {one.id for one in sprayers if condition(one).word != "no"}
    sound = {one.id for one in sprayers if condition(one).word == "sound"}
    assert bool(first) == bool(fit)
    assert bool(spare) == (len(fit) > 1)
    assert {first, spare} - {""} <= fit
    assert not sound or first in sound
    assert not first or first != spare
