"""What is proposed of all that was found: rows told together, the floor's own pattern left out.

Strips side by side are rows of spraying. Soles come in twos. Where many small areas are alike, they
are the floor's own. Of what is weak only the surest is proposed, for a person's time is short.
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import replace

from farwall.colour.marks.nouns import Mark

WEAK = 0.65
MOST_WEAK = 1
MANY = {"ring": 3, "footprint": 4, "light patch": 5, "drip": 9}
_STRIDE_M = 1.0
_ROW_M = (0.15, 0.9)


def by_trust(mark: Mark) -> tuple[float, str, tuple[float, float]]:
    """Order: the surest first, then by name and place."""
    return -mark.confidence, mark.kind, mark.at


def sifted(marks: Sequence[Mark]) -> list[Mark]:
    """Those of the marks that are proposed."""
    count = Counter(mark.kind for mark in marks)
    kept = [m for m in marks if count[m.kind] < MANY.get(m.kind, 10**6)]
    kept = [m for m in kept if m.kind != "footprint" or _has_partner(m, kept)]
    kept = sorted((_in_rows(m, kept) for m in kept), key=by_trust)
    weak = [m for m in kept if m.confidence < WEAK]
    return [m for m in kept if m.confidence >= WEAK] + weak[:MOST_WEAK]


def _has_partner(mark: Mark, marks: Sequence[Mark]) -> bool:
    return any(
        other is not mark and other.kind == "footprint"
        and math.dist(other.at, mark.at) < _STRIDE_M
        and (other.lighter > 0) == (mark.lighter > 0)
        for other in marks
    )  # fmt: skip


def _in_rows(mark: Mark, marks: Sequence[Mark]) -> Mark:
    """A strip that has another beside it is one of a row."""
    if mark.kind != "tape ghost":
        return mark
    beside = [m for m in marks if m is not mark and m.kind == mark.kind and _rowed(mark, m)]
    if not beside:
        return mark
    return replace(mark, kind="stripe", why=f"{mark.why}; {len(beside) + 1} side by side")


def _rowed(one: Mark, other: Mark) -> bool:
    a, b = _ahead(one), _ahead(other)
    turned = abs(a[0] * b[1] - a[1] * b[0])
    off = (other.at[0] - one.at[0], other.at[1] - one.at[1])
    across = abs(a[0] * off[1] - a[1] * off[0])
    along = abs(a[0] * off[0] + a[1] * off[1])
    level = turned < 0.17 and along < 0.5 * (one.length_m + other.length_m)
    return level and _ROW_M[0] < across < _ROW_M[1]


def _ahead(mark: Mark) -> tuple[float, float]:
    """Which way a band runs, from its outline: along one side and back on the other."""
    first, last = mark.outline[0], mark.outline[len(mark.outline) // 2 - 1]
    length = math.dist(first, last) or 1.0
    return (last[0] - first[0]) / length, (last[1] - first[1]) / length
