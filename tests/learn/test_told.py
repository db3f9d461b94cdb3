"""What a job tells: one voice a part."""

import math

import pytest

from farwall.facts.closed import ClosedJob, ColourSeen, Rinsed, Sprayed, TaskHours, WaitSeen
from farwall.learn.told import coverage_path, drops, field_offs, room_offs, told_of


def job(**told):
    return ClosedJob(1, "j", "2027-05-14", **told)


def test_coverage_is_all_floor_over_all_litres_by_hand():
    """(40 + 8) m² over (8 + 2) L is 4.8 m²/L, whichever field is large."""
    told = told_of(job(sprayed=(
        Sprayed("one", "a", 40, 8, 9, finish="trowel", drop_s=30),
        Sprayed("one", "b", 8, 2, 1, finish="trowel", drop_s=25),
    )))  # fmt: skip
    (one,) = told["coverage of coat 1"]
    assert (one.value, one.path) == (pytest.approx(4.8), ("trowel", "slow drops"))
    (used,) = told["litres over planned, not sampled"]
    assert used.value == pytest.approx(10 / 10)
    assert "spray rate" not in told


def test_later_coats_are_of_one_kind():
    told = told_of(job(sprayed=tuple(
        Sprayed(f"c{n}", "a", 10, n, number=n) for n in (1, 2, 3)
    )))  # fmt: skip
    assert told["coverage of later coats"][0].value == pytest.approx(20 / 5)


def test_each_person_has_a_rate():
    told = told_of(job(sprayed=(
        Sprayed("one", "a", 30, 6, person="Ada", spray_min=10),
        Sprayed("one", "b", 10, 2, person="Bo", spray_min=5),
    )))  # fmt: skip
    assert {(one.path, one.value) for one in told["spray rate"]} == {
        (("Ada",), 3.0),
        (("Bo",), 2.0),
    }


def test_a_wait_is_the_mean_of_its_rooms_between_two_looks():
    """Room a: between 0.8 and 1.25, so 1.0; room b: 4.0; geometric mean 2."""
    told = told_of(job(waits=(
        WaitSeen("open time", 1.25, since=0.8, room="a"), WaitSeen("open time", 4.0, room="b"),
        WaitSeen("dry to recoat", 0.9, ended=False),
    )))  # fmt: skip
    (one,) = told["clock: open time"]
    assert one.value == pytest.approx(2.0)
    (least,) = told["clock: dry to recoat"]
    assert (least.value, least.unended) == (0.9, True)
    assert room_offs(job(waits=()), "open time") == []


def test_hours_are_brought_to_the_typical_floor():
    """Twice the typical floor takes 0.2 + 1.6 of its hours; three coats one and a half of two's."""
    told = told_of(job(
        hours=(TaskHours("rinse", 18, 278.7091), TaskHours("coat", 8.1, 278.7091)),
        sprayed=tuple(Sprayed(f"c{n}", "a", 10, 2) for n in range(3)),
    ))  # fmt: skip
    assert told["hours to rinse"][0].value == pytest.approx(10.0, rel=1e-4)
    assert told["hours to coat"][0].value == pytest.approx(3.0, rel=1e-4)


def test_hours_on_other_things_teach_nothing():
    assert told_of(job(hours=(TaskHours("other", 3, 100),))) == {}


def test_looks_are_steps_darker_by_plant():
    told = told_of(job(colour=(
        ColourSeen("darker", 1.5, "north"), ColourSeen("lighter", 0.5, "north"),
        ColourSeen("right", None, "south"),
    )))  # fmt: skip
    by_plant = {one.path: one.value for one in told["colour against the sample"]}
    assert by_plant == {("north",): 0.5, ("south",): 0.0}


def test_rinses_are_a_geometric_mean():
    told = told_of(job(rinsed=(Rinsed(2, "float"), Rinsed(8, "float"))))
    assert told["rinses until clean"][0].value == pytest.approx(4.0)


def test_fields_differ_about_their_own_coat():
    one = job(sprayed=(
        Sprayed("one", "a", 10, 2, 1), Sprayed("one", "b", 10, 8, 1), Sprayed("two", "a", 10, 2, 1),
    ))  # fmt: skip
    ((offs, free),) = field_offs(one)
    assert offs == pytest.approx([-math.log(2), math.log(2)])
    assert free == 1.0


@pytest.mark.common_practice
def test_classes_of_drops_have_no_source():
    """No source: below 8 s quick, above 20 s slow."""
    assert [drops(one) for one in (7.9, 8.0, 20.0, 20.1)] == [
        "quick drops", "usual drops", "usual drops", "slow drops",
    ]  # fmt: skip
    assert coverage_path(None, 12.0) == ()
