"""A verdict for people: each reason once, with all that made it fire. Pure."""

from __future__ import annotations

from farwall.acid.pouring.gate import VAGUE
from farwall.acid.pouring.nouns import Met, Verdict, Word
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Reason:
    """What happens, what to do instead, and what made the rules say so."""

    word: Word
    what: str
    instead: str
    met: tuple[Met, ...]
    source: str
    rank: str


def reasons_of(verdict: Verdict) -> tuple[Reason, ...]:
    """The reasons of a verdict, the weightiest first.

    What is allowed besides is left out where something is refused or warned of; what is merely
    not known is left out where something else refuses. The verdict keeps all of it.
    """
    refusing = [one for one in verdict.fired if one.word == "refused" and one.rule not in VAGUE]
    shown = [
        one
        for one in verdict.fired
        if (one.word != "allowed" or verdict.word == "allowed")
        and not (refusing and one.rule in VAGUE)
    ]
    found: dict[tuple[str, str], Reason] = {}
    for one in shown:
        key = (one.what, one.instead)
        before = found[key].met if key in found else ()
        met = tuple(dict.fromkeys((*before, *one.met)))
        found[key] = Reason(one.word, one.what, one.instead, met, one.source, one.rank)
    return tuple(found.values())


def traits_by_name(reason: Reason) -> dict[str, tuple[str, ...]]:
    """The traits that made it fire, by the thing that has them."""
    found: dict[str, tuple[str, ...]] = {}
    for met in reason.met:
        if met.trait:
            found[met.name] = tuple(dict.fromkeys((*found.get(met.name, ()), met.trait)))
    return found
