"""Tables as a workbook: read back by another hand, the same bytes, no formulas."""

from __future__ import annotations

import io
import zipfile
from decimal import Decimal

import openpyxl

from farwall.papers.workbook import SheetTable, workbook

TABLE = SheetTable(
    "prices", ("what", "price"), (("tape", Decimal("7.5")), ("=1+1", 3), ("", None)), (20, 8),
    frozenset({1}), frozenset({1}),
)  # fmt: skip


def test_the_cells_are_read_back_and_a_text_is_no_formula():
    sheet = openpyxl.load_workbook(io.BytesIO(workbook([TABLE]))).active
    assert [[cell.value for cell in row] for row in sheet.iter_rows(max_row=3)] == [
        ["what", "price"], ["tape", 7.5], ["=1+1", 3],
    ]  # fmt: skip
    assert sheet["A3"].data_type == "s"
    assert sheet["B2"].number_format == "0.00"
    assert sheet["A3"].font.b


def test_the_same_tables_are_the_same_bytes_with_one_day_for_all():
    made = workbook([TABLE], title="A list")
    assert made == workbook([TABLE], title="A list")
    with zipfile.ZipFile(io.BytesIO(made)) as told:
        assert {one.date_time for one in told.infolist()} == {(1980, 1, 1, 0, 0, 0)}
        assert b"1980-01-01T00:00:00Z</dcterms:modified>" in told.read("docProps/core.xml")
