"""The three cuts of a ladder: half the stain's share, the planned one, twice it.

A ladder of 1:3, 1:1 and neat is common practice; that the same halves and doubles are taken around
any other cut is our guess. Where twice the share is more than neat there is no stronger one, and a
second weaker one takes its place, so that there are three.
"""

from __future__ import annotations

from fractions import Fraction

from farwall.facts.cut import Cut, parse_cut
from farwall.job.colour.sample_day.nouns import Rung

_FINEST = 12
"""Parts of a cut are whole numbers up to this, or as near to it as such numbers come."""


def ladder_cuts(cut: str) -> tuple[tuple[Rung, str], ...]:
    """Weaker, planned, stronger, as cuts to be written; raises Refused for what is no cut."""
    planned = parts_of(parse_cut(cut))
    share = Fraction(planned[0], sum(planned))
    if share * 2 > 1:
        quarter, half = _written(share / 4), _written(share / 2)
        return ("weaker", quarter), ("weaker", half), ("planned", cut)
    return ("weaker", _written(share / 2)), ("planned", cut), ("stronger", _written(share * 2))


def parts_of(cut: Cut) -> tuple[int, int]:
    """Whole parts of stain and of water, in lowest terms."""
    ratio = Fraction(cut.water / cut.stain).limit_denominator(_FINEST)
    return ratio.denominator, ratio.numerator


def _written(share: Fraction) -> str:
    if share == 1:
        return "neat"
    ratio = ((1 - share) / share).limit_denominator(_FINEST)
    return f"{ratio.denominator}:{ratio.numerator}"
