"""Neutraliser for the floor, field by field, and how little of the acid it is left to take."""

from __future__ import annotations

from collections.abc import Mapping
from math import fsum

from farwall.acid.bases import BASES, Base
from farwall.acid.floor_lime import (
    AMMONIA_WATER_SHARE,
    BICARBONATE_G_L,
    NEUTRALISER_L_M2,
    depth_mm,
)
from farwall.acid.neutralise import gas_litres
from farwall.facts.plan import Field, Plan
from farwall.floor.nouns import Room
from farwall.job.acid_day.neutralising.noun import Floor, FloorDose
from farwall.job.acid_day.neutralising.stains import ROOM_C, Strength
from farwall.job.acid_day.neutralising.tubs import acid_mol_l


def washed_fields(plan: Plan) -> tuple[Field, ...]:
    """The fields of the coat that covers most, in order: the floor that is washed."""
    coats = dict.fromkeys(one.coat for one in plan.fields)
    if not coats:
        return ()
    widest = max(coats, key=lambda coat: fsum(f.area_m2 for f in plan.fields if f.coat == coat))
    return tuple(one for one in plan.fields if one.coat == widest)


def strengths_g_l(base: Base) -> tuple[float, float, float]:
    """Grams of base in a litre of neutraliser: as seen of bicarbonate, by equivalents."""
    share = base.equivalent_g / BASES["NaHCO3"].equivalent_g
    low, likely, high = BICARBONATE_G_L
    return low * share, likely * share, high * share


def floor_doses(
    plan: Plan, strengths: Mapping[str, Strength], base: Base, rooms: Mapping[str, Room]
) -> Floor:
    """`strengths` by coat, `rooms` by id."""
    in_litres = base.formula == "NH3"
    by_litre = AMMONIA_WATER_SHARE if in_litres else tuple(g / 1000 for g in strengths_g_l(base))
    fields = tuple(_dose(one, rooms, by_litre) for one in washed_fields(plan))
    low, high = _laid(plan, strengths)
    wash = NEUTRALISER_L_M2[1] * BICARBONATE_G_L[1] / BASES["NaHCO3"].equivalent_g
    return Floor(
        fields=fields,
        water_l=fsum(one.water_l for one in fields),
        base_low=fsum(one.base_low for one in fields),
        base=fsum(one.base for one in fields),
        base_high=fsum(one.base_high for one in fields),
        in_litres=in_litres,
        co2_l_most=_gas_l(base, fsum(one.base for one in fields)),
        acid_mol_m2_low=low,
        acid_mol_m2_high=high,
        lime_mm=depth_mm(high),
        wash_share=min(1.0, wash / high) if high > 0 else 1.0,
    )


def _gas_l(base: Base, base_kg: float) -> float:
    """Litres of gas if all of it met acid."""
    return gas_litres(base_kg * 1000 / base.g_mol * base.gas, ROOM_C)


def _dose(one: Field, rooms: Mapping[str, Room], by_litre: tuple[float, ...]) -> FloorDose:
    water = [one.area_m2 * each for each in NEUTRALISER_L_M2]
    low, likely, high = (w * b for w, b in zip(water, by_litre, strict=True))
    return FloorDose(
        field=one.id,
        rooms=tuple(rooms[each].label if each in rooms else each for each in one.rooms),
        area_m2=one.area_m2,
        water_l_low=water[0],
        water_l=water[1],
        water_l_high=water[2],
        base_low=low,
        base=likely,
        base_high=high,
    )


def _laid(plan: Plan, strengths: Mapping[str, Strength]) -> tuple[float, float]:
    """Acid of all coats on a square metre, mol, low and high."""
    low = high = 0.0
    seen: set[str] = set()
    for mix in plan.mixes:
        if mix.coat in seen:
            continue
        seen.add(mix.coat)
        each = acid_mol_l(mix, strengths[mix.coat])
        laid = plan.inputs.l_per_m2.get(mix.coat, 0.0)
        low, high = low + each[0] * laid, high + each[1] * laid
    return low, high
