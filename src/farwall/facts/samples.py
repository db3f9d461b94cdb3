"""Samples on the slab and how they looked: facts, no reckoning.

A sample is one coat on a square of this slab. A second coat on the same square is a sample of its
own that names the one beneath (`over`), so that cuts by coats make a ladder and each rung keeps its
own figures.
"""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MaxLen, MinLen

from farwall.facts.degrees import AirC, SlabC
from farwall.nouns import dataclass

Positive = Annotated[float, Gt(0)]
NotNegative = Annotated[float, Ge(0)]
Percent = Annotated[float, Ge(0), Le(100)]
Ph = Annotated[float, Ge(0), Le(14)]
Id = Annotated[str, MinLen(1), MaxLen(80)]
Lightness = Annotated[float, Ge(0), Le(100)]
ColourAxis = Annotated[float, Ge(-150), Le(150)]

State = Literal["dry", "clean wet", "sealed"]
"""How a stained slab stands when it is looked at. Looks of two states are never compared."""
STATES: tuple[State, ...] = ("dry", "clean wet", "sealed")
Light = Literal["day", "lamp"]


@dataclass(frozen=True)
class Look:
    """One look at a sample or at a floor: in which state, its colour in CIELAB (light D50).

    error_de: CIEDE2000 that the target in the photo was left off its own values after the
    correction; None: no target in it, and the colour is a guess · spots: over how many places it is
    the mean · spread_lightness: standard deviation of L between them · photo: hash of its file in
    the book.
    """

    state: State
    lab: tuple[Lightness, ColourAxis, ColourAxis]
    error_de: NotNegative | None = None
    photo: str = ""
    light: Light | None = None
    spots: Annotated[int, Ge(1), Le(1000)] = 1
    spread_lightness: NotNegative | None = None


@dataclass(frozen=True)
class Sample:
    """A sample made on this slab: what it drank, how long its sheen lasted, how it looked.

    coat: the coat of the job that it was made for · stain, cut: its own where they are not that
    coat's · over: the sample whose coat lies beneath · m2_per_l: what it covered, or it follows
    from `laid_ml`, or from the sprayer weighed before and after, with `area_m2` · dwell_h: from
    laying to the wash · approved_by, approved_on: who signed, and the day (ISO 8601).
    """

    id: Id
    coat: str | None = None
    room: str | None = None
    m2_per_l: Positive | None = None
    sheen_loss_min: Positive | None = None
    slab_c: SlabC | None = None
    air_c: AirC | None = None
    rh_percent: Percent | None = None
    air_speed_m_s: NotNegative | None = None
    drop_s: Positive | None = None
    verdict: Literal["light", "right", "dark"] | None = None
    stain: str | None = None
    cut: str | None = None
    over: str | None = None
    area_m2: Positive | None = None
    laid_ml: Positive | None = None
    sprayer_before_kg: Positive | None = None
    sprayer_after_kg: Positive | None = None
    dry_min: Positive | None = None
    dwell_h: Positive | None = None
    scrubs: Annotated[int, Ge(0), Le(50)] | None = None
    before_ph: Ph | None = None
    after_ph: Ph | None = None
    rag: Literal["clean", "grey", "coloured"] | None = None
    sealer: str = ""
    looks: tuple[Look, ...] = ()
    approved_by: str = ""
    approved_on: str = ""
