"""What materials come to, group by group: as bought, else a rough allowance by the job's sizes.

Unit costs of an allowance are invented, a guess; they stand only where no price list was read.
"""

from __future__ import annotations

import math
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS
from farwall.nouns import dataclass
from farwall.price.hours import Sizes, Three
from farwall.price.money import rounded
from farwall.units import L_PER_US_GAL, M2_PER_FT2, M_PER_FT

STAIN_GAL, SEALER_GAL, FINISH_GAL = Decimal(60), Decimal(45), Decimal(25)
"""An invented price of a gallon."""
MASKING_FT, GEAR_PERSON_DAY, WASH_FT2 = Decimal("0.25"), Decimal(12), Decimal("0.21")
"""Invented: tape and film a foot of wall; suits and gloves a person and day; neutraliser, pads,
rags, drums and hauling a square foot of floor."""
SEALER_FT2_GAL, FINISH_FT2_GAL = 300.0, 1500.0
"""Coverage of one coat, at the thick end [common-practice]."""
AS_BOUGHT: Three = (0.95, 1.0, 1.2)
"""What is spent of what a list came to: more is fetched more often than carried back. A guess."""
AS_GUESSED: Three = (0.7, 1.0, 1.5)
"""The same where the price is a guess: a guess."""

GROUPS: dict[str, tuple[str, ...]] = {
    "stain": ("stain",),
    "sealer": ("sealer",),
    "floor finish": ("finish",),
    "masking": ("tape", "film", "paper", "jamb-wrap", "dams", "plugs"),
    "protective gear": ("gloves", "suit", "goggles", "cartridges", "boots"),
    "washing and waste": (
        "cleaner", "bicarbonate", "pads", "rags", "ph-strips", "mops", "drums", "bags", "water",
        "spill-kit",
    ),
    "sprayers and tools": ("sprayer", "other"),
}  # fmt: skip
"""Groups of cost, and the kinds of the shopping list in each."""
GROUP_OF = {kind: group for group, kinds in GROUPS.items() for kind in kinds}


@dataclass(frozen=True)
class Goods:
    """A group: what it likely comes to, by which rule, and how far its ends lie off (factors)."""

    group: str
    likely: Decimal
    rule: str
    rank: str
    source: str
    ends: Three = AS_GUESSED


def allowances(sizes: Sizes, *, stain_l: float = 0.0) -> tuple[Goods, ...]:
    """Every group by the sizes of the job; whole gallons of what is sold by the gallon.

    stain_l: concentrate that the coats take, litres.
    """
    area_ft2 = sizes.area_m2 / M2_PER_FT2
    wall_ft = sizes.wall_m / M_PER_FT
    person_days = round(sizes.site_days[1]) * sizes.people
    stain = math.ceil(stain_l / L_PER_US_GAL - 1e-9)
    sealer = math.ceil(area_ft2 * sizes.sealer_coats / SEALER_FT2_GAL - 1e-9)
    finish = math.ceil(area_ft2 * sizes.finish_coats / FINISH_FT2_GAL - 1e-9)
    found = (
        _guess("stain", stain * STAIN_GAL, _by_gallon(stain, STAIN_GAL, sizes)),
        _guess("sealer", sealer * SEALER_GAL, _by_gallon(sealer, SEALER_GAL, sizes)),
        _guess("floor finish", finish * FINISH_GAL, _by_gallon(finish, FINISH_GAL, sizes)),
        _guess(
            "masking", _by(wall_ft, MASKING_FT),
            f"{sizes.wall_told} at {_each(MASKING_FT, M_PER_FT, sizes)}",
        ),
        _guess(
            "protective gear", person_days * GEAR_PERSON_DAY,
            f"{person_days} days of a person at {GEAR_PERSON_DAY}",
        ),
        _guess(
            "washing and waste", _by(area_ft2, WASH_FT2),
            f"{sizes.floor_told} at {_each(WASH_FT2, M2_PER_FT2, sizes)}",
        ),
    )  # fmt: skip
    return tuple(one for one in found if one.likely > 0)


def _by_gallon(gallons: int, each: Decimal, sizes: Sizes) -> str:
    if sizes.us:
        return f"{gallons} gal at {each}"
    return f"{gallons * L_PER_US_GAL:.1f} L at {_each(each, L_PER_US_GAL, sizes)}"


def _each(each: Decimal, unit: float, sizes: Sizes) -> Decimal:
    """The price of one unit as it is told; unit: how much it is in SI."""
    return each if sizes.us else (each / Decimal(str(unit))).quantize(Decimal("0.01"))


def _by(much: float, each: Decimal) -> Decimal:
    return Decimal(str(round(much, 3))) * each


def _guess(group: str, likely: Decimal, rule: str) -> Goods:
    return Goods(group, rounded(likely), rule, Rank.GUESS.value, OUR_GUESS)
