"""Whether a crew may spray a field as it stands in its plan: one rule for paper, phone and log."""

from __future__ import annotations

from farwall.facts.job import Crew
from farwall.facts.plan import Field


def fits_crew(field: Field, crew: Crew) -> bool:
    """Whether this crew may spray, or lay, the field as its verdict has it.

    False where the field must be planned again: it cannot be done, asks for a stop line more, for
    a helper who is not there, or for two where one sprays or an edge dies all the same.
    """
    if field.verdict == "helper":
        return crew.helper
    if field.verdict == "two":
        return crew.sprayers >= 2 and field.peak_age_min <= field.open_time_min.low
    return field.verdict == "fits"
