"""How often who sprays is looked in on: the firm's own minutes, else a guess."""

from __future__ import annotations

from farwall.evidence import Known, Rank
from farwall.facts.workers import Emergency

LOOK_IN = Known(15.0, "min", Rank.GUESS, "house-guess")
"""Where the firm names none. That nobody works alone with acid is common practice; how often one
looks stands in no text that was found."""


def look_in_of(told: Emergency) -> Known:
    """Minutes between two looks, with their rank."""
    if told.look_in_min is None:
        return LOOK_IN
    return Known(told.look_in_min, "min", Rank.PRACTICE, "told in the job")
