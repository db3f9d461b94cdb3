"""Answers with their proofs: against every choice, against a second solver, on small shops."""

from __future__ import annotations

from dataclasses import replace

import pytest
from tests.days.shop import MONDAY, shop, steady, typical

from farwall.bench.day_houses import day_question
from farwall.days.columns import columns
from farwall.days.hours import mild
from farwall.days.nouns import MILD_HOUR, Ahead, DayCrew
from farwall.days.solve import settle
from farwall.errors import Refused, Unanswerable
from farwall.evidence import Rank


def test_a_second_solver_finds_the_same_least_cost():
    cp_model = pytest.importorskip("ortools.sat.python.cp_model")
    question = day_question(8, 2)
    ways = columns(question)
    model = cp_model.CpModel()
    taken = {(k, v): model.new_bool_var(f"{k}-{v}") for k in range(len(ways)) for v in range(2)}
    for n in range(len(question.houses)):
        model.add_exactly_one(taken[k, v] for k, v in taken if ways[k].house == n)
    for v in range(2):
        for kind in ("at", "fresh", "sprays"):
            places = {place for one in ways for place in getattr(one, kind)}
            for place in places:
                model.add_at_most_one(
                    taken[k, v] for k, one in enumerate(ways) if place in getattr(one, kind)
                )
    assert all(float(one.cost_days).is_integer() for one in ways)
    model.minimize(sum(int(ways[k].cost_days) * taken[k, v] for k, v in taken))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    proof = settle(question).proof
    assert proof.cost_days == pytest.approx(solver.objective_value)
    assert proof.bound_days == pytest.approx(solver.objective_value)


@pytest.mark.slow
def test_twenty_houses_and_three_crews_come_within_two_per_cent_of_the_bound():
    proof = settle(day_question(20, 3), exact_s=600).proof
    assert proof.gap_percent <= 2
    assert proof.bound_days <= proof.cost_days


def test_drying_is_filled_with_another_house():
    """Where floors dry for days, a crew begins a house before it is done with the one before."""
    slow = Ahead(MONDAY, (replace(MILD_HOUR, slab=0.25),) * 24 * 90, Rank.GUESS, "a test")
    found = settle(shop(4, ahead=slow))
    columns_taken = [one.way.column for one in found.choices.values()]
    between = [
        (one.house, other.house)
        for one in columns_taken
        for other in columns_taken
        if one.start < other.start and min(other.at) < max(one.at)
    ]
    assert between


def test_the_same_question_gives_the_same_answer():
    one, other = settle(shop(3)), settle(shop(3))
    assert one.choices == other.choices


def test_a_person_alone_is_no_crew():
    question = replace(shop(1), crews=(DayCrew("crew 1", 1),))
    with pytest.raises(Refused, match="nobody works alone"):
        settle(question)


def test_all_that_is_wrong_with_a_question_is_told_at_once():
    question = replace(shop(2), crews=())
    twice = replace(question, houses=(question.houses[0], question.houses[0]))
    with pytest.raises(Refused) as refusal:
        settle(twice)
    assert len(refusal.value.mistakes) == 2


def test_a_slab_that_stays_cold_is_a_no_with_its_reason():
    with pytest.raises(Unanswerable, match=r"“coat 1”: .* no one of 30 working days") as no:
        settle(typical(steady(45, 50)))
    assert no.value.remedies


def test_too_many_houses_for_the_days_ahead_are_a_no():
    with pytest.raises(Unanswerable, match="do not fit into 14 days"):
        settle(shop(6, ahead=mild(MONDAY, 14)))


def test_a_floor_too_large_for_a_day_of_spraying_is_a_no_and_never_parted():
    question = typical()
    hall = replace(question.houses[0], area_m2=2000.0)
    with pytest.raises(Unanswerable) as no:
        settle(replace(question, houses=(hall,)))
    assert any("zones" in one for one in no.value.remedies)
