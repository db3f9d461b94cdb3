"""Rules on what the slab was made of, by the ready-mix ticket, and how the sample came out."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.job.go.noun import Rule, Says

FLY_ASH_PERCENT = (0.0, 10.0, 15.0)
"""None, less than 10, at most 15 % when it is warm: three texts; the first is the strictest."""
FLY_ASH = (
    "none (a maker)",
    "below 10 % (the same maker, elsewhere)",
    "at most 15 % when above 80 °F, 27 °C (a finisher's sheet for builders)",
)
LEAN_KG_M3 = 279.0
"""Five sacks, 470 lb a cubic yard: with this much cement or more a slab reacts stronger."""


def _fly_ash(job: Job) -> Says | None:
    percent = job.survey.mix.fly_ash_percent
    if percent is None:
        return None
    chosen = job.choices.most_fly_ash_percent
    most = FLY_ASH_PERCENT[0] if chosen is None else chosen
    if percent <= most:
        return Says("go", f"The mix has {percent:g} % fly ash.")
    heavy = percent > max(most, FLY_ASH_PERCENT[2])
    change = "A full sample on this slab, scrubbed hard, decides: expect weak colour."
    if heavy and job.survey.sample_scrub != "holds":
        return Says("no", f"The mix has {percent:g} % fly ash: little lime is left.", change)
    return Says("go with", f"The mix has {percent:g} % fly ash, more than {most:g} %.", change)


def _ticket(job: Job) -> Says | None:
    mix = job.survey.mix
    told = (mix.slag_percent, mix.chloride_accelerator, mix.cement_kg_m3)
    if all(one is None for one in told):
        return None
    found = []
    if mix.slag_percent:
        found.append(f"{mix.slag_percent:g} % slag or pozzolan weakens colour")
    if mix.chloride_accelerator:
        found.append("calcium chloride in the mix gives dark blotches")
    if mix.cement_kg_m3 is not None and mix.cement_kg_m3 < LEAN_KG_M3:
        found.append(f"{mix.cement_kg_m3:g} kg of cement a m³ (under five sacks) reacts weakly")
    if not found:
        return Says("go", "The ready-mix ticket tells nothing that weakens colour.")
    return Says(
        "go with",
        f"The ready-mix ticket: {'; '.join(found)}.",
        "A full sample on this slab; show the owner, and have it signed.",
    )


def _sample(job: Job) -> Says | None:
    scrub = job.survey.sample_scrub
    if scrub is None:
        return None
    if scrub == "washes off":
        return Says(
            "no",
            "The sample's colour washed off under a hard scrub: it sits on the surface.",
            "Open the slab evenly and sample again; a second time, another floor.",
            source="trade-press, stain-sheets",
        )
    if scrub == "weak":
        return Says(
            "go with", "The sample came out weak.", "A second coat, or open the slab; sample again."
        )
    return Says("go", "The sample held its colour under a hard scrub.")


def _signed(job: Job) -> Says | None:
    signed = job.survey.sample_signed
    if signed is None:
        return None
    if signed:
        return Says("go", "A sealed sample on this slab is signed.")
    return Says(
        "go with",
        "No sealed sample on this slab is signed.",
        "Sealed, looked at by day and by lamp, photographed, signed, before the first coat.",
    )


RULES = (
    Rule(
        "sample",
        "survey",
        92,
        "Did a full sample on this slab hold its colour under a hard scrub?",
        _sample,
        vital=True,
    ),
    Rule(
        "signed sample",
        "survey",
        55,
        "Is a sealed sample on this slab signed by the owner?",
        _signed,
        source="trade-press",
    ),
    Rule(
        "fly ash",
        "survey",
        70,
        "How much fly ash is in the mix? The ready-mix ticket says.",
        _fly_ash,
        source="stain-sheets, trade-press",
        advised=FLY_ASH,
    ),
    Rule(
        "mix ticket",
        "survey",
        45,
        "What does the ready-mix ticket say: slag, accelerator, cement?",
        _ticket,
        rank=Rank.PRACTICE,
        source="trade-press",
    ),
)
