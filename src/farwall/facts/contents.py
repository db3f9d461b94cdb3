"""What the safety sheet of a stain says is in it: substances with their shares, as told."""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Le

from farwall.nouns import dataclass

_Percent = Annotated[float, Ge(0), Le(100)]

Substance = Literal[
    "iron(II) chloride", "iron(III) chloride", "manganese(II) chloride", "copper(II) chloride",
    "copper(II) sulfate", "sodium dichromate", "potassium dichromate", "chromium(III) chloride",
    "calcium chloride", "ammonium chloride", "phosphoric acid", "nitric acid", "sulfuric acid",
    "hydrogen peroxide", "other oxidiser", "other",
]  # fmt: skip
"""Hydrochloric acid itself is told by `Stain.hcl_percent_low` and `_high`."""


@dataclass(frozen=True)
class Content:
    """One line of section 3 of a safety sheet: a substance and its share, % by mass.

    An end that the sheet leaves out stays None: `more than 5 %` has no high end.
    """

    substance: Substance
    mass_percent_low: _Percent | None = None
    mass_percent_high: _Percent | None = None


CHROMATES: frozenset[Substance] = frozenset({"sodium dichromate", "potassium dichromate"})
"""Salts of hexavalent chromium; chromium(III) chloride is none."""
OXIDISERS: frozenset[Substance] = frozenset({"nitric acid", "hydrogen peroxide", "other oxidiser"})
"""What makes chlorine of hydrochloric acid, beside the chromates."""


def names_one(
    *, told: bool | None, contents: tuple[Content, ...], kind: frozenset[Substance]
) -> bool | None:
    """Whether a sheet names one of a kind: told so, or listed. None where neither says.

    A list without it is no proof: section 3 may leave out what stands below its limits.
    """
    if any(content.substance in kind for content in contents):
        return True
    return told
