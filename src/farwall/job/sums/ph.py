"""pH of a kilogram of water with hydrochloric acid and a base in it, by the way of its gas."""

from __future__ import annotations

from dataclasses import asdict

from farwall.acid.bases import Base, base_of
from farwall.acid.equilibrium import (
    AIR_CO2_PPM,
    CO2_WAYS,
    MOST_MOLAL,
    Co2,
    Equilibrium,
    equilibrium,
)
from farwall.acid.equilibrium_species import Totals
from farwall.acid.neutralise import (
    BICARBONATE_MOST_MOLAL,
    ammonia_ppm,
    gas_litres,
)
from farwall.evidence import Rank
from farwall.job.sums.arguments import TEMPERATURE
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum, refuse

SOURCE = "plummer-busenberg-1982, marshall-franck-1981, truesdell-jones-1974"
TOLD: dict[Co2, str] = {
    "closed": (
        "No gas leaves: only in a shut vessel, which may burst. Never close acid and bicarbonate."
    ),
    "1atm": "Fresh fizz: what bubbles by itself has left. It rises for hours as the rest leaves.",
    "open": "At rest with the air: hours in a stirred pail, days in a still drum.",
}
STRONG = "So strong, published models part by 0.2 at 1 mol/kg and more above; no strip reads there."
THIN_STRENGTH = 1.0
AMMONIA_IDLH_PPM = 300.0


def reckon(given: Given) -> Result:
    """pH, gas and what lies undissolved, with what is left over of charge and carbon.

    Amounts are mol for a kilogram of water. `co2` left out: `1atm` for a base that fizzes,
    `closed` for one that does not. Sources: as `acid.equilibrium`, constants from memory.
    """
    base = None if given.text("base") in {None, "none"} else base_of(given.text("base") or "")
    amount = _amount(given, base)
    way = _way(given, base)
    moles = {} if base is None else {name: amount * one for name, one in base.gives.items()}
    temperature_c = given.usual("c", 25.0)
    found = equilibrium(
        Totals(hcl=given.usual("hcl_molal", 0.0), **moles),
        co2=way,
        temperature_c=temperature_c,
        air_ppm=given.usual("air_co2_ppm", AIR_CO2_PPM),
    )
    return {
        "ph": found.ph,
        "co2": way,
        "ionic_strength_molal": found.ionic_strength,
        "co2_atm": found.co2_atm,
        "co2_off_molal": found.co2_off,
        "co2_off_l": gas_litres(found.co2_off, temperature_c),
        "dissolved_carbon_molal": found.dissolved_carbon,
        "undissolved_lime_molal": found.lime,
        "undissolved_calcite_molal": found.calcite,
        "ammonia_over_it_ppm": ammonia_ppm(found),
        "left_over_molal": asdict(found.proof),
        "rank": Rank.MEMORY.value,
        "source": SOURCE,
        "warnings": _warnings(found, base, amount, way),
    }


def _amount(given: Given, base: Base | None) -> float:
    if base is None:
        if given.usual("base_molal", 0.0) > 0:
            raise refuse("base", "An amount of what?", "Give base=NaHCO3, or leave it out.")
        return 0.0
    if "base_molal" not in given:
        raise refuse("base_molal", "How much of the base is missing.", "Give base_molal=0.1.")
    amount = given.number("base_molal")
    if amount * max(base.gives.values()) > MOST_MOLAL:
        most = MOST_MOLAL / max(base.gives.values())
        raise refuse("base_molal", "So much cannot be reckoned.", f"Give at most {most:g} mol/kg.")
    return amount


def _way(given: Given, base: Base | None) -> Co2:
    told = given.text("co2")
    for way in CO2_WAYS:
        if told == way:
            return way
    return "1atm" if base is not None and base.gas else "closed"


def _warnings(found: Equilibrium, base: Base | None, amount: float, way: Co2) -> list[object]:
    told: list[object] = []
    if base is not None and base.gas:
        told.append(TOLD[way])
    elif way == "open":
        told.append(TOLD["open"])
    if found.ionic_strength > THIN_STRENGTH:
        told.append(STRONG)
    if base is not None and base.formula == "NaHCO3" and amount > BICARBONATE_MOST_MOLAL:
        told.append(
            "Past what water dissolves of bicarbonate, some 96 g a litre at 20 °C, it lies."
        )
    if found.lime > 0:
        told.append("Lime lies on the bottom: such water burns skin and eyes.")
    if ammonia_ppm(found) > AMMONIA_IDLH_PPM:
        told.append("Right over the water it passes the 300 ppm that endanger life [niosh-pocket].")
    if found.ammonia > 0:
        told.append("Ammonia fumes over it; never near bleach, never into an acid tub.")
    return told


SUM = Sum(
    name="ph",
    what="pH of acid and a base in water, gas shut in, fizzed off or at rest with the air",
    arguments=(
        Argument("hcl_molal", bounds=Bounds(0.0, MOST_MOLAL)),
        Argument("base"),
        Argument("base_molal", bounds=Bounds(0.0, MOST_MOLAL)),
        Argument("co2", choices=CO2_WAYS),
        Argument("air_co2_ppm", bounds=Bounds(1.0, 1e5)),
        Argument("", TEMPERATURE, Bounds(0.0, 50.0)),
    ),
    reckon=reckon,
)
