"""Change orders on paper, each on a page of its own; a blank one where none was entered."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from farwall.job.office.billing.owed import ChangeSaid, Owed
from farwall.papers.office.blocks import (
    LAW_WINS,
    Blanks,
    Block,
    Facts,
    Head,
    Own,
    Page,
    Paper,
    Sign,
    Sums,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.money_words import day, money
from farwall.papers.office.setting import address_lines
from farwall.papers.wall_clock import Units

BINDS = (
    "This is done besides or instead of what was agreed, for the price on this page. All else that "
    "was agreed stands. Nothing of it is begun before both have signed."
)
WAITS = "the crew waits for it, and waiting is charged"
LAW = "What a change order must hold to bind is the law of the place."


def change_order(ground: PaperGround) -> Paper:
    """Every change order of the log, or a blank one."""
    owed = ground.office.owed
    blocks: list[Block] = []
    before = Decimal(owed.agreed)
    for n, one in enumerate(owed.changes):
        blocks += [*((Page(),) if n else ()), *_filled(one, before, owed, ground.units)]
        before += Decimal(one.amount)
    return Paper(
        title="Change order",
        under="Work beyond what was agreed, or less of it",
        letterhead=True,
        wins=LAW_WINS,
        day="none",
        to=_to(ground),
        screen="change",
        blocks=tuple(blocks) if blocks else tuple(_blank(owed)),
    )


def _to(ground: PaperGround) -> tuple[str, ...]:
    customer = ground.job.customer
    return tuple(one for one in (customer.name, *address_lines(customer.address)) if one.strip())


def _filled(one: ChangeSaid, before: Decimal, owed: Owed, units: Units) -> Iterator[Block]:
    yield Head(f"Change order {one.number}")
    yield Words(Own(one.what), "strong")
    pairs: list[tuple[Text, Text]] = [("Asked on", day(one.on, units)), ("Said yes", Own(one.who))]
    if one.standby:
        pairs.append(("Waiting", WAITS))
    yield Facts(tuple(pairs))
    own = f"This change, without tax ({one.words})" if one.words else "This change, without tax"
    yield Sums((
        ("The floor so far, without tax", money(before)),
        (own, money(one.amount)),
        (f"The floor with it, without tax, {owed.currency}", money(before + Decimal(one.amount))),
    ))  # fmt: skip
    yield Words(BINDS)
    yield Words(LAW, "soft")
    yield Sign(("finisher", "owner or builder", "date"))


def _blank(owed: Owed) -> Iterator[Block]:
    yield Blanks(("What is done instead or besides, and where",), columns=1, lines=3)
    yield Ticks(
        ("the crew waits for it, and waiting is charged", "it moves the day of hand-over"), 2
    )
    rates = {one.name: one.value for one in owed.figures}
    yield Blanks(("hours of all hands together", "cost of materials", "days later"), columns=3)
    if rates.get("change_per_h"):
        yield Words(
            f"An hour of one person is {money(rates['change_per_h']).text} {owed.currency}; "
            f"materials at cost and {Decimal(rates['change_material_percent']).normalize():f} % on "
            "them."
        )
    yield Blanks(("price of this change, without tax", "the floor with it, without tax"))
    yield Words(BINDS)
    yield Words(LAW, "soft")
    yield Sign(("finisher", "owner or builder", "date"))
