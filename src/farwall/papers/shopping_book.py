"""The shopping list as a workbook, for a seller or an office of one's own."""

from __future__ import annotations

from decimal import Decimal

from farwall.job.office.buying import Bought
from farwall.job.office.buying.said import size_said
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import own_names
from farwall.papers.words import names_in
from farwall.papers.workbook import Cell, SheetTable, workbook
from farwall.phrasebook import speaking, told
from farwall.price.money import amount

_HEADS = ("seller", "what", "name or colour", "size", "count", "lot", "price", "in all", "rank")
_WIDTHS = (20, 30, 16, 14, 8, 12, 10, 12, 16)


def shopping_book(ground: PaperGround) -> bytes:
    """One row a line, deliveries after them, the sum last; the same list gives the same bytes."""
    found = ground.office.buying
    with speaking(ground.language, names_in(ground.plan) | own_names(ground)):
        rows = [_row(one, ground.units) for one in found.lines]
        rows += [
            (seller.seller, told("delivery"), "", "", None, "", None, amount(seller.delivery), "")
            for seller in found.sellers
            if amount(seller.delivery)
        ]
        rows += [
            ("", told(name), "", "", None, "", None, None, told("no price is known"))
            for name in found.unpriced
        ]
        total: tuple[Cell, ...] = (
            "", told("in all"), "", "", None, "", found.currency, amount(found.total), "",
        )  # fmt: skip
        sheet = SheetTable(
            told("Shopping list"), tuple(told(one) for one in _HEADS), (*rows, total), _WIDTHS,
            frozenset({len(rows)}), frozenset({6, 7}),
        )  # fmt: skip
        return workbook([sheet], title=told("Shopping list"))


def _row(one: Bought, units: str) -> tuple[Cell, ...]:
    what = told("stain") if one.kind == "stain" else told(one.what)
    colour = one.what if one.kind == "stain" else one.name
    size = size_said(one.size, one.unit, units)
    price: Decimal = amount(one.price)
    return (
        one.seller, what, colour, told(size), one.count, one.lot, price, amount(one.cost),
        told(one.rank),
    )  # fmt: skip
