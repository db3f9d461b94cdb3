"""The gate: under its own model a job runs dry inside a field less often than it promises.

What is proved here is the arithmetic, not the model: whether slabs are log-normal, and how much
of the spread is a field's own, only closed jobs can say.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.mix.gate import budget, gates, hand_l, mix_now_l, morning_l, planned_mixes
from farwall.mix.need import need
from farwall.mix.thirst import first_belief

HOUSE_L = (5.2, 3.1, 2.9, 2.4, 1.2, 11.8)
"""Six fields of one coat, litres; the open plan comes last."""

litres = st.lists(st.floats(0.2, 40.0), min_size=1, max_size=8)
spreads = st.floats(5.0, 40.0)
chances = st.floats(0.0005, 0.05)


def named(fields):
    return [(f"field-{number}", likely) for number, likely in enumerate(fields)]


@dataclass
class Days:
    """What happened on many simulated days."""

    dry: float
    mixes: float
    left_over_l: float


def live_through(fields_l, *, spread_percent, chance_dry, days, seed) -> Days:
    """Play the gate's rule against slabs drawn from the gate's own model."""
    rng = np.random.default_rng(seed)
    first = first_belief(spread_percent)
    chances = budget(chance_dry, len(fields_l))
    dry = mixes = 0
    left = 0.0
    for _ in range(days):
        belief, ran_dry = first, False
        job = rng.normal(0.0, math.sqrt(first.variance))
        have = morning_l(fields_l, belief=belief, chances=chances)
        mixes += 1
        for number, likely in enumerate(fields_l):
            rest = fields_l[number:]
            more = mix_now_l(have, rest, belief=belief, chances=chances[number:])
            mixes += more > 0
            taken = likely * math.exp(job + rng.normal(0.0, math.sqrt(first.field_variance)))
            ran_dry |= taken > have + more
            have = max(0.0, have + more - taken)
            belief = belief.after(likely_l=likely, used_l=taken)
        dry += ran_dry
        left += have
    return Days(dry / days, mixes / days, left / days)


@pytest.mark.parametrize(("spread_percent", "seed"), [(15, 1), (20, 2), (25, 3)])
def test_under_its_own_model_fewer_than_one_job_in_a_hundred_runs_dry(spread_percent, seed):
    lived = live_through(
        HOUSE_L, spread_percent=spread_percent, chance_dry=0.01, days=12_000, seed=seed
    )
    # About 0.6 % is expected; three standard errors over so many days are 0.2 %.
    assert lived.dry < 0.01
    assert lived.dry > 0.003, "so rare that the gate must be wasting stain"
    assert 1.5 < lived.mixes < 2.0


def test_a_single_field_uses_its_whole_budget_and_no_more():
    lived = live_through((20.0,), spread_percent=20, chance_dry=0.01, days=40_000, seed=4)
    # Three standard errors of 1 % over 40,000 days are 0.15 %.
    assert lived.dry == pytest.approx(0.01, abs=0.0015)
    assert lived.mixes == 1


def test_the_gate_leaves_far_less_over_than_mixing_it_all_at_once_at_the_same_chance():
    lived = live_through(HOUSE_L, spread_percent=20, chance_dry=0.01, days=6_000, seed=5)
    at_once = first_belief(20).enough_for_all_l(HOUSE_L, chance_dry=0.01)
    assert lived.left_over_l < 0.5 * (at_once - sum(HOUSE_L))


@given(st.floats(0.5, 100), spreads, chances)
def test_a_single_field_starts_at_the_need_of_the_plain_sum(likely, spread, chance):
    (gate,) = gates([("hall", likely)], coat="c", belief=first_belief(spread), chances=(chance,))
    plain = need(
        area_m2=likely, m2_per_l=1.0, spread_percent=spread, certainty_percent=100 * (1 - chance)
    )
    assert gate.start_l == pytest.approx(plain.mix_l, rel=1e-9)


@given(litres, spreads, chances)
def test_what_is_in_hand_opens_every_gate_when_all_goes_as_believed(fields, spread, chance):
    belief, parts = first_belief(spread), budget(chance, len(fields))
    have = hand_l(fields, belief=belief, chances=parts)
    for gate in gates(named(fields), coat="c", belief=belief, chances=parts):
        assert have >= gate.start_l * (1 - 1e-9)
        have -= gate.likely_l


@given(litres, spreads, chances)
def test_the_planned_mixes_open_every_gate_and_are_two_at_most(fields, spread, chance):
    belief, parts = first_belief(spread), budget(chance, len(fields))
    planned = planned_mixes(fields, belief=belief, chances=parts)
    assert planned[0].before == 0
    assert len(planned) <= 2
    assert all(one.litres > 0 for one in planned)
    have = 0.0
    for number, gate in enumerate(gates(named(fields), coat="c", belief=belief, chances=parts)):
        have += sum(one.litres for one in planned if one.before == number)
        assert have >= gate.start_l * (1 - 1e-6)
        have -= gate.likely_l


@given(st.floats(0.0001, 0.2), st.integers(1, 40))
def test_the_parts_of_the_budget_add_up_to_the_whole(chance, count):
    parts = budget(chance, count)
    assert len(parts) == count
    assert sum(parts) == pytest.approx(chance)
    assert all(part > 0 for part in parts)


@pytest.mark.parametrize(("each_l", "mixed"), [(1.0, 2.33141), (3.0, 6.99422), (3.05, 6.1)])
def test_a_small_reserve_is_mixed_at_once_and_a_larger_one_when_the_slab_has_told_by_hand(
    each_l, mixed
):
    """Hand-worked, two alike fields, spread 20 %: the variance of the logarithm is ln 1.04 =
    0.0392207, a fifth of it the field's own. One field as believed leaves a fifth of the job's
    part, 0.0062753; with the field's 0.0078441 the second asks for exp(2.408916 x 0.118825) =
    1.33141 times its litres (2.408916: the normal quantile of 1 - 0.008). The likely need of both
    is 2, the reserve 0.33141 times one: at 3 L each that is 0.994 L, at 3.05 L each 1.011 L."""
    fields, belief, parts = (each_l, each_l), first_belief(20), (0.002, 0.008)
    assert morning_l(fields, belief=belief, chances=parts) == pytest.approx(mixed, rel=1e-5)
    later = planned_mixes(fields, belief=belief, chances=parts)[1:]
    assert [one.before for one in later] == ([1] if each_l > 3 else [])


@given(litres, spreads, chances, st.floats(0.0, 60.0))
def test_nothing_is_mixed_at_an_open_gate_and_enough_at_a_shut_one(fields, spread, chance, have):
    belief, parts = first_belief(spread), budget(chance, len(fields))
    asked = gates(named(fields), coat="c", belief=belief, chances=parts)[0].start_l
    more = mix_now_l(have, fields, belief=belief, chances=parts)
    assert more >= 0
    assert (more == 0) == (have >= asked * (1 - 1e-9))
    assert have + more >= asked * (1 - 1e-9)


@given(litres, spreads, chances)
def test_a_gate_asks_for_more_than_the_likely_need_and_more_on_a_thirsty_slab(
    fields, spread, chance
):
    parts = budget(chance, len(fields))
    for gate in gates(named(fields), coat="c", belief=first_belief(spread), chances=parts):
        asked = [one.start_l for one in gate.starts]
        assert asked == sorted(asked)
        assert gate.start_l > gate.likely_l


@given(st.integers(2, 8), spreads)
def test_fields_that_were_seen_lower_the_reserve_of_the_next(count, spread):
    asked = [
        gate.start_l
        for gate in gates(
            named([1.0] * count),
            coat="c",
            belief=first_belief(spread),
            chances=(0.002,) * count,
        )
    ]
    assert asked == sorted(asked, reverse=True)
    assert asked[-1] < asked[0]
