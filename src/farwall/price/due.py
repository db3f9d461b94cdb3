"""What is due when, what of it came in, and how late. Pure; days are ISO texts or dates.

That a deposit is asked before stain is bought, and that the rest is due at hand-over, is what
finishers write into their terms [finishers-pages]. What may be asked, and when, is the law of the
place.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from datetime import date
from decimal import Decimal

from farwall.nouns import dataclass
from farwall.price.money import NOTHING, added, rounded

PARTS = ("deposit", "progress", "final")


@dataclass(frozen=True)
class Payment:
    """Money that came in: the day, how much with tax, for which part where that was said."""

    on: date
    amount: Decimal
    part: str = ""


@dataclass(frozen=True)
class Due:
    """A part of the whole: how much, when, what of it is paid, when it was paid whole.

    due_on: None where the day is not known yet.
    """

    part: str
    amount: Decimal
    due_on: date | None
    paid: Decimal = NOTHING
    paid_on: date | None = None

    @property
    def open(self) -> Decimal:
        """What is still to come."""
        return self.amount - self.paid

    def late_days(self, on: date) -> int:
        """Days by which it is or was late, 0 where it is not; nothing is late that is nothing."""
        if self.due_on is None or not self.amount:
            return 0
        end = on if self.open > 0 else self.paid_on or on
        return max(0, (end - self.due_on).days)


def parts_due(whole: Decimal, before: Sequence[Decimal]) -> tuple[Decimal, ...]:
    """What is asked part by part: those before the last as they are told, the last has the rest.

    Never more in sum than the whole: a part is cut to what is left, and cents stay with the last.
    """
    found: list[Decimal] = []
    for one in before:
        left = max(NOTHING, rounded(whole) - added(found))
        found.append(min(max(NOTHING, rounded(one)), left))
    return (*found, rounded(whole) - added(found))


def dues(
    amounts: Sequence[Decimal], days: Mapping[str, date], payments: Iterable[Payment]
) -> tuple[Due, ...]:
    """Parts with what was paid of each.

    Money said to be for a part goes to it first, up to its amount; all else to the earliest that
    is open. What is more than all parts, and what was given back, stays with the last.
    """
    parts = [Due(name, amount, days.get(name)) for name, amount in zip(PARTS, amounts, strict=True)]
    for payment in sorted(payments, key=lambda one: one.on):
        left = payment.amount
        for n in sorted(range(len(parts)), key=lambda n: (PARTS[n] != payment.part, n)):
            took = min(max(NOTHING, parts[n].open), left) if left > 0 else NOTHING
            left -= took
            parts[n] = _with(parts[n], took, payment.on)
        parts[-1] = _with(parts[-1], left, payment.on)
    return tuple(parts)


def _with(one: Due, took: Decimal, on: date) -> Due:
    if not took:
        return one
    paid = replace(one, paid=one.paid + took)
    return replace(paid, paid_on=on if paid.open <= 0 else None)
