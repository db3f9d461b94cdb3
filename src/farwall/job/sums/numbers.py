"""Lists of plain numbers, as a sum may be given them."""

from __future__ import annotations

from collections.abc import Sequence
from math import isfinite

from farwall.errors import Mistake


def numbers(
    key: str, texts: Sequence[str], mistakes: list[Mistake], *, low: float = -1e6, high: float = 1e6
) -> list[float]:
    """The numbers of a list; what is none, or out of range, becomes a mistake."""
    found = []
    for text in texts:
        try:
            value = float(text)
        except ValueError:
            mistakes.append(Mistake(key, f'"{text[:40]}" is not a number.', "Write it like 0.25."))
            continue
        if not isfinite(value) or not low <= value <= high:
            mistakes.append(
                Mistake(key, f"{text[:40]} is out of range.", f"It lies from {low:g} to {high:g}.")
            )
            continue
        found.append(value)
    return found
