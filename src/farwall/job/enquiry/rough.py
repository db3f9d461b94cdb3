"""A rough range for the phone, by prices that finishers publish. Money is Decimal, text outside.

[price-pages]: regional pages of finishers, and a trade article's older reprint without a date, USD
for a square foot, read as excerpts. Where both name a kind of work and differ, today's pages are
used and the older text stands beside.
"""

from __future__ import annotations

from decimal import Decimal

from farwall.evidence import Rank
from farwall.job.enquiry.noun import Enquiry, RoughPart, RoughRange, Work
from farwall.units import M2_PER_FT2, ft2_from_m2

CURRENCY = "USD"
SMALL_FT2 = 400.0
"""Below it set-up, waits and visits do not shrink: it rarely pays [price-pages]."""
_PAGES, _OLD = "finishers' pages of today", "a trade article, older, no date"
_SOURCE = "price-pages"
_STEP = Decimal(50)
"""To which a rough range is rounded outwards: our choice."""


def _part(what: str, low: str, high: str, *, used: bool = True) -> RoughPart:
    return RoughPart(what, low, high, used, Rank.PUBLISHED.value, _SOURCE)


BY_WORK: dict[Work, tuple[RoughPart, ...]] = {
    "one colour": (
        _part(f"acid stain, one colour, clean-up, sealer: {_PAGES}", "4", "7"),
        _part(f"simple stain, clean-up, sealer: {_OLD}", "2", "4", used=False),
    ),
    "cuts and colours": (
        _part(f"saw-cut pattern and colour changes: {_OLD}", "4", "10"),
        _part("acid stain with saw cuts for 0.75 to 1.50: finishers' pages", "4.75", "8.50",
              used=False),
    ),
    "several colours": (
        _part(f"several colours built up: {_PAGES}, and {_OLD}", "8", "15"),
    ),
    "stencil": (
        _part(f"stencilled or blasted work: {_OLD}", "12", "25"),
    ),
}  # fmt: skip
PREPARING = _part(f"preparing the surface, where something comes off: {_PAGES}", "1", "2.50")
_COMES_OFF = frozenset({"cure", "cure and seal", "sealer", "paint"})
_LIES = frozenset({"carpet", "glue", "old paint", "black mastic", "vinyl tile"})
CRACKS = "Crack repair is priced by itself, 3 to 5 USD a foot of crack on finishers' pages."


def rough_of(told: Enquiry) -> RoughRange | None:
    """The range for the floor; None where area or kind of work is not told."""
    if told.area_m2 is None or told.work is None:
        return None
    parts = list(BY_WORK[told.work])
    if told.film in _COMES_OFF or told.covering in _LIES:
        parts.append(PREPARING)
    area_ft2 = ft2_from_m2(told.area_m2)
    priced_ft2 = max(area_ft2, SMALL_FT2)
    used = [one for one in parts if one.used]
    area = Decimal(str(round(priced_ft2, 1)))
    low = sum((Decimal(one.low) for one in used), Decimal()) * area
    high = sum((Decimal(one.high) for one in used), Decimal()) * area
    least = Decimal(told.least) if told.least else Decimal()
    return RoughRange(
        currency=CURRENCY,
        low=_rounded(max(low, least), up=False),
        high=_rounded(max(high, least), up=True),
        area_ft2=round(area_ft2, 1),
        priced_ft2=round(priced_ft2, 1),
        floor=_floor(area_ft2, high, least),
        parts=tuple(parts),
    )


def _floor(area_ft2: float, high: Decimal, least: Decimal) -> str:
    if least > high:
        return f"The firm takes no job below {least:,.0f} {CURRENCY}."
    if area_ft2 < SMALL_FT2 - 0.05:
        return (
            f"It is priced as {SMALL_FT2:.0f} ft² ({SMALL_FT2 * M2_PER_FT2:.0f} m²): below that "
            "set-up, waits and visits do not shrink, and a job rarely pays."
        )
    return ""


def _rounded(value: Decimal, *, up: bool) -> str:
    steps = value / _STEP
    whole = steps.to_integral_value("ROUND_CEILING" if up else "ROUND_FLOOR")
    return f"{whole * _STEP:.0f}"
