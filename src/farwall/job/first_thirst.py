"""The belief of a coat's thirst before anything of it was sprayed, as its plan had it. Pure."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts.plan import Plan
from farwall.mix.plan import OWN_SHARE
from farwall.mix.thirst import FIELD_SHARE, Thirst, first_belief

USUAL_PERCENT = 20.0
"""Where a plan tells no spread."""


def first_thirst(plan: Plan, coat: str) -> Thirst:
    """The belief that the plan's gate began with, learned where closed jobs taught it.

    Read from the plan's own `grounds`, so that mid-day and the live day reckon on as it did, also
    where the lessons are not at hand.
    """
    told = {ground.name: ground for ground in plan.grounds}
    own, learned = told.get("wishes.spread_percent"), told.get(f"coats.{coat}.spread_percent")
    spread = learned if learned is not None and learned.rank == Rank.LEARNED.value else own
    percent = float(spread.value) if spread is not None else USUAL_PERCENT
    share = told.get(f"{OWN_SHARE}, {coat}")
    return first_belief(
        percent, field_share=FIELD_SHARE if share is None else float(share.value) / 100
    )
