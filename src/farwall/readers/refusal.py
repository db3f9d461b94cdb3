"""All mistakes of a file as one refusal, counted, the same one told once."""

from __future__ import annotations

from farwall.errors import Mistake, Refused

MOST_MISTAKES = 100


def refusal(mistakes: list[Mistake], about: str) -> Refused:
    """What to raise of these; of more than `MOST_MISTAKES` the rest is counted."""
    each = list(dict.fromkeys(mistakes))
    count = "1 mistake" if len(each) == 1 else f"{len(each)} mistakes"
    if len(each) > MOST_MISTAKES:
        more = f"and {len(each) - MOST_MISTAKES} more."
        each = [*each[:MOST_MISTAKES], Mistake("", more, "Mend these first.")]
    return Refused(*each, about=f"{about}: {count}.")
