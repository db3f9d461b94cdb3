"""Rules on the slab itself: its age, what lies on it, what was done to its skin."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.job.go.noun import Rule, Says

STRICTEST_AGE_DAYS = 42.0
"""The largest of the advised ages: 4 to 6 weeks."""
YOUNGEST_DAYS, OLD_ENOUGH_DAYS = 21.0, 28.0
MOST_BARE_SAND_PERCENT = 10.0
AGES = (
    "14 days, better 21 (a page of questions and answers)",
    "20 to 28 days, or an even light grey (a maker)",
    "21 days, 28 where highs stay below 50 °F, 10 °C (another maker)",
    "30 days (a how-to page, a maker)",
    "4 to 6 weeks (a maker's and finishers' sheets for builders)",
)
BURNISHED_WAYS = (
    "sand it evenly (a maker)",
    "a chemical opener (another maker)",
    "never sand with a buffer, it hits high trowel lines only (a how-to page)",
    "grind with metal of 100 to 120 grit (the same page): another, grainy look",
)
_WAYS = {
    "sand": "Sand every square foot with the same number of passes, edges by hand",
    "opener": "Open every square foot with the maker's opener",
    "grind": "Grind every square foot alike; sand shows and the look turns grainy",
}
_DUST = " Dust is silica: shroud, vacuum and respirator by the silica rule."


def _age(job: Job) -> Says | None:
    age, sheet = job.survey.slab_age_days, job.survey.sheet_slab_age_days
    if age is None:
        return None
    chosen = job.choices.least_slab_age_days
    enough = max(STRICTEST_AGE_DAYS if chosen is None else chosen, sheet or 0.0)
    youngest = min(YOUNGEST_DAYS, enough)
    if sheet is not None and age < sheet:
        return Says(
            "no",
            f"The slab is {_days(age)} old; the stain's sheet asks for {sheet:g}.",
            f"Wait {_days(sheet - age)}; the sheet wins.",
        )
    if age < youngest:
        return Says(
            "no",
            f"The slab is {_days(age)} old, younger than {youngest:g} days: it stains unevenly.",
            f"Wait {_days(youngest - age)}, then let a sealed sample on this slab decide.",
        )
    if age < enough:
        thin = " Dilute the first coat." if age < OLD_ENOUGH_DAYS else ""
        return Says(
            "go with",
            f"The slab is {age:g} days old, younger than {enough:g} days"
            f"{' (the strictest advice)' if chosen is None else ''}.",
            f"Let the sample decide, never the date alone; read the stain's sheet.{thin}",
        )
    return Says("go", f"The slab is {age:g} days old.", "The sample decides all the same.")


def _days(many: float) -> str:
    return f"{many:g} day" if many == 1 else f"{many:g} days"


def least_age_days(job: Job) -> float:
    """Days below which the age of a slab is a no: the sheet's, else the youngest that texts allow
    (or fewer, as the job chooses)."""
    sheet, chosen = job.survey.sheet_slab_age_days, job.choices.least_slab_age_days
    if sheet is not None:
        return sheet
    return YOUNGEST_DAYS if chosen is None else min(YOUNGEST_DAYS, chosen)


def _film(job: Job) -> Says | None:
    film = job.survey.film
    if film is None:
        return None
    if film == "nothing":
        return Says("go", "No cure, sealer or paint lies on the slab.")
    if film == "removed":
        return Says(
            "go with",
            "A film was taken off the slab.",
            "Drops and a full sample where it lay; what is left of it keeps stain out.",
        )
    what = {"cure": "a curing compound", "cure and seal": "a cure-and-seal"}.get(film, f"a {film}")
    return Says(
        "no",
        f"There is {what if film != 'paint' else 'paint'} on the slab: stain cannot reach it.",
        "Try a solvent rag in a closet for what it is; strip or grind it off, drops again, then "
        "a full sample. Else another floor." + _DUST,
        source="trade-press, common-practice",
    )


def _covering(job: Job) -> Says | None:
    covering = job.survey.covering
    if covering is None:
        return None
    if covering == "bare":
        return Says("go", "The slab is bare.")
    if covering in {"black mastic", "vinyl tile"}:
        return Says(
            "no",
            f"There is {covering} on the slab: it may hold asbestos. Nobody sands or scrapes it.",
            "A licensed inspector tests it first; licensed people take it off.",
        )
    if covering == "old paint":
        return Says(
            "no",
            "There is old paint on the slab: it keeps stain out, and in an old house may be lead.",
            "A licensed test for lead before anybody sands; then strip, drops, a full sample.",
        )
    if covering in {"leveller", "overlay"}:
        return Says(
            "go with",
            f"The floor is a {covering}: it takes stain unlike the slab, if at all.",
            "Its maker's word, a field of its own, and a full sample on it.",
        )
    return Says(
        "go with",
        "Glue lies on the slab: its print shows after staining.",
        "Scrape, scrub, poultice; sample on the print, and have the ghost accepted in writing.",
    )


def _acid(job: Job) -> Says | None:
    acid = job.survey.acid_before
    if acid is None:
        return None
    if acid == "whole":
        return Says(
            "no",
            "The whole slab was washed or etched with acid: the lime that colour needs is gone.",
            "An overlay, a dye, or another floor.",
            source="stain-sheets, trade-press",
        )
    if acid == "part":
        return Says(
            "go with",
            "A part of the slab was washed with acid: it stays pale.",
            "Sample there; a field of its own, signed.",
            source="stain-sheets, trade-press",
        )
    return Says("go", "No acid has been on the slab.")


def _burnished(job: Job) -> Says | None:
    found, way = job.survey.burnished, job.choices.burnished
    if found is None:
        return None
    if found == "nowhere":
        return Says("go", "No part of the slab is burnished.")
    how = _WAYS[way] if way else "Choose a way to open it, on a sample first"
    change = f"{how}; then drops and a full sample.{_DUST if way in {'sand', 'grind'} else ''}"
    if found == "whole" and way is None:
        return Says("no", "The whole slab is burnished: dark, glossy, closed.", change)
    part = "The slab is" if found == "whole" else "A part of the slab is"
    return Says("go with", f"{part} burnished: it rejects stain until opened.", change)


def _bare_sand(job: Job) -> Says | None:
    percent = job.survey.bare_sand_percent
    if percent is None:
        return None
    if percent > MOST_BARE_SAND_PERCENT:
        return Says(
            "no",
            f"Sand or stone lies bare on {percent:g} % of the floor: stone does not stain.",
            "Another floor, or an owner who signs a sample of the worst place.",
        )
    if percent > 0:
        return Says(
            "go with", f"Sand lies bare on {percent:g} % of the floor.", "Show it; sign for it."
        )
    return Says("go", "No sand lies bare.")


RULES = (
    Rule(
        "slab age",
        "survey",
        90,
        "How many days old is the slab, and what age does the stain's sheet ask for?",
        _age,
        source="stain-sheets, common-practice",
        vital=True,
        advised=AGES,
    ),
    Rule(
        "cure and sealer",
        "survey",
        96,
        "Is there a curing compound, cure-and-seal, sealer or paint on it? Ask for the bottles.",
        _film,
        vital=True,
    ),
    Rule(
        "other finishes",
        "survey",
        95,
        "What lies on the slab now, or lay there last: glue, mastic, tile, paint, leveller?",
        _covering,
        rank=Rank.PRACTICE,
        vital=True,
    ),
    Rule(
        "past acid",
        "survey",
        94,
        "Was the slab, or a part, ever washed or etched with acid?",
        _acid,
        vital=True,
    ),
    Rule(
        "burnished slab",
        "survey",
        80,
        "Is any of it trowelled dark and glossy?",
        _burnished,
        source="stain-sheets, trade-press",
        vital=True,
        advised=BURNISHED_WAYS,
    ),
    Rule(
        "bare sand",
        "survey",
        60,
        "On how much of the floor does sand or stone lie bare?",
        _bare_sand,
        source="stain-sheets, common-practice",
    ),
)
