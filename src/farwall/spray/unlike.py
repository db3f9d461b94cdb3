"""Floor that the same stain colours differently: suction apart, or another pour."""

from __future__ import annotations

from farwall.spray.world import Piece

LEAP = 4.0
"""Drop seconds that differ by more than this factor part a field: common practice, no source."""


def unlike(one: Piece, other: Piece) -> bool:
    """Whether two pieces of floor should not be one field.

    True when they lie on different pours, or when drops were tried on both and stood more than
    `LEAP` times as long on one. Where nobody tried, nothing is said.
    """
    if one.pour != other.pour:
        return True
    if one.drop_s is None or other.drop_s is None:
        return False
    slow, fast = max(one.drop_s, other.drop_s), min(one.drop_s, other.drop_s)
    return slow > LEAP * fast
