"""A pattern of the phrasebook against a text: which piece of the text stands in which place.

Regular expressions would do, and did: that of a quantity is long, a thousand of them take seconds
to make, and most are wanted once. So the English between the places is looked for, and only what
stands in a place is held against the one expression of its kind.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from farwall.nouns import dataclass
from farwall.phrasebook.places import ADDRESS, PATH, QUANTITY

PLACE = re.compile(r"\{([#@&$*]?)(\d)\}")
_KINDS = {"#": re.compile(QUANTITY), "&": re.compile(ADDRESS), "$": re.compile(PATH)}
"""What must stand in a place, as long as it can be; in all others any text, as short as can be."""


@dataclass(frozen=True)
class Pattern:
    """An English pattern and its Spanish.

    places: kind and number of each · literals: the English before, between and after them ·
    longest: of these; what lacks it needs no second look · worded: whether any has a letter.
    """

    spanish: str
    places: tuple[str, ...]
    literals: tuple[str, ...]
    longest: str
    worded: bool

    def parts_of(self, text: str) -> tuple[str, ...] | None:
        """What stands in the places, in their order; None where the text is no such sentence."""
        first, last = self.literals[0], self.literals[-1]
        if not text.startswith(first) or not text.endswith(last):
            return None
        end = len(text) - len(last)
        return self._from(0, text, len(first), end) if end > len(first) else None

    def _from(self, place: int, text: str, at: int, end: int) -> tuple[str, ...] | None:
        last = place == len(self.places) - 1
        literal = "" if last else self.literals[place + 1]
        kind = _KINDS.get(self.places[place][0])
        ends: Iterable[int] = (end,) if last else _ends(text, literal, at + 1, end)
        if kind is not None:
            # One look from here tells how far it reaches at most; the longest comes first.
            reaches = kind.match(text, at, end)
            most = reaches.end() if reaches else at
            ends = reversed([found for found in ends if found <= most])
        for found in ends:
            if not self._fits(place, text[at:found]):
                continue
            rest = () if last else self._from(place + 1, text, found + len(literal), end)
            if rest is not None:
                return (text[at:found], *rest)
        return None

    def _fits(self, place: int, part: str) -> bool:
        kind = self.places[place][0]
        if not part:
            return False
        if kind not in _KINDS:
            return True
        beside = place and self.literals[place] == " " and self.places[place - 1][0] == kind
        if kind == "#" and beside and not part[0].isdigit():
            return False  # of two quantities side by side, the second begins with a figure
        return _KINDS[kind].fullmatch(part) is not None


def _ends(text: str, literal: str, at: int, end: int) -> Iterator[int]:
    """Where this English is found, in order; each leaves a letter for the next place."""
    found = text.find(literal, at, end)
    while 0 <= found < end - len(literal):
        yield found
        found = text.find(literal, found + 1, end)


def pattern_of(english: str, spanish: str) -> Pattern:
    """The pattern of a phrase with places."""
    places = [(one[1] or " ") + one[2] for one in PLACE.finditer(english)]
    literals = PLACE.split(english)[::3]
    worded = any(letter.isalpha() for literal in literals for letter in literal)
    return Pattern(spanish, tuple(places), tuple(literals), max(literals, key=len), worded)
