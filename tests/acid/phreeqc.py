"""A second opinion on water with acid and base in it: PHREEQC, through phreeqpython.

`phreeqc.dat` as it comes, with lime from `pitzer.dat` (log K -5.190 for Ca(OH)2 = Ca++ + 2 OH-)
and one pair of ammonium and ammonia that has no redox (log K and size as that file has them).
"""

from __future__ import annotations

from functools import lru_cache
from math import log10

from phreeqpython import PhreeqPython

from farwall.acid.equilibrium_species import Totals

LIME = """
PHASES
Lime
 Ca(OH)2 = Ca+2 + 2 OH-
 -log_k -5.190
"""
AMMONIA = """
SOLUTION_MASTER_SPECIES
Amm AmmH+ 0 AmmH 17
SOLUTION_SPECIES
AmmH+ = AmmH+
 -gamma 2.5 0
AmmH+ = Amm + H+
 -log_k -9.252
 -analytic 0.6322 -0.001225 -2835.76
"""


@lru_cache(maxsize=2)
def engine(database: str) -> PhreeqPython:
    """PHREEQC with a database and our additions."""
    made = PhreeqPython(database=database)
    made.ip.run_string((LIME + AMMONIA if database == "phreeqc.dat" else "") + "\nEND\n")
    return made


def ph_of(
    totals: Totals,
    *,
    co2: str,
    air_atm: float = 10**-3.38,
    temperature_c: float = 25.0,
    database: str = "phreeqc.dat",
    solids: bool = True,
) -> tuple[float, float]:
    """pH and ionic strength, mol/kg, of a kilogram of water that all of it was put into."""
    put = {
        "HCl": totals.hcl, "NaOH": totals.sodium, "Ca(OH)2": totals.calcium,
        "KOH": totals.potassium, "Amm": totals.ammonia, "CO2": totals.carbon,
    }  # fmt: skip
    lime = "Lime" if database == "phreeqc.dat" else "Portlandite"
    phases = [f" {lime} 0 0"] if totals.calcium and solids else []
    if totals.calcium and solids and (totals.carbon or co2 == "open"):
        phases.append(" Calcite 0 0")
    if co2 == "1atm" and totals.carbon:
        phases.append(" CO2(g) 0 0")
    if co2 == "open":
        phases.append(f" CO2(g) {log10(air_atm):.6f} 20")
    reaction = "\n".join(f" {name} {amount:.12g}" for name, amount in put.items() if amount)
    held = "EQUILIBRIUM_PHASES 1\n" + "\n".join(phases) if phases else ""
    engine(database).ip.run_string(
        f"SOLUTION 1\n temp {temperature_c}\nREACTION 1\n{reaction}\n 1 mol\n{held}\n"
        "SAVE solution 1\nEND\n"
    )
    ip = engine(database).ip
    return ip.get_ph(1), ip.get_mu(1)
