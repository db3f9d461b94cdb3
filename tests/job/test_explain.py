"""Why an order: what the best rests on, who is shut in by another, what another costs."""

from __future__ import annotations

import itertools

import pytest
from tests.spray.hand_floors import HALL_OF_THREE, TWO_WAYS_OUT, job, row

from farwall.facts.job import Tools, Wishes
from farwall.job.explain import explain
from farwall.job.ground import ground_of
from farwall.job.laying_out import laid_out
from farwall.job.plan_job import plan_job
from farwall.job.proof import proof_of
from farwall.job.say_why import said_why
from farwall.spray.order import House

START = "2026-06-08T08:00:00+00:00"


def test_an_order_that_shuts_somebody_in_says_who_and_where_by_hand():
    """By hand: b opens into a alone; with a sprayed first nobody gets out of b."""
    found = explain(job(row(3, 3)), order=("a", "b"))
    assert found.asked is not None
    assert not found.asked.stands
    assert found.asked.shut_in == ("Room b: no way out but into Room a, sprayed before it.",)
    assert "It shuts somebody in" in said_why(found, us=True)
    assert found.best.stands


def test_an_order_of_some_rooms_is_kept_and_weighed_beside_the_best():
    found = explain(job(HALL_OF_THREE), order=("right",))
    assert found.asked is not None
    assert found.asked.stands
    assert found.asked.rooms[0] == ("Right",)
    plan = plan_job(job(HALL_OF_THREE), order=("right",))
    assert [one.peak_age_min for one in found.asked.fields] == [
        pytest.approx(field.peak_age_min, abs=0.01) for field in plan.fields
    ]
    walked_m = found.best.walked_m
    assert f"The best comes to {found.best.minutes:.0f} min, {walked_m:.0f} m walked" in said_why(
        found, us=False
    )
    assert f"min, {walked_m / 0.3048:.0f} ft walked" in said_why(found, us=True)


def test_what_the_checker_finds_is_told_by_number_hour_and_the_units_of_the_job():
    """A hand so slow that every edge dies."""
    slow = Tools(tank_l=40.0, spray_m2_min=0.35)
    told = {}
    for units in ("us", "metric"):
        facts = job(row(3, 3), tools=slow, wishes=Wishes(units=units), starts_at=START)
        found = explain(facts, order=("b", "a"))
        told[units] = said_why(found, us=units == "us")
        assert any(one.startswith("dead-edge: At 8:") for one in found.asked.faults)
    assert "band 1.1.2" in told["us"]
    assert "one.1.2" not in told["us"]
    assert "' " in told["us"].partition("dead-edge")[2].partition("band")[0]
    assert " m, " in told["metric"].partition("dead-edge")[2].partition("band")[0]


def test_without_an_order_nothing_is_laid_beside_the_best():
    assert explain(job(row(3, 3))).asked is None


def test_the_largest_open_field_is_told_to_go_last():
    found = explain(job(TWO_WAYS_OUT))
    assert found.places[-1].rooms == ("Large",)
    assert found.places[0].decided == "the largest open field goes last"


def test_in_a_row_of_rooms_only_the_far_one_can_go():
    found = explain(job(row(3, 3, 3)))
    for place in found.places[:-1]:
        assert place.decided == "any other now would shut somebody in"


@pytest.mark.parametrize("place", [HALL_OF_THREE, TWO_WAYS_OUT, row(3, 3, 3)])
def test_no_order_walked_one_by_one_undercuts_what_is_called_proved(place):
    """All orders of the fields, by hand: none has a worst share below `least_share`."""
    laid = laid_out(ground_of(job(place), None))
    house = House(laid.cut.fields, laid.sweeps, laid.budget)
    proof = proof_of(laid.cut, laid.order, asked=False)
    shares = []
    for order in itertools.permutations(range(len(laid.cut.fields))):
        walked = house.leaving.walked(order)
        if walked is not None:
            shares.append(max(share for share, _ in walked))
    assert min(shares) >= proof.least_share - 1e-4
    assert proof.order_gap_share == pytest.approx(proof.worst_share - proof.least_share, abs=2e-4)
    if proof.order_proved:
        assert min(shares) >= proof.worst_share - 0.05 - 1e-4
        assert "no order leaves" in proof.what


def test_an_order_asked_for_is_never_called_the_best():
    plan = plan_job(job(HALL_OF_THREE), order=("right",))
    assert plan.proof is not None
    assert plan.proof.order_asked
    assert not plan.proof.order_proved
    assert "as asked for" in plan.proof.what


def test_every_stop_line_inside_the_house_has_its_reason():
    found = explain(job(HALL_OF_THREE))
    inside = set(found.best.stop_lines)
    assert {stop.id for stop in found.stops} == inside
    assert all(stop.what for stop in found.stops)
    told = said_why(found, us=True)
    for stop in found.stops:
        assert stop.name.startswith("the ")
        assert stop.name[1:] in told
        assert f"{stop.id} (" not in told
