"""Heat along a chain, against the two textbook answers of conduction in one dimension.

Carslaw and Jaeger, Conduction of Heat in Solids, second edition 1959: a half space whose face is
suddenly held warmer (section 2.4), and one whose face swings (section 2.6); both are also derived
in any textbook. Orders of convergence are measured, not asserted from theory alone.
"""

import math
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.linalg import solve_banded

from farwall.air.chain import BACKWARD_EULER, CRANK_NICOLSON, Chain, joined, stepped

W_MK, J_M3K = 1.6, 2.0e6
SPREAD_M2_S = W_MK / J_M3K


def even_chain(depth_m, parts):
    width = depth_m / parts
    holds = [width * J_M3K] * (parts + 1)
    holds[0] = holds[-1] = width * J_M3K / 2
    return Chain(tuple(holds), (W_MK / width,) * parts), width


def run(*, depth_m, parts, steps, step_s, face, share_new, start=None):
    """Profiles with the face held at `face(t)`: the first node is left out and tied instead."""
    chain, width = even_chain(depth_m, parts)
    inner = Chain(chain.holds_j_m2k[1:], chain.between_w_m2k[1:])
    ties = [W_MK / width] + [0.0] * (parts - 1)
    warmth = [0.0] * parts if start is None else [start(width * (n + 1)) for n in range(parts)]
    for n in range(steps):
        # The mean of both ends is what Crank and Nicolson ask for; backward Euler takes the new.
        new, old = face((n + 1) * step_s), face(n * step_s)
        held = share_new * new + (1 - share_new) * old
        given_w_m2 = [ties[0] * held] + [0.0] * (parts - 1)
        warmth = stepped(
            inner, warmth, step_s=step_s, ties_w_m2k=ties, given_w_m2=given_w_m2,
            share_new=share_new,
        )  # fmt: skip
    return np.arange(1, parts + 1) * width, np.array(warmth)


def suddenly(parts, steps, share_new):
    """Largest error after six hours of a face one kelvin warmer."""
    seconds = 6 * 3600.0
    depth, warmth = run(
        depth_m=1.2, parts=parts, steps=steps, step_s=seconds / steps, face=lambda t: 1.0,
        share_new=share_new,
    )  # fmt: skip
    true = [math.erfc(z / (2 * math.sqrt(SPREAD_M2_S * seconds))) for z in depth]
    return float(np.max(np.abs(warmth - true)))


DAILY = 2 * math.pi / 86_400


def wave(z, t):
    """Carslaw and Jaeger: A·exp(-kz)·cos(ωt - kz), k = sqrt(ω/2a)."""
    k = math.sqrt(DAILY / (2 * SPREAD_M2_S))
    return math.exp(-k * z) * math.cos(DAILY * t - k * z)


def swinging(parts, steps_a_day, share_new):
    """Largest error after one day that begins on the wave itself."""
    depth, warmth = run(
        depth_m=2.4, parts=parts, steps=steps_a_day, step_s=86_400 / steps_a_day,
        face=lambda t: wave(0, t), share_new=share_new, start=lambda z: wave(z, 0),
    )  # fmt: skip
    true = np.array([wave(z, 86_400) for z in depth])
    return float(np.max(np.abs(warmth - true)))


@pytest.mark.parametrize("share_new", [CRANK_NICOLSON, BACKWARD_EULER], ids=["cn", "be"])
def test_a_face_suddenly_warmer_follows_the_error_function(share_new):
    assert suddenly(240, 720, share_new) < 1.5e-3


@pytest.mark.parametrize("share_new", [CRANK_NICOLSON, BACKWARD_EULER], ids=["cn", "be"])
def test_a_daily_wave_sinks_and_lags_as_it_should(share_new):
    assert swinging(400, 960, share_new) < 2e-3


@pytest.mark.parametrize(
    ("share_new", "order"), [(CRANK_NICOLSON, 2.0), (BACKWARD_EULER, 1.0)], ids=["cn", "be"]
)
def test_the_order_in_time_is_that_of_the_scheme(share_new, order):
    errors = [swinging(1600, steps, share_new) for steps in (12, 24, 48)]
    measured = [math.log2(a / b) for a, b in pairwise(errors)]
    assert measured[-1] == pytest.approx(order, abs=0.15)


def test_the_order_in_depth_is_two():
    errors = [swinging(parts, 3000, CRANK_NICOLSON) for parts in (24, 48, 96)]
    measured = [math.log2(a / b) for a, b in pairwise(errors)]
    assert measured[-1] == pytest.approx(2.0, abs=0.15)


@given(
    st.integers(2, 12).flatmap(
        lambda n: st.tuples(
            st.lists(st.floats(1e2, 1e6), min_size=n, max_size=n),
            st.lists(st.floats(0.01, 500), min_size=n - 1, max_size=n - 1),
            st.lists(st.floats(0, 50), min_size=n, max_size=n),
            st.lists(st.floats(-20, 60), min_size=n, max_size=n),
        )
    ),
    st.floats(60, 86_400),
    st.sampled_from([CRANK_NICOLSON, BACKWARD_EULER, 0.7]),
)
def test_the_elimination_agrees_with_a_solver_of_banded_systems(parts, step_s, share_new):
    holds, between, ties, warmth = parts
    chain = Chain(tuple(holds), tuple(between))
    outside = [one * 15.0 for one in ties]
    ours = stepped(
        chain, warmth, step_s=step_s, ties_w_m2k=ties, given_w_m2=outside, share_new=share_new
    )
    n = len(holds)
    full = np.zeros((n, n))
    for i in range(n - 1):
        full[i, i] += between[i]
        full[i + 1, i + 1] += between[i]
        full[i, i + 1] -= between[i]
        full[i + 1, i] -= between[i]
    full += np.diag(ties)
    inert = np.diag(holds) / step_s
    right = inert @ warmth + outside - (1 - share_new) * full @ warmth
    left = inert + share_new * full
    bands = np.zeros((3, n))
    bands[0, 1:], bands[1], bands[2, :-1] = np.diag(left, 1), np.diag(left), np.diag(left, -1)
    assert ours == pytest.approx(list(solve_banded((1, 1), bands, right)), rel=1e-9, abs=1e-8)


@given(st.lists(st.floats(-20, 60), min_size=2, max_size=20), st.floats(60, 1e6))
def test_heat_is_neither_made_nor_lost_in_a_chain_tied_to_nothing(warmth, step_s):
    n = len(warmth)
    chain = Chain((1e5,) * n, (5.0,) * (n - 1))
    then = stepped(chain, warmth, step_s=step_s, ties_w_m2k=[0.0] * n, given_w_m2=[0.0] * n)
    assert sum(then) == pytest.approx(sum(warmth), abs=1e-7)


@given(st.lists(st.floats(-20, 60), min_size=2, max_size=12), st.floats(60, 1e6))
def test_backward_euler_never_overshoots(warmth, step_s):
    n = len(warmth)
    chain = Chain((1e4,) * n, (50.0,) * (n - 1))
    then = stepped(
        chain, warmth, step_s=step_s, ties_w_m2k=[0.0] * n, given_w_m2=[0.0] * n,
        share_new=BACKWARD_EULER,
    )  # fmt: skip
    assert min(warmth) - 1e-9 <= min(then)
    assert max(then) <= max(warmth) + 1e-9


def test_chains_are_joined_end_to_end():
    one, two = Chain((1.0, 2.0), (5.0,)), Chain((3.0,), ())
    assert joined(one, two, ties_w_m2k=[7.0]) == Chain((1.0, 2.0, 3.0), (5.0, 7.0))
