"""What a left-over tub takes: each boxed batch of the plan, whole."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from farwall.acid.bases import Base
from farwall.acid.neutralise import dose, warming_k
from farwall.acid.solution import solution
from farwall.facts.plan import Mix
from farwall.job.acid_day.neutralising.noun import TubDose
from farwall.job.acid_day.neutralising.stains import ROOM_C, Strength

WATER_TIMES, FOAM_TIMES = 2.0, 2.0
"""As much water first, in a vessel of twice what stands in it: common practice, no source."""
CO2_MOST = 5000e-6 * 1000
"""Litres of carbon dioxide in a cubic metre of air, at most: 5,000 ppm [osha-co2]."""
ADDED_ACID_PERCENT = 31.45
"""Trade-strength muriatic acid, 20 degrees Baumé [baume]."""


@cache
def added_mol_l() -> float:
    """Moles of acid in a litre of it."""
    return solution(hcl_percent=ADDED_ACID_PERCENT, temperature_c=ROOM_C).molarity


def mix_mol_l(mix: Mix, strength: Strength) -> tuple[float, float]:
    """Moles for a base in a litre of the mix, low and high, added acid among it."""
    all_l = mix.stain_l + mix.water_l + mix.acid_l
    low, high = (
        (mix.stain_l * each + mix.acid_l * added_mol_l()) / all_l for each in strength.mol_l()
    )
    return low, high


def acid_mol_l(mix: Mix, strength: Strength) -> tuple[float, float]:
    """The same of the acid alone: the salts stay in the floor as its colour."""
    all_l = mix.stain_l + mix.water_l + mix.acid_l
    low, high = (
        (mix.stain_l * each + mix.acid_l * added_mol_l()) / all_l for each in strength.acid
    )
    return low, high


def tub_dose(mix: Mix, strength: Strength, base: Base) -> TubDose:
    """A whole batch that is left over."""
    litres = mix.stain_l + mix.water_l + mix.acid_l
    low_l, high_l = mix_mol_l(mix, strength)
    low, high = (dose(base, each * litres, temperature_c=ROOM_C) for each in (low_l, high_l))
    return TubDose(
        mix=mix.id,
        coat=mix.coat,
        cut=mix.cut,
        litres=litres,
        mol_low=low.equivalents_mol,
        mol_high=high.equivalents_mol,
        base_kg_low=low.base_kg,
        base_kg_high=high.base_kg,
        co2_l_low=low.co2_l,
        co2_l_high=high.co2_l,
        warming_k=warming_k(high.heat_kj, litres * WATER_TIMES),
        air_m3=high.co2_l / CO2_MOST,
        vessel_l=litres * WATER_TIMES * FOAM_TIMES,
    )


def tub_doses(
    mixes: tuple[Mix, ...], strengths: Mapping[str, Strength], base: Base
) -> tuple[TubDose, ...]:
    """Each mix of the plan; `strengths` by coat."""
    return tuple(tub_dose(mix, strengths[mix.coat], base) for mix in mixes)
