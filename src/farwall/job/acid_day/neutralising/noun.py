"""The nouns of neutralising; plain values, SI, low and high."""

from __future__ import annotations

from farwall.facts.washing import Base as BaseWord
from farwall.nouns import dataclass


@dataclass(frozen=True)
class StainDose:
    """For one litre of a stain as bought, spilled: what it holds to be taken, and base for it.

    acid, salts: mol/L. kg_l: kg of the base for each litre. co2_l: litres of gas for each litre.
    contents_told: whether the sheet's salts are counted; `not_counted` names what is not.
    """

    stain: str
    name: str
    acid_low: float
    acid_high: float
    salts_low: float
    salts_high: float
    kg_l_low: float
    kg_l_high: float
    co2_l_low: float
    co2_l_high: float
    contents_told: bool
    not_counted: tuple[str, ...]
    rank: str
    source: str


@dataclass(frozen=True)
class TubDose:
    """A whole boxed batch, left over: moles to be taken, base, gas, and how far it warms.

    warming_k: the most that it can warm (below nought: cool) at the high end, as much water put in
    first as there is mix. vessel_l: what holds mix, water and as much foam again. air_m3: fresh air
    that keeps all of its gas below 0.5 %.
    """

    mix: str
    coat: str
    cut: str
    litres: float
    mol_low: float
    mol_high: float
    base_kg_low: float
    base_kg_high: float
    co2_l_low: float
    co2_l_high: float
    warming_k: float
    vessel_l: float
    air_m3: float


@dataclass(frozen=True)
class FloorDose:
    """Neutraliser for a field: litres, and kg of base (of ammonia water: litres of it)."""

    field: str
    rooms: tuple[str, ...]
    area_m2: float
    water_l_low: float
    water_l: float
    water_l_high: float
    base_low: float
    base: float
    base_high: float


@dataclass(frozen=True)
class Floor:
    """The floor: field by field and in all; acid laid on a square metre and who takes it.

    in_litres: the base is counted in litres (ammonia water). co2_l_most: litres
    of gas if all of the likely base met acid. lime_mm: depth of concrete whose lime
    takes all acid laid, at the high end. wash_share: what the wash could take of it, at most.
    """

    fields: tuple[FloorDose, ...]
    water_l: float
    base_low: float
    base: float
    base_high: float
    in_litres: bool
    co2_l_most: float
    acid_mol_m2_low: float
    acid_mol_m2_high: float
    lime_mm: float
    wash_share: float


@dataclass(frozen=True)
class ShareRow:
    """pH of a base at its equivalent dose and beside it, at once (`fresh`) and at rest with air."""

    base: str
    word: str
    fresh: float
    rested: float
    tenth_more: float
    twice: float


@dataclass(frozen=True)
class Curve:
    """pH against bicarbonate added, shares of the equivalent dose; and how it rises as gas leaves.

    rise: pressure of carbon dioxide left, atm, pH then, and hours until then in still water 0.3 m
    deep (None: never quite), at a twentieth more than that dose.
    fresh_seven and others: shares to pH 7 and 8, None out of reach. shut_atm: pressure of the gas
    over the equivalent dose in a full, shut vessel.
    """

    acid_molal: float
    shares: tuple[float, ...]
    closed: tuple[float, ...]
    fresh: tuple[float, ...]
    rested: tuple[float, ...]
    rise: tuple[tuple[float, float, float | None], ...]
    fresh_seven: float | None
    fresh_eight: float | None
    rested_seven: float | None
    rested_eight: float | None
    shut_atm: float


@dataclass(frozen=True)
class Reading:
    """What a pail or drum that reads this pH takes at least: kg of bicarbonate for each litre."""

    reads: float
    kg_l: float


@dataclass(frozen=True)
class Doses:
    """What floor, tubs and spills take. base: the word of the base, `base_told` in the job.

    standing_by: bicarbonate and water of the open pail beside the mixing tub.
    """

    base: BaseWord
    base_told: bool
    formula: str
    stains: tuple[StainDose, ...]
    tubs: tuple[TubDose, ...]
    largest: str
    floor: Floor
    standing_by_kg: float
    standing_by_l: float


@dataclass(frozen=True)
class Neutralising(Doses):
    """All of it: the doses, and the pH on the way to them.

    warnings: what can hurt; notes: what was not told, and what misleads.
    """

    table: tuple[ShareRow, ...]
    curve: Curve
    readings: tuple[Reading, ...]
    spill_steps: tuple[str, ...]
    tub_steps: tuple[str, ...]
    floor_steps: tuple[str, ...]
    warnings: tuple[str, ...]
    notes: tuple[str, ...]
