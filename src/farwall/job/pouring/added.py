"""What the log says went into a tub of stain, asked of the gate."""

from __future__ import annotations

from dataclasses import replace

from farwall.acid.pouring.gate import may_pour
from farwall.acid.pouring.nouns import WORDS, Fired, Verdict
from farwall.acid.pouring.things import thing_of
from farwall.facts.checks import Poured
from farwall.facts.defaults import stains_and_coats
from farwall.facts.job import Job, Stain
from farwall.facts.materials import Material, MaterialKind
from farwall.job.pouring.listed import materials_of

_KINDS: dict[Poured, MaterialKind] = {
    "water": "water",
    "muriatic acid": "muriatic acid",
    "bleach": "bleach",
    "ammonia": "ammonia water",
    "another stain": "stain",
    "unknown": "other",
}


def added_to_tub(job: Job, added: Poured, *, coat: str | None = None) -> Verdict:
    """The verdict on one thing added to the mix of a coat, of any coat where none is told.

    Over all stains that may be meant, the strictest. Sheets of plain substances are no question
    here; that of the stain is.
    """
    stains, coats = stains_and_coats(job)
    named = {one.stain for one in coats if coat is None or one.id == coat}
    meant = [stain for stain in stains if stain.id in named] or list(stains)
    verdicts = [_one(job, stain, _KINDS[added]) for stain in meant]
    return max(verdicts, key=lambda one: WORDS.index(one.word))


def _one(job: Job, stain: Stain, kind: MaterialKind) -> Verdict:
    mix = thing_of(Material("mix", "mixed stain", stain=stain.id, sheet_read=True), stain)
    listed = next((one for one in materials_of(job) if one.material.kind == kind), None)
    if kind == "stain" or listed is None:
        return may_pour((mix, thing_of(Material(kind, kind, sheet_read=True))))
    return may_pour(
        (mix, replace(listed, material=replace(listed.material, sheet_read=True)).thing())
    )


def chief_reason(verdict: Verdict) -> Fired:
    """The rule that decides: of the strictest word the first, one about two things if there is."""
    same = [one for one in verdict.fired if one.word == verdict.word]
    return next((one for one in same if len({met.name for met in one.met}) > 1), same[0])
