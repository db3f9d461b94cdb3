"""Who may leave which field when: orders are built from the last field backwards.

A field may be sprayed before a set of later ones when one of its doors leads outside or into that
set, which is still dry. So an order in which nobody is shut in is a set of later fields that grows
from the outside inward, one field at a time; any other order shuts somebody in (docs/decisions/
0009). What a set lets grow, any larger set lets grow too.

Numbers only: field i of n is bit i of a set, the outside is bit n and always dry.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from functools import cached_property

from farwall.nouns import dataclass

MICRO = 1_000_000
"""Parts of a minute in which spraying times are added up."""


@dataclass(frozen=True)
class Door:
    """A way out of a field: the age of its oldest edge, where it leads, the caller's number."""

    age_min: float
    into: int
    number: int = 0


@dataclass(frozen=True)
class Leaving:
    """The doors of each field, how long each field takes, and what a minute of age weighs.

    `doors[i]` are those of field i that a body can spray toward, the youngest edge first; `into`
    is a field or, for the outside, the number of fields. `share_per_min(i, begun_min)` is the
    share of its budget that a minute of age takes in field i when it is begun at that minute.
    """

    doors: tuple[tuple[Door, ...], ...]
    minutes: tuple[float, ...]
    share_per_min: Callable[[int, float], float]

    @property
    def count(self) -> int:
        """How many fields there are."""
        return len(self.doors)

    @cached_property
    def micro(self) -> tuple[int, ...]:
        """Spraying time of each field in whole millionths of a minute: sums in any order agree."""
        return tuple(round(minutes * MICRO) for minutes in self.minutes)

    @cached_property
    def whole_micro(self) -> int:
        """Spraying time of all fields, in millionths of a minute."""
        return sum(self.micro)

    def begun_min(self, late_micro: int) -> float:
        """When the later fields, a field among them that goes first, take so long altogether."""
        return (self.whole_micro - late_micro) / MICRO

    @cached_property
    def leads(self) -> tuple[tuple[tuple[int, float], ...], ...]:
        """Of each field the doors as bits of where they lead, with the age, youngest first."""
        return tuple(
            tuple((1 << door.into, door.age_min) for door in doors) for doors in self.doors
        )

    @cached_property
    def behind(self) -> tuple[int, ...]:
        """Of each field, and of the outside last, the fields with a door into it."""
        found = [0] * (self.count + 1)
        for index, doors in enumerate(self.doors):
            for door in doors:
                found[door.into] |= 1 << index
        return tuple(found)

    @cached_property
    def away(self) -> tuple[int | None, ...]:
        """Doors between each field and the outside; None where no order can ever spray it."""
        away: list[int | None] = [None] * self.count
        front, seen, hops = self.behind[self.count], 0, 0
        while front:
            seen |= front
            step = 0
            for index in bits(front):
                away[index] = hops
                step |= self.behind[index]
            front = step & ~seen
            hops += 1
        return tuple(away)

    def age_min(self, index: int, late: int) -> float:
        """Age of the oldest edge by the best door outside or into `late`; infinite without one."""
        dry = late | 1 << self.count
        return next((age for bit, age in self.leads[index] if bit & dry), float("inf"))

    def share(self, index: int, late: int, late_micro: int) -> float:
        """Share of its budget when this field goes before `late`, which takes `late_micro`."""
        begun = self.begun_min(late_micro + self.micro[index])
        return self.age_min(index, late) * self.share_per_min(index, begun)

    def walked(self, order: Sequence[int]) -> list[tuple[float, Door]] | None:
        """Share and door of each field of a full order, or None when somebody is shut in."""
        late, late_micro = 0, 0
        steps = []
        for index in reversed(order):
            dry = late | 1 << self.count
            door = next((d for d in self.doors[index] if dry >> d.into & 1), None)
            if door is None:
                return None
            steps.append((self.share(index, late, late_micro), door))
            late |= 1 << index
            late_micro += self.micro[index]
        return steps[::-1]


def bits(mask: int) -> Iterator[int]:
    """The fields of a set, the least first."""
    while mask:
        low = mask & -mask
        yield low.bit_length() - 1
        mask ^= low
