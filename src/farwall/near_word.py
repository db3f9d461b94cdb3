"""The known word that was meant by an unknown one."""

from __future__ import annotations

import difflib
from collections.abc import Iterable

ALIKE = 0.65
"""Share of letters from which two words are taken for one that was mistyped; `state` and `water`
have 0.6. Rank: guess."""
_LONGEST = 80
_PARTS = str.maketrans("-. ", "___")


def near_word(word: str, known: Iterable[str], *, alike: float = ALIKE) -> str | None:
    """The known word that looks most like `word`, or the only one that has it as a part; else None.

    A part is what stands between `_`, `-`, points or blanks: `ft2` is a part of `area_ft2`.
    alike: from which share of letters words look alike, 0 to 1.
    """
    told, words = word[:_LONGEST].lower(), list(known)
    found = difflib.get_close_matches(told, words, n=1, cutoff=alike)
    if found:
        return found[0]
    holding = [one for one in words if told in one.translate(_PARTS).lower().split("_")]
    return holding[0] if len(holding) == 1 else None
