"""How far a number can be trusted: its rank, and the source it leans on.

Every figure that a screen or a paper shows carries one of these ranks; a
figure with its rank and source is a `Known`.
"""

from __future__ import annotations

from enum import StrEnum

from farwall.nouns import dataclass


class Rank(StrEnum):
    """Rank of evidence, strongest first."""

    PUBLISHED = "published"
    MEASURED = "measured here"
    LEARNED = "learned"
    PRACTICE = "common practice"
    MEMORY = "from memory"
    GUESS = "guess"

    @property
    def strength(self) -> int:
        """0 for the strongest rank, rising as trust falls."""
        return list(Rank).index(self)


def weakest(*ranks: Rank) -> Rank:
    """The rank a result may claim that leans on all of `ranks`."""
    return max(ranks, key=lambda rank: rank.strength)


@dataclass(frozen=True)
class Known:
    """A value with its unit in words, its rank and its source (a key of docs/sources.md)."""

    value: float
    unit: str
    rank: Rank
    source: str


@dataclass(frozen=True)
class Span:
    """A range: the low end, the likely value and the high end, in one unit.

    Decisions use the safe end; `likely` is what a person should expect. An
    end of `None` means that no such end exists (a film that does not dry).
    """

    low: float
    likely: float | None
    high: float | None
    rank: Rank
    source: str


def rank_words(rank: str, source: str) -> str:
    """`measured here, sample closet-1`: how far to trust a figure, and what it leans on.

    Keys of the bibliography that are words of their own are written out; what
    was told in the job needs no more than its rank.
    """
    if source.startswith("told"):
        return rank
    parts = [source_words(part) for part in source.split(", ") if part]
    if rank == Rank.GUESS:
        parts = [part for part in parts if part != "our guess"]
    if any(part.startswith(rank) for part in parts):
        return ", ".join(parts)
    return ", ".join([part for part in (rank, *parts) if part])


def source_words(source: str) -> str:
    """`uno-1998` as `Uno 1998`; sources that are words of their own as they are."""
    key, mark, rest = source.partition("; ")
    if mark:
        return f"{source_words(key)}{mark}{rest}"
    key, mark, rest = source.partition(": ")
    if mark:
        return source_words(rest)
    author, _, year = source.partition("-")
    if author.isalpha() and author.islower() and len(year) == 4 and year.isdigit():
        return f"{author.capitalize()} {year}"
    if author == "astm":
        return f"ASTM {year.upper()}"
    return _KEYS.get(source, source)


_KEYS = {
    "cfr-265-v": "40 CFR 265 appendix V",
    "epa-chart": "EPA chart of reactivity groups",
    "osha-chromium": "29 CFR 1926.1126",
    "silica": "29 CFR 1926.1153",
    "hazcom": "29 CFR 1910.1200",
    "common-practice": "common practice, no source",
    "finishers-pages": "finishers' own pages",
    "hamer-wu-1972": "Hamer and Wu 1972",
    "hcl-20c": "a table at 20 °C",
    "house-guess": "our guess",
    "issa-times": "ISSA cleaning times",
    "stain-sheets": "stain sheets",
    "trade-press": "trade press",
    "epa-sewer": "40 CFR 403.5",
    "price-pages": "price pages",
    "builder-sheets": "finishers' sheets for builders",
    "finisher-terms": "finishers' terms",
    "care-sheets": "finishers' care sheets",
}
