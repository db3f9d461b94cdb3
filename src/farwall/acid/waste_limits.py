"""Limits for waste water, each with its source and rank: federal floors, and how far towns differ.

Facts to compare with, never a permission: what a water is, and where it may go, is said by the
utility and the state agency. Local tables bind those who live under them and nobody else; their
span is shown so that nobody takes a neighbour's figure for his own.
"""

from __future__ import annotations

from typing import Literal

from farwall.evidence import Rank
from farwall.nouns import dataclass

Metal = Literal["copper", "chromium", "chromium(VI)", "manganese", "iron"]
METALS: tuple[Metal, ...] = ("copper", "chromium", "chromium(VI)", "manganese", "iron")


@dataclass(frozen=True)
class Limit:
    """One figure of a rule. key: what it is asked by. code: the federal waste number, if any."""

    key: str
    says: str
    value: float
    unit: str
    source: str
    rank: Rank = Rank.PUBLISHED
    code: str = ""


FEDERAL: dict[str, Limit] = {
    one.key: one
    for one in (
        Limit("acid-ph", "hazardous as corrosive at pH or below", 2.0, "pH",
              "epa-corrosive, 40 CFR 261.22(a)(1)", code="D002"),
        Limit("alkaline-ph", "hazardous as corrosive at pH or above", 12.5, "pH",
              "epa-corrosive, 40 CFR 261.22(a)(1)", code="D002"),
        Limit("steel-mm-year", "hazardous as corrosive: a liquid that eats SAE 1020 steel at 55 °C "
              "faster than", 6.35, "mm/year", "epa-corrosive, 40 CFR 261.22(a)(2)", code="D002"),
        Limit("free-water-percent", "a waste counts as aqueous with free water of at least", 20.0,
              "% by volume", "epa-corrosive, EPA memo of 23 April 1993"),
        Limit("chromium-leachate", "hazardous as toxic: chromium of every kind in the extract, at "
              "or above", 5.0, "mg/L", "epa-toxic, 40 CFR 261.24 Table 1", code="D007"),
        Limit("sewer-ph", "nothing to a sewer with pH lower than", 5.0, "pH",
              "epa-sewer, 40 CFR 403.5(b)(2)"),
        Limit("sewer-c", "warmth at the inlet of the treatment works, at most", 40.0, "°C",
              "epa-sewer, 40 CFR 403.5(b)(5)"),
        Limit("small-generator-kg", "very small generator of hazardous waste, at most a month",
              100.0, "kg", "epa-small-generator, 40 CFR 260.10 and 262.14"),
    )
}  # fmt: skip
"""The floors that hold everywhere in the United States; a state or a town may be stricter."""


@dataclass(frozen=True)
class LocalRange:
    """How far the local sewer limits that were read lie apart, for one thing; all in `unit`."""

    what: str
    low: float
    high: float
    unit: str
    count: int
    source: str = "sewer-tables"
    rank: Rank = Rank.PUBLISHED


LOCAL: dict[str, LocalRange] = {
    one.what: one
    for one in (
        LocalRange("copper", 0.06, 6.0, "mg/L", 5),
        LocalRange("chromium", 0.05, 5.0, "mg/L", 2),
        LocalRange("chromium(VI)", 0.5, 4.8, "mg/L", 2),
        LocalRange("manganese", 4.0, 4.0, "mg/L", 1),
        LocalRange("iron", 32.0, 32.0, "mg/L", 1),
    )
}
"""Six tables of US cities and counties, 1991 to 2021. `count`: how many figures were noted."""

LOCAL_PH: tuple[tuple[float, float], ...] = (
    (5.0, 10.0), (5.5, 9.5), (5.5, 11.0), (6.0, 11.0), (5.0, 12.0),
)  # fmt: skip
"""Bands of pH in local codes: three of those tables, then two more ordinances [sewer-tables]."""


def corrosive_by_ph(ph: float) -> bool:
    """Whether an aqueous waste of this pH is hazardous as corrosive: at or below 2, at or above
    12.5.

    40 CFR 261.22(a)(1), by Method 9040C. Raises ValueError outside 0 to 14, which no strip shows.
    """
    if not 0 <= ph <= 14:
        raise ValueError("pH lies between 0 and 14")
    return ph <= FEDERAL["acid-ph"].value or ph >= FEDERAL["alkaline-ph"].value


def toxic_by_chromium(mg_l: float) -> bool:
    """Whether chromium of every kind in the extract, mg/L, makes a waste hazardous: at or above 5.

    40 CFR 261.24(a) and Table 1, D007. Raises ValueError below nothing.
    """
    if mg_l < 0:
        raise ValueError("no water holds less than nothing")
    return mg_l >= FEDERAL["chromium-leachate"].value
