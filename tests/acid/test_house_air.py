"""Films and rooms together: acid adds up in every case, and more air never raises the peak."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.acid.film_ground import VAPOURS, fates, laid, near, three_rooms

from farwall.acid.house_air import house_air
from farwall.acid.rooms import air_of

DRY = 0.4 * 2490 / VAPOURS.rt_j_mol


def run(laid_, fate_, rooms, *, cases=1, until_min=240.0, step_min=1.0):
    return house_air(
        laid_, fate_, rooms, VAPOURS, near(cases), outside_water_mol_m3=DRY,
        until_min=until_min, step_min=step_min,
    )  # fmt: skip


@settings(max_examples=25)
@given(
    st.floats(0.0, 10.0), st.floats(0.5, 60.0), st.floats(1.0, 60.0), st.floats(0.0, 1.0),
    st.floats(0.0, 0.02), st.sampled_from([1.0, 2.0]),
)  # fmt: skip
def test_acid_laid_is_given_off_eaten_or_left(air, lime, open_min, counts, mist, step_min):
    told = laid(mist=mist)
    how = fates(lime_half_min=lime, open_min=open_min, salts_count=counts)
    found = run(told, how, three_rooms(air), step_min=step_min)
    total = found.to_air_mol + found.eaten_mol + found.left_mol
    assert total == pytest.approx(told.acid_mol, rel=1e-9)
    assert (found.to_air_mol <= told.acid_mol * (1 + 1e-9)).all()
    assert found.released.sum() * step_min == pytest.approx(float(found.to_air_mol[0]), rel=1e-9)


def test_the_air_is_that_of_the_rooms_alone_for_the_same_release():
    """Within rounding: the joined run carries its own release as `air_of` does."""
    rooms = three_rooms(0.7)
    found = run(laid(), fates(), rooms)
    assert found.held == pytest.approx(air_of(rooms, found.released, step_min=1.0), rel=1e-9)


def test_more_air_never_raises_the_peak_and_lets_more_off():
    """What hangs in the air holds back the film, so airing frees more and still clears more."""
    air = np.array([0.1, 0.3, 1.0, 3.0, 10.0, 30.0])
    found = run(laid(6), fates(6), three_rooms(air, 6), cases=6)
    peaks = found.held.max(axis=(0, 2))
    assert all(b < a for a, b in pairwise(peaks))
    assert all(b >= a * 0.999 for a, b in pairwise(found.to_air_mol))


def test_no_room_holds_more_than_stands_over_the_strongest_film():
    found = run(laid(), fates(lime_half_min=1e5, open_min=1e5), three_rooms(0.0), until_min=600)
    over = float(VAPOURS.hcl_pa(np.array([36.0]))[0]) / VAPOURS.rt_j_mol
    assert found.held.max() <= over


def test_without_mist_nothing_hangs_before_the_first_film():
    found = run(laid(mist=0.0), fates(), three_rooms())
    assert found.held[2].max() == 0
    assert found.held[10].max() > 0


def test_mist_alone_is_given_off_while_it_is_sprayed():
    """By hand: 12 patches of 3 m² with 0.3 mol, 1 % of it over 48 min: 0.00225 mol a minute."""
    told = laid(mist=0.01)
    found = run(told, fates(lime_half_min=1e-3), three_rooms())
    spraying = found.released.sum(axis=2)[:48, 0]
    assert spraying == pytest.approx(0.01 * 0.3 * 36 / 48, rel=0.02)
    assert found.released[60:].max() < 1e-9


def test_who_sprays_breathes_more_than_the_room():
    found = run(laid(), fates(), three_rooms())
    spraying = found.by_person[1:49, 0]
    assert (spraying > 0).all()
    rooms = np.repeat([0, 1, 2], 16)
    assert (spraying > found.held[np.arange(1, 49), 0, rooms]).all()
    assert found.by_person[60:].max() == 0


def test_a_damp_house_dries_its_floor_slower():
    """Nothing aired: the water that left hangs about, and by hand less can leave after it."""
    shut, aired = (run(laid(), fates(), three_rooms(air)) for air in (0.0, 20.0))
    assert shut.to_air_mol < aired.to_air_mol
