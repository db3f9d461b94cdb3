"""The figures of the masking in all, each with the rule that gives it and how far to trust it."""

from __future__ import annotations

import math
from dataclasses import replace

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.job import Job
from farwall.job.office.masking.nouns import Masked, MaskFigure
from farwall.job.office.masking.rules import FILM_LOW_M, FILM_M, USED_SHARE


def figures_of(found: Masked, job: Job) -> Masked:
    """The same with its figures."""
    told = job.supplies.masking.film_m is not None
    rows = [_film(found, told=told), _tape(found), *(_plain(*one) for one in _rows(found))]
    return replace(found, figures=tuple(one for one in rows if one.likely or one.name == "wall"))


_WALL = (
    "edge of the floor that is masked: walls, jambs, feet of what stands on it, without the "
    "openings"
)
_JAMBS = "sides of frames from which the floor is stained: two jambs and the head each"
_FEET = "putty under both jambs of each side: end grain wicks stain up"
_DAM = "width of each outside door and 12 in (30 cm) along the wall at either side"


def _rows(found: Masked) -> tuple[tuple[str, float, str, Rank], ...]:
    practice, guess, seen = Rank.PRACTICE, Rank.GUESS, Rank.MEASURED
    door = "80 in (2.03 m)"
    return (
        ("wall", found.wall_m, _WALL, seen),
        ("corners", float(found.corners), "turns of the walls by more than 20°", seen),
        ("jambs", float(found.jambs), _JAMBS, practice),
        ("wrap", found.wrap_m, f"two jambs of {door} and the head for each side", guess),
        ("jamb feet", float(found.jamb_feet), _FEET, practice),
        ("gap", found.gap_m, f"both sides and the head of each door, {door} tall", guess),
        ("dam", found.dam_m, _DAM, guess),
        ("kick", found.kick_m, "feet of cabinets and islands", seen),
        ("paper", found.paper_m, "what is no taller than 12 in (30 cm)", practice),
    )


_SOURCES = {Rank.PRACTICE: PRACTICE, Rank.GUESS: OUR_GUESS, Rank.MEASURED: "plan"}
_COUNTS = frozenset({"corners", "jambs", "jamb feet"})


def _plain(name: str, value: float, rule: str, rank: Rank) -> MaskFigure:
    unit = "" if name in _COUNTS else "m"
    return MaskFigure(name, value, value, value, unit, rule, rank.value, _SOURCES[rank])


def _film(found: Masked, *, told: bool) -> MaskFigure:
    """At the low end 36 in of film where the usual 48 were taken."""
    rule, low = "each run and 6 in (15 cm) of lap at a join, times its height; 10 % lost", 0.0
    if not told and found.stage == "after paint":
        rule += "; 36 to 48 in (0.91 to 1.22 m) where a wand is swung"
        runs = [run for room in found.rooms for run in room.runs if run.why == "stage"]
        low = math.fsum(one.length_m for one in runs) * (FILM_M - FILM_LOW_M) / USED_SHARE
    return MaskFigure(
        "film", found.film_m2 - low, found.film_m2, found.film_m2, "m2", rule,
        Rank.PRACTICE.value, PRACTICE,
    )  # fmt: skip


def _tape(found: Masked) -> MaskFigure:
    """At the low end a line along the foot alone: 160 ft of wall to a roll of 180."""
    least = found.wall_m / USED_SHARE
    gaps = "the gaps of doors; " if found.gaps_by == "tape" else ""
    return MaskFigure(
        "tape", min(least, found.tape_m), found.tape_m, max(least, found.tape_m), "m",
        "a line along the foot of the film; an upright at each join; 6 in (15 cm) every 3 ft (1 m) "
        f"along its top; {gaps}10 % lost. Low: the line along the foot alone",
        Rank.GUESS.value, OUR_GUESS,
    )  # fmt: skip
