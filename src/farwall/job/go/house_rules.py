"""Rules on the house and the people in it: temperature, trades, the colour wished for."""

from __future__ import annotations

from farwall.air.limits import GOOD_C, in_both, slab_verdict
from farwall.facts.job import Job
from farwall.job.go.noun import Rule, Says
from farwall.units import c_from_f

STRICTEST_GOOD_C = c_from_f(70)
GOOD = (
    "59 to 70 °F, 15 to 21 °C (a garden page)",
    "at most 75 to 80 °F, 24 to 27 °C (a maker)",
    "50 to 90 °F, 10 to 32 °C (usual sheets)",
)


def _temperature(job: Job) -> Says | None:
    slab_c = job.survey.slab_c
    if slab_c is None:
        return None
    us = job.wishes.units == "us"
    found = slab_verdict(surface_c=slab_c, us=us)
    change = " ".join(found.remedies)
    if found.word == "no":
        return Says("no", found.reason, change)
    if found.word == "care":
        return Says("go with", found.reason, "Read the slab again on the day, at five spots.")
    chosen = job.choices.good_most_slab_c
    most = min(STRICTEST_GOOD_C if chosen is None else chosen, GOOD_C[1])
    here = f"The slab is {in_both(slab_c, us=us)}"
    if slab_c > most + 0.05:
        return Says(
            "go with",
            f"{here}, above {in_both(most, us=us)}"
            f"{', the strictest advice' if chosen is None else ''}.",
            "An early hour, no sun on the floor.",
        )
    return Says("go", f"{here}.")


def _frost(job: Job) -> Says | None:
    frozen = job.survey.ground_frozen
    if frozen is None:
        return None
    if frozen:
        return Says(
            "no",
            "The ground below is frozen: a warm top over a cold bed deceives.",
            "Wait until it has thawed, or heat the house for days and read the slab, not the air.",
        )
    return Says("go", "The ground below is not frozen.")


def _trades(job: Job) -> Says | None:
    trades = job.survey.trades
    if trades is None:
        return None
    if trades == "overhead":
        return Says(
            "no",
            "Painters, plumbers or others work overhead on the same days.",
            "The house closed to others for 4 to 5 days, in writing, with the builder's dates.",
        )
    if trades == "zones":
        return Says(
            "go with",
            "Other trades work in the house by zones.",
            "Rooms locked, signs on the doors, from cleaning to seal and a day.",
        )
    return Says("go", "The house is closed to others.")


def _colour(job: Job) -> Says | None:
    wanted = job.survey.colour_wanted
    if wanted is None:
        return None
    mixed = (job.survey.pours or 1) > 1 or bool(job.survey.patches) or bool(job.survey.patched)
    if wanted != "range":
        like = "one even colour" if wanted == "uniform" else "the colour of a chart"
        more = " over patches or two pours" if mixed else ""
        return Says(
            "no",
            f"The owner wants {like}{more}: acid stain gives neither.",
            "A signed, sealed sample with its natural range as the standard; if the owner "
            "insists, recommend another floor.",
            source="trade-press",
        )
    return Says("go", "The owner wants a natural range, as the sample shows it.")


RULES = (
    Rule(
        "slab temperature",
        "survey",
        84,
        "How warm is the slab itself, at five spots?",
        _temperature,
        vital=True,
        advised=GOOD,
        source="stain-sheets, common-practice",
    ),
    Rule("frost below", "survey", 50, "Is the ground below frozen?", _frost, source="trade-press"),
    Rule(
        "other trades",
        "survey",
        83,
        "Who else is in the house on these days?",
        _trades,
        vital=True,
    ),
    Rule(
        "colour wished for",
        "survey",
        87,
        "Does the owner want a natural range, one even colour, or the chart's?",
        _colour,
        source="trade-press",
        vital=True,
    ),
)
