"""Tables as an XLSX workbook; the same tables give the same bytes."""

from __future__ import annotations

import io
import re
import zipfile
from collections.abc import Sequence
from datetime import datetime
from decimal import Decimal

from farwall.nouns import dataclass

_FIRST_DAY = (1980, 1, 1, 0, 0, 0)
_STAMP = datetime(1980, 1, 1)  # noqa: DTZ001  a workbook's days have no zone
_MODIFIED = re.compile(rb"(<dcterms:modified[^>]*>)[^<]*")
Cell = str | int | float | Decimal | None


@dataclass(frozen=True)
class SheetTable:
    """A sheet: its name, heads, rows, width of each column in letters.

    strong: numbers of rows, from 0, set bold · money: numbers of columns with two decimals.
    """

    name: str
    heads: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
    widths: tuple[int, ...]
    strong: frozenset[int] = frozenset()
    money: frozenset[int] = frozenset()


def workbook(sheets: Sequence[SheetTable], *, title: str = "") -> bytes:
    """The workbook as bytes. Texts stay texts: none is taken for a formula."""
    import openpyxl

    book = openpyxl.Workbook()
    book.remove(book.active)  # type: ignore[arg-type]
    for one in sheets:
        _sheet(book, one)
    book.properties.creator = "Farwall"
    book.properties.title = title or None
    book.properties.created = book.properties.modified = _STAMP
    made = io.BytesIO()
    book.save(made)
    return _stamped(made.getvalue())


def _sheet(book: object, table: SheetTable) -> None:
    from openpyxl.styles import Alignment, Border, Font, Side
    from openpyxl.utils import get_column_letter

    sheet = book.create_sheet(table.name[:31])  # type: ignore[attr-defined]
    under = Border(bottom=Side(style="thin"))
    for column, head in enumerate(table.heads, start=1):
        cell = sheet.cell(1, column, head)
        cell.font, cell.border = Font(bold=True), under
    for at, row in enumerate(table.rows):
        for column, value in enumerate(row, start=1):
            if value is None or value == "":
                continue
            cell = sheet.cell(at + 2, column, value)
            if isinstance(value, str):
                cell.data_type = "s"
                cell.alignment = Alignment(wrap_text=True, vertical="top")
            if column - 1 in table.money and not isinstance(value, str):
                cell.number_format = "0.00"
            if at in table.strong:
                cell.font = Font(bold=True)
    for column, width in enumerate(table.widths, start=1):
        sheet.column_dimensions[get_column_letter(column)].width = width
    sheet.freeze_panes = "A2"
    sheet.page_setup.fitToWidth, sheet.page_setup.fitToHeight = 1, 0
    sheet.sheet_properties.pageSetUpPr.fitToPage = True


def _stamped(content: bytes) -> bytes:
    """The same archive with one day for everything in it."""
    made = io.BytesIO()
    with (
        zipfile.ZipFile(io.BytesIO(content)) as source,
        zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED) as target,
    ):
        for name in sorted(source.namelist()):
            body = source.read(name)
            if name == "docProps/core.xml":
                body = _MODIFIED.sub(rb"\g<1>1980-01-01T00:00:00Z", body)
            told = zipfile.ZipInfo(name, _FIRST_DAY)
            told.compress_type = zipfile.ZIP_DEFLATED
            told.external_attr = 0o600 << 16
            target.writestr(told, body)
    return made.getvalue()
