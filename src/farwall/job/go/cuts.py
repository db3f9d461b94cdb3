"""No saw cut is offered before it is known what lies in the slab."""

from __future__ import annotations

from dataclasses import replace

from farwall.facts.job import Job
from farwall.facts.plan import Field, Remedy
from farwall.job.go.ground_rules import NOT_BEFORE, ruled_out


def hold_cuts(fields: tuple[Field, ...], job: Job) -> tuple[Field, ...]:
    """The fields, with the word put before every remedy that proposes a saw cut in the slab.

    A cut that the floor has already is a stop line and no remedy of this kind.
    Nothing changes when cables, tubes and conduit were all ruled out.
    """
    if ruled_out(job.survey.hidden):
        return fields
    return tuple(
        replace(field, remedies=tuple(_held(one) for one in field.remedies)) for field in fields
    )


def _held(remedy: Remedy) -> Remedy:
    if not remedy.what.startswith("A saw cut") or NOT_BEFORE in remedy.what:
        return remedy
    return replace(remedy, what=f"{NOT_BEFORE} Then: {remedy.what[0].lower()}{remedy.what[1:]}")
