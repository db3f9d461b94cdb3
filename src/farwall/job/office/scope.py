"""How much of a job an offer holds: which rooms, coats of stain, sealer and finish."""

from __future__ import annotations

from farwall.air.sealers import limits_of
from farwall.facts.prices import Offer
from farwall.job.office.ground import OfficeGround
from farwall.nouns import dataclass

FINISH_COATS = 2
"""Coats of floor finish at hand-over, 2 to 4 [common-practice]."""


@dataclass(frozen=True)
class Scope:
    """Ids of rooms and coats, in the order of the job; coats of sealer and of floor finish."""

    rooms: tuple[str, ...]
    coats: tuple[str, ...]
    sealer_coats: int
    finish_coats: int


def scope_of(ground: OfficeGround, offer: Offer | None = None) -> Scope:
    """What an offer holds; the whole job where none is given."""
    one = offer or Offer("all")
    rooms = tuple(room.room for room in ground.measured.rooms)
    coats = tuple(coat.id for coat in ground.plan.inputs.coats)
    sealer = limits_of(ground.job.sealer).coats if one.sealer_coats is None else one.sealer_coats
    return Scope(
        rooms=tuple(id_ for id_ in rooms if not one.rooms or id_ in one.rooms),
        coats=tuple(id_ for id_ in coats if not one.coats or id_ in one.coats),
        sealer_coats=sealer,
        finish_coats=FINISH_COATS if one.finish_coats is None else one.finish_coats,
    )
