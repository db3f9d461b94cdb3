"""Neutralising on the page: amounts in the units that are spoken, the picture of pH."""

from __future__ import annotations

from typing import Any

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.neutralising.noun import Floor, Neutralising, StainDose, TubDose
from farwall.job.acid_day.noun import AcidDay
from farwall.units import KG_PER_LB, L_PER_US_GAL, M_PER_FT, M_PER_IN, ft2_from_m2, gal_from_l
from farwall.web.pages.acid.ph_picture import ph_picture
from farwall.web.words import said

_OZ_PER_LB = 16
BURSTS_ATM = 2.0
"""From here the page tells the pressure of a shut vessel: no jug is made for it. A guess."""


def neutralising_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """What the template of the part is given."""
    part, units = day.neutralising, ground.job.wishes.units
    us = units == "us"
    curve = part.curve
    return {
        "per": said(f"acid-neutralising-per-{units}"),
        "stains": [_stain(one, us=us) for one in part.stains],
        "tub": next((_tub(one, us=us) for one in part.tubs if one.mix == part.largest), None),
        "by": said("acid-neutralising-by-" + part.base.replace(" ", "-")),
        "floor": _floor(part.floor, us=us),
        "lime": _lime(part.floor, us=us),
        "pail": said(
            "acid-neutralising-pail",
            base=_mass(part.standing_by_kg, us=us), water=_volume(part.standing_by_l, us=us),
        ),
        "sheets": "sheets" if ground.job.stains else "samples",
        "picture": ph_picture(curve),
        "why": _why(part),
        "rise": [(_share(atm), f"{ph:.1f}", _days(hours)) for atm, ph, hours in curve.rise],
        "pails": _readings(part, us=us),
        "table": [
            (
                said("acid-neutralising-base-" + row.word.replace(" ", "-")),
                *(f"{ph:.1f}" for ph in (row.fresh, row.rested, row.tenth_more, row.twice)),
            )
            for row in part.table
        ],
    }  # fmt: skip


def _readings(part: Neutralising, *, us: bool) -> list[tuple[str, str, str]]:
    """pH read, and bicarbonate for a pail and for a drum of it."""
    pail, drum = (5 * L_PER_US_GAL, 55 * L_PER_US_GAL) if us else (20.0, 200.0)
    return [
        (f"{one.reads:.0f}", _mass(one.kg_l * pail, us=us), _mass(one.kg_l * drum, us=us))
        for one in part.readings
    ]


def _stain(one: StainDose, *, us: bool) -> dict[str, str]:
    each = L_PER_US_GAL if us else 1.0
    told = one.source != "stain-sheets"
    return {
        "name": one.name,
        "base": _masses(one.kg_l_low * each, one.kg_l_high * each, us=us),
        "gas": _gases(one.co2_l_low * each, one.co2_l_high * each, us=us),
        "rests": said("acid-neutralising-told" if told else "acid-neutralising-sheets"),
    }


def _tub(one: TubDose, *, us: bool) -> str:
    return said(
        "acid-neutralising-tub",
        litres=_volume(one.litres, us=us), cut=one.cut,
        base=_masses(one.base_kg_low, one.base_kg_high, us=us),
        gas=_gas(one.co2_l_high, us=us), vessel=_volume(one.vessel_l, us=us),
        cools=_degrees(abs(one.warming_k), us=us), air=_air(one.air_m3, us=us),
    )  # fmt: skip


def _floor(floor: Floor, *, us: bool) -> dict[str, Any]:
    def amount(value: float) -> str:
        return _volume(value, us=us) if floor.in_litres else _mass(value, us=us)

    def row(who: str, area: float, water: float, base: float) -> tuple[str, ...]:
        floor_area = f"{ft2_from_m2(area):,.0f} ft²" if us else f"{area:.1f} m²"
        return (who, floor_area, _volume(water, us=us), amount(base))

    rows = [row(", ".join(f.rooms), f.area_m2, f.water_l, f.base) for f in floor.fields]
    area = sum(one.area_m2 for one in floor.fields)
    return {
        "rows": rows,
        "all": row(said("acid-neutralising-all"), area, floor.water_l, floor.base),
        "span": said(
            "acid-neutralising-span",
            low=amount(floor.base_low),
            high=amount(floor.base_high),
            gas=_gas(floor.co2_l_most, us=us),
        ),
    }


def _lime(floor: Floor, *, us: bool) -> str:
    inches = floor.lime_mm / 1000 / M_PER_IN
    depth = f"{inches:.3f} in" if us else f"{floor.lime_mm:.2f} mm"
    return said("acid-neutralising-lime", depth=depth, share=f"{floor.wash_share:.0%}")


def _why(part: Neutralising) -> list[str]:
    """Numbers for why it stays sour, a sentence each."""
    curve, row = part.curve, part.table[0]
    seven = curve.fresh_seven
    fresh = (
        said("acid-neutralising-fresh-none")
        if seven is None
        else said("acid-neutralising-fresh", times=f"{seven:.2g}")
    )
    shut = said("acid-neutralising-shut", atm=f"{curve.shut_atm:.2g}")
    return [
        said("acid-neutralising-sour", fresh=f"{row.fresh:.1f}", rested=f"{row.rested:.1f}"),
        fresh,
        *([shut] if curve.shut_atm >= BURSTS_ATM else []),
        said("acid-neutralising-rested", more=f"{((curve.rested_eight or 1) - 1) * 100:.1g}"),
    ]


def _air(m3: float, *, us: bool) -> str:
    """Air to two figures."""
    value, unit = (m3 / M_PER_FT**3, "ft³") if us else (m3, "m³")
    return f"{float(f'{value:.2g}'):,.0f} {unit}"


def _days(hours: float | None) -> str:
    """Days, in still water."""
    if hours is None:
        return said("acid-neutralising-never")
    return "0" if hours <= 0 else f"{hours / 24:.1f}" if hours < 240 else f"{hours / 24:.0f}"


def _share(atm: float) -> str:
    return f"{atm * 100:.0f} %" if atm >= 0.01 else f"{atm * 100:.1g} %"


def _mass(kg: float, *, us: bool) -> str:
    if us:
        pounds = kg / KG_PER_LB
        if pounds * _OZ_PER_LB < 0.1:
            return said("acid-neutralising-under-oz")
        if pounds < 1:
            return f"{pounds * _OZ_PER_LB:.1f} oz" if pounds < 0.1 else f"{pounds * 16:.0f} oz"
        return f"{pounds:.1f} lb" if pounds < 10 else f"{pounds:.0f} lb"
    if kg < 1:
        return f"{kg * 1000:.0f} g"
    return f"{kg:.1f} kg" if kg < 10 else f"{kg:.0f} kg"


def _masses(low: float, high: float, *, us: bool) -> str:
    return _between(_mass(low, us=us), _mass(high, us=us))


def _volume(litres: float, *, us: bool) -> str:
    value, unit = (gal_from_l(litres), "gal") if us else (litres, "L")
    return f"{value:.1f} {unit}" if value < 10 else f"{value:.0f} {unit}"


def _gas(litres: float, *, us: bool) -> str:
    if us:
        feet = litres / 1000 / M_PER_FT**3
        return f"{feet:.1f} ft³" if feet < 10 else f"{feet:.0f} ft³"
    return f"{litres:.0f} L"


def _gases(low: float, high: float, *, us: bool) -> str:
    return _between(_gas(low, us=us), _gas(high, us=us))


def _between(low: str, high: str) -> str:
    """`1.2 to 2.4 lb`; one figure where both are the same."""
    if low == high:
        return high
    (first, unit), (_, other) = low.rsplit(" ", 1), high.rsplit(" ", 1)
    return said("acid-neutralising-to", low=first if unit == other else low, high=high)


def _degrees(kelvin: float, *, us: bool) -> str:
    return f"{kelvin * 1.8:.0f} °F" if us else f"{kelvin:.0f} °C"
