"""A file of another kind that was handed over as a job: told at once, not key by key."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.errors import Mistake

_NAME_THE_JOB = "Name the job, such as the job.json that was planned."
_MAKE_ONE = "`farwall job FILE --out JOB.json` makes a job from it."
_SEE_VAN = "`farwall van` reads it, and `farwall plan JOB.json --van` beside a job."


def other_file(raw: Mapping[str, object]) -> Mistake | None:
    """What the values of a file are instead of a job; None where they may well be one."""
    if "floor" in raw:
        return None
    if "inputs" in raw and "fields" in raw:
        return Mistake("", "This is a plan, not the job it was made from.", _NAME_THE_JOB)
    if raw.get("type") in {"FeatureCollection", "Feature", "Polygon", "MultiPolygon"}:
        return Mistake("", "This is a drawing, not a job.", _MAKE_ONE)
    if "stock" in raw and "sprayers" in raw:
        return Mistake("", "This is a van, not a job.", _SEE_VAN)
    return None
