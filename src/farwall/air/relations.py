"""The evaporation relations themselves, as one table: formula, range, source, rank.

Each takes `Conditions` and gives kg/(m²·h); negative means that water
condenses. What they were made for, and where their coefficients come from,
stands in their row.
"""

from __future__ import annotations

import math
from collections.abc import Callable

from farwall.air import moist
from farwall.air.conditions import Conditions
from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.units import KG_M2_PER_LB_FT2, M_S_PER_MPH, PA_PER_PSI, c_from_f, f_from_c

_KM_H_PER_M_S = 3.6

_FRESH_CONCRETE = (
    "bleed water on fresh concrete; for a film of stain on a cured slab an extrapolation"
)
_POOL = "water in a pool; for a film of stain on a slab an extrapolation"


@dataclass(frozen=True)
class Relation:
    """One published relation. Ranges are inclusive and say where it was made to hold."""

    name: str
    rate: Callable[[Conditions], float]
    surface_c: tuple[float, float]
    air_c: tuple[float, float]
    air_speed_m_s: tuple[float, float]
    wind_height_m: float
    made_for: str
    rank: Rank
    source: str
    quiet_air: bool = False

    def positive(self, conditions: Conditions) -> float:
        """The rate, zero when water condenses. [kg/(m²·h)]"""
        return max(0.0, self.rate(conditions))

    def strays(self, conditions: Conditions) -> tuple[str, ...]:
        """What of these conditions the relation was not made for; empty when all is well."""
        told = []
        for label, value, (low, high), unit in (
            ("slab", conditions.surface_c, self.surface_c, "°C"),
            ("air", conditions.air_c, self.air_c, "°C"),
            ("air speed", conditions.air_speed_m_s, self.air_speed_m_s, "m/s"),
        ):
            if not low - 1e-9 <= value <= high + 1e-9:
                told.append(
                    f"{self.name} was made for {label} {low:g} to {high:g} {unit}, "
                    f"not {value:g} {unit}."
                )
        if self.quiet_air and self.rate(conditions) <= 0:
            told.append(
                f"{self.name} rests on air that rises from the water, and here it does not rise."
            )
        return tuple(told)


def uno(now: Conditions) -> float:
    """Uno's relation, SI form as printed. [kg/(m²·h)] Source: [uno-1998]."""
    drive: float = (now.surface_c + 18) ** 2.5 - now.rh_percent / 100 * (now.air_c + 18) ** 2.5
    return 5 * drive * (now.air_speed_m_s * _KM_H_PER_M_S + 4) * 1e-6


def uno_ip(now: Conditions) -> float:
    """Uno's relation, US form as printed: 4-6 % above the SI form. Source: [uno-1998]."""
    slab_f, air_f = f_from_c(now.surface_c), f_from_c(now.air_c)
    drive: float = slab_f**2.5 - now.rh_percent / 100 * air_f**2.5
    lb_ft2_h = drive * (1 + 0.4 * now.air_speed_m_s / M_S_PER_MPH) * 1e-6
    return lb_ft2_h * KG_M2_PER_LB_FT2


def menzel(now: Conditions) -> float:
    """Menzel's relation, coefficients from memory. [kg/(m²·h)] Source: [menzel-1954]."""
    drive_psi = _vapour_drive_pa(now) / PA_PER_PSI
    lb_ft2_h = 0.44 * drive_psi * (0.253 + 0.096 * now.air_speed_m_s / M_S_PER_MPH)
    return lb_ft2_h * KG_M2_PER_LB_FT2


def carrier(now: Conditions) -> float:
    """Carrier's form for pools, (0.089 + 0.0782 V)·Δp/latent heat, coefficients from memory.

    V in m/s, Δp in kPa, latent heat 2501 - 2.361·t kJ/kg at the surface [from-memory].
    Source: [carrier-type].
    """
    latent_kj_kg = 2501.0 - 2.361 * now.surface_c
    drive_kpa = _vapour_drive_pa(now) / 1000
    return (0.089 + 0.0782 * now.air_speed_m_s) * drive_kpa / latent_kj_kg * 3600


def shah_quiet_air(now: Conditions) -> float:
    """Shah's relation for quiet air, C = 35 from memory; zero where the air does not rise.

    C·ρw·(ρr - ρw)^(1/3)·(Ww - Wr), ρ being dry air in a cubic metre at the
    water (saturated) and in the room. It does not know air speed. Source: [shah-2002].
    """
    rh_percent = max(0.1, now.rh_percent)
    at_water = moist.dry_air_kg_m3(
        air_c=now.surface_c, rh_percent=100.0, pressure_pa=now.pressure_pa
    )
    in_room = moist.dry_air_kg_m3(
        air_c=now.air_c, rh_percent=rh_percent, pressure_pa=now.pressure_pa
    )
    if in_room <= at_water:
        return 0.0
    wet = moist.saturation_humidity_ratio(air_c=now.surface_c, pressure_pa=now.pressure_pa)
    room = moist.humidity_ratio(air_c=now.air_c, rh_percent=rh_percent, pressure_pa=now.pressure_pa)
    return 35.0 * at_water * math.cbrt(in_room - at_water) * (wet - room)


def _vapour_drive_pa(now: Conditions) -> float:
    over_slab = moist.saturation_pressure_pa(air_c=now.surface_c)
    return over_slab - moist.vapour_pressure_pa(air_c=now.air_c, rh_percent=now.rh_percent)


def _for_fresh_concrete(
    name: str, rate: Callable[[Conditions], float], rank: Rank, source: str
) -> Relation:
    # The cases of the PCA table span air of 30 to 100 °F and wind to 25 mph [lerch-1957]; the
    # slab's lower end is that of the nomograph's axis (40 °F, from memory).
    return Relation(
        name=name,
        rate=rate,
        surface_c=(c_from_f(40), c_from_f(100)),
        air_c=(c_from_f(30), c_from_f(100)),
        air_speed_m_s=(0.0, 25 * M_S_PER_MPH),
        wind_height_m=0.5,
        made_for=_FRESH_CONCRETE,
        rank=rank,
        source=source,
    )


RELATIONS: dict[str, Relation] = {
    row.name: row
    for row in (
        _for_fresh_concrete("uno", uno, Rank.PUBLISHED, "uno-1998"),
        _for_fresh_concrete("uno_ip", uno_ip, Rank.PUBLISHED, "uno-1998"),
        _for_fresh_concrete("menzel", menzel, Rank.MEMORY, "menzel-1954"),
        Relation(
            name="carrier",
            rate=carrier,
            surface_c=(5.0, 40.0),
            air_c=(5.0, 45.0),
            air_speed_m_s=(0.0, 0.7),
            wind_height_m=0.0,
            made_for=_POOL,
            rank=Rank.MEMORY,
            source="carrier-type",
        ),
        Relation(
            name="shah_quiet_air",
            rate=shah_quiet_air,
            surface_c=(7.0, 50.0),
            air_c=(6.0, 35.0),
            air_speed_m_s=(0.0, 0.15),
            wind_height_m=0.0,
            made_for=_POOL,
            rank=Rank.MEMORY,
            source="shah-2002",
            quiet_air=True,
        ),
    )
}

IN_MOVING_AIR = ("uno", "uno_ip", "menzel", "carrier")
"""Those that know air speed. The clocks keep to these: each falls steadily with damper air and
rises with wind over their whole domain, so no clock jumps where one of them is left behind."""
