"""What is asked of a slab before anything is priced: all optional, None where nobody told.

An unknown is asked, never guessed: nothing here has a default of its own.
"""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Gt, Le, MaxLen, MinLen

from farwall.floor.geometry import PolygonGeometry
from farwall.nouns import dataclass

_Share = Annotated[float, Ge(0), Le(100)]
_NotNegative = Annotated[float, Ge(0)]
_Positive = Annotated[float, Gt(0)]
Acidity = Annotated[float, Ge(0), Le(14)]

Film = Literal["nothing", "removed", "cure", "cure and seal", "sealer", "paint"]
Part = Literal["nowhere", "part", "whole"]
Covering = Literal["bare", "glue", "black mastic", "vinyl tile", "old paint", "leveller", "overlay"]
Waste = Literal["sewer in writing", "drums", "hauled", "septic", "storm drain", "no way"]
MoistureTestKind = Literal["F1869", "F2170", "D4263", "meter"]
PatchKind = Literal["patch", "trench", "pour", "leveller"]
PatchDecision = Literal["stain and disclose", "leave for another colour", "grind first"]
"""stained along with the floor, and shown and signed · kept dry, coloured another day by other
means · ground before anything else, then tried with drops again."""


@dataclass(frozen=True)
class MixTicket:
    """What the ready-mix ticket says: per cent of the binder, kilograms of cement a cubic metre.

    `plant`: the house's own name for where it was mixed; slabs of one plant colour alike.
    """

    fly_ash_percent: _Share | None = None
    slag_percent: _Share | None = None
    chloride_accelerator: bool | None = None
    cement_kg_m3: _Positive | None = None
    plant: Annotated[str, MaxLen(80)] = ""


@dataclass(frozen=True)
class Patch:
    """Floor of another make than the rest: a repair, a trench, a later pour, a leveller.

    `decision` None: nobody has said what becomes of it; it is stained along with the floor.
    """

    id: Annotated[str, MinLen(1), MaxLen(80)]
    room: str
    kind: PatchKind = "patch"
    age_days: _NotNegative | None = None
    drop_s: _Positive | None = None
    polygon: PolygonGeometry | None = None
    decision: PatchDecision | None = None

    @property
    def left_dry(self) -> bool:
        """Whether no stain goes on it on this day."""
        return self.decision == "leave for another colour"


@dataclass(frozen=True)
class MoistureTest:
    """One moisture test and what it read; the keys of another kind stay empty.

    F1869: vapour out of the slab [µg/(m²·s)]. F2170: humidity inside it [%].
    D4263: both faces of the sheet. meter: even, or with damp islands.
    """

    kind: MoistureTestKind
    room: str | None = None
    vapour_ug_m2_s: _NotNegative | None = None
    slab_rh_percent: _Share | None = None
    sheet: Literal["dry", "damp", "wet"] | None = None
    meter: Literal["even", "islands", "wet"] | None = None


@dataclass(frozen=True)
class Hidden:
    """What may lie in the slab. True: it is there. False: ruled out. None: nobody knows."""

    post_tension: bool | None = None
    heating_tubes: bool | None = None
    conduit: bool | None = None


@dataclass(frozen=True)
class Choices:
    """Where the texts of the trade disagree: what this finisher holds to, else the strictest."""

    least_slab_age_days: _NotNegative | None = None
    most_fly_ash_percent: _Share | None = None
    good_most_slab_c: Annotated[float, Ge(10), Le(30)] | None = None
    most_vapour_ug_m2_s: _Positive | None = None
    most_slab_rh_percent: _Share | None = None
    probe_wait_h: Literal[24, 72] | None = None
    burnished: Literal["sand", "opener", "grind"] | None = None
