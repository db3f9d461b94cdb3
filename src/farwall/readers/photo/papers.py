"""Sheets by the names of their standards, long side first, in millimetres.

ISO A sizes (ISO 216; from memory); ANSI letter sizes and ARCH sizes of US offices in inches (from
memory: ANSI/ASME Y14.1), turned into millimetres exactly.
"""

from __future__ import annotations

import re

from farwall.errors import Mistake, Refused
from farwall.units import M_PER_IN

_MM_PER_IN = M_PER_IN * 1000
_ISO_MM = {
    "A0": (1189, 841), "A1": (841, 594), "A2": (594, 420), "A3": (420, 297), "A4": (297, 210),
}  # fmt: skip
_INCHES = {
    "Letter": (11, 8.5), "Legal": (14, 8.5), "Tabloid": (17, 11),
    "ANSI-A": (11, 8.5), "ANSI-B": (17, 11), "ANSI-C": (22, 17),
    "ANSI-D": (34, 22), "ANSI-E": (44, 34),
    "ARCH-A": (12, 9), "ARCH-B": (18, 12), "ARCH-C": (24, 18),
    "ARCH-D": (36, 24), "ARCH-E": (48, 36), "ARCH-E1": (42, 30),
}  # fmt: skip
PAPERS_MM: dict[str, tuple[float, float]] = {
    **{name: (float(a), float(b)) for name, (a, b) in _ISO_MM.items()},
    **{name: (a * _MM_PER_IN, b * _MM_PER_IN) for name, (a, b) in _INCHES.items()},
}
"""Long and short side [mm] by name."""
_TYPED = re.compile(r"\s*(\d+(?:\.\d+)?)\s*[x×]\s*(\d+(?:\.\d+)?)\s*(mm|cm|in)\s*", re.IGNORECASE)
_UNIT_MM = {"mm": 1.0, "cm": 10.0, "in": _MM_PER_IN}
_SIDE_MM = (50.0, 3000.0)


def paper_mm(text: str) -> tuple[float, float]:
    """Long and short side [mm] of a sheet by name (`ARCH-D`) or by size (`36x24 in`).

    Raises Refused with the names that are known.
    """
    plain = re.sub(r"[\s_-]", "", text).casefold()
    for name, sides in PAPERS_MM.items():
        if name.replace("-", "").casefold() == plain:
            return sides
    typed = _TYPED.fullmatch(text)
    if typed:
        one, two = (float(typed[n]) * _UNIT_MM[typed[3].lower()] for n in (1, 2))
        if all(_SIDE_MM[0] <= side <= _SIDE_MM[1] for side in (one, two)):
            return max(one, two), min(one, two)
    known = ", ".join(PAPERS_MM)
    what = f"“{text[:40]}” is no sheet that is known here."
    raise Refused(Mistake("--paper", what, f"Name one of {known}, or its sides: 36x24 in."))
