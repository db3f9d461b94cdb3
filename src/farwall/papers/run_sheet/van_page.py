"""The page of the van: which sprayer, which spare, what to load and what to buy."""

from __future__ import annotations

from typing import Any

from farwall.facts.plan import Plan
from farwall.facts.van import Shopping
from farwall.job.van.say import amount_words, named, sprayers_words
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units

FOOT = (
    "Stain: what the plan is to be ready for. All else is common practice, no source, or a guess: "
    "a list of your own wins. Sheets for every bottle ride along; what the sheet of a material "
    "asks for wins."
)


def van_page(plan: Plan, *, units: Units) -> dict[str, Any] | None:
    """What the page shows; None where no van was told."""
    found = plan.van
    if found is None:
        return None
    return {
        "title": "Van",
        "no": not (found.sprayer and found.spare),
        "take": plain(sprayers_words(found)),
        "mind": [plain(one) for one in found.mind],
        "buy": [_row(one, units) for one in found.shopping if one.buy],
        "load": [_row(one, units) for one in found.shopping if not one.buy],
        "foot": FOOT,
    }


def _row(one: Shopping, units: Units) -> dict[str, str]:
    return {
        "what": plain(named(one)),
        "needed": amount_words(one.need.amount, one.need.unit, units),
        "there": amount_words(one.there, one.need.unit, units) if one.there else "none",
        "buy": amount_words(one.buy, one.need.unit, units) if one.buy else "",
        "from": plain(", ".join(one.from_stock)),
        "mind": plain(one.mind),
    }
