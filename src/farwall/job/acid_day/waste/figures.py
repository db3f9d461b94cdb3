"""Figures of ranges, to two digits: no more is known of them."""

from __future__ import annotations


def figure(value: float) -> str:
    """`0.06`, `17`, `640`, `1,100`: two digits that count."""
    if value <= 0:
        return "0"
    rounded = float(f"{value:.2g}")
    return f"{rounded:,.0f}" if rounded >= 10 else f"{rounded:.10f}".rstrip("0").rstrip(".")


def range_of(low: float, high: float | None) -> str:
    """`17 to 640`; `17 and more` where no high end is known."""
    if high is None:
        return f"{figure(low)} and more"
    first, last = figure(low), figure(high)
    return first if first == last else f"{first} to {last}"
