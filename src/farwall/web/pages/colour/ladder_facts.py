"""What the log tells of samples, written into the facts of a house."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from farwall.facts.job import Job
from farwall.facts.log import Kept
from farwall.facts.plain import plain
from farwall.job.colour.told import as_told, survey_told
from farwall.readers.job_json import job_from
from farwall.web.words import said


def with_log(facts: Mapping[str, Any], job: Job, kept: Sequence[Kept]) -> dict[str, Any]:
    """The facts with what the log tells of samples. Raises Refused where that makes no sound job.

    facts: those of `job`, as the book has them.
    """
    told = survey_told(job, kept).survey
    survey = {
        key: value
        for key in ("sample_scrub", "sample_signed")
        if (value := getattr(told, key)) is not None
    }
    changed = {
        **facts,
        "samples": [plain(one, omit_empty=True) for one in as_told(job, kept)],
        "survey": {**facts.get("survey", {}), **survey},
    }
    job_from(changed, said("ladder-log-told"))
    return changed
