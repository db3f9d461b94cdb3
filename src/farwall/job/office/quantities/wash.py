"""What the wash day takes: neutraliser, cleaner, water, drums, pads, rags, strips, bags. Pure."""

from __future__ import annotations

from dataclasses import replace
from math import fsum

from farwall.acid.rinse_water import drums_for
from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.quantities import Quantity, Share
from farwall.facts.van import StockKind, Unit
from farwall.job.acid_day.neutralising.noun import Doses, Floor
from farwall.job.acid_day.washing.noun import Ends as WashEnds
from farwall.job.office.quantities.basis import Basis, line, times
from farwall.job.office.quantities.practice import (
    BICARBONATE_KG_PER_1000_FT2,
    CLEANER_L_L,
    CLEANER_PASSES,
    PER_1000_FT2,
    STRIPS_PER_1000_FT2,
    WASH_L_M2,
    Ends,
)

_NAMES: dict[StockKind, str] = {
    "pads": "pads or brushes", "mops": "mop heads", "rags": "white rags", "bags": "contractor bags",
}  # fmt: skip


def wash_lines(basis: Basis) -> tuple[Quantity, ...]:
    """In the order in which they are used."""
    return (
        *_neutralisers(basis),
        _cleaner(basis),
        _water(basis),
        *_drums(basis),
        *(_by_floor(basis, kind, ends, unit) for kind, ends, unit in PER_1000_FT2),
        _strips(basis),
    )


def _neutralisers(basis: Basis) -> list[Quantity]:
    """Bicarbonate for pail, spill and tub; the floor's base beside it where it is another one."""
    part = basis.neutralising
    same = part.base == "bicarbonate"
    made = [_bicarbonate(basis, part, part.floor if same else None)]
    if not same:
        floor, unit = part.floor, _unit(part.floor)
        rule = f"{basis.said(floor.water_l, 'l')} of neutraliser on {basis.area_said()}."
        made.append(
            line(
                "cleaner",
                part.base,
                (floor.base_low, floor.base, floor.base_high),
                rule,
                id_=f"neutraliser:{part.base}",
                unit=unit,
                of=part.base,
                source=f"{PRACTICE}, {OUR_GUESS}",
            )
        )
    return made


def _unit(floor: Floor) -> Unit:
    return "l" if floor.in_litres else "kg"


def _bicarbonate(basis: Basis, part: Doses, floor: Floor | None) -> Quantity:
    """Likely: floor and open pail. Ready: a sprayer's tank spilled besides. High: a left-over tub.

    Never ready for less than finishers take along.
    """
    pail = part.standing_by_kg
    base = (floor.base_low, floor.base, floor.base_high) if floor is not None else (0.0, 0.0, 0.0)
    tank_l = basis.ground.plan.inputs.tools.tank_l
    spill = max(
        (tub.base_kg_high / tub.litres * min(tub.litres, tank_l) for tub in part.tubs),
        default=0.0,
    )
    tub = max((one.base_kg_high for one in part.tubs), default=0.0)
    usual = BICARBONATE_KG_PER_1000_FT2[1] * basis.thousands
    reckoned = base[1] + pail + spill
    ready = max(reckoned, usual)
    high = max(base[2] + pail + tub, ready)
    said = [
        f"Floor {basis.said(base[1], 'kg')}, open pail {basis.said(pail, 'kg')}, a tank of mix "
        f"spilled {basis.said(spill, 'kg')}."
        if floor is not None
        else f"Open pail {basis.said(pail, 'kg')}, a tank of mix spilled "
        f"{basis.said(spill, 'kg')}.",
        f"Finishers take {basis.said(usual, 'kg')} along; the larger of both is ready.",
        f"A whole tub left over asks {basis.said(tub, 'kg')}.",
    ]
    shares = tuple(
        Share(*((dose.base_low, dose.base, dose.base_high)), dose.base, field=dose.field)
        for dose in (floor.fields if floor is not None else ())
    )
    made = line(
        "bicarbonate",
        "bicarbonate",
        (base[0] + pail, base[1] + pail, high),
        " ".join(said),
        unit="kg",
        ready=ready,
        rank=Rank.GUESS,
        source=f"{PRACTICE}, {OUR_GUESS}, stain-sheets",
    )
    rest = ready - fsum(one.ready for one in shares)
    other = Share(pail, pail, high - base[2], rest, of="pail and spill")
    return replace(made, shares=(*shares, other)) if shares else made


def _cleaner(basis: Basis) -> Quantity:
    """Alkaline cleaner as poured, for two passes of wash solution."""
    rule = (
        f"{_cut(basis)}, 1 part in 32; {CLEANER_PASSES} passes of "
        f"{basis.said(WASH_L_M2[1] * basis.area_m2, 'l')}. Its label wins."
    )
    ends = times(WASH_L_M2, basis.area_m2 * CLEANER_L_L * CLEANER_PASSES)
    return line("cleaner", "alkaline cleaner", ends, rule, unit="l")


def _cut(basis: Basis) -> str:
    return "Half a cup in a gallon" if basis.units == "us" else "31 mL in a litre"


def _ends(one: WashEnds) -> Ends:
    low, likely, high = one.low or 0.0, one.likely or 0.0, one.high or 0.0
    return low, likely, high


def _water(basis: Basis) -> Quantity:
    """Water that has to be there: of all rinses, of scrubbing, of cutting the mix."""
    part = basis.washing
    cut = fsum(mix.water_l for mix in basis.ground.plan.mixes)
    told = basis.ground.job.washing.water_l_per_m2 is not None
    low, likely, high = (one + cut for one in _ends(part.all_l))
    rule = (
        f"All rinses {basis.said(part.rinses_l.likely or 0.0, 'l')}, scrubbing "
        f"{basis.said(part.scrub_l.likely or 0.0, 'l')}, to cut the stain {basis.said(cut, 'l')}, "
        f"on {basis.area_said()}."
    )
    shares = (
        _share(part.rinses_l, "rinses"), _share(part.scrub_l, "scrubbing"),
        Share(cut, cut, cut, cut, of="to cut the stain"),
    )  # fmt: skip
    made = line(
        "water",
        "water",
        (low, likely, high),
        rule,
        unit="l",
        rank=Rank.GUESS,
        source=f"{('told in the job' if told else PRACTICE)}, {OUR_GUESS}",
    )
    return replace(made, shares=shares)


def _share(one: WashEnds, of: str) -> Share:
    low, likely, high = _ends(one)
    return Share(low, likely, high, likely, of=of)


def _drums(basis: Basis) -> list[Quantity]:
    """Drums for the water that comes back, with a spare; less those that are told to be there."""
    told = basis.washing.drums
    if told is None:
        return []
    there = told.had or 0
    few = drums_for(basis.washing.all_l.low or 0.0, size_l=told.holds_l, fill=1.0).full
    low, likely, high = (
        float(max(full + told.spares - there, 0)) for full in (few, told.full, told.full_high)
    )
    rule = (
        f"{basis.said(basis.washing.all_l.likely or 0.0, 'l')} of rinse water, "
        f"{basis.said(told.holds_l, 'l')} to a drum: {told.full}, and {told.spares} spare"
    )
    rule += f"; {there} are there." if there else "."
    made = line(
        "drums",
        "drums",
        (low, likely, high),
        rule,
        rank=Rank.GUESS,
        source=f"{PRACTICE}, {OUR_GUESS}",
    )
    return [made]


def _by_floor(basis: Basis, kind: StockKind, ends: Ends, unit: Unit) -> Quantity:
    low, usual, high = ends
    rule = f"{low:g} to {high:g}, usually {usual:g}, for each {_thousand(basis)} of floor."
    return line(kind, _NAMES[kind], times(ends, basis.thousands), rule, unit=unit)


def _thousand(basis: Basis) -> str:
    return "1,000 ft²" if basis.units == "us" else "93 m²"


def _strips(basis: Basis) -> Quantity:
    """Twenty and more for each thousand; never fewer than the wash day's rooms ask for."""
    readings = sum(one.strips for one in basis.washing.rooms)
    rinses = _ends(basis.washing.rinses)
    practice = times(STRIPS_PER_1000_FT2, basis.thousands)
    ends = (max(practice[0], readings), max(practice[1], readings),
            max(practice[2], readings * rinses[2]))  # fmt: skip
    rule = (
        f"20 and more for each {_thousand(basis)}, and never fewer than the readings after the "
        f"last rinse, {readings}."
    )
    return line("ph-strips", "pH strips", ends, rule, source=f"{PRACTICE}, astm-d4262")
