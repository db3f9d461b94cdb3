"""Rules for what is seen on the floor while it is stained and cleaned; silent until it is told."""

from __future__ import annotations

from farwall.acid.pouring.gate import VAGUE
from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.job.go.noun import Rule, Says
from farwall.job.pouring.added import added_to_tub, chief_reason
from farwall.units import ft2_from_m2, gal_from_l

SHARE_TO_GO_ON = 1.15
LEAST_PH = 6.5


def _fizz(job: Job) -> Says | None:
    if job.watch.fizz is None:
        return None
    if job.watch.fizz:
        return Says("go", "It fizzes: the slab reacts.")
    return Says(
        "no",
        "No fizz after two minutes in the first closet: a film, or a dead slab.",
        "Stop, wash it off, find the film. Nothing more is sprayed.",
    )


def _wet_look(job: Job) -> Says | None:
    look = job.watch.wet_look
    if look is None:
        return None
    if look == "darker":
        return Says(
            "no",
            "The wet look is darker than the sample: too dark is final.",
            "Neutralise now, shorten the dwell, no further coat.",
        )
    if look == "right":
        return Says(
            "go with",
            "The wet look is within the sample's range.",
            "Stop there, even if two coats were quoted.",
        )
    return Says(
        "go",
        "The wet look is lighter than the sample.",
        "Another coat when the dwell is over and a drop still goes in within a minute.",
    )


def _enough(job: Job) -> Says | None:
    left_l, left_m2 = job.watch.left_l, job.watch.left_m2
    if left_l is None or left_m2 is None:
        return None
    settled = settle(job)
    coat = next((one for one in settled.coats if one.id == job.watch.coat), settled.coats[0])
    need = SHARE_TO_GO_ON * left_m2 * coat.l_per_m2
    told = (
        f"{gal_from_l(left_l):.2f} gal ({left_l:.1f} L) left for {ft2_from_m2(left_m2):.0f} ft² "
        f"({left_m2:.1f} m²)"
    )
    if left_l < need:
        return Says(
            "no",
            f"{told}: less than {SHARE_TO_GO_ON:g} times the need, {gal_from_l(need):.2f} gal "
            f"({need:.1f} L).",
            "Stop at this stop line, not later; mix more of the same lots and box it.",
        )
    return Says("go", f"{told}: enough to go on.")


def _rinsed(job: Job) -> Says | None:
    ph, rag = job.watch.rinse_ph, job.watch.rag
    if ph is None and rag is None:
        return None
    bad = []
    if ph is not None and ph < LEAST_PH:
        bad.append(f"pH {ph:g} is below {LEAST_PH:g}")
    if rag == "dirty":
        bad.append("the white rag is dirty")
    if bad:
        return Says(
            "no",
            f"Not clean yet: {' and '.join(bad)}. No sealer on it.",
            "Another scrub, not only another rinse; then pH and rag again, in every 500 ft².",
        )
    return Says("go", "pH and rag pass.")


def _poured(job: Job) -> Says | None:
    poured = dict.fromkeys(one for one in job.watch.poured if one != "water")
    if not poured:
        return None
    verdicts = [added_to_tub(job, one, coat=job.watch.coat) for one in poured]
    refused = [chief_reason(one) for one in verdicts if one.word == "refused"]
    if refused:
        why = " ".join(dict.fromkeys(one.what for one in refused))
        unread = all(one.rule in VAGUE for one in refused)
        return Says(
            "no",
            f"This is not mixed. {why}",
            refused[0].instead
            if unread
            else "Pour nothing; air the place; read both sheets. "
            "Hurt or dizzy: out, and call for help.",
        )
    return Says(
        "go with",
        "Acid is added to the mix: the maker's sheet does not cover it, fumes rise.",
        "A sample made with it first; record how much. Opening the slab is the honest way.",
    )


RULES = (
    Rule("liquids", "on the floor", 100, "", _poured, source="stain-sheets, common-practice"),
    Rule("fizz", "on the floor", 91, "", _fizz),
    Rule("wet look", "on the floor", 90, "", _wet_look),
    Rule("enough to go on", "on the floor", 81, "", _enough),
    Rule("rinsed clean", "on the floor", 71, "", _rinsed, source="trade-press, astm-d4262"),
)
