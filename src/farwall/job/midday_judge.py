"""Verdicts in mid-day: what is begun is not laid anew; an edge that dies is told."""

from __future__ import annotations

from dataclasses import replace

from farwall.beside import Beside, at_once
from farwall.facts.plan import Field, Remedy, Verdict
from farwall.nouns import dataclass
from farwall.spray.lives import Held
from farwall.spray.schedule import Timed
from farwall.spray.verdict import Case, Judge, Weighed, settled


@dataclass(frozen=True)
class MiddayJudge(Judge):
    """In mid-field nobody lays a field anew: an edge that dies is told, with what to do."""

    def weighed(self, case: Case, timed: Timed, held: Held, beside: Beside = at_once) -> Weighed:
        """As in the morning, but for a field that is begun."""
        if case.sweep.begun:
            verdict, remedies = seam_of(timed, held, len(case.sweep.begun))
            if verdict:
                return settled(verdict, remedies)
        return super().weighed(case, timed, held, beside)


def seam_of(timed: Timed, held: Held, done: int) -> tuple[Verdict | None, tuple[Remedy, ...]]:
    """The verdict on a field whose edge has died, and which edge it is; None when none has."""
    edge = held.tightest
    if edge is None or edge.spare_min >= 0:
        return None, ()
    met = [n for n, band in enumerate(timed.bands) if band.start_min <= edge.met_min + 1e-3]
    number = met[-1]
    band = timed.bands[number]
    age = f"{edge.age_min:.1f} min old, live for {edge.low_min:.1f} min"
    if number < done:
        words = f"A seam is in the floor before band {band.id}: its edge was {age}."
        words += " Look at it when it is dry; do not spray over it now."
    else:
        words = f"The edge before band {band.id} is {age} when the band meets it: a seam will show."
        words += " Feather it out and go on, or stop at the next line that hides one."
    return "cannot", (Remedy("seam", words, edge.age_min),)


def cut_short(field: Field) -> Field:
    """A field of which the rest is left, in open floor."""
    words = f"Field {field.id} is left in open floor: a seam will show. Feather the last band out."
    return replace(field, verdict="cannot", remedies=(Remedy("seam", words),))
