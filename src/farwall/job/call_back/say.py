"""A call-back in words, for a terminal: the first causes whole, the others by name."""

from __future__ import annotations

from farwall.job.call_back.asked import BY_KEY
from farwall.job.call_back.noun import Likely, Triage

TOLD_WHOLE = 3
NO_VERDICT = (
    "Whose it is are words for the talk, no verdict: contract and local law win. Causes and "
    "weights: common practice, no source, and guesses; the visit decides."
)


def weighed(found: Triage) -> str:
    """By what the signs are weighed, where closed call-backs told; else nothing."""
    if not found.call_backs:
        return ""
    many = "call-back" if found.call_backs == 1 else "call-backs"
    return (
        f"Signs are weighed by {found.call_backs} closed {many} of the firm where the records "
        "told of them, else by guesses."
    )


def said(found: Triage) -> tuple[str, ...]:
    """Lines."""
    lines: list[str] = []
    first = found.likely[:TOLD_WHOLE]
    for one in first:
        lines += _whole(one)
    if len({one.place for one in first}) < len(first):
        lines.append("Those of one number are equally likely by what is told.")
    rest = [one.what for one in found.likely[TOLD_WHOLE:]]
    if rest:
        lines.append(f"Not ruled out: {'; '.join(rest)}.")
    if found.records:
        lines += ["The log of this floor:", *(f"  {one}" for one in found.records)]
    else:
        lines.append("The log has no record of washing or sealing that could be held against it.")
    if found.ask:
        lines += ["Ask next:", *(f"  {BY_KEY[key].words}" for key in found.ask)]
    lines += ["Take along:", *(f"  {one}" for one in found.kit), NO_VERDICT]
    return tuple(one for one in (*lines, weighed(found)) if one)


def _whole(one: Likely) -> list[str]:
    lines = [f"{one.place}. {one.what}."]
    lines += [f"   for it: {each}" for each in one.speaks_for]
    lines += [f"   against: {each}" for each in one.against]
    return [*lines, f"   whose: {one.whose}. {one.whose_why}", f"   first: {one.do}"]
