"""Whether a crew may spray a field as it stands in its plan: one rule for paper, phone and log."""

from __future__ import annotations

from farwall.facts.job import Crew
from farwall.facts.plan import Field


def fits_crew(field: Field, crew: Crew) -> bool:
    """Whether this crew may spray, or lay, the field as its verdict has it. See `may_begin`."""
    edge_lives = field.peak_age_min <= field.open_time_min.low
    return may_begin(
        field.verdict, helper=crew.helper, sprayers=crew.sprayers, edge_lives=edge_lives
    )


def may_begin(verdict: str, *, helper: bool, sprayers: int, edge_lives: bool) -> bool:
    """The same by plain values, for a plan that is read as its document.

    False where the field must be planned again: it cannot be done, asks for a stop line more, for
    a helper who is not there, or for two where one sprays or an edge dies all the same.
    """
    if verdict == "helper":
        return helper
    if verdict == "two":
        return sprayers >= 2 and edge_lives
    return verdict == "fits"
