"""Rules of the call the day before and of the check in the morning."""

from __future__ import annotations

from dataclasses import replace

from farwall.air.limits import slab_verdict
from farwall.facts.checks import Morning
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.job.go.noun import Look, Rule, Says
from farwall.units import gal_from_l

CIRCUITS = 2
WORN_SHARE = 0.10
"""A tip that gives a tenth more than new is worn and goes [nozzle-flow]."""


def _yes_or_no(key: str, part: str, yes: str, no: str, change: str) -> Look:
    def look(job: Job) -> Says | None:
        told = getattr(getattr(job, part), key)
        if told is None:
            return None
        return Says("go", yes) if told else Says("no", no, change)

    return look


def _circuits(job: Job) -> Says | None:
    count = job.readiness.circuits
    if count is None:
        return None
    if count < CIRCUITS:
        return Says(
            "no",
            f"{count} circuit{'s' if count != 1 else ''} of 20 A for the finisher, not {CIRCUITS}.",
            "A second one on a breaker of its own, within 150 ft (45 m), or a generator outdoors.",
        )
    return Says("go", f"{count} circuits of 20 A are free.")


def _drums(job: Job) -> Says | None:
    allowed = job.readiness.drums_allowed
    if allowed is None:
        return None
    if allowed:
        return Says("go", "Drums may stand until they are hauled.")
    if job.survey.waste == "sewer in writing":
        return Says("go with", "No drums may stand there.", "All of it to the sewer, as written.")
    return Says("no", "No drums may stand there.", "Ask where; else the water has no way.")


def _sprayer(job: Job) -> Says | None:
    tight = job.morning.sprayer_tight
    if tight is None:
        return None
    if tight:
        return Says("go", "The sprayer holds pressure.")
    if job.morning.spare_tight:
        return Says(
            "go with",
            "The sprayer leaks, the spare is tight: one sprayer, filled and not swapped.",
            "Take the spare; new seals for the other before it comes near acid.",
        )
    return Says("no", "The sprayer leaks.", "New seals, or a spare that holds pressure.")


def _spare(job: Job) -> Says | None:
    tight = job.morning.spare_tight
    if tight is None:
        return None
    if tight:
        return Says("go", "The spare sprayer holds pressure.")
    return Says(
        "go with",
        "The spare sprayer leaks: tanks are filled, not swapped. The plan counts so.",
        "New seals before the first stroke, or shorter fields.",
    )


def _tip(job: Job) -> Says | None:
    flow = job.morning.tip_l_min
    if flow is None:
        return None
    nominal, planned = job.tools.tip_l_min, planned_tip(job)
    told = f"The tip gives {_both(flow)} a minute"
    if nominal is not None and flow > (1 + WORN_SHARE) * nominal:
        return Says(
            "no",
            f"{told}, more than a tenth above its {_both(nominal)}: it is worn.",
            "A new tip of the same number; then measure again.",
            source="nozzle-flow",
        )
    if flow < planned * 0.995:
        return Says(
            "go with",
            f"{told}; the planned rate wants {_both(planned)}. The plan is made again, slower.",
            "Clean the tip and its screen, pump to the same strokes, measure again.",
        )
    if flow > (1 + WORN_SHARE) * planned:
        return Says(
            "go with",
            f"{told}; the planned rate wants {_both(planned)}: at the planned pace it lays "
            f"{100 * (flow / planned - 1):.0f} % more, and darker.",
            "A smaller tip or less pressure, till the jug shows the planned flow.",
        )
    return Says("go", f"{told}, as planned.")


def _spots(job: Job) -> Says | None:
    ends = [one for one in (job.morning.slab_low_c, job.morning.slab_high_c) if one is not None]
    if not ends:
        return None
    us = job.wishes.units == "us"
    verdicts = [slab_verdict(surface_c=one, us=us) for one in ends]
    for found in verdicts:
        if found.word == "no":
            return Says("no", found.reason, " ".join(found.remedies))
    for found in verdicts:
        if found.word == "care":
            return Says("go with", found.reason, "The plan is made again with it.")
    return Says("go", "The slab's coldest and warmest spots are within limits.")


def planned_tip(job: Job) -> float:
    """The flow that the planned rate asks of a tip, by the thirstiest coat. [L/min]"""
    before = settle(replace(job, morning=Morning()))
    return before.tools.spray_m2_min * max(before.l_per_m2.values())


def _both(flow_l: float) -> str:
    return f"{gal_from_l(flow_l):.2f} gal ({flow_l:.2f} L)"


_READY = (
    ("water", "water", "Is there running water?", "Water runs.", "There is no running water.",
     "Water on, or a tank of 200 gal brought."),
    ("heat", "heat", "Can the house be kept at 60 to 90 °F (16 to 32 °C)?",
     "The house can be kept warm.", "The house cannot be kept at 60 to 90 °F (16 to 32 °C).",
     "Vented heat for days before, or a later date."),
    ("trades out", "trades_out", "Are all other trades out, and stay out?", "Trades are out.",
     "Other trades are still in.", "Locked out until a day after the seal; else another date."),
)  # fmt: skip
_MORNING = (
    ("eyewash", "eyewash", "Does the eyewash run, in reach of 10 s, for 15 min?",
     "The eyewash runs.", "There is no eyewash.", "Nobody opens a jug before it runs."),
    ("fan", "fan", "Does the fan blow out of the house?", "The fan blows out.",
     "No fan blows out.", "No stain without it: fumes need a way out."),
)  # fmt: skip

RULES = (
    *(
        Rule(name, "day before", 74, ask, _yes_or_no(key, "readiness", yes, no, change))
        for name, key, ask, yes, no, change in _READY
    ),
    Rule("circuits", "day before", 73, "Are two 20 A circuits free for the finisher?", _circuits),
    Rule("drums", "day before", 72, "May drums of rinse water stand there?", _drums),
    *(
        Rule(
            name,
            "morning",
            93,
            ask,
            _yes_or_no(key, "morning", yes, no, change),
            source="eyewash" if name == "eyewash" else "common-practice",
        )
        for name, key, ask, yes, no, change in _MORNING
    ),
    Rule("sprayer", "morning", 93, "Does the sprayer hold pressure with water?", _sprayer),
    Rule("spare sprayer", "morning", 68, "Does the spare sprayer hold pressure?", _spare),
    Rule("tip flow", "morning", 69, "What does the tip give in one minute into a jug?", _tip),
    Rule("five spots", "morning", 86, "How cold and how warm are five spots of the slab?", _spots),
)
