"""The cells of a CSV file or a workbook, as texts and numbers. Nothing is understood here."""

from __future__ import annotations

import csv
import io
import zipfile
from datetime import date, datetime
from decimal import Decimal
from itertools import islice
from math import isfinite

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.readers.price_list.words import column_of

Cell = str | Decimal
MOST_ROWS, MOST_COLUMNS, MOST_CELL = 20_000, 60, 300
MOST_SHEETS = 20
MOST_UNPACKED, MOST_ENTRIES = 60_000_000, 2_000
"""Bytes and files of a workbook once it is unpacked; the longest list needs a tenth."""
_DELIMITERS = ",;\t|"
_OLD, _ZIP = b"\xd0\xcf\x11\xe0", b"PK\x03\x04"


@dataclass(frozen=True)
class Sheet:
    """A sheet: its name, empty for a file that is but one, and its rows, the first being row 1."""

    name: str
    rows: list[list[Cell]]


def sheets_in(content: bytes) -> list[Sheet]:
    """All sheets with their rows. Raises Refused for what is neither CSV nor a workbook."""
    if content.startswith(_OLD):
        remedy = "Save it as XLSX or CSV and send that."
        raise Refused(Mistake("", "This is a workbook of the old kind, or locked.", remedy))
    if content.startswith(_ZIP):
        return _workbook(content)
    wide = content[:2] in {b"\xff\xfe", b"\xfe\xff"}
    if not wide and (content.startswith(b"%PDF") or b"\x00" in content[:4096]):
        raise Refused(Mistake("", "This is no table.", "Send the list as XLSX or CSV."))
    return [Sheet("", _table(_text(content)))]


def _text(content: bytes) -> str:
    if content[:2] in {b"\xff\xfe", b"\xfe\xff"}:
        return content.decode("utf-16", "replace")
    try:
        return content.decode("utf-8-sig")
    except UnicodeDecodeError:
        return content.decode("cp1252", "replace")


def _table(text: str) -> list[list[Cell]]:
    """The rows, by the delimiter under which most heads are known."""
    first = _DELIMITERS.index(text[4]) if text[:4].casefold() == "sep=" and text[4:5] else None
    ways = [_rows(text, one) for one in _DELIMITERS]
    if first is not None:
        return ways[first]
    return max(ways, key=lambda rows: max((_known(row) for row in rows[:30]), default=0))


def _known(row: list[Cell]) -> int:
    return len({column_of(one) for one in row if isinstance(one, str)} - {None})


def _rows(text: str, delimiter: str) -> list[list[Cell]]:
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter)
    rows: list[list[Cell]] = []
    try:
        for row in islice(reader, MOST_ROWS + 1):
            # A quoted cell may hold line breaks: rows keep the number of the line they begin on.
            while len(rows) + 1 < reader.line_num - sum(one.count("\n") for one in row):
                rows.append([])
            rows.append([one.strip()[:MOST_CELL] for one in row[:MOST_COLUMNS]])
    except csv.Error as error:
        remedy = "Save it anew as CSV."
        raise Refused(Mistake(f"row {len(rows) + 1}", f"{error}.", remedy)) from None
    _insist_few(len(rows))
    return rows


def _insist_few(rows: int) -> None:
    if rows > MOST_ROWS:
        what = f"It has more than {MOST_ROWS:,} rows."
        raise Refused(Mistake("", what, "Leave in it what this trade buys."))


def _workbook(content: bytes) -> list[Sheet]:
    import mimetypes
    import warnings

    _insist_bearable(content)
    # openpyxl asks the system's list of file types when it is imported; a reader opens no files.
    mimetypes.knownfiles = []
    import openpyxl

    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            book = openpyxl.load_workbook(
                io.BytesIO(content), read_only=True, data_only=True, keep_links=False
            )
            return [_sheet(one) for one in book.worksheets[:MOST_SHEETS]]
    except Refused:
        raise
    except Exception as error:  # openpyxl raises many kinds on a spoilt file
        what = f"The workbook could not be opened ({type(error).__name__})."
        raise Refused(Mistake("", what, "Save it anew as XLSX, or as CSV.")) from None


def _insist_bearable(content: bytes) -> None:
    try:
        told = zipfile.ZipFile(io.BytesIO(content)).infolist()
    except (zipfile.BadZipFile, ValueError, OSError):
        what = "The workbook is torn."
        raise Refused(Mistake("", what, "Send it again, or save it as CSV.")) from None
    if not any(one.filename == "xl/workbook.xml" for one in told):
        raise Refused(Mistake("", "This archive is no workbook.", "Send the list as XLSX or CSV."))
    if len(told) > MOST_ENTRIES or sum(one.file_size for one in told) > MOST_UNPACKED:
        what = f"Unpacked, this workbook is larger than {MOST_UNPACKED // 1_000_000} MB."
        raise Refused(Mistake("", what, "Save the list alone as CSV."))


def _sheet(sheet: object) -> Sheet:
    name = str(getattr(sheet, "title", ""))[:80]
    getattr(sheet, "reset_dimensions", lambda: None)()
    values = sheet.iter_rows(values_only=True, max_col=MOST_COLUMNS)  # type: ignore[attr-defined]
    rows = [[_cell(one) for one in row] for row in islice(values, MOST_ROWS + 1)]
    _insist_few(len(rows))
    return Sheet(name, rows)


def _cell(value: object) -> Cell:
    if value is None or isinstance(value, bool):
        return ""
    if isinstance(value, int | float):
        return Decimal(str(value)) if isfinite(value) else ""
    if isinstance(value, datetime):
        return value.date().isoformat()
    if isinstance(value, date):
        return value.isoformat()
    return str(value).strip()[:MOST_CELL]
