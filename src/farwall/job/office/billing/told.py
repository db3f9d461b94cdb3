"""What the log of a job tells of money, as nouns; what was struck is left out."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta
from decimal import Decimal

from farwall.job.office.ground import OfficeGround
from farwall.job.story.noun import Happened, Story
from farwall.nouns import dataclass
from farwall.price.money import NOTHING, amount


@dataclass(frozen=True)
class Accepted:
    """The price that was agreed, without tax: by whom, for which offer and area."""

    id: str
    on: date
    who: str
    amount: Decimal
    offer: str = ""
    area_m2: float | None = None


@dataclass(frozen=True)
class Change:
    """A change order. number: from 1, in order · amount: agreed price without tax, None: none."""

    id: str
    number: int
    on: date
    what: str
    who: str
    hours: Decimal | None = None
    materials: Decimal | None = None
    amount: Decimal | None = None
    standby: bool = False
    photo: str = ""
    signed: str = ""
    note: str = ""


@dataclass(frozen=True)
class Waited:
    """Hours for which the crew waited for others, by the clock, and why."""

    id: str
    on: date
    hours: Decimal
    why: str
    who: str = ""


@dataclass(frozen=True)
class Written:
    """An invoice that was written; at_min: when, so that what came later is not on it."""

    number: str
    part: str
    on: date
    at_min: float
    amount: Decimal | None = None
    corrects: str = ""
    allowance: Decimal = NOTHING
    charge: Decimal = NOTHING
    why: str = ""


@dataclass(frozen=True)
class Paid:
    """Money that came in, with tax; below zero: given back."""

    on: date
    amount: Decimal
    part: str = ""


@dataclass(frozen=True)
class Told:
    """All of it in order. rinsed_on, over_on: when it was rinsed last, when handed over."""

    accepted: Accepted | None = None
    changes: tuple[Change, ...] = ()
    waited: tuple[Waited, ...] = ()
    written: tuple[Written, ...] = ()
    paid: tuple[Paid, ...] = ()
    rinsed_on: date | None = None
    over_on: date | None = None
    over_min: float | None = None

    def by_number(self, number: str) -> Written | None:
        """The invoice of that number."""
        return next((one for one in self.written if one.number == number), None)


def told_of(ground: OfficeGround, until_min: float | None = None) -> Told:
    """What the log tells up to a minute; nothing where there is no log."""
    story = ground.story
    if story is None:
        return Told()
    reads = _Reads(story, until_min)
    over = reads.last("handed-over")
    rinsed = reads.last("rinsed")
    return Told(
        accepted=reads.accepted(),
        changes=tuple(reads.changes()),
        waited=tuple(reads.waited()),
        written=tuple(reads.written()),
        paid=tuple(reads.paid()),
        rinsed_on=reads.day(rinsed) if rinsed else None,
        over_on=reads.day(over) if over else None,
        over_min=over.at_min if over else None,
    )


class _Reads:
    """Reading entries up to a minute."""

    def __init__(self, story: Story, until_min: float | None) -> None:
        self.story, self.until_min = story, until_min
        self.start = datetime.fromisoformat(story.starts_at)

    def of(self, word: str) -> Iterator[Happened]:
        for one in self.story.of(word):
            if self.until_min is None or one.at_min <= self.until_min:
                yield one

    def last(self, word: str) -> Happened | None:
        return next(iter([*self.of(word)][::-1]), None)

    def day(self, one: Happened) -> date:
        return (self.start + timedelta(minutes=one.at_min)).date()

    def accepted(self) -> Accepted | None:
        one = self.last("accepted")
        if one is None:
            return None
        return Accepted(
            one.id, self.day(one), one.text("agreed_by"), _amount(one, "amount") or NOTHING,
            one.text("offer"), one.number("area_m2"),
        )  # fmt: skip

    def changes(self) -> Iterator[Change]:
        for n, one in enumerate(self.of("change"), start=1):
            yield Change(
                one.id, n, self.day(one), one.text("what"), one.text("agreed_by"),
                hours=_hours(one), materials=_amount(one, "materials"),
                amount=_amount(one, "amount"), standby=one.about.get("standby") is True,
                photo=one.text("file"), signed=one.text("signed"), note=one.text("note"),
            )  # fmt: skip

    def waited(self) -> Iterator[Waited]:
        for one in self.of("standby"):
            hours = _hours(one) or NOTHING
            yield Waited(one.id, self.day(one), hours, one.text("why"), one.text("agreed_by"))

    def written(self) -> Iterator[Written]:
        for one in self.of("invoiced"):
            yield Written(
                one.text("number"), one.text("part"), self.day(one), one.at_min,
                _amount(one, "amount"), one.text("corrects"),
                _amount(one, "allowance") or NOTHING, _amount(one, "charge") or NOTHING,
                one.text("why"),
            )  # fmt: skip

    def paid(self) -> Iterator[Paid]:
        for one in self.of("paid"):
            yield Paid(self.day(one), _amount(one, "amount") or NOTHING, one.text("part"))


def _amount(one: Happened, key: str) -> Decimal | None:
    text = one.text(key)
    return amount(text) if text else None


def _hours(one: Happened) -> Decimal | None:
    value = one.number("hours")
    return None if value is None else Decimal(str(value))
