"""What a first call comes to, in a few lines."""

from __future__ import annotations

from farwall.evidence import rank_words
from farwall.job.enquiry.noun import Answer, Found, RoughRange

_PARTS = (
    ("decline", "What says no:"),
    ("visit", "To be looked at or priced:"),
    ("open", "Still to be asked:"),
    ("fine", "In order:"),
)


def answer_said(found: Answer) -> str:
    """Verdict, reasons under their heads, range with what it is made of, warnings."""
    lines = [found.words]
    for word, title in _PARTS:
        told = [one for one in found.found if one.word == word]
        if told:
            lines += [title, *(line for one in told for line in _lines(one))]
    if found.rough is not None:
        lines += rough_said(found.rough)
    return "\n".join([*lines, *found.warnings])


def _lines(one: Found) -> list[str]:
    number = f"{one.question}. " if one.question else ""
    rank = "" if one.word in {"open", "fine"} else f" ({rank_words(one.rank, one.source)})"
    return [f"  {number}{one.reason}{rank}", *([f"     {one.change}"] if one.change else [])]


def rough_said(rough: RoughRange) -> list[str]:
    """The range and its parts."""
    lines = [
        (
            f"Rough range: {_whole(rough.low)} to {_whole(rough.high)} {rough.currency} for "
            f"{rough.area_ft2:,.0f} ft²"
        )
    ]
    for one in rough.parts:
        beside = "" if one.used else "beside it: "
        lines.append(
            f"  {beside}{one.low} to {one.high} {rough.currency}/ft²: {one.what} "
            f"({rank_words(one.rank, one.source)})"
        )
    return [*lines, *([f"  {rough.floor}"] if rough.floor else [])]


def _whole(amount: str) -> str:
    return f"{int(amount):,}"
