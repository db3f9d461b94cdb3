"""Strength, warmth and vapour of one tub, over both ends of what a sheet leaves open."""

from __future__ import annotations

import itertools
from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from typing import Final

from farwall.acid import vapour
from farwall.acid.density import density_kg_l
from farwall.acid.mixing import Mixed, Poured, together
from farwall.acid.salting import CHLORIDES, pressed_out
from farwall.acid.water import density_kg_l as water_kg_l
from farwall.air.conditions import STANDARD_PRESSURE_PA
from farwall.errors import Refused
from farwall.evidence import Known, Rank
from farwall.job.acid_day.strength.noun import Ends, MixFigures
from farwall.mix.batch import STAIN_KG_L, TRADE_ACID_PERCENT
from farwall.nouns import dataclass

SALTS_WARM: Final = Known(4 / 3, "of the rise", Rank.GUESS, "house-guess")
"""Salts of a stain hold less heat than the water whose place they take: a warmer high end."""
LEAST_PERCENT: Final = 0.1
PPM_PER_PA: Final = 1e6 / STANDARD_PRESSURE_PA


@dataclass(frozen=True)
class Tub:
    """Litres that go into a tub at one warmth, and what the stain's sheet says of it.

    `salts`: chlorides and their shares of the neat stain, % by mass, both ends.
    """

    water_l: float
    stain_l: float
    acid_l: float
    percent: Ends
    density_kg_l: float | None
    start_c: float
    salts: Mapping[str, Ends]

    @property
    def total_l(self) -> float:
        """All litres as they are poured; what they shrink is below the marks on a pail."""
        return self.water_l + self.stain_l + self.acid_l


def figures_of(tub: Tub, *, l_per_m2: float) -> MixFigures:
    """Every figure of a mix. The stain to 38 % HCl, warmth 0 to 60 °C, else `Refused`."""
    mixed = mixtures(tub)
    percent = _over(mixed, lambda one: one.whole.hcl_percent)
    alone = _over(mixtures(replace(tub, acid_l=0.0)), lambda one: one.whole.hcl_percent)
    litre = _over(mixed, lambda one: one.whole.hcl_mol / tub.total_l)
    celsius = warmth(tub, mixed)
    return MixFigures(
        cut_percent=alone,
        tub_percent=percent,
        mol_per_l=litre,
        mol_per_m2=Ends(litre.low * l_per_m2, litre.high * l_per_m2),
        heat_kj_per_l=_over(mixed, lambda one: one.heat_kj / tub.total_l),
        shrinks_ml_per_l=_over(mixed, lambda one: 1000 * one.shrinks_l / tub.total_l),
        tub_c=celsius,
        over_liquid_ppm=over_liquid_ppm(percent, celsius),
        times_by_acid=times_by_acid(alone, percent, tub.start_c) if tub.acid_l > 0 else None,
        times_by_salts=times_by_salts(tub, percent),
    )


def mixtures(tub: Tub) -> tuple[Mixed, ...]:
    """The tub at each corner of share and density of the stain."""
    ends = (STAIN_KG_L.low, STAIN_KG_L.high or STAIN_KG_L.low)
    densities = ends if tub.density_kg_l is None else (tub.density_kg_l,)
    shares = dict.fromkeys((tub.percent.low, tub.percent.high))
    return tuple(_mixed(tub, *corner) for corner in itertools.product(shares, densities))


def _mixed(tub: Tub, percent: float, kg_l: float) -> Mixed:
    celsius, acid = tub.start_c, TRADE_ACID_PERCENT.value
    acid_kg_l = density_kg_l(hcl_percent=acid, temperature_c=celsius)
    parts = (
        Poured(tub.water_l * water_kg_l(celsius), 0.0, celsius),
        Poured(tub.stain_l * kg_l, percent, celsius),
        Poured(tub.acid_l * acid_kg_l, acid, celsius),
    )
    return together([part for part in parts if part.mass_kg > 0])


def _over(mixed: Sequence[Mixed], told: Callable[[Mixed], float]) -> Ends:
    values = [told(one) for one in mixed]
    return Ends(min(values), max(values))


def warmth(tub: Tub, mixed: Sequence[Mixed]) -> Ends:
    """°C of the tub: not warmed at all, to the warmest corner with the salts' share on top."""
    rise = max(one.whole.temperature_c for one in mixed) - tub.start_c
    return Ends(tub.start_c, tub.start_c + max(rise, 0.0) * SALTS_WARM.value)


def over_liquid_ppm(percent: Ends, celsius: Ends) -> Ends:
    """ppm just above still plain acid, from cold and weak to warm and strong.

    Strength to 38 % and warmth 0-40 °C are known; beyond, the end itself is taken.
    """
    low = _pressure(percent.low, celsius.low).low_pa
    high = _pressure(percent.high, celsius.high).high_pa
    return Ends(low * PPM_PER_PA, high * PPM_PER_PA)


def times_by_acid(before: Ends, after: Ends, celsius: float) -> Ends | None:
    """How many times the vapour is that of the cut alone, at each end of the sheet's share.

    None where the cut alone is below 0.1 %: a factor on next to nothing says nothing.
    """
    factors = [
        _pressure(strong, celsius).likely_pa / _pressure(weak, celsius).likely_pa
        for weak, strong in ((before.low, after.low), (before.high, after.high))
        if weak >= LEAST_PERCENT
    ]
    return Ends(min(factors), max(factors)) if factors else None


def times_by_salts(tub: Tub, percent: Ends) -> Ends | None:
    """What the stain's chlorides make of the vapour over the tub; None where none is listed.

    The low end takes the low shares, the high end the high ones; where they leave too little
    water to guess at, None too [house-guess].
    """
    share = _stain_share(tub)
    listed = {name: ends for name, ends in tub.salts.items() if name in CHLORIDES}
    if not listed or percent.high <= 0:
        return None
    low = {name: ends.low * share for name, ends in listed.items()}
    high = {name: ends.high * share for name, ends in listed.items()}
    try:
        least = pressed_out(hcl_percent=percent.high, salt_percent=low)
        most = pressed_out(hcl_percent=percent.high, salt_percent=high)
    except Refused:
        return None
    return Ends(least.low, most.high or most.low)


def _stain_share(tub: Tub) -> float:
    """Stain in the tub, a share of its mass, at the heavy end of the stain's density."""
    stain = tub.stain_l * (tub.density_kg_l or STAIN_KG_L.high or STAIN_KG_L.low)
    acid = density_kg_l(hcl_percent=TRADE_ACID_PERCENT.value, temperature_c=tub.start_c)
    return stain / (stain + tub.water_l * water_kg_l(tub.start_c) + tub.acid_l * acid)


def _pressure(percent: float, celsius: float) -> vapour.Pressure:
    return vapour.hcl_pressure(
        hcl_percent=min(percent, vapour.MOST_PERCENT),
        temperature_c=min(max(celsius, vapour.LEAST_C), vapour.MOST_C),
    )
