"""How rules are written down: traits as words with commas between them."""

from __future__ import annotations

from collections.abc import Iterable
from typing import cast, get_args

from farwall.acid.pouring.nouns import Rule, Trait, Vessel, Word
from farwall.evidence import Rank

_KNOWN: frozenset[str] = frozenset(get_args(Trait))


_RANKS = {
    "common-practice": Rank.PRACTICE,
    "epa-chart": Rank.MEMORY,
    "from-memory": Rank.MEMORY,
}
"""Sources that are not seen in print; the others are quoted, see docs/sources.md."""


def any_of(words: str) -> frozenset[Trait]:
    """`lye, lime` as a set of traits. Raises KeyError for a word that is no trait."""
    found = [word.strip() for word in words.split(",")]
    for word in found:
        if word not in _KNOWN:
            raise KeyError(word)
    return frozenset(cast("list[Trait]", found))


def a_rule(
    word: Word,
    name: str,
    *meets: str,
    what: str,
    instead: str = "",
    vessels: Iterable[Vessel] = (),
    in_turn: bool = False,
    films_too: bool = False,
    unless_sampled: bool = False,
    source: str,
    rank: Rank | None = None,
) -> Rule:
    """A rule; each of `meets` is the traits of one thing, any of which will do.

    The rank is that of the first source, the one that says most of it, unless another is given.
    """
    return Rule(
        id=name,
        word=word,
        meets=tuple(any_of(one) for one in meets),
        what=what,
        instead=instead,
        vessels=frozenset(vessels),
        in_turn=in_turn,
        films_too=films_too,
        unless_sampled=unless_sampled,
        source=source,
        rank=rank or _RANKS.get(source.partition(",")[0], Rank.PUBLISHED),
    )
