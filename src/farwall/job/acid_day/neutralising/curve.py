"""pH on the way: against bicarbonate added, as the gas leaves, and base beside base."""

from __future__ import annotations

from functools import lru_cache

from farwall.acid.bases import BASES, Base
from farwall.acid.equilibrium import AIR_CO2_PPM, Co2
from farwall.acid.gas_leaving import hours_until
from farwall.acid.neutralise import acid_of_reading, ph_after, share_to_reach, water_after
from farwall.job.acid_day.neutralising.noun import Curve, Reading, ShareRow

SHARES = (*(n / 20 for n in range(18)), 0.9, 0.94, 0.97, 0.99, 0.995, 1.0, 1.005, 1.01, 1.02, 1.04,
          1.07, *(1.1 + n / 20 for n in range(19)))  # fmt: skip
MORE, PAIL_M = 1.05, 0.3
RISE_ATM = (1.0, 0.1, 0.01, 0.001, AIR_CO2_PPM * 1e-6)
TABLE = ("NaHCO3", "Na2CO3", "NH3", "CaCO3", "Ca(OH)2")
LEAST_MOLAL, MOST_MOLAL = 0.02, 1.5


def molal_drawn(acid_mol_l: float) -> float:
    """A strength for the picture: the tub's own, to two figures, kept to what can be reckoned."""
    return float(f"{min(max(acid_mol_l, LEAST_MOLAL), MOST_MOLAL):.2g}")


def _hours(acid_molal: float, atm: float) -> float | None:
    """Still water, a pail deep; None where only the air itself is left."""
    if atm <= AIR_CO2_PPM * 1e-6:
        return None
    return hours_until(water_after(BASES["NaHCO3"], acid_molal, MORE), atm, depth_m=PAIL_M)


@lru_cache(maxsize=32)
def curve_of(acid_molal: float) -> Curve:
    """The curve of bicarbonate in water of this acid, mol/kg."""

    def along(way: Co2) -> tuple[float, ...]:
        return tuple(ph_after("NaHCO3", acid_molal, share, way).ph for share in SHARES)

    soda = BASES["NaHCO3"]

    def reach(ph: float, way: Co2) -> float | None:
        return share_to_reach(soda, ph, acid_molal=acid_molal, co2=way)

    return Curve(
        acid_molal=acid_molal,
        shares=SHARES,
        closed=along("closed"),
        fresh=along("1atm"),
        rested=along("open"),
        rise=tuple(
            (
                atm,
                ph_after("NaHCO3", acid_molal, MORE, "open", air_ppm=atm * 1e6).ph,
                _hours(acid_molal, atm),
            )
            for atm in RISE_ATM
        ),
        fresh_seven=reach(7.0, "1atm"),
        fresh_eight=reach(8.0, "1atm"),
        rested_seven=reach(7.0, "open"),
        rested_eight=reach(8.0, "open"),
        shut_atm=ph_after("NaHCO3", acid_molal, 1.0, "closed").co2_atm,
    )


READ = (1.0, 2.0, 3.0, 4.0)


@lru_cache(maxsize=8)
def readings_of(formula: str) -> tuple[Reading, ...]:
    """Base for each litre of water that reads pH 1, 2, 3, 4: the least, for salts hide acid."""
    base: Base = BASES[formula]
    return tuple(Reading(ph, acid_of_reading(ph) * base.equivalent_g / 1000) for ph in READ)


@lru_cache(maxsize=32)
def table_of(acid_molal: float) -> tuple[ShareRow, ...]:
    """Base beside base at the equivalent dose, a tenth more, and twice."""
    return tuple(
        ShareRow(
            base=formula,
            word=BASES[formula].word,
            fresh=ph_after(formula, acid_molal, 1.0, "1atm").ph,
            rested=ph_after(formula, acid_molal, 1.0, "open").ph,
            tenth_more=ph_after(formula, acid_molal, 1.1, "1atm").ph,
            twice=ph_after(formula, acid_molal, 2.0, "1atm").ph,
        )
        for formula in TABLE
    )
