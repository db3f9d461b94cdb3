"""The acid day in words, for a terminal."""

from __future__ import annotations

from farwall.job.acid_day.fumes import fumes_said
from farwall.job.acid_day.neutralising import neutralising_said
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.people import people_said
from farwall.job.acid_day.pours import pours_said
from farwall.job.acid_day.strength import strength_said
from farwall.job.acid_day.washing import washing_said
from farwall.job.acid_day.waste import waste_said

WINS = "The sheet of the material in hand, local codes and licensed practice win over all of this."


def said(day: AcidDay) -> str:
    """Part by part; a part that has nothing to say is left out."""
    parts = (
        ("Strength", strength_said(day.strength)),
        ("Fumes", fumes_said(day.fumes)),
        ("Neutralising", neutralising_said(day.neutralising)),
        ("Wash day", washing_said(day.washing)),
        ("Waste water", waste_said(day.waste)),
        ("People", people_said(day.people)),
        ("Pouring together", pours_said(day.pours)),
    )
    told = [line for head, lines in parts if lines for line in (head, *(f"  {x}" for x in lines))]
    return "\n".join((*told, WINS))
