"""What somebody with the right to say it said about the waste water, and the limits they named.

The tool informs, it does not decide: without such a word nothing goes down a drain.
"""

from __future__ import annotations

from dataclasses import field
from typing import Annotated, Literal

from annotated_types import Ge, MaxLen

from farwall.facts.slab import Acidity
from farwall.nouns import dataclass

_NotNegative = Annotated[float, Ge(0)]
WasteWay = Literal["sewer", "hauled", "treatment works", "not allowed"]


@dataclass(frozen=True)
class SewerLimits:
    """The limits that the utility named, mg/L where not pH; None where it named none."""

    least_ph: Acidity | None = None
    most_ph: Acidity | None = None
    copper_mg_l: _NotNegative | None = None
    chromium_mg_l: _NotNegative | None = None
    chromium_vi_mg_l: _NotNegative | None = None
    manganese_mg_l: _NotNegative | None = None
    iron_mg_l: _NotNegative | None = None
    zinc_mg_l: _NotNegative | None = None
    solids_mg_l: _NotNegative | None = None


@dataclass(frozen=True)
class OfficialWord:
    """A licensed or official word: who, of which office, on which day, in writing or not.

    `until`: the last day on which it holds; empty where none was named.
    """

    way: WasteWay
    who: Annotated[str, MaxLen(120)]
    office: Annotated[str, MaxLen(160)]
    on: str
    in_writing: bool | None = None
    said: Annotated[str, MaxLen(600)] = ""
    limits: SewerLimits = field(default_factory=SewerLimits)
    until: str = ""


@dataclass(frozen=True)
class WaterTest:
    """What a laboratory or a strip found in the water of a drum; mg/L, None where not tested.

    `water_l`: all the water that the sample stands for.
    """

    drum: Annotated[str, MaxLen(80)] = ""
    on: str = ""
    by: Annotated[str, MaxLen(120)] = ""
    found_ph: Acidity | None = None
    copper_mg_l: _NotNegative | None = None
    chromium_mg_l: _NotNegative | None = None
    chromium_vi_mg_l: _NotNegative | None = None
    manganese_mg_l: _NotNegative | None = None
    iron_mg_l: _NotNegative | None = None
    zinc_mg_l: _NotNegative | None = None
    solids_mg_l: _NotNegative | None = None
    water_l: _NotNegative | None = None


@dataclass(frozen=True)
class Discharge:
    """What was asked and tested about this job's waste water."""

    words: tuple[OfficialWord, ...] = ()
    tests: tuple[WaterTest, ...] = ()
