"""A share of drawn days in words that claim no more than the draws can tell."""

from __future__ import annotations

LEAST = 0.001
"""Below this no figure is told: ten of ten thousand days are known to a third at best."""
_TENTHS_TO = 0.03
"""Up to here a tenth of a per cent means something: the standard error is 0.17 % there."""


def share_words(share: float, *, under: str = "under ") -> str:
    """`under 0.1 %`, `0.7 %`, `9 %`, `over 99.9 %`; `under` may be a sign."""
    if share < LEAST:
        return f"{under}0.1 %"
    if share > 1 - LEAST:
        return "over 99.9 %" if under == "under " else "> 99.9 %"
    return f"{100 * share:.1f} %" if share < _TENTHS_TO else f"{100 * share:.0f} %"
