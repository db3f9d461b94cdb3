"""An invented acid whose pressures have a closed form, and a small house to dry it in."""

import numpy as np

from farwall.acid.film import Fate, Standing
from farwall.acid.house_air import Laid, Near
from farwall.acid.rooms import Rooms
from farwall.acid.vapours import vapours_at


def hcl_pa(percent, temperature_c):
    """Ten times for each 7 %, twice for each 7 K: the run of the true table, not its figures."""
    return 0.5 * 10 ** ((percent - 10) / 7) * 2 ** ((temperature_c - 20) / 7)


def water_pa(percent, temperature_c):
    return 2340 * np.exp(0.06 * (temperature_c - 20)) * (1 - (percent / 45) ** 1.5)


VAPOURS = vapours_at(21.0, hcl=hcl_pa, water=water_pa)


def film(water_kg=0.18, acid_mol=0.3, chloride_mol=0.35):
    return Standing(*(np.array([[float(x)]]) for x in (water_kg, acid_mol, chloride_mol)))


def fate(water_m_s=0.004, open_min=10.0, lime_half_min=6.0, salts_count=0.5):
    told = (water_m_s, open_min, lime_half_min, salts_count)
    return Fate(*(np.array([[float(x)]]) for x in told))


def laid(cases=1, patches=12, *, mist=0.002, rooms=3, acid_mol=0.3):
    one = np.ones((cases, patches))
    return Laid(
        room=np.arange(patches) * rooms // patches,
        at_min=np.arange(patches) * 4.0,
        spray_min=np.full(patches, 4.0),
        m2=np.full(patches, 3.0),
        on_m2=Standing(0.18 * one, acid_mol * one, 0.35 * one),
        mist=np.full(cases, mist),
    )


def fates(cases=1, patches=12, **told):
    one = fate(**told)
    shape = np.ones((cases, patches))
    return Fate(
        one.water_m_s * shape, one.open_min * shape, one.lime_half_min * shape,
        one.salts_count * shape,
    )  # fmt: skip


def three_rooms(air_changes_h=0.5, cases=1):
    volume = np.array([30.0, 40.0, 50.0])
    between = np.array([[0.0, 3, 0], [3, 0, 3], [0, 3, 0]])
    air = np.broadcast_to(np.asarray(air_changes_h, float), (cases,))
    return Rooms(volume, air[:, None] * volume / 60, np.broadcast_to(between, (cases, 3, 3)).copy())


def near(cases=1):
    return Near(3.1, np.full(cases, 19.0))
