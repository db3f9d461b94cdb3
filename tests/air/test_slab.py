"""The face of a slab: swings with the textbook wave, lags a cold snap, starts from a reading."""

import cmath
import math
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.air.slab import FACE_W_M2K, GROUND, ON_GRADE, Layer, Seen, chain_of, depths_m, face_c
from farwall.errors import Refused

DEEP = (Layer(2.0, 1.6, 2.0e6, parts=60, wider=1.04),)


def wavy(amplitude_k, hours=24 * 20):
    """Air about 20 °C, the mean of each hour of a daily wave."""
    told = []
    for n in range(hours):
        a, b = (2 * math.pi * one / 24 for one in (n, n + 1))
        told.append(20 + amplitude_k * (math.sin(b) - math.sin(a)) / (b - a))
    return told


def test_the_face_swings_and_lags_as_carslaw_and_jaeger_say():
    """A half space under a swinging medium with a film, section 2.6: by complex amplitudes.

    face/air = h / (h + k·sqrt(iω/a)). Hourly steps and hourly means allow two per cent.
    """
    swing = face_c(wavy(10.0), ground_c=20.0, layers=DEEP)[-24:]
    omega, spread = 2 * math.pi / 86_400, 1.6 / 2.0e6
    share = FACE_W_M2K / (FACE_W_M2K + 1.6 * cmath.sqrt(1j * omega / spread))
    assert max(swing) - 20 == pytest.approx(10 * abs(share), rel=0.02)
    lag_h = -cmath.phase(share) / omega / 3600
    peak = swing.index(max(swing))
    assert (peak + 0.5) % 24 == pytest.approx(lag_h, abs=0.6)


def test_the_layers_of_a_house_give_nearly_the_wave_of_solid_concrete():
    """A day's wave feels mostly the concrete; ten hourly nodes lose little against sixty."""
    layers = Layer(0.10, 1.6, 2.0e6, parts=40), Layer(1.6, 1.2, 2.0e6, parts=60, wider=1.04)
    fine = face_c(wavy(10.0), ground_c=20.0, layers=layers)[-24:]
    ours = face_c(wavy(10.0), ground_c=20.0)[-24:]
    assert max(abs(a - b) for a, b in zip(fine, ours, strict=True)) < 0.05


def test_steady_air_and_ground_settle_to_the_sum_of_resistances():
    """By hand: 10 K over 1/7 + 0.10/1.6 + 1.6/1.2 = 1.539 m²K/W; the face takes 0.0928 of it."""
    face = face_c([20.0] * 24 * 400, ground_c=10.0)[-1]
    assert face == pytest.approx(20 - 10 * (1 / 7) / (1 / 7 + 0.0625 + 1.6 / 1.2), abs=1e-6)


def test_a_slab_lags_a_cold_snap_by_a_day_or_more():
    """Common practice, no source: the slab lags the air by a day or more."""
    air = [20.0] * 240 + [5.0] * 96
    face = face_c(air, ground_c=18.0)
    after = list(face[240:])
    assert after[3] > 14
    assert after[24] > 7.5
    assert all(a >= b - 1e-9 for a, b in pairwise(after))


def test_a_reading_is_where_the_face_goes_on_from():
    air = [20.0] * 240 + [20.0] * 48
    face = face_c(air, ground_c=18.0, seen=Seen(240, 14.0))
    free = face_c(air, ground_c=18.0)
    assert face[240] == pytest.approx(14.1, abs=0.3)
    off = [a - b for a, b in zip(face, free, strict=True)]
    assert off[:240] == pytest.approx([0.0] * 240)
    assert all(a <= b + 1e-9 for a, b in pairwise(off[240:]))
    # A profile shifted to its depth comes back over days, not within the hour.
    assert off[240 + 24] < -2.0


def test_a_reading_that_agrees_changes_nothing():
    air = wavy(6.0, 24 * 12)
    free = face_c(air, ground_c=17.0)
    at = 24 * 11
    there = (free[at - 1] + free[at]) / 2
    again = face_c(air, ground_c=17.0, seen=Seen(at, there))
    assert again == pytest.approx(free, abs=0.12)


def test_a_reading_before_any_history_still_counts():
    face = face_c([20.0] * 5, ground_c=15.0, seen=Seen(0, 10.0))
    assert 10.0 < face[0] < 13.0
    assert list(face) == sorted(face)


def test_sun_warms_the_face_and_is_felt_for_hours():
    air = [20.0] * 288
    sun = [0.0] * 288
    sun[250:253] = [200.0] * 3
    lit = face_c(air, ground_c=20.0, absorbed_w_m2=sun)
    assert lit[249] == pytest.approx(20.0)
    assert lit[252] > 26
    assert lit[258] > 20.8
    assert lit[252] == max(lit)


@given(st.lists(st.floats(-10, 45), min_size=30, max_size=60), st.floats(5, 25))
def test_the_face_stays_between_air_and_ground(air, ground_c):
    """Crank and Nicolson may ring a little after a jump of the air: half a kelvin is allowed."""
    face = face_c(air, ground_c=ground_c)
    assert min([*air, ground_c]) - 0.5 <= min(face)
    assert max(face) <= max([*air, ground_c]) + 0.5


@given(st.lists(st.floats(0, 40), min_size=30, max_size=40), st.floats(0.5, 5))
def test_warmer_air_never_makes_a_cooler_slab(air, more):
    a = face_c(air, ground_c=15.0)
    b = face_c([one + more for one in air], ground_c=15.0)
    assert all(y >= x - 1e-9 for x, y in zip(a, b, strict=True))


def test_depths_begin_at_the_face_and_end_below():
    told = depths_m()
    assert told[0] == 0
    assert told[-1] == pytest.approx(1.7)
    assert len(told) == len(chain_of().holds_j_m2k)
    assert sum(chain_of().holds_j_m2k) == pytest.approx(1.7 * 2.0e6)
    assert ON_GRADE[1] is GROUND


def test_what_cannot_be_is_refused_at_once():
    with pytest.raises(Refused) as refused:
        face_c([], ground_c=1.0, absorbed_w_m2=[1.0], seen=Seen(3, 1.0))
    assert [one.where for one in refused.value.mistakes] == ["air_c", "absorbed_w_m2", "seen"]
