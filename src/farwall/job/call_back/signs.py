"""What the caller says, as signs: one for each question that was answered."""

from __future__ import annotations

from farwall.job.call_back.asked import BY_KEY
from farwall.job.call_back.noun import Call, Sign

_AGES = ((0.35, "week 1"), (3.0, "month 1-3"), (9.0, "month 3-9"), (18.0, "month 9-18"))
"""Months since hand-over up to which each holds, common practice: a first week is the first ten
days."""
LATER = "later"
AGE_WORDS = {
    "week 1": "It showed in the first days.",
    "month 1-3": "It showed in the first three months.",
    "month 3-9": "It showed between three and nine months.",
    "month 9-18": "It showed between nine and eighteen months.",
    LATER: "It showed after a year and a half.",
}
_SAID = {
    "look": {
        "haze": "It looks white or cloudy.", "footprints": "Footprints show.",
        "peeling": "It peels or flakes.", "dull": "It is dull.",
        "white salts": "White salts stand on it.", "mat marks": "A mat or rug left its mark.",
        "spots": "It is in spots or rings.", "powder": "Colour or powder comes off.",
        "scratches": "It is scratched or scuffed.", "colour": "The colour is other than wanted.",
        "lines": "Lines or outlines show.", "crack": "There is a crack.",
    },
    "where": {
        "door": "It is at a door.", "window": "It is under a window.",
        "lanes": "It is where people walk.", "wet room": "It is in a wet room.",
        "walls": "It is along walls.", "joints": "It is in joints or cuts.",
        "under something": "It is under a thing that stands or lies there.",
        "spot": "It is in one spot.", "all over": "It is all over the room.",
    },
    "wet": {"yes": "It was wet there.", "no": "It was not wet there."},
    "winter": {"yes": "It showed in winter.", "no": "It did not show in winter."},
    "cleaner": {
        "water": "It is cleaned with water alone.", "neutral": "It is cleaned pH-neutral.",
        "ammonia": "It is cleaned with ammonia.", "bleach": "It is cleaned with bleach.",
        "vinegar": "It is cleaned with vinegar.", "pine": "It is cleaned with pine cleaner.",
        "solvent": "It is cleaned with a solvent.", "steam": "It is cleaned with steam.",
        "other": "It is cleaned with something else.",
    },
    "rug": {
        "none": "No rug, mat or rubber foot is there.",
        "breathable": "A rug that breathes lies there.",
        "rubber": "Rubber or plastic lies or stands there.",
    },
}  # fmt: skip
SAID_KINDS = ("look", "where", "wet", "winter", "cleaner", "rug")


def age_of(months: float) -> str:
    """The stretch of months that a call falls into."""
    return next((name for most, name in _AGES if months <= most), LATER)


def signs_of(call: Call) -> tuple[Sign, ...]:
    """What the caller says; a question without an answer gives none."""
    found = []
    for kind in SAID_KINDS:
        value = getattr(call, kind)
        if value:
            found.append(Sign(kind, value, _SAID[kind][value]))
    if call.months is not None:
        age = age_of(call.months)
        found.append(Sign("when", age, AGE_WORDS[age]))
    return tuple(found)


def answers(key: str) -> tuple[str, ...]:
    """All answers to a question."""
    return BY_KEY[key].answers
