"""A time of day as people write it: `9:12`, `13:30`, `1:30 pm`, `12 am`, `1:30 p. m.`."""

from __future__ import annotations

import re

from farwall.nouns import dataclass

_CLOCK = re.compile(r"(\d{1,2})(?::(\d{2}))?(?:\s*([ap])\.?\s*m\.?)?", re.IGNORECASE | re.ASCII)


@dataclass(frozen=True)
class Clock:
    """A time of day. hour: 0 to 23 · half_told: whether morning or afternoon was beyond doubt."""

    hour: int
    minute: int
    half_told: bool


def clock_of(text: str) -> Clock | None:
    """The time of day that `text` is, None when it is none at all.

    Minutes may be left out before am or pm. Raises ValueError, in words, for one that no clock
    shows (25:00, 13:00 pm).
    """
    found = _CLOCK.fullmatch(text.strip())
    if found is None or (found[2] is None and found[3] is None):
        return None
    hour, minute = int(found[1]), int(found[2] or 0)
    most = 23 if found[3] is None else 12
    if hour > most or minute > 59 or (found[3] is not None and hour == 0):
        raise ValueError(f"{text.strip()[:40]} is no time of day")
    if found[3] is None:
        return Clock(hour, minute, half_told=hour > 12 or found[1].startswith("0"))
    return Clock(hour % 12 + (12 if found[3].lower() == "p" else 0), minute, half_told=True)
