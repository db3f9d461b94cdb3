"""The closed form against sums over a grid, and against the published normal-inverse-gamma step."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from farwall.learn.tree import TAIL, Prior, fit, parts_of

PRIOR = Prior(mean=0.3, job=0.2, firm=0.25, parts=(0.15,), strength=6.0)
ALONE = Prior(mean=0.3, job=0.2, firm=0.25, strength=6.0)
VALUES = [0.1, 0.5, 0.42, 0.77, 0.2]
values = st.lists(st.floats(-1, 1), min_size=1, max_size=12)


def test_one_part_is_the_published_normal_inverse_gamma_step():
    """Gelman and others, Bayesian Data Analysis, 3rd ed., section 3.3, from memory:

    mean = (k0 m0 + n y)/(k0 + n), degrees = v0 + n,
    degrees·s² = v0 s0² + squares about y + k0 n/(k0 + n)·(y − m0)².
    """
    n, mean = len(VALUES), sum(VALUES) / len(VALUES)
    kappa = (ALONE.job / ALONE.firm) ** 2
    squares = sum((one - mean) ** 2 for one in VALUES)
    nu_n = ALONE.strength + n
    expected = (
        ALONE.strength * ALONE.job**2 + squares + kappa * n / (kappa + n) * (mean - ALONE.mean) ** 2
    ) / nu_n
    found = fit(VALUES, [()] * n, ALONE, robust=False)
    assert found.mean[0] == pytest.approx((kappa * ALONE.mean + n * mean) / (kappa + n), rel=1e-12)
    assert found.degrees == pytest.approx(nu_n, rel=1e-12)
    assert found.scale**2 == pytest.approx(expected, rel=1e-12)
    assert found.own[0] == pytest.approx(1 / (kappa + n), rel=1e-12)


def test_a_firm_with_two_parts_agrees_with_sums_over_a_grid():
    """Firm, two parts and σ² laid on a grid: means and deviations to 1 % of a deviation."""
    told = [("a", 0.1), ("a", 0.25), ("b", 0.6), ("b", 0.7), ("b", 0.5)]
    prior = Prior(mean=0.3, job=0.2, firm=0.25, parts=(0.15,), strength=12.0)
    found = fit([y for _, y in told], [(p,) for p, _ in told], prior, robust=False)
    firm = np.linspace(-1.2, 1.8, 161)
    part = np.linspace(-1.2, 1.8, 161)
    step = firm[1] - firm[0]
    sums = dict.fromkeys(("all", "firm", "firm2", "a", "a2", "b", "b2"), 0.0)
    for s2 in np.exp(np.linspace(math.log(0.002), math.log(0.6), 161)):
        a0 = prior.strength / 2
        log_s = -a0 * math.log(s2) - a0 * prior.job**2 / s2  # of ln σ²: one power less
        unit = s2 / prior.job**2
        log_firm = -0.5 * ((firm - prior.mean) / prior.firm) ** 2 / unit - 0.5 * math.log(unit)
        spread = prior.parts[0] ** 2 * unit
        tables = {}
        for name in ("a", "b"):
            likely = sum(
                -0.5 * (y - part) ** 2 / s2 - 0.5 * math.log(s2) for p, y in told if p == name
            )
            bond = -0.5 * (part[None, :] - firm[:, None]) ** 2 / spread - 0.5 * math.log(spread)
            weights = np.exp(bond + likely[None, :])
            tables[name] = [step * (weights * part**k).sum(axis=1) for k in (0, 1, 2)]
        base = np.exp(log_s + log_firm)
        both = base * tables["a"][0] * tables["b"][0]
        sums["all"] += both.sum()
        sums["firm"] += (both * firm).sum()
        sums["firm2"] += (both * firm**2).sum()
        for name, other in (("a", "b"), ("b", "a")):
            sums[name] += (base * tables[name][1] * tables[other][0]).sum()
            sums[name + "2"] += (base * tables[name][2] * tables[other][0]).sum()
    for name, path in (("firm", ()), ("a", ("a",)), ("b", ("b",))):
        mean = sums[name] / sums["all"]
        sd = math.sqrt(sums[name + "2"] / sums["all"] - mean**2)
        row = found.at(path)
        student = found.degrees / (found.degrees - 2)  # variance of a Student number
        own = math.sqrt(student * found.own[row]) * found.scale
        assert found.mean[row] == pytest.approx(mean, abs=0.01 * sd), name
        assert own == pytest.approx(sd, rel=0.01), name


def test_a_part_with_few_jobs_leans_on_the_firm_and_one_with_many_does_not():
    told = [0.0] * 20 + [0.8]
    paths = [("much",)] * 20 + [("little",)]
    found = fit(told, paths, PRIOR, robust=False)
    assert abs(found.mean[found.at(("much",))]) < 0.02
    firm = found.mean[found.at(())]
    assert firm < found.mean[found.at(("little",))] < 0.5
    assert found.own[found.at(("little",))] > 3 * found.own[found.at(("much",))]


def test_a_part_nobody_told_of_is_the_firms():
    found = fit([0.5] * 4, [("a",)] * 4, PRIOR)
    assert found.at(("new", "newer")) == found.at(())


def test_no_jobs_leave_common_practice():
    found = fit([], [], PRIOR)
    assert found.mean[0] == PRIOR.mean
    assert found.scale == pytest.approx(PRIOR.job)


@given(values)
def test_shares_and_practice_make_the_mean_exactly(told):
    paths = [("a",) if n % 2 else ("b",) for n in range(len(told))]
    found = fit(told, paths, PRIOR)
    for row in range(len(found.paths)):
        made = PRIOR.mean + sum(
            share * (one - PRIOR.mean) for share, one in zip(found.shares[row], told, strict=True)
        )
        assert found.mean[row] == pytest.approx(made, abs=1e-9)
        assert 0 <= found.shares[row].sum() <= 1 + 1e-9


@settings(max_examples=60)
@given(values, st.floats(-3, 3), st.randoms(use_true_random=False))
def test_no_single_value_moves_the_mean_by_more_than_its_bound(told, odd, random):
    """However far it lies: a Student number of v degrees scores at most (v + 1)/(2√v) spreads."""
    base = fit(told, [()] * len(told), ALONE)
    moved = fit([*told, odd], [()] * (len(told) + 1), ALONE)
    bound = (TAIL + 1) / (2 * math.sqrt(TAIL))
    most = 2.5 * bound * max(base.scale, moved.scale) * math.sqrt(base.own[0])
    assert abs(moved.mean[0] - base.mean[0]) <= most


def test_an_unended_value_pulls_upwards_and_never_below_itself():
    base = fit([0.0] * 4, [()] * 4, ALONE)
    pulled = fit([0.0] * 4 + [0.4], [()] * 5, ALONE, unended=[False] * 4 + [True])
    seen = fit([0.0] * 4 + [0.4], [()] * 5, ALONE)
    low = fit([0.0] * 4 + [-2.0], [()] * 5, ALONE, unended=[False] * 4 + [True])
    assert base.mean[0] < seen.mean[0] <= pulled.mean[0] + 1e-9
    assert low.mean[0] == pytest.approx(base.mean[0], abs=0.02)


def test_parts_of_names_every_part_above():
    assert parts_of([("a", "x"), ()]) == ((), ("a",), ("a", "x"))
