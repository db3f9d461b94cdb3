"""Kilograms of a base for an amount of hydrochloric acid, the gas and the heat that come of it."""

from __future__ import annotations

from farwall.acid.bases import Base, base_of
from farwall.acid.heat import heat_of_dilution_kj_mol
from farwall.acid.neutralise import acid_of_reading, dose, warming_k
from farwall.acid.solution import (
    SIXTY_F_C,
    molality_from_percent,
    percent_from_baume,
    solution,
)
from farwall.evidence import Rank
from farwall.job.sums.arguments import TEMPERATURE, VOLUME
from farwall.job.sums.noun import Argument, Bounds, Given, Result, Sum, refuse
from farwall.units import KG_PER_LB

HCL_MOL_PER_KG = 1000 / 36.458
ALWAYS = (
    "Goggles, gloves, moving air; a little at a time, from the edge, and wait for the fizz. Never "
    "in a closed jug, drum or sprayer. The sheet of the material in hand and local codes win."
)
NOT_THE_SALTS = (
    "This is for the acid alone. Iron, copper and other salts of a stain take base too, often as "
    "much again: the strip says when it is enough."
)
AT_LEAST = (
    "A reading tells the least: metals and carbonic acid hide behind it. Half of it first, then "
    "read again."
)
CAUTIONS: dict[str, str] = {
    "NaHCO3": (
        "Until its gas has left the water stays below pH 5 at this dose; stir, wait, and read the "
        "strip again. The tub cools a little."
    ),
    "Na2CO3": "It foams harder at the end than at the start, and too much of it goes above pH 10.",
    "NH3": (
        "Never into an acid tub and never near bleach: smoke with acid, poison gas with bleach. "
        "Ammonia water fumes by itself; it stays in the rinse water and keeps copper dissolved."
    ),
    "CaCO3": "It is slow and stops near pH 5 to 7; what is too much lies on the bottom.",
    "Ca(OH)2": (
        "A little too much goes to pH 12.4, which burns skin and eyes as acid does; from 12.5 on "
        "the water is hazardous waste. It heats the tub."
    ),
    "NaOH": "Lye heats and spits, and a little too much goes above pH 13: not for a floor.",
}


def reckon(given: Given) -> Result:
    """The equivalent dose. Raises `Refused` for what is no base (vinegar), with the reason.

    Stoichiometry with [iupac-2021]; the acid of a volume by its degrees Baumé [baume,
    laliberte-2004]; heat from [codata-1989] and [nbs-1982], from memory. `heat_kj` is that of base
    and thin acid; `warming_k` counts the thinning of a strong one too.
    """
    base = base_of(given.text("base") or "")
    hcl_kg = _hcl_kg(given)
    found = dose(base, hcl_kg * HCL_MOL_PER_KG, temperature_c=given.usual("c", 20.0))
    return {
        "base": base.formula,
        "base_kg": found.base_kg,
        "base_lb": found.base_kg / KG_PER_LB,
        "co2_kg": found.co2_kg,
        "co2_l": found.co2_l,
        "equivalent_mass_g_per_mol": base.equivalent_g,
        "equivalents_mol": found.equivalents_mol,
        "kg_base_per_kg_hcl": base.kg_per_kg_hcl,
        "hcl_kg": hcl_kg,
        "heat_kj": found.heat_kj,
        "warming_k": _warming(given, found.heat_kj, hcl_kg),
        "heat_rank": Rank.MEMORY.value,
        "rank": Rank.PUBLISHED.value,
        "source": "iupac-2021, baume, laliberte-2004, nbs-1982",
        "warnings": [
            CAUTIONS[base.formula],
            NOT_THE_SALTS,
            ALWAYS,
            *_strength(base),
            *([AT_LEAST] if "found_ph" in given else []),
        ],
    }


def _hcl_kg(given: Given) -> float:
    if "hcl_kg" in given:
        if "baume" in given:
            raise refuse("baume", "It goes with a volume of acid.", "Leave it out beside hcl_kg.")
        return given.number("hcl_kg")
    if "baume" not in given and "found_ph" not in given:
        raise refuse("baume", "The strength of the acid is missing.", "Give baume=20, or hcl_kg=….")
    if "found_ph" in given:
        return _read_kg(given)
    return given.number("acid_l") * _hcl_kg_l(given.number("baume"))


def _read_kg(given: Given) -> float:
    """kg of hydrogen chloride in water that reads a pH: its litres are kilograms, near enough."""
    if "baume" in given:
        raise refuse("baume", "It goes with a volume of acid.", "Leave it out beside found_ph.")
    if "water_l" not in given:
        raise refuse("water_l", "How much water reads that is missing.", "Give water_gal=5.")
    return acid_of_reading(given.number("found_ph")) * given.number("water_l") / HCL_MOL_PER_KG


def _hcl_kg_l(baume: float) -> float:
    """kg of hydrogen chloride in a litre of acid, measured at 60 °F as it is sold."""
    percent = percent_from_baume(baume)
    return solution(hcl_percent=percent, temperature_c=SIXTY_F_C).density_kg_l * percent / 100


def _warming(given: Given, heat_kj: float, hcl_kg: float) -> float | None:
    """Kelvin, where the water of the tub was told; an acid told by its Baumé warms it besides.

    Such an acid brings its own water, and the heat that thinning it sets free [parker-1965].
    """
    water_kg = given.maybe("water_l")
    if water_kg is None:
        return None
    if "acid_l" in given and hcl_kg:
        percent = percent_from_baume(given.number("baume"))
        thinning_kj_mol = heat_of_dilution_kj_mol(molality_from_percent(percent))
        heat_kj += hcl_kg * HCL_MOL_PER_KG * thinning_kj_mol
        water_kg += hcl_kg * (100 / percent - 1)
    return warming_k(heat_kj, water_kg)


def _strength(base: Base) -> list[str]:
    told = "base_kg is of ammonia itself: household ammonia water holds some 5 to 10 % of it."
    return [told] if base.formula == "NH3" else []


SUM = Sum(
    name="neutraliser",
    what="base for an amount of hydrochloric acid, and the gas and heat that come of it",
    arguments=(
        Argument("base", needed=True),
        Argument("hcl", {"kg": "kg", "g": "g", "lb": "lb"}, Bounds(0.0, 1e6)),
        Argument("acid", VOLUME, Bounds(0.0, 1e6)),
        Argument("found_ph", bounds=Bounds(-2.0, 16.0)),
        Argument("baume", bounds=Bounds(0.0, 23.5, above=True)),
        Argument("water", VOLUME, Bounds(0.0, 1e6, above=True)),
        Argument("", TEMPERATURE, Bounds(0.0, 50.0)),
    ),
    reckon=reckon,
    one_of=(("hcl_kg", "acid_l", "found_ph"),),
)
