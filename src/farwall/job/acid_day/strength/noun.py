"""What is known of the strength of a job's mixes."""

from __future__ import annotations

from farwall.facts.contents import Content
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Ends:
    """Both ends of a range, in the unit that its name carries."""

    low: float
    high: float


@dataclass(frozen=True)
class Sheet:
    """What was told from a stain's safety sheet. None and empty: nobody told."""

    stain: str
    name: str
    hcl_percent: Ends | None
    density_kg_l: float | None
    chromate: bool | None
    oxidiser: bool | None
    contents: tuple[Content, ...]
    sheet_read: str


@dataclass(frozen=True)
class MixFigures:
    """What is reckoned of a coat's mix. Percent is % HCl by mass.

    `cut_percent` is stain and water alone, `tub_percent` with added acid. `shrinks_ml_per_l`: what
    the tub holds less than was poured, as plain acid at the warmth it gets to. `tub_c` goes from no
    warming to the warmest that it can be. `over_liquid_ppm`: in the air just above the tub at
    rest, were it plain acid. `times_by_acid`: what added acid makes of that, as a factor; None
    without added acid. `times_by_salts`: what dissolved chlorides make of it, a guess; None where
    none is listed.
    """

    cut_percent: Ends
    tub_percent: Ends
    mol_per_l: Ends
    mol_per_m2: Ends
    heat_kj_per_l: Ends
    shrinks_ml_per_l: Ends
    tub_c: Ends
    over_liquid_ppm: Ends
    times_by_acid: Ends | None
    times_by_salts: Ends | None


@dataclass(frozen=True)
class CoatStrength:
    """A coat's mix. `figures` is None where the stain's own share of acid was not told."""

    coat: str
    stain: str
    stain_name: str
    cut: str
    added_acid_fl_oz_per_gal: float
    l_per_m2: float
    neat_percent: Ends | None
    start_c: float
    figures: MixFigures | None
    rank: str
    source: str
    warnings: tuple[str, ...]


@dataclass(frozen=True)
class TubPour:
    """One tub of the plan in the order of pouring, litres: water, stain, acid.

    `heat_kj` is set free while pouring; None where the stain's share was not told.
    """

    mix: str
    coat: str
    fields: tuple[str, ...]
    water_l: float
    stain_l: float
    acid_l: float
    total_l: float
    heat_kj: Ends | None


@dataclass(frozen=True)
class Strength:
    """Sheets, coats and tubs; `warm_c` is the warmth of a tub from which the tool warns."""

    sheets: tuple[Sheet, ...] = ()
    coats: tuple[CoatStrength, ...] = ()
    tubs: tuple[TubPour, ...] = ()
    order: str = ""
    warm_c: float = 0.0
    warnings: tuple[str, ...] = ()
