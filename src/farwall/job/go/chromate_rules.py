"""Rules on chromate: whether a sheet names it, and each thing that it then changes."""

from __future__ import annotations

from farwall.acid.chromium import CHANGES, SILICA, Change
from farwall.facts.job import Job
from farwall.job.go.noun import WITH, Look, Rule, Says


def _chromate(job: Job) -> Says | None:
    if not job.stains:
        return None
    named = [one.name or one.id for one in job.stains if one.names_chromate]
    unread = [one.name or one.id for one in job.stains if one.names_chromate is None]
    if named:
        return Says(
            WITH,
            f"The sheet of {', '.join(named)} names chromate: it changes the whole job.",
            "Exposure, respirators and waste settled by a licensed hygienist first; no acid "
            "added; nobody sands this floor later without controls.",
        )
    if unread:
        return Says(
            "ask",
            f"Nobody has read the sheet of {', '.join(unread)} for chromate.",
            "Read it: hexavalent chromium changes exposure, waste and what may be mixed.",
        )
    return Says("go", "No stain's sheet names chromate.")


def _changed(change: Change) -> Look:
    def look(job: Job) -> Says | None:
        if not any(one.names_chromate for one in job.stains):
            return None
        return Says(WITH, change.says, change.do, rank=change.rank)

    return look


def _dust(job: Job) -> Says | None:
    """Where a burnished slab is opened dry, the controls of the silica rule."""
    if job.survey.burnished in {None, "nowhere"} or job.choices.burnished == "opener":
        return None
    return Says(WITH, " ".join(SILICA), "The maker's opener instead makes no dust.")


RULES = (
    Rule("chromate", "survey", 82, "", _chromate, source="osha-chromium, common-practice"),
    *(
        Rule(f"chromate, {one.key}", "survey", 81 - n, "", _changed(one), source=one.source)
        for n, one in enumerate(CHANGES)
    ),
    Rule("grinding dust", "survey", 48, "", _dust, source="silica"),
)
