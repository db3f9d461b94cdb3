"""The film: what leaves it adds up, it grows stronger as it dries, and peaks near its end."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.acid.film_ground import VAPOURS, fate, film

from farwall.acid.film import (
    Standing,
    beside_water,
    diffusion_m2_s,
    stepped,
)
from farwall.acid.masses import HCL_G_MOL, WATER_G_MOL

NONE = np.zeros((1, 1))
DRY_MOL_M3 = 0.4 * 2490 / VAPOURS.rt_j_mol


def dried(start, how, minutes, *, step_min=1.0, hcl=NONE, water_mol_m3=DRY_MOL_M3):
    """Films and what left, minute by minute."""
    told, now = [], start
    for _ in range(round(minutes / step_min)):
        now, gone = stepped(
            now, how, VAPOURS, step_min, hcl_mol_m3=hcl, water_mol_m3=np.full((1, 1), water_mol_m3)
        )
        told.append((now, gone))
    return told


def strength(one):
    return float(one.acid_mol[0, 0] / one.water_kg[0, 0])


@given(
    st.floats(0.02, 0.5), st.floats(0.01, 1.5), st.floats(0, 2), st.floats(1, 60),
    st.floats(0.5, 90), st.floats(0, 1), st.floats(0.001, 0.02),
)  # fmt: skip
def test_acid_is_neither_made_nor_lost(water, acid, chloride, open_min, lime, counts, moved):
    how = fate(moved, open_min, lime, counts)
    told = dried(film(water, acid, chloride), how, 60)
    given_off = sum(float(gone.to_air_mol[0, 0]) for _, gone in told)
    eaten = sum(float(gone.eaten_mol[0, 0]) for _, gone in told)
    left = float(told[-1][0].acid_mol[0, 0])
    assert given_off + eaten + left == pytest.approx(acid, rel=1e-9)
    assert 0 <= given_off <= acid * (1 + 1e-9)
    for now, gone in told:
        assert now.water_kg.min() >= 0
        assert now.acid_mol.min() >= 0
        assert gone.water_kg.min() >= 0


def test_chloride_only_leaves_by_what_is_drunk():
    """By hand: drunk acid and chloride leave alike, so with lime and no air their sum falls so."""
    how = fate(water_m_s=0.0, open_min=10.0, lime_half_min=6.0)
    ((now, _),) = dried(film(0.18, 0.3, 0.35), how, 5, step_min=5)
    stands = float(now.acid_mol[0, 0] + now.chloride_mol[0, 0])
    assert stands == pytest.approx(0.65 * 10 ** (-5 / 10), rel=1e-9)


def test_the_film_grows_stronger_and_gives_most_near_its_end():
    """Without lime it is a drying acid: stronger every minute, its peak after half of the water."""
    how = fate(open_min=1e6, lime_half_min=1e6)
    told = dried(film(0.18, 0.3, 0.0), how, 240)
    strengths = [strength(now) for now, _ in told]
    assert all(b >= a for a, b in pairwise(strengths[:61]))
    given_off = [float(gone.to_air_mol[0, 0]) for _, gone in told]
    peak = int(np.argmax(given_off))
    assert float(told[peak][0].water_kg[0, 0]) < 0.09
    assert given_off[peak] > 20 * given_off[0]


def test_lime_cuts_what_is_given_off():
    total = [
        sum(float(gone.to_air_mol[0, 0]) for _, gone in dried(film(), fate(lime_half_min=m), 90))
        for m in (2, 6, 20, 1e6)
    ]
    assert total == sorted(total)
    assert total[0] < total[-1] / 4


def test_air_that_holds_as_much_takes_nothing():
    held = np.full((1, 1), 1.0)
    told = dried(film(), fate(), 5, hcl=held)
    assert sum(float(gone.to_air_mol[0, 0]) for _, gone in told) == 0


def test_metal_chloride_raises_the_vapour_of_the_same_acid():
    bare = dried(film(chloride_mol=0.0), fate(salts_count=1.0), 1)[0][1]
    salted = dried(film(chloride_mol=1.0), fate(salts_count=1.0), 1)[0][1]
    assert salted.to_air_mol[0, 0] > 2 * bare.to_air_mol[0, 0]


def test_a_minute_serves():
    """Against steps of a tenth of a minute the whole release differs by less than 5 %."""
    whole = [
        sum(float(gone.to_air_mol[0, 0]) for _, gone in dried(film(), fate(), 90, step_min=step))
        for step in (1.0, 0.1)
    ]
    assert whole[0] == pytest.approx(whole[1], rel=0.05)


def test_first_minute_by_hand():
    """k·p/(R·T) of a film that hardly changes: 0.78·0.004 m/s over 0.1 s, within 1 %."""
    start = film(0.18, 0.3, 0.0)
    percent = 100 * 0.3 * HCL_G_MOL / (180 + 0.3 * HCL_G_MOL)
    over = float(VAPOURS.hcl_pa(np.array([percent]))[0]) / VAPOURS.rt_j_mol
    _, gone = stepped(
        start, fate(), VAPOURS, 0.1 / 60, hcl_mol_m3=NONE, water_mol_m3=np.full((1, 1), DRY_MOL_M3)
    )
    assert gone.to_air_mol[0, 0] == pytest.approx(0.7787 * 0.004 * over * 0.1, rel=0.01)


def test_diffusion_by_hand_and_beside_what_is_known():
    """Water in air at 25 °C is 0.25 to 0.26 cm²/s in any table; the method errs 5 to 10 %."""
    assert diffusion_m2_s("H2O", WATER_G_MOL) * 1e4 == pytest.approx(0.255, rel=0.05)
    assert beside_water("HCl", HCL_G_MOL) == pytest.approx(0.779, abs=0.002)
    assert beside_water("H2O", WATER_G_MOL) == 1


def test_shapes_are_kept():
    wide = Standing(*(np.ones((3, 4)) * x for x in (0.2, 0.3, 0.1)))
    now, gone = stepped(
        wide, fate(), VAPOURS, 1.0, hcl_mol_m3=np.zeros((3, 4)), water_mol_m3=np.zeros((3, 4))
    )
    assert now.acid_mol.shape == gone.to_air_mol.shape == (3, 4)
