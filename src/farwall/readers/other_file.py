"""A file of another kind that was handed over as a job: told at once, not key by key."""

from __future__ import annotations

from collections.abc import Mapping

from farwall.errors import Mistake

_NAME_THE_JOB = "Name the job, such as the job.json that was planned."
_MAKE_ONE = "`farwall job FILE --out JOB.json` makes a job from it."
_PICTURES = {"PNG", "JPEG", "HEIC"}
_SEE_VAN = "`farwall van` reads it, and `farwall plan JOB.json --van` beside a job."


def drawing(data: bytes) -> Mistake | None:
    """What a file that is no JSON is instead of a job; None where no reader knows it."""
    from farwall.readers.kinds import BLANKS, HEAD_BYTES, KINDS, UNREAD  # only when all else failed

    start = data[:HEAD_BYTES].lstrip(BLANKS)
    for unread in UNREAD:
        if unread.fits(start):
            return Mistake("", f"This is {unread.name}, not a job.", unread.remedy)
    if start.startswith((b"{", b"[")):
        return None  # JSON with a slip in it: what else it says is told from there
    kind = next((one.name for one in KINDS if one.fits(data)), None)
    if kind is None:
        return None
    what = "picture" if kind in _PICTURES else "drawing"
    return Mistake("", f"This is a {what}, not a job.", _MAKE_ONE)


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
