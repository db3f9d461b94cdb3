"""Ammonia as the neutraliser: what stands over its wash water, and what it does to the house.

Simple on purpose: how much of it the acid of the floor binds, nobody measured. Bicarbonate does the
same work without a fume.
"""

from __future__ import annotations

from farwall.acid.limits import L_PER_MOL, LIMITS
from farwall.acid.masses import molar_mass_g_mol
from farwall.acid.room import steady_mg_m3
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.job.acid_day.fumes.ground_air import DayAir
from farwall.job.acid_day.fumes.noun import Ammonia, Range
from farwall.mix.batch import WATER_KG_L

HENRY_MOL_KG_ATM = 59.0
"""Ammonia over water at 25 °C [from-memory]: half as much for each 12 K colder or so."""
WASH_PERCENT = (0.12, 0.2, 0.6)
"""NH3 in wash water: 1:40 and 1:16 of household ammonia of 5 to 10 % [common-practice]."""
FREE = (0.1, 0.4, 1.0)
"""Share that leaves before the floor's acid binds it: a guess."""
L_PER_M2 = 0.5
"""Wash water on the floor at once: a guess."""
G_MOL = molar_mass_g_mol(N=1, H=3)
WASH_M2_MIN = 90 / 60 * 0.0929
"""Floor neutralised and scrubbed by one person: 90 ft² an hour [common-practice]."""


def ammonia_of(job: Job, air: DayAir, volume_m3: float) -> Ammonia | None:
    """Ammonia over the wash water and in the house as it stands; None where it is not told."""
    told = job.washing.base == "ammonia water" or any(
        one.kind in {"ammonia water", "ammonia cleaner"} for one in job.materials
    )
    if not told:
        return None
    over, house = [], []
    flow_m3_min = volume_m3 * air.air_changes_h / 60
    release = []
    for percent, free in zip(WASH_PERCENT, FREE, strict=True):
        mol_kg = percent * 10 / G_MOL
        over.append(mol_kg / HENRY_MOL_KG_ATM * 1e6)
        mol_m2 = mol_kg * WATER_KG_L * L_PER_M2 * free
        release.append(mol_m2 * G_MOL * WASH_M2_MIN)
        steady = steady_mg_m3(release_g_min=release[-1], flow_m3_min=max(flow_m3_min, 1e-3))
        house.append(steady / 1000 / G_MOL * L_PER_MOL * 1000)
    limit = LIMITS["nh3-niosh"]
    return Ammonia(
        Range(*(float(f"{one:.2g}") for one in over)),
        Range(*(float(f"{one:.2g}") for one in house)),
        float(f"{release[1] * 1000 * 60 / limit.mg_m3:.2g}"),
        "nh3-niosh",
        Rank.GUESS.value,
    )
