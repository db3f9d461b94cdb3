"""What was typed into an older page of a plain form, laid over the newest: only changes count.

The forms of houses have their own (`merged`), which knows rows; this is for forms whose blanks are
a few names.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.nouns import dataclass
from farwall.web.words import said


@dataclass(frozen=True)
class Flat:
    """told: every blank as it then stands. both: what stands in the newest of those that two
    people told otherwise, by name."""

    told: Mapping[str, str]
    both: Mapping[str, str]


def flat_merged(
    was: Mapping[str, str], now: Mapping[str, str], typed: Mapping[str, str]
) -> Flat:  # fmt: skip
    """What was typed where `was` stood, over what stands `now`; blanks that nobody typed in, or
    that were left as they stood, take what is there now. Pure."""
    told, both = dict(now), {}
    for name, stands in now.items():
        text = typed.get(name, was.get(name, ""))
        if text in {was.get(name, ""), stands}:
            continue
        told[name] = text
        if stands != was.get(name, ""):
            both[name] = stands
    return Flat(told, both)


def both_told(stands: str) -> str:
    """What is said beside a blank that two people told otherwise."""
    return said("facts-both", text=stands) if stands else said("facts-both-empty")


def lines_told(found: Flat, names: Mapping[str, str], first: str) -> Sequence[str]:
    """What is said above the form: `first`, then a line for each blank that both told.

    names: what a blank is called, by its name; the name itself where it is not there.
    """
    return [first, *(f"{names.get(key, key)}: {both_told(text)}" for key, text in
                     found.both.items())]  # fmt: skip
