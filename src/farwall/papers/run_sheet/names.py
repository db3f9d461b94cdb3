"""Names that recur on the pages: the number of a field in its coat, the words for a coat."""

from __future__ import annotations

from farwall.facts.fits_crew import fits_crew
from farwall.facts.numbered import stain_named
from farwall.facts.plan import Field, Plan, Verdict
from farwall.papers.words import listed, room_names

VERDICTS: dict[Verdict, str] = {
    "fits": "fits",
    "helper": "fits with a helper",
    "two": "needs two sprayers",
    "stop-line": "needs one more stop line",
    "cannot": "NO",
}


def verdict_words(plan: Plan, field: Field) -> str:
    """The verdict in a few words, as this crew must take it."""
    if field.verdict == "helper" and not fits(plan, field):
        return "needs a helper"
    return VERDICTS[field.verdict]


def numbers(plan: Plan) -> dict[str, int]:
    """The number of each field within its coat, from 1, by field id."""
    found: dict[str, int] = {}
    for coat in coat_ids(plan):
        mine = sorted((f for f in plan.fields if f.coat == coat), key=lambda f: f.order)
        found |= {field.id: n for n, field in enumerate(mine, 1)}
    return found


def coat_ids(plan: Plan) -> list[str]:
    """Coats in their order, those of the inputs first."""
    return list(dict.fromkeys([c.id for c in plan.inputs.coats] + [f.coat for f in plan.fields]))


def coat_words(plan: Plan, coat_id: str) -> str:
    """`coat 1, ochre-brown 1:1`."""
    coat = next((c for c in plan.inputs.coats if c.id == coat_id), None)
    name = coat_name(plan, coat_id)
    return f"{name} {coat.cut}" if coat else name


def coat_name(plan: Plan, coat_id: str) -> str:
    """`coat 1, ochre-brown`."""
    coat = next((c for c in plan.inputs.coats if c.id == coat_id), None)
    known = coat_ids(plan)
    number = f"coat {known.index(coat_id) + 1}" if coat_id in known else coat_id
    return f"{number}, {stain_named(plan, coat.stain)}" if coat else number


def field_rooms(plan: Plan, field: Field) -> str:
    """`Bath 2 and Laundry`."""
    return listed(room_names(plan, field.rooms))


def fits(plan: Plan, field: Field) -> bool:
    """Whether this crew may spray the field as it stands in the plan."""
    return fits_crew(field, plan.inputs.crew)
