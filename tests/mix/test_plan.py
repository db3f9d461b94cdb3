"""The mixes of a day: every field covered, gates beside the usual rule, stain bought."""

from __future__ import annotations

import json
import math
from dataclasses import replace
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.jobs import jobs, row_of_rooms

from farwall.errors import Refused
from farwall.facts.defaults import settle
from farwall.facts.job import Coat, Job, Stain, Wishes
from farwall.facts.samples import Sample
from farwall.floor.nouns import Exit
from farwall.mix.plan import OWN_SHARE, FieldNeed, plan_mixes
from farwall.units import gal_from_l, l_from_gal

HOUSE = Job(
    version=1,
    floor=row_of_rooms([4.0, 3.0]),
    exits=(Exit("out", "door-0"),),
    stains=(Stain("sand", lots=("A1", "A2")), Stain("bark")),
    coats=(Coat("first", "sand", "1:1"), Coat("second", "bark", "1:2")),
)
FIELDS = [
    FieldNeed("bed", "first", 6.0),
    FieldNeed("hall", "first", 12.0),
    FieldNeed("bed", "second", 4.0),
    FieldNeed("hall", "second", 8.0),
]


def litres(mix):
    return mix.stain_l + mix.water_l + mix.acid_l


def test_each_coat_gets_its_own_boxed_batches_at_its_own_cut():
    plan = plan_mixes(FIELDS, settle(HOUSE))
    first = [mix for mix in plan.mixes if mix.coat == "first"]
    second = [mix for mix in plan.mixes if mix.coat == "second"]
    assert first[0].fields == ("bed", "hall")
    assert all(mix.stain_l == pytest.approx(mix.water_l) for mix in first)
    assert all(2 * mix.stain_l == pytest.approx(mix.water_l) for mix in second)
    assert len({mix.id for mix in plan.mixes}) == len(plan.mixes)


def test_the_mixes_of_a_coat_cover_its_fields_and_the_last_gates_reserve():
    plan = plan_mixes(FIELDS, settle(HOUSE))
    mixed = sum(litres(mix) for mix in plan.mixes if mix.coat == "first")
    assert mixed - 6.0 >= plan.gate("hall", "first").start_l * (1 - 1e-9)


def test_a_second_mix_serves_the_fields_that_are_still_to_come():
    plan = plan_mixes(
        [FieldNeed("bed", "first", 30.0), FieldNeed("hall", "first", 30.0)], settle(HOUSE)
    )
    assert [mix.fields for mix in plan.mixes] == [("bed", "hall"), ("hall",)]
    assert [batch.before for batch in plan.batches] == ["bed", "hall"]
    assert plan.batches[0].chance_enough < plan.batches[1].chance_enough


def test_the_budget_is_for_the_whole_job_and_not_for_each_field():
    plan = plan_mixes(FIELDS, settle(HOUSE))
    assert sum(gate.chance_dry for gate in plan.gates) == pytest.approx(0.01)


def test_a_sample_makes_the_gate_ask_for_less():
    samples = (Sample("s1", coat="first", m2_per_l=5.0),)
    bare = plan_mixes(FIELDS, settle(HOUSE)).gate("bed", "first").start_l
    sampled = plan_mixes(FIELDS, settle(replace(HOUSE, samples=samples)))
    assert sampled.gate("bed", "first").start_l < bare


def test_the_usual_rules_litres_and_chance_stand_beside_the_gates_own():
    (first, second) = plan_mixes(FIELDS, settle(HOUSE)).usual_rule
    assert first.low_l == pytest.approx(18 * 7 / 6)
    assert first.high_l == pytest.approx(18 * 6 / 5)
    assert second.coat == "second"
    assert 0.1 < first.chance_dry_low < first.chance_dry_high < 0.3


@pytest.mark.common_practice
def test_a_house_of_eight_gallons_mixed_at_one_to_one_likely_takes_four_of_stain():
    fields = [FieldNeed("all", "first", l_from_gal(8))]
    (bought,) = plan_mixes(fields, settle(HOUSE)).bought
    assert gal_from_l(bought.likely_l) == pytest.approx(4)


def test_stain_is_bought_by_the_stain_over_all_coats_that_use_it():
    same = replace(HOUSE, coats=(Coat("first", "sand", "1:1"), Coat("second", "sand", "1:2")))
    (bought,) = plan_mixes(FIELDS, settle(same)).bought
    assert bought.likely_l == pytest.approx(18 / 2 + 12 / 3)  # hand-worked
    assert bought.pack.bought_l >= bought.ready_l * (1 - 1e-9)
    assert bought.pack.cost <= bought.least_left_over.cost
    assert bought.least_left_over.bought_l <= bought.pack.bought_l
    assert bought.boxed
    assert bought.lots == ("A1", "A2")


def test_stain_is_bought_for_all_fields_at_the_jobs_certainty_by_hand():
    """Hand-worked: 6 and 12 L, spread 20 %, 99 %. Variances 0.0313766 of the job and 0.0078441 of
    each field; the sum as one log-normal has a mean logarithm of 2.892110 and a deviation of
    0.189055: exp(2.892110 + 2.326348 x 0.189055) = 27.992 L, half of it stain. Of these 22.4 L are
    planned: the rest stays uncut, and is bought all the same."""
    sand, _ = plan_mixes(FIELDS, settle(HOUSE)).bought
    assert sand.ready_l == pytest.approx(13.996, abs=1e-3)


def test_never_less_is_bought_than_the_day_plans_to_mix_by_hand():
    """Hand-worked: one field of 18 L in each of two coats, each with half of the chance of 1 %.
    The gate asks for 18 x exp(2.575829 x 0.198042) = 29.979 L; 99 % alone for 28.535 L."""
    fields = [FieldNeed("all", "first", 18.0), FieldNeed("all", "second", 18.0)]
    plan = plan_mixes(fields, settle(HOUSE))
    assert litres(plan.mixes[0]) == pytest.approx(29.979, abs=1e-3)
    assert plan.bought[0].ready_l == pytest.approx(29.979 / 2, abs=1e-3)


def test_what_is_bought_is_told_in_plain_values_with_money_as_text():
    buying = plan_mixes(FIELDS, settle(HOUSE)).buying
    assert buying["certainty_percent"] == 99
    one = buying["stains"][0]
    assert {"stain", "likely_l", "ready_l", "containers", "cost", "currency", "left_over_l"} <= set(
        one
    )
    assert Decimal(one["cost"]) == sum(
        Decimal(each["price"]) * each["count"] for each in one["containers"]
    )


def test_the_buying_says_what_the_usual_reserve_would_have_been_and_how_often_it_does():
    """Common practice, no source: a quarter more unsampled, 15 % more on a sampled slab."""
    samples = (Sample("s1", coat="first", m2_per_l=5.0),)
    bare, sampled = settle(HOUSE), settle(replace(HOUSE, samples=samples))
    (one, _), (other, _) = plan_mixes(FIELDS, bare).bought, plan_mixes(FIELDS, sampled).bought
    assert one.usual_l == pytest.approx(one.likely_l * 1.25)
    assert other.usual_l == pytest.approx(other.likely_l * 1.15)
    assert 0.8 < one.chance_usual < 0.95
    assert one.usual.cost <= one.pack.cost


def test_gates_and_the_usual_rule_stand_in_the_plain_values_for_the_papers():
    plan = plan_mixes(FIELDS, settle(HOUSE))
    gate = plan.buying["gates"][1]
    assert {"field", "coat", "likely_l", "start_l", "starts", "chance_dry"} == set(gate)
    assert gate["start_l"] == plan.gates[1].start_l
    assert gate["starts"][1]["factor"] == 1.1
    assert plan.buying["usual_rule"][0]["high_l"] == plan.usual_rule[0].high_l
    assert plan.buying["batches"][0]["mix"] == plan.mixes[0].id
    assert sum(plan.buying["batches"][0]["tanks_l"]) == pytest.approx(litres(plan.mixes[0]))
    json.dumps(plan.buying, allow_nan=False)


@pytest.mark.parametrize("told", ["hcl_percent_low", "hcl_percent_high"])
def test_one_end_of_a_sheets_strength_stands_for_both_by_hand(told):
    """Hand-worked: 10 % at 1.2 kg/L, cut 1:1, is 0.12 / (1.2 + 1) = 5.4545 %."""
    sand = Stain("sand", density_kg_l=1.2, **{told: 10.0})
    batch = plan_mixes(FIELDS[:1], settle(replace(HOUSE, stains=(sand, Stain("bark"))))).batches[0]
    assert batch.batch.hcl_percent_low == pytest.approx(5.4545, abs=1e-4)
    assert batch.batch.hcl_percent_high == pytest.approx(5.4545, abs=1e-4)


@pytest.mark.parametrize(("learned", "ranks"), [
    (0, ["guess"]), (1, ["guess", "learned"]), (2, ["learned", "learned"]),
])  # fmt: skip
def test_the_share_of_a_field_is_told_as_a_guess_only_where_a_coat_has_none_learned(learned, ranks):
    settled = settle(HOUSE)
    coats = tuple(
        replace(coat, field_share=0.3) if number < learned else coat
        for number, coat in enumerate(settled.coats)
    )
    grounds = plan_mixes(FIELDS, replace(settled, coats=coats)).grounds
    assert [one.rank for one in grounds if one.name.startswith(OWN_SHARE)] == ranks


def test_added_acid_is_part_of_the_tub_and_brings_its_warnings():
    coat = Coat("first", "sand", "1:1", added_acid_fl_oz_per_gal=8.0)
    plan = plan_mixes(FIELDS[:1], settle(replace(HOUSE, coats=(coat,))))
    mix = plan.mixes[0]
    # Hand-worked: 8 fl oz/gal is a sixteenth of the cut mix.
    assert mix.acid_l == pytest.approx((mix.stain_l + mix.water_l) / 16)
    assert litres(mix) == pytest.approx(plan.gates[0].start_l, rel=1e-6)
    assert any("maker's sheet does not cover" in warning for warning in plan.warnings)


def test_added_acid_and_chromate_are_refused_with_the_coats_name():
    coat = Coat("first", "sand", "1:1", added_acid_fl_oz_per_gal=8.0)
    job = replace(HOUSE, coats=(coat,), stains=(Stain("sand", chromate=True),))
    with pytest.raises(Refused) as refusal:
        plan_mixes(FIELDS[:1], settle(job))
    assert refusal.value.mistakes[0].where == "coats.first.added_acid_fl_oz_per_gal"


def test_a_day_without_fields_mixes_and_buys_nothing():
    plan = plan_mixes([], settle(HOUSE))
    assert plan.mixes == ()
    assert plan.bought == ()


@given(jobs(), st.lists(st.floats(0.3, 30), min_size=1, max_size=5), st.floats(60, 99.9))
def test_any_job_gets_mixes_that_cover_its_fields_at_their_cut(job, needs, certainty):
    coats = tuple(replace(coat, added_acid_fl_oz_per_gal=None) for coat in job.coats)
    settled = settle(replace(job, coats=coats, wishes=Wishes(certainty_percent=certainty)))
    fields = [
        FieldNeed(f"f{number}", coat.id, need)
        for coat in settled.coats
        for number, need in enumerate(needs)
    ]
    plan = plan_mixes(fields, settled)
    for coat in settled.coats:
        mixed = math.fsum(litres(mix) for mix in plan.mixes if mix.coat == coat.id)
        assert mixed >= math.fsum(needs)
        served = {field for mix in plan.mixes if mix.coat == coat.id for field in mix.fields}
        assert served == {f"f{number}" for number in range(len(needs))}
    for one in plan.bought:
        assert one.pack.bought_l >= one.likely_l
