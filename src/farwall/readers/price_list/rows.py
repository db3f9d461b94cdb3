"""Rows to wares: each understood, or left out with its number and the reason."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import field
from datetime import date
from decimal import Decimal

from farwall.errors import Mistake, Refused
from farwall.facts.wares import Seller, Ware
from farwall.nouns import dataclass
from farwall.price.money import written
from farwall.readers.price_list.amounts import (
    NotRead,
    decimal_comma,
    number,
    price,
    whole_size,
)
from farwall.readers.price_list.cells import Cell, Sheet, sheets_in
from farwall.readers.price_list.noun import ListRead
from farwall.readers.price_list.words import COUNTED_IN, HEADS, column_of, kind_in

_HEAD_WITHIN = 30
MOST_TOLD = 200
_USUAL_CURRENCY = "USD"


@dataclass
class _Gathered:
    """What the rows come to, as they are read."""

    wares: list[Ware] = field(default_factory=list)
    told: list[str] = field(default_factory=list)
    currencies: dict[str, str] = field(default_factory=dict)
    fees: dict[str, dict[str, Decimal]] = field(default_factory=dict)
    days: dict[str, int] = field(default_factory=dict)
    as_of: str = ""
    seen: dict[tuple[object, ...], str] = field(default_factory=dict)


@dataclass(frozen=True)
class _Row:
    """A row by what its columns hold."""

    number: int
    where: str
    cells: dict[str, Cell]

    def text(self, key: str) -> str:
        cell = self.cells.get(key, "")
        return cell if isinstance(cell, str) else f"{cell.normalize():f}"

    def cell(self, key: str) -> Cell:
        return self.cells.get(key, "")


def list_in(content: bytes) -> ListRead:
    """The price list in the bytes of a file. Raises Refused, all that is wrong at once."""
    sheets = sheets_in(content)
    heads = [(one, _head(one)) for one in sheets]
    if all(columns is None for _, columns in heads):
        raise _no_head(sheets)
    gathered = _Gathered()
    for sheet, columns in heads:
        if columns is None:
            if any(any(row) for row in sheet.rows):
                gathered.told.append(f"Sheet {sheet.name}: no head row with a price; left out.")
            continue
        _sheet(sheet, *columns, gathered)
    if not gathered.wares:
        mistakes = [Mistake("", one) for one in gathered.told[:MOST_TOLD]]
        raise Refused(*(mistakes or [Mistake("", "There are no rows under its head.", "")]))
    return _read(gathered)


def _head(sheet: Sheet) -> tuple[int, dict[int, str]] | None:
    """Where the head row stands, and what each column holds; the row with most known heads."""
    best: tuple[int, dict[int, str]] | None = None
    for n, row in enumerate(sheet.rows[:_HEAD_WITHIN]):
        columns: dict[int, str] = {}
        for place, cell in enumerate(row):
            key = column_of(cell) if isinstance(cell, str) else None
            if key and key not in columns.values():
                columns[place] = key
        names = set(columns.values())
        good = "price" in names and names & {"what", "name", "of"}
        if good and (best is None or len(columns) > len(best[1])):
            best = n, columns
    return best


def _no_head(sheets: Sequence[Sheet]) -> Refused:
    words = [
        cell
        for sheet in sheets
        for row in sheet.rows[:1]
        for cell in row
        if isinstance(cell, str) and cell
    ]
    mistakes = []
    if words:
        mistakes.append(Mistake("", f"Its first row says {', '.join(words[:12])[:200]}."))
    known = ", ".join(one[0] for one in HEADS.values())
    what = "No row names a column for the price and one for what it is."
    mistakes.append(Mistake("", what, f"Columns may be called {known}."))
    return Refused(*mistakes)


def _sheet(sheet: Sheet, at: int, columns: dict[int, str], gathered: _Gathered) -> None:
    rows = []
    for n, row in enumerate(sheet.rows[at + 1 :], start=at + 2):
        cells = {key: row[place] for place, key in columns.items() if place < len(row)}
        where = f"{sheet.name}, row {n}" if sheet.name else f"row {n}"
        if any(cell != "" for cell in cells.values()):
            rows.append(_Row(n, where, cells))
    money = [one.text(key) for one in rows for key in ("price", "delivery", "free_from")
             if isinstance(one.cell(key), str)]  # fmt: skip
    comma = decimal_comma(money)
    blank = [one.number for one in rows if one.cell("price") == ""]
    if blank:
        on = f" of sheet {sheet.name}" if sheet.name else ""
        gathered.told.append(f"Left out, no price: {_listed(blank)}{on}.")
    for one in rows:
        if one.cell("price") == "":
            continue
        try:
            _take(one, gathered, comma=comma)
        except NotRead as why:
            name = one.text("name") or one.text("what") or one.text("of")
            called = f" ({name[:60]})" if name else ""
            gathered.told.append(f"Left out, {one.where}{called}: {why}.")


def _listed(numbers: Sequence[int]) -> str:
    """Rows as `rows 3, 5 to 9`."""
    runs: list[list[int]] = []
    for one in numbers:
        if runs and one == runs[-1][-1] + 1:
            runs[-1].append(one)
        else:
            runs.append([one])
    said = [f"{run[0]}" if len(run) == 1 else f"{run[0]} to {run[-1]}" for run in runs[:20]]
    more = f" and {len(runs) - 20} more" if len(runs) > 20 else ""
    return f"row{'s' * (len(numbers) > 1)} {', '.join(said)}{more}"


def _take(row: _Row, gathered: _Gathered, *, comma: bool) -> None:
    kind = kind_in(row.text("what")) or kind_in(row.text("name")) or kind_in(row.text("of"))
    if kind is None:
        raise NotRead("what it is for is not known; name it in the trade's words, as tape or stain")
    paid = price(row.cell("price"), comma=comma)
    size = whole_size(
        row.cell("size"), row.text("unit"), f"{row.text('name')} {row.text('what')}",
        COUNTED_IN.get(kind, ("count",)), comma=comma,
    )  # fmt: skip
    of = row.text("of")
    if kind == "stain" and not of:
        raise NotRead("which stain is it? Add a column colour, with its name in the job")
    seller = row.text("seller")[:80]
    _terms(row, seller, gathered, comma=comma)
    stock = _stock(row, comma=comma)
    same = (kind, of.casefold(), size, seller, row.text("lot"), paid)
    if same in gathered.seen:
        raise NotRead(f"it says the same as {gathered.seen[same]}")
    gathered.seen[same] = row.where
    currency = row.text("currency").upper() or paid.currency
    if currency and not (len(currency) == 3 and currency.isalpha()):
        raise NotRead(f"“{currency[:10]}” is no currency code such as USD")
    id_ = f"w{len(gathered.wares) + 1}"
    gathered.currencies[id_] = currency
    gathered.as_of = max(gathered.as_of, _day(row))
    gathered.wares.append(
        Ware(
            id=id_, kind=kind, size=size.size, unit=size.unit,
            price=f"{paid.amount.normalize():f}", seller=seller, of=of, name=row.text("name")[:200],
            lot=row.text("lot"), in_stock=stock,
        )
    )  # fmt: skip


def _stock(row: _Row, *, comma: bool) -> int | None:
    text = row.text("stock")
    if not text:
        return None
    if text.casefold() in {"yes", "si", "sí", "y", "s", "in stock", "disponible"}:
        return None
    if text.casefold() in {"no", "n", "none", "out", "agotado", "out of stock"}:
        return 0
    return int(number(text, comma=comma))


def _terms(row: _Row, seller: str, gathered: _Gathered, *, comma: bool) -> None:
    for key in ("delivery", "free_from"):
        cell = row.cell(key)
        if cell == "":
            continue
        free = isinstance(cell, str) and cell.casefold() in {"free", "gratis", "-", "no", "none"}
        value = Decimal(0) if free else price(cell, comma=comma).amount
        if free and key == "free_from":
            continue
        told = gathered.fees.setdefault(seller, {})
        if key in told and told[key] != value:
            most = max(told[key], value)
            before, here, taken = written(told[key]), written(value), written(most)
            gathered.told.append(
                f"{row.where}: {key.replace('_', ' ')} of {seller or 'the seller'} was {before} "
                f"before and is {here} here; {taken} is taken."
            )
            value = most
        told[key] = value
    if days := row.text("days"):
        gathered.days[seller] = max(
            gathered.days.get(seller, 0), min(int(number(days, comma=comma)), 365)
        )


def _day(row: _Row) -> str:
    try:
        return date.fromisoformat(row.text("as_of")[:10]).isoformat()
    except ValueError:
        return ""


def _read(gathered: _Gathered) -> ListRead:
    """All in one currency: that of most rows; others are left out and told."""
    told = [one for one in gathered.currencies.values() if one]
    currency = max(sorted(set(told)), key=told.count) if told else _USUAL_CURRENCY
    wares = []
    for one in gathered.wares:
        own = gathered.currencies[one.id]
        if own and own != currency:
            gathered.told.append(f"{one.name or one.of or one.kind}: its price is in {own}, "
                                 f"the list is in {currency}; left out.")  # fmt: skip
        else:
            wares.append(one)
    names = dict.fromkeys(one.seller for one in wares if one.seller)
    sellers = tuple(_seller(name, gathered) for name in names)
    said = gathered.told
    if len(said) > MOST_TOLD:
        said = [*said[:MOST_TOLD], f"And {len(gathered.told) - MOST_TOLD} more."]
    return ListRead(currency, gathered.as_of, sellers, tuple(wares), tuple(said))


def _seller(name: str, gathered: _Gathered) -> Seller:
    fees = gathered.fees.get(name, {})
    free = fees.get("free_from")
    return Seller(
        name, f"{fees.get('delivery', Decimal(0)).normalize():f}",
        None if free is None else f"{free.normalize():f}", gathered.days.get(name, 0),
    )  # fmt: skip
