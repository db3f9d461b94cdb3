"""Films and rooms against a general solver that shares no code with them but the pressures.

The same balance written down once more: kilograms and moles of each patch, mol/m³ of each room,
integrated by scipy's stiff solver with small steps.
"""

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from tests.acid.film_ground import VAPOURS, fates, laid, near, three_rooms

from farwall.acid.house_air import house_air

DRY = 0.4 * 2490 / VAPOURS.rt_j_mol
K, OPEN_S, LIME_S, COUNTS, LIGHTER = 0.004, 600.0, 360.0, 0.5, 0.77873


def solved(told, rooms, until_min, minutes):
    """mol/m³ of hydrogen chloride by room at each of `minutes`."""
    patches, count = len(told.room), len(rooms.volume_m3)
    begins = told.at_min + told.spray_min / 2
    out, between = rooms.out_m3_min[0] / 60, rooms.between_m3_min[0] / 60
    mist = told.on_m2.acid_mol[0] * told.m2 * told.mist[0] / (told.spray_min * 60)

    def change(seconds, state):
        water, acid, salt = state[: 3 * patches].reshape(3, patches)
        held, damp = state[3 * patches :].reshape(2, count)
        on = seconds >= begins * 60
        chloride = acid + COUNTS * salt
        percent = 3645.8 * chloride / water / (1000 + 36.458 * chloride / water)
        over = VAPOURS.hcl_pa(percent) * acid / chloride / VAPOURS.rt_j_mol
        free = on * LIGHTER * K * np.maximum(over - held[told.room], 0)
        wet = VAPOURS.water_pa(percent) / VAPOURS.rt_j_mol
        dries = on * K * np.maximum(wet - DRY - damp[told.room], 0)
        drinks, eats = on * np.log(10) / OPEN_S, on * np.log(2) / LIME_S
        films = (
            -dries * 0.018015 - drinks * water,
            -free - (drinks + eats) * acid,
            eats * acid - drinks * salt,
        )
        spraying = (seconds >= told.at_min * 60) & (seconds < (told.at_min + told.spray_min) * 60)
        given, vapour = np.zeros(count), np.zeros(count)
        np.add.at(given, told.room, free * told.m2 + mist * spraying)
        np.add.at(vapour, told.room, dries * told.m2)

        def carried(air, source, holds):
            flows = between @ air - (between.sum(axis=1) + out) * air
            return (source + flows) / (rooms.volume_m3 * holds)

        return np.concatenate([*films, carried(held, given, 1.0), carried(damp, vapour, 5.0)])

    start = np.concatenate(
        [
            told.on_m2.water_kg[0],
            told.on_m2.acid_mol[0] * (1 - told.mist[0]),
            told.on_m2.chloride_mol[0],
            np.zeros(2 * count),
        ]
    )
    run = solve_ivp(
        change, (0, until_min * 60), start, method="LSODA", max_step=5.0, rtol=1e-6, atol=1e-10,
        t_eval=np.asarray(minutes) * 60,
    )  # fmt: skip
    assert run.success
    return run.y[-2 * count : -count].T


@pytest.mark.parametrize(("step_min", "within"), [(1.0, 0.08), (0.1, 0.01)])
def test_the_air_is_what_a_general_solver_finds(step_min, within):
    """Of second order: within 8 % of the greatest by steps of a minute, 1 % by a tenth of one."""
    told, rooms = laid(patches=6), three_rooms(2.0)
    minutes = np.array([10.0, 20.0, 30.0, 60.0, 90.0])
    wanted = solved(told, rooms, 90.0, minutes)
    found = house_air(
        told, fates(patches=6), rooms, VAPOURS, near(), outside_water_mol_m3=DRY, until_min=90.0,
        step_min=step_min,
    ).held[np.round(minutes / step_min).astype(int), 0]  # fmt: skip
    assert found == pytest.approx(wanted, rel=1, abs=within * wanted.max())
    assert found.max() == pytest.approx(wanted.max(), rel=within)
