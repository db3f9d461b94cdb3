"""The habits by which masking is reckoned: heights, laps, what stands at which stage of the build.

Ranks: *common practice* is how finishers do it, without a source in print; *guess* is ours.
"""

from __future__ import annotations

from types import MappingProxyType
from typing import TYPE_CHECKING

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.nouns import dataclass
from farwall.units import M_PER_FT, M_PER_IN

if TYPE_CHECKING:
    from collections.abc import Mapping

    from farwall.facts.supplies import GapSeal, Stage

FILM_M = 48 * M_PER_IN
"""Usual height of film where a wand is swung, 36 to 48 in [common-practice]."""
FILM_LOW_M = 36 * M_PER_IN
LOW_FILM_M = 24 * M_PER_IN
"""Film comes 24 to 48 in tall [common-practice]; that the lowest is enough on bare board: guess."""
CEILING_M = 8 * M_PER_FT
"""How high `full height` is where nobody told [house-guess]."""
LAP_M = 6 * M_PER_IN
"""Film laps film at each join [common-practice]."""
USED_SHARE = 0.9
"""Of a roll that ends on the wall: 10 % is lost [common-practice]."""
PAPER_M = 12 * M_PER_IN
"""A strip of masking paper [common-practice]; what is no taller may be papered."""
TACK_M, TACK_EVERY_M = 6 * M_PER_IN, 1.0
"""Tape that holds the upper edge of the film [house-guess]."""
DOOR_M = 80 * M_PER_IN
"""Height of a door where nobody told [house-guess]."""
DEPTH_M = 0.06
"""Half the depth of an inner wall, where the plan does not show it [house-guess]."""
WRAP_TALL_M = 12 * M_PER_IN
"""Cling film around a jamb, across its face, its edge and the casing [house-guess]."""
RETURN_M = 12 * M_PER_IN
"""A dam goes on along the wall at either side of the door [house-guess]."""
DAM_FILM_M = 48 * M_PER_IN
"""Film that is rolled into the dam and lies out over the outer slab [house-guess]."""
BESIDE_M = 1.2
"""Walls this near to metal that stays are filmed to full height [house-guess for the reach]."""
COUNTER_M = 36 * M_PER_IN
"""A cabinet is filmed from its kick to its counter [common-practice for the kick, house-guess]."""
TUB_M = 20 * M_PER_IN
STAIR_M = 12 * M_PER_IN
APPLIANCE_M = 72 * M_PER_IN
"""Apron of a tub, string of a stair, an appliance, where nobody told [house-guess]."""

FRAMED = frozenset({"door", "cased", "outside"})
"""Openings that have jambs."""
LEAVES = frozenset({"door", "outside"})
"""Openings that have a door, whose gap is sealed."""


@dataclass(frozen=True)
class StageRule:
    """What a stage of the build means: film on walls [m], whether inner frames and cabinets stand.

    words: the rule as it is told.
    """

    film_m: float
    frames: bool
    cabinets: bool
    words: str
    rank: Rank
    source: str


STAGES: Mapping[Stage, StageRule] = MappingProxyType({
    "before board": StageRule(
        0.0, frames=False, cabinets=False, rank=Rank.PRACTICE, source=PRACTICE,
        words="Before board: bare studs want no film, and board hung later cannot wick. Only what "
        "is set already is masked: outside doors, tubs, stairs, posts, drains, metal. Other "
        "trades work on this floor for months: cover it.",
    ),
    "before mud": StageRule(
        LOW_FILM_M, frames=False, cabinets=False, rank=Rank.GUESS, source=OUR_GUESS,
        words="Board hung, no mud yet: low film keeps splash off the paper of the board, which "
        "wicks where it touches the slab. Inner frames and cabinets are not set.",
    ),
    "after paint": StageRule(
        FILM_M, frames=True, cabinets=True, rank=Rank.PRACTICE, source=PRACTICE,
        words="After paint: everything is masked, walls, both sides of every frame, kicks. It is "
        "the most masking and the cleanest floor for the owner.",
    ),
})  # fmt: skip
UNTOLD: Stage = "after paint"
"""Taken where the job does not say: the stage with the most to mask."""

GAPS_BY: GapSeal = "tape"
"""What closes the gaps of doors where nobody chose: finishers tape them [common-practice]; that a
foam strip does the same is a guess of ours."""

_FIXTURES: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("cabinet", ("cabin", "vanity", "cupboard", "counter")),
    ("island", ("island", "peninsula")),
    ("tub", ("tub", "bath", "shower")),
    ("stair", ("stair", "step")),
    ("post", ("post", "column", "pillar")),
    ("appliance", ("applian", "range", "stove", "fridge", "refriger", "dishw", "washer", "dryer",
                   "oven", "water heater")),
)  # fmt: skip
KICKS = frozenset({"cabinet", "island"})


def fixture_kind(name: str) -> str:
    """What a fixture is to a masker: cabinet, island, tub, stair, post, appliance, else other."""
    told = name.strip().lower()
    return next((kind for kind, stems in _FIXTURES if told.startswith(stems)), "other")
