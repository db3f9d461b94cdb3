"""Rules on floor of more than one make: pours, patches, cracks; and on what lies in the slab."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.slab import Hidden, Patch
from farwall.job.go.noun import Rule, Says, named

PATCH_CURE_DAYS = 28.0
_DECISIONS: dict[str | None, str] = {
    "stain and disclose": "stained along with the floor; shown on the wetted slab and signed.",
    "leave for another colour": "kept dry and masked; sampled, coloured another day with dye or "
    "brush, and signed for.",
    "grind first": "ground before all else (silica: shroud, vacuum, respirator); then drops "
    "again, and the new seconds told.",
    None: "stain it along and disclose it, leave it for another colour, or grind it first? Decide, "
    "and have it signed.",
}
NOT_BEFORE = (
    "Not before post-tension cables, heating tubes and conduit are ruled out: no cut and no hole "
    "until then."
)


def ruled_out(hidden: Hidden) -> bool:
    """Whether everything that a saw or a drill could hit was ruled out."""
    return (hidden.post_tension, hidden.heating_tubes, hidden.conduit) == (False, False, False)


def _hidden(job: Job) -> Says | None:
    hidden = job.survey.hidden
    words = {
        "post-tension cables": hidden.post_tension,
        "heating tubes": hidden.heating_tubes,
        "conduit": hidden.conduit,
    }
    there = [name for name, told in words.items() if told]
    unknown = [name for name, told in words.items() if told is None]
    if there:
        return Says(
            "go with",
            f"In the slab: {', '.join(there)}. No drilling, no cutting.",
            "Stop at doors and joints; moisture by meter and sheet. A scan and the engineer's "
            "word before any other thing.",
        )
    if unknown:
        return Says(
            "ask",
            f"Are {', '.join(unknown)} in the slab ruled out? No cut and no hole before.",
            "The builder's drawings, the stamp at the garage door, a scan of the slab.",
        )
    return Says("go", "Cables, tubes and conduit in the slab are ruled out.")


def _pours(job: Job) -> Says | None:
    pours = job.survey.pours
    later = [one for one in job.survey.patches if one.kind == "pour"]
    if pours is None and not later:
        return None
    if (pours or 1) < 2 and not later:
        return Says("go", "The floor is one pour.")
    count = max(pours or 2, 2)
    return Says(
        "go with",
        f"The floor is {count} pours: the same stain comes out differently on each.",
        "Each a field of its own, stop line on the joint: the plan stops there when the later "
        "pour is drawn. A drop set and a sample on each; signed.",
        where=tuple(dict.fromkeys(one.room for one in later)),
    )


def _patches(job: Job) -> Says | None:
    survey = job.survey
    patches = [one for one in survey.patches if one.kind != "pour"]
    if not patches:
        if survey.patched is None:
            return None
        if not survey.patched:
            return Says("go", "There are no patches.")
        return Says(
            "ask",
            "There are patches, and none is on the plan.",
            "Room, kind, age and drop seconds of each, and its outline.",
        )
    rooms = tuple(dict.fromkeys(one.room for one in patches))
    young = [one.id for one in patches if one.age_days is not None and one.age_days < 28]
    wait = f" Wait: {', '.join(young)} younger than {PATCH_CURE_DAYS:g} days." if young else ""
    return Says(
        "go with",
        f"{_counted(len(patches))} in {named(job, rooms)}: repair mortar never matches.",
        f"{' '.join(_decided(patches))}{wait}",
        where=rooms,
        source="stain-sheets, trade-press",
    )


def _decided(patches: Sequence[Patch]) -> list[str]:
    """What is to be done with patches, a sentence for each decision that was taken."""
    by: dict[str | None, list[str]] = {}
    for one in patches:
        by.setdefault(one.decision, []).append(one.id)
    return [f"{', '.join(by[one])}: {words}" for one, words in _DECISIONS.items() if one in by]


def _cracks(job: Job) -> Says | None:
    accepted = job.survey.cracks_accepted
    if accepted is None:
        return None
    if accepted:
        return Says("go", "The owner accepts that every crack reads darker.")
    return Says(
        "go with",
        "The owner has not accepted that every crack reads darker.",
        "Show them on the wetted slab; in writing, or another floor. Heaving is an engineer's.",
    )


def _counted(count: int) -> str:
    return "A patch" if count == 1 else f"{count} patches"


RULES = (
    Rule(
        "in the slab",
        "survey",
        75,
        "",
        _hidden,
        rank=Rank.PRACTICE,
    ),
    Rule(
        "pours",
        "survey",
        63,
        "Is the floor one pour, or were parts added later?",
        _pours,
        source="trade-press, stain-sheets",
    ),
    Rule(
        "patches",
        "survey",
        62,
        "Are there patches, trenches, levelled spots? Mark each on the plan.",
        _patches,
        source="stain-sheets, trade-press",
    ),
    Rule(
        "cracks",
        "survey",
        40,
        "Does the owner accept that every crack reads darker?",
        _cracks,
    ),
)
