"""The questions of the first call, in the order in which they are asked [common-practice]."""

from __future__ import annotations

from collections.abc import Mapping
from typing import get_args

from farwall.errors import Mistake, Refused
from farwall.job.enquiry.noun import (
    Acid,
    Colour,
    Enquiry,
    FilmOnIt,
    Household,
    LiesOnIt,
    Overlay,
    SlabIs,
    Trades,
    Way,
    Work,
)
from farwall.job.sums.arguments import AREA, given
from farwall.job.sums.noun import Argument, Bounds, Sum

QUESTIONS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("Is the slab poured yet, new or old, and how many days old?", ("slab", "slab_age_days")),
    ("What lies on it now, or lay there last?", ("covering",)),
    (
        (
            "Is there any curing compound, sealer, garage paint on it? Was it ever washed with "
            "acid? Ask for the bottles."
        ),
        ("film", "acid_before"),
    ),
    ("Is there an overlay or a self-leveller on it?", ("overlay",)),
    ("Is the slab heated?", ("heated",)),
    ("Was part of it poured later: an addition, a trench, patches?", ("pours",)),
    ("Who else works in the house on those days?", ("trades",)),
    ("When is the floor to be used?", ("needed_in_days",)),
    ("Are there running water, two 20 A circuits, heat?", ("water", "circuits", "heat")),
    ("Sewer or septic tank? Where could wash water go?", ("waste",)),
    ("Does anybody live there meanwhile, children, pets?", ("household",)),
    ("Are there plants, lawn or bare concrete at the doors?", ("plants",)),
)
"""Each question with the keys of its answers."""
WISHES: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("How large is the floor, and what is it to look like?", ("area_m2", "work")),
    ("A natural range, or one even colour, or a colour of a chart?", ("colour_wanted",)),
)
PARTS = {
    "slab": "Is it new or old?",
    "slab_age_days": "How many days old is the slab?",
    "film": "Is there any curing compound, sealer, garage paint on it? Ask for the bottles.",
    "acid_before": "Was it ever washed or etched with acid?",
    "water": "Is there running water?",
    "circuits": "How many 20 A circuits are there for the finisher alone?",
    "heat": "Can the house be heated?",
    "area_m2": "How large is the floor?",
    "work": "What is it to look like?",
}
"""What is still asked of a question that was answered in part."""
_YES = ("yes", "no")
_MOST_DAYS = 100_000.0

ASKED = Sum(
    name="enquiry",
    what="what a first call comes to: a visit, a no, or a rough range",
    arguments=(
        Argument("slab", choices=get_args(SlabIs)),
        Argument("slab_age_days", bounds=Bounds(0, _MOST_DAYS)),
        Argument("covering", choices=get_args(LiesOnIt)),
        Argument("film", choices=get_args(FilmOnIt)),
        Argument("acid_before", choices=get_args(Acid)),
        Argument("overlay", choices=get_args(Overlay)),
        Argument("heated", choices=_YES),
        Argument("pours", bounds=Bounds(1, 50)),
        Argument("trades", choices=get_args(Trades)),
        Argument("needed_in_days", bounds=Bounds(0, _MOST_DAYS)),
        Argument("water", choices=_YES),
        Argument("circuits", bounds=Bounds(0, 20)),
        Argument("heat", choices=_YES),
        Argument("waste", choices=get_args(Way)),
        Argument("household", choices=get_args(Household)),
        Argument("plants", choices=_YES),
        Argument("area", AREA, Bounds(0, 1e5, above=True)),
        Argument("work", choices=get_args(Work)),
        Argument("colour_wanted", choices=get_args(Colour)),
        Argument("least", bounds=Bounds(0, 1e7)),
    ),
    reckon=lambda _: {},
)
"""Every key that may be told, with what it may be; areas in m² or ft²."""
_YES_OR_NO = frozenset({"heated", "water", "heat", "plants"})
_COUNTS = frozenset({"pours", "circuits"})
_STRANGE = "This sum knows no such argument."


def enquiry_of(raw: Mapping[str, object]) -> Enquiry:
    """The answers of a call, checked and in SI; empty ones were not given.

    Raises Refused with every mistake: unknown keys with the nearest known one, words that are none
    of the choices, numbers out of range, half a pour.
    """
    told = {key: value for key, value in raw.items() if value not in {"", None}}
    try:
        found = given(ASKED, told)
    except Refused as refused:
        again = [_in_own_words(one) for one in refused.mistakes]
        raise Refused(*again, about="The call cannot be answered with this.") from None
    values: dict[str, object] = {}
    mistakes = []
    for one in ASKED.arguments:
        key = one.key
        if key not in found:
            continue
        value = found.thing(key)
        if key in _YES_OR_NO:
            value = value == "yes"
        elif key in _COUNTS:
            if value != int(found.number(key)):
                mistakes.append(Mistake(key, "It is counted in whole ones.", "Write it like 2."))
            value = int(found.number(key))
        elif key == "least":
            value = f"{found.number(key):.2f}"
        values[key] = value
    if mistakes:
        raise Refused(*mistakes, about="The call cannot be answered with this.")
    return Enquiry(**values)  # type: ignore[arg-type]


def _in_own_words(one: Mistake) -> Mistake:
    if one.what == _STRANGE:
        return Mistake(one.where, "No question of the first call has this key.", one.remedy)
    return one
