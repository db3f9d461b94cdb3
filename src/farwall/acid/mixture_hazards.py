"""What a mixture is by the rules of the GHS, from the shares of what its sheet lists. Pure.

Rules of addition, cut-offs and categories: UN GHS parts 3 and 4, with the choices of 29 CFR
1910.1200 appendix A where it makes one [un-ghs, hazcom; from memory]. Classes of the neat
substances: those of Regulation (EC) 1272/2008 annex VI, else as notified by their makers [clp; from
memory, sodium dichromate and hydrochloric acid quoted]. A maker may classify by test: the
sheet of the material in hand wins over all of this.
"""

from __future__ import annotations

from collections.abc import Mapping

from farwall.nouns import dataclass

HYDROCHLORIC_ACID = "hydrochloric acid"
ATE_ORAL = (0.5, 5.0, 100.0, 500.0)
ATE_DERMAL = (5.0, 50.0, 300.0, 1100.0)
ATE_MIST = (0.005, 0.05, 0.5, 1.5)
"""Converted point estimates of categories 1 to 4: mg/kg, mg/kg, mg/L. UN GHS table 3.1.2."""
_ORAL = ((5.0, "H300"), (50.0, "H300"), (300.0, "H301"), (2000.0, "H302"))
_DERMAL = ((50.0, "H310"), (200.0, "H310"), (1000.0, "H311"), (2000.0, "H312"))
_MIST = ((0.05, "H330"), (0.5, "H330"), (1.0, "H331"), (5.0, "H332"))
"""Upper ends of the categories and what they say. UN GHS table 3.1.1."""
LEAST_STRONG_ACID_PERCENT = 0.04
"""0.01 mol/L of hydrochloric acid, pH 2: from there a mixture is taken as corrosive, 3.2.3.1.2."""


@dataclass(frozen=True)
class Neat:
    """Classes of a neat substance: categories, 0 for none; `m_*` multiply a share for water life.

    `airways_percent`: the share from which it irritates airways; None where it does not.
    """

    oral: int = 0
    dermal: int = 0
    mist: int = 0
    skin: int = 0
    eye: int = 0
    metal: bool = False
    strong_acid: bool = False
    airways_percent: float | None = None
    allergy_lungs: bool = False
    allergy_skin: bool = False
    genes: bool = False
    cancer: bool = False
    unborn: bool = False
    organs: int = 0
    water_acute: bool = False
    water: int = 0
    m_acute: float = 1.0
    m_chronic: float = 1.0


_DICHROMATE = Neat(
    oral=3, dermal=4, mist=2, skin=1, eye=1, allergy_lungs=True, allergy_skin=True, genes=True,
    cancer=True, unborn=True, organs=1, water_acute=True, water=1,
)  # fmt: skip
NEAT: dict[str, Neat] = {
    HYDROCHLORIC_ACID: Neat(skin=1, eye=1, metal=True, strong_acid=True, airways_percent=10.0),
    "iron(II) chloride": Neat(oral=4, skin=2, eye=1, metal=True),
    "iron(III) chloride": Neat(oral=4, skin=2, eye=1, metal=True),
    "manganese(II) chloride": Neat(oral=3, eye=1, organs=2, water=2),
    "copper(II) chloride": Neat(
        oral=4, dermal=4, skin=2, eye=1, metal=True, water_acute=True, water=1, m_acute=10
    ),
    "copper(II) sulfate": Neat(oral=4, eye=1, water_acute=True, water=1, m_acute=10),
    "sodium dichromate": _DICHROMATE,
    "potassium dichromate": _DICHROMATE,
    "chromium(III) chloride": Neat(oral=4, metal=True, water=2),
    "calcium chloride": Neat(eye=2),
    "ammonium chloride": Neat(oral=4, eye=2),
    "phosphoric acid": Neat(oral=4, skin=1, eye=1, metal=True, strong_acid=True),
    "nitric acid": Neat(mist=3, skin=1, eye=1, metal=True, strong_acid=True),
    "sulfuric acid": Neat(skin=1, eye=1, metal=True, strong_acid=True),
    "hydrogen peroxide": Neat(oral=4, mist=4, skin=1, eye=1, airways_percent=35.0),
    "ammonia water": Neat(skin=1, eye=1, airways_percent=5.0, water_acute=True, water=2),
}
"""Rank: from memory. What is not here (`other`) is left to its sheet."""


def hazard_codes(shares_percent: Mapping[str, float]) -> tuple[str, ...]:
    """H codes of a mixture in order, from mass shares [%]; what `NEAT` lacks counts for nothing.

    H318 is left out beside H314, H400 beside H410, for the stronger says it.
    """
    known = [(NEAT[name], share) for name, share in shares_percent.items() if name in NEAT]
    found = {*_swallowed_touched_breathed(known), *_burns(known), *_lasting(known), *_water(known)}
    if "H314" in found:
        found -= {"H315", "H318", "H319"}
    if "H318" in found:
        found -= {"H319"}
    if "H410" in found:
        found -= {"H400"}
    return tuple(sorted(found))


_Known = list[tuple[Neat, float]]


def _swallowed_touched_breathed(known: _Known) -> set[str]:
    """Acute toxicity by addition: 100 over the sum of shares over their estimates, 3.1.3.6.1."""
    ways = (
        ([(one.oral, c) for one, c in known], ATE_ORAL, _ORAL),
        ([(one.dermal, c) for one, c in known], ATE_DERMAL, _DERMAL),
        ([(one.mist, c) for one, c in known], ATE_MIST, _MIST),
    )
    found = set()
    for parts, points, ends in ways:
        weight = sum(share / points[category - 1] for category, share in parts if category)
        said = [code for end, code in ends if weight and 100 / weight <= end]
        found |= set(said[:1])
    return found


def _burns(known: _Known) -> set[str]:
    """Skin and eyes by addition, tables 3.2.3 and 3.3.3; metals; airways."""
    one = sum(share for neat, share in known if neat.skin == 1)
    two = sum(share for neat, share in known if neat.skin == 2)
    deep = sum(share for neat, share in known if neat.skin == 1 or neat.eye == 1)
    light = sum(share for neat, share in known if neat.eye == 2)
    acid = sum(share for neat, share in known if neat.strong_acid)
    found = set()
    if one >= 5 or acid >= LEAST_STRONG_ACID_PERCENT:
        found.add("H314")
    elif 10 * one + two >= 10:
        found.add("H315")
    if deep >= 3:
        found.add("H318")
    elif 10 * deep + light >= 10:
        found.add("H319")
    if any(neat.metal and share > 0 for neat, share in known):
        found.add("H290")
    if any(
        neat.airways_percent is not None and share >= neat.airways_percent for neat, share in known
    ):
        found.add("H335")
    return found


def _lasting(known: _Known) -> set[str]:
    """Allergy, genes, cancer, the unborn: from 0.1 %; organs from 1 % (1910.1200 appendix A)."""
    traced = [neat for neat, share in known if share >= 0.1]
    more = [neat.organs for neat, share in known if share >= 1 and neat.organs]
    found = {
        code
        for code, holds in (
            ("H334", any(neat.allergy_lungs for neat in traced)),
            ("H317", any(neat.allergy_skin for neat in traced)),
            ("H340", any(neat.genes for neat in traced)),
            ("H350", any(neat.cancer for neat in traced)),
            ("H360", any(neat.unborn for neat in traced)),
        )
        if holds
    }
    return found | ({"H372" if 1 in more else "H373"} if more else set())


def _water(known: _Known) -> set[str]:
    """Water life by addition, tables 4.1.3 and 4.1.4."""
    acute = sum(share * neat.m_acute for neat, share in known if neat.water_acute)
    first = sum(share * neat.m_chronic for neat, share in known if neat.water == 1)
    second = sum(share for neat, share in known if neat.water == 2)
    found = {"H400"} if acute >= 25 else set()
    for weight, code in (
        (first, "H410"), (10 * first + second, "H411"), (100 * first + 10 * second, "H412"),
    ):  # fmt: skip
        if weight >= 25:
            return found | {code}
    return found
