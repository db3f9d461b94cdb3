"""The shopping list on paper and as a workbook: every line of the reckoning, in both languages."""

from __future__ import annotations

import io
import shutil
import subprocess
from dataclasses import replace

import openpyxl
import pytest
from tests.job.office.quantities.grounds import ground

from farwall.facts.van import Stock, Van
from farwall.facts.wares import PriceList, Seller, Ware
from farwall.papers.office.bundles import chosen, office_files
from farwall.papers.office.ground import PaperGround

NAME = "A yard with a name that is far longer than any yard has ever had it"
LIST = PriceList(
    sellers=(Seller(NAME, "25.00", "4000"), Seller("磨坊路")),
    wares=(
        Ware("e5", "stain", 18.92705892, "l", "270.00", NAME, "earth", lot="E-1"),
        Ware("t", "tape", 54.864, "m", "8.00", "磨坊路", name="blue, 14 days"),
    ),
)
VAN = Van(stock=(Stock("g", "gloves", 2.0, "count"),
                 Stock("c", "cartridges", 2.0, "count", good_until="2000-01-01")))  # fmt: skip


def of(language="en", **more):
    return PaperGround(replace(ground(van=VAN), wares=LIST, **more), language)


def text_of(pdf):
    if shutil.which("pdftotext") is None:
        pytest.skip("pdftotext is not here")
    run = subprocess.run(["pdftotext", "-layout", "-", "-"], input=pdf, check=True,
                         capture_output=True)  # fmt: skip
    return " ".join(run.stdout.decode().split())


def test_both_files_are_asked_for_by_one_name_for_the_quote():
    assert [one.file for one in chosen(["shopping-list"])] == [
        "shopping-list.pdf", "shopping-list.xlsx",
    ]  # fmt: skip
    assert {one.moment for one in chosen(["shopping-list"])} == {"quote"}


def test_every_line_seller_and_sum_stands_on_the_paper():
    of_job = of()
    text = text_of(office_files(of_job, ["shopping-list"])["shopping-list.pdf"])
    found = of_job.office.buying
    for one in found.lines:
        assert f"{float(one.cost):,.2f}" in text
    for word in (NAME, "E-1", "blue, 14 days", "In the van already", "not counted",
                 f"{float(found.total):,.2f}", "rank: guess", "No seller named yet"):  # fmt: skip
        assert word in text, word


def test_the_spanish_paper_has_no_english_left():
    text = text_of(office_files(of("es"), ["shopping-list"])["shopping-list.pdf"])
    for word in ("Lista de compras", "Ya está en la camioneta", "todo de un lote", "estimación"):
        assert word in text, word
    for word in (" the ", " of ", "needed", "price"):
        assert word not in text, word


def test_the_same_inputs_are_the_same_bytes():
    assert office_files(of(), ["shopping-list"]) == office_files(of(), ["shopping-list"])


def test_the_workbook_adds_up():
    found = of().office.buying
    content = office_files(of(), ["shopping-list"])["shopping-list.xlsx"]
    rows = [[cell.value for cell in row] for row in openpyxl.load_workbook(
        io.BytesIO(content)).active.iter_rows(min_row=2)]  # fmt: skip
    amounts = [row[7] for row in rows[:-1] if row[7] is not None]
    assert sum(amounts) == pytest.approx(float(found.total), abs=0.005)
    assert rows[-1][7] == pytest.approx(float(found.total))
    assert len([row for row in rows if row[4]]) == len(found.lines)
