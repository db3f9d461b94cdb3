"""Heights and lengths as a masker reads them: inches and feet, or metres."""

from __future__ import annotations

from farwall.papers.wall_clock import Units
from farwall.units import M2_PER_FT2, M_PER_FT, M_PER_IN


def tall(metres: float, units: Units) -> str:
    """`48"`, or `1.22 m`."""
    return f'{metres / M_PER_IN:.0f}"' if units == "us" else f"{metres:.2f} m"


def run(metres: float, units: Units) -> str:
    """`47 ft`, or `14.3 m`; a length of many feet."""
    return f"{metres / M_PER_FT:,.0f} ft" if units == "us" else f"{metres:.1f} m"


def spread(square_metres: float, units: Units) -> str:
    """`2,310 ft²`, or `215 m²`."""
    return (
        f"{square_metres / M2_PER_FT2:,.0f} ft²" if units == "us" else f"{square_metres:,.0f} m²"
    )  # fmt: skip
