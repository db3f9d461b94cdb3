"""The part in lines for a terminal, metric with pounds and gallons beside."""

from __future__ import annotations

from farwall.job.acid_day.neutralising.noun import Floor, Neutralising, StainDose, TubDose
from farwall.units import KG_PER_LB, L_PER_US_GAL, gal_from_l


def neutralising_said(part: Neutralising) -> tuple[str, ...]:
    """Spill, left-over tub, floor, pH on the way, warnings."""
    tubs = [one for one in part.tubs if one.mix == part.largest]
    return (
        *(_stain(one) for one in part.stains),
        *(_tub(one) for one in tubs),
        _floor(part.floor, part.base),
        *_ph(part),
        *part.warnings,
        *part.notes,
    )


def _stain(one: StainDose) -> str:
    pounds = [kg * L_PER_US_GAL / KG_PER_LB for kg in (one.kg_l_low, one.kg_l_high)]
    return (
        f"{one.name} spilled: {one.kg_l_low:.2f} to {one.kg_l_high:.2f} kg of bicarbonate a litre "
        f"({pounds[0]:.1f} to {pounds[1]:.1f} lb a gallon), {one.co2_l_low:.0f} to "
        f"{one.co2_l_high:.0f} L of gas from it "
        f"({'by its sheet as told' if one.source != 'stain-sheets' else one.rank})."
    )


def _tub(one: TubDose) -> str:
    return (
        f"The largest tub left over, {one.mix}, {one.litres:.1f} L "
        f"({gal_from_l(one.litres):.1f} gal): {one.base_kg_low:.1f} to {one.base_kg_high:.1f} kg "
        f"of bicarbonate ({one.base_kg_low / KG_PER_LB:.0f} to "
        f"{one.base_kg_high / KG_PER_LB:.0f} lb), up to {one.co2_l_high:.0f} L of gas, in a vessel "
        f"of {one.vessel_l:.0f} L or more, outdoors: indoors that gas asks for "
        f"{one.air_m3:.0f} m³ of air."
    )


def _floor(one: Floor, base: str) -> str:
    unit = "L" if one.in_litres else "kg"
    return (
        f"Floor: {one.water_l:.0f} L of neutraliser with {one.base:.1f} {unit} of {base} "
        f"({one.base_low:.1f} to {one.base_high:.1f}); the slab's own lime takes nearly all acid, "
        f"{one.lime_mm:.2f} mm of it holds enough."
    )


def _ph(part: Neutralising) -> tuple[str, ...]:
    curve, row = part.curve, part.table[0]
    seven = curve.fresh_seven
    shy = "it never gets to pH 7" if seven is None else f"pH 7 takes {seven:.2f} times that dose"
    told = (
        f"Bicarbonate at the equivalent dose in acid of {curve.acid_molal:g} mol/kg: pH "
        f"{row.fresh:.1f} in fresh fizz, {row.rested:.1f} when all gas has left. In fresh fizz "
        f"{shy}, and pH 8 is out of reach; at rest pH 8 takes {curve.rested_eight or 0:.3f}."
    )
    return (told,)
