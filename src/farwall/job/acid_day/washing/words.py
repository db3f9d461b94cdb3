"""What the wash day says in words: its steps, its cautions, what nobody told. Pure."""

from __future__ import annotations

from farwall.facts.plan import Plan
from farwall.job.acid_day.washing.noun import WashDay

BASES = {
    "": "neutraliser",
    "bicarbonate": "bicarbonate water, 2 to 4 tablespoons to the gallon (7 to 15 g/L)",
    "soda ash": "soda ash water, as its sheet says",
    "ammonia water": "ammonia water, as its sheet says, windows open",
    "lime": "lime water, as its sheet says",
}


SCRUB = (
    "Scrub every spot: two passes, the second across the first, the same everywhere. Soft nylon, "
    "white or red pad; green and black cut colour."
)
NEXT = (
    "Next stretch, wet into the last by a foot (30 cm). Then alkaline or neutral detergent the "
    "same way, and take it up."
)


def steps_of(day: WashDay) -> tuple[str, ...]:
    """The steps of every room, in order."""
    vacuum = "HEPA vacuum" if day.hepa else "vacuum"
    base = BASES.get(day.base, BASES[""])
    if not day.base:
        base = BASES["bicarbonate"]
    return (
        "Dwell over and the floor dry all over: no dark spot. Wet spots smear and mark.",
        f"Dry {vacuum} for the loose powder. No broom, no dry sanding.",
        f"Wet one stretch from the far end with {base}. Wait 5 to 10 minutes, till the fizz stops.",
        SCRUB,
        "Edges and corners by hand, as often as the middle.",
        "Take it up while it is dirty and wet. It never dries on the floor: mist what dulls.",
        NEXT,
        "Rinse with changed water, take it up. Each rinse with fresh water in a clean pail.",
        (
            "Read a strip right away and wipe a damp white rag over several ft² (half a m²). Enter "
            "both."
        ),
        "Again until the day says enough. It is told by rag and pH, not by count.",
    )


CAUTIONS = (
    (
        "Every machine, cord and pump on ground-fault protection; test the button before the first "
        "pass (29 CFR 1926.404(b)(1)). Cords hang or run behind you, never through water."
    ),
    (
        "Respirator until the powder is vacuumed and wetted; gloves, goggles and boots to the last "
        "rinse. Dirty water burns eyes: eyewash within 10 s."
    ),
    "No ammonia where bleach was or chlorine smells; no vinegar: it is an acid.",
    (
        "Rinse water goes into the drums, never to the street, storm drain, soil or septic. Lids "
        "vented while it still fizzes."
    ),
    "A full drum is never moved by one person: fill it where it is picked up.",
    "Wet floor is slick. Steps are washed from the top down, nobody on them.",
)


def warnings_of(day: WashDay, plan: Plan) -> tuple[str, ...]:
    """What nobody told, and what does not go as told."""
    found = [*_start(day), *_machines(day), *_strips(day), *_drums(day)]
    lost = [one.name for one in day.rooms if not one.way]
    if lost:
        found.append(f"No way out is drawn from {', '.join(lost)}: say where one leaves it.")
    if not plan.inputs.exits:
        found.append("No way out of the house is told.")
    return tuple(found)


def _start(day: WashDay) -> list[str]:
    if day.begins.high is None:
        return ["The floor does not surely get dry: heat or air first, then dry all over."]
    if day.more_than_a_day:
        return ["More than one day of work: stop after a room's last rinse, never between steps."]
    return []


def _machines(day: WashDay) -> list[str]:
    if day.ground_fault is None:
        return ["Nobody said whether the wet machines hang on ground-fault protection."]
    if not day.ground_fault:
        return ["No wet machine is switched on without ground-fault protection."]
    return []


def _strips(day: WashDay) -> list[str]:
    found = []
    if day.tap_ph is None:
        found.append("Read a strip in the tap water first: the floor is held against it.")
    if day.unstained_ph is None:
        found.append("Rinse a patch that was never stained and read a strip there: new concrete "
                     "is alkaline by itself.")  # fmt: skip
    return found


def _drums(day: WashDay) -> list[str]:
    drums = day.drums
    if drums is None:
        return []
    found = []
    if drums.enough is False:
        found.append(f"{drums.had} of {drums.full + drums.spares} drums are there.")
    if not drums.at:
        found.append("Say where the drums stand: where a truck can pick them up full.")
    if drums.floor == "ask":
        found.append("Nobody said what the floor under the drums bears. On a slab on the ground "
                     "they may stand; above a room ask the builder first.")  # fmt: skip
    if drums.floor == "no":
        found.append("A full drum is too heavy for that floor: pump the water down to the ground.")
    return found
