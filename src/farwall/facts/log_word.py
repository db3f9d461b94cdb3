"""What a word of the log is: its name, what it says, what it carries and how that is read."""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass

Kind = Literal[
    "litres", "minutes", "hours", "celsius", "percent", "m_s", "kg_m2_h", "kg", "count", "m2_per_l",
    "ph", "field", "band", "coat", "room", "rooms", "entry", "hash", "text", "yes", "choice",
    "metres", "seconds", "l_min", "m2", "amount", "lightness", "colour_axis", "de", "ml", "spot_m2",
    "place_m",
]  # fmt: skip
"""How a value is read and what it is checked against. `field` to `rooms` are ids of the plan;
`amount` is money as text, two decimals at most; `spot_m2` an area of less than a room; `place_m`
a coordinate on the plan, or a length of less than a room."""


@dataclass(frozen=True)
class Carried:
    """One value that an entry carries: its key, with its unit in it, its kind, what it means."""

    key: str
    kind: Kind
    what: str
    choices: tuple[str, ...] = ()


@dataclass(frozen=True)
class Word:
    """A word of the log: what it says, what it must carry, what it may."""

    name: str
    what: str
    must: tuple[Carried, ...] = ()
    may: tuple[Carried, ...] = ()

    @property
    def carried(self) -> tuple[Carried, ...]:
        """All that it may carry."""
        return (*self.must, *self.may)
