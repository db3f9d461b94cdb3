"""Who works with the acid, and what each was fitted, cleared and gloved for, as told.

Dates are days such as 2027-05-04. Nothing here is a judgement: whether a date still holds is
reckoned where it is asked.
"""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, MaxLen, MinLen

from farwall.nouns import dataclass

Duty = Literal["mixes", "sprays", "helps", "scrubs", "seals", "stands by"]
Respirator = Literal["half face", "full face", "powered", "powered hood"]
"""`powered`: a blower on a tight facepiece; `powered hood`: a blower on a loose hood."""


@dataclass(frozen=True)
class Cartridge:
    """The pair of cartridges in use: what for, when its bag was opened, for how long it is good.

    `change_after_min`: minutes of use by the maker's own schedule for this vapour.
    """

    kind: Annotated[str, MaxLen(80)] = ""
    acid_gas: bool | None = None
    p100: bool | None = None
    ammonia: bool | None = None
    opened: str = ""
    change_after_min: Annotated[float, Gt(0)] | None = None
    used_min: Annotated[float, Ge(0)] = 0.0


@dataclass(frozen=True)
class Worker:
    """One person of the crew on the day.

    `fit_tested`: day of the last fit test with that respirator · `cleared`: day of the medical
    word · `clean_shaven`: None where nobody looked · `gloves`: material and thickness as told ·
    `exposure_settled`: day on which a licensed hygienist settled respirator and exposure, asked
    where a sheet names chromate.
    """

    id: Annotated[str, MinLen(1), MaxLen(80)]
    name: Annotated[str, MaxLen(80)] = ""
    duties: tuple[Duty, ...] = ()
    respirator: Respirator | None = None
    fit_tested: str = ""
    cleared: str = ""
    clean_shaven: bool | None = None
    cartridge: Cartridge | None = None
    gloves: Annotated[str, MaxLen(80)] = ""
    goggles: bool | None = None
    apron: bool | None = None
    boots: bool | None = None
    trained: str = ""
    exposure_settled: str = ""


@dataclass(frozen=True)
class Emergency:
    """What the firm itself enters for the cards: numbers, and where the house is found.

    Nothing is filled in by default: a wrong number on a card is worse than an empty line.
    """

    number: Annotated[str, MaxLen(40)] = ""
    poison_centre: Annotated[str, MaxLen(40)] = ""
    spill_line: Annotated[str, MaxLen(40)] = ""
    hospital: Annotated[str, MaxLen(160)] = ""
    address: Annotated[str, MaxLen(200)] = ""
    look_in_min: Annotated[float, Gt(0)] | None = None
    eyewash_at: Annotated[str, MaxLen(120)] = ""
