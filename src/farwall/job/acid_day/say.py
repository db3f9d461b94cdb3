"""The acid day in words, for a terminal: in short, or parts of it whole."""

from __future__ import annotations

from collections.abc import Callable

from farwall.job.acid_day.fumes import fumes_said
from farwall.job.acid_day.in_short import in_short
from farwall.job.acid_day.neutralising import neutralising_said
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.people import people_said
from farwall.job.acid_day.pours import pours_said
from farwall.job.acid_day.strength import strength_said
from farwall.job.acid_day.washing import washing_said
from farwall.job.acid_day.waste import waste_said
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Manner:
    """How a job is told: hours by am and pm or not, and its coats in order, by whose place."""

    us: bool
    coats: tuple[str, ...] = ()


WINS = "The sheet of the material in hand, local codes and licensed practice win over all of this."
WHOLE: dict[str, Callable[[AcidDay, Manner], tuple[str, ...]]] = {
    "strength": lambda day, _: strength_said(day.strength),
    "fumes": lambda day, told: fumes_said(day.fumes, us=told.us),
    "pours": lambda day, _: pours_said(day.pours),
    "people": lambda day, told: people_said(day.people, us=told.us, coats=told.coats),
    "neutralising": lambda day, _: neutralising_said(day.neutralising),
    "washing": lambda day, told: washing_said(day.washing, us=told.us),
    "waste": lambda day, _: waste_said(day.waste),
}
"""Every line of each part."""


def said(day: AcidDay, parts: tuple[str, ...] = (), *, told: Manner) -> str:
    """A few lines of each part; every line of those named. Raises KeyError for no such part."""
    lines = []
    for key, head, few in in_short(day, us=told.us):
        if parts and key not in parts:
            continue
        every = WHOLE[key](day, told)
        short = tuple(f"NO: {one.text}" if one.stop else one.text for one in few)
        shown = every if parts else short
        more = len(every) - len(shown)
        lines += [head, *(f"  {one}" for one in shown)]
        if more > 0:
            lines.append(f"  {more} more: --part {key}")
    return "\n".join((*lines, WINS))
