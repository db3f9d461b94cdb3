"""Invoice and change order on paper: text as reckoned, odd names, empty parts, both languages."""

from __future__ import annotations

import shutil
import subprocess
from dataclasses import replace

import pytest
from tests.job.office.billing.test_owed import ACCEPTED
from tests.job.office.billing.test_writing import CHANGE, DEPOSIT, FINAL, OVER, PAID, WAITED
from tests.job.office.billing.worked import PRICED, ground

from farwall.errors import Refused
from farwall.facts.firm import Address, Firm, Party
from farwall.facts.prices import Tax
from farwall.papers.office import invoice as invoice_paper
from farwall.papers.office.bundles import lacking, office_files
from farwall.papers.office.change_order import change_order
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import paper_pdf

ONLY = ("invoice", "change-order")
ODD = ("N" * 60, "מרצפות האלון", "橡木地坪公司", "Brück & Söhne <Nord>")
pdftotext = pytest.mark.skipif(shutil.which("pdftotext") is None, reason="poppler is not here")


@pytest.fixture(autouse=True)
def priced(monkeypatch):
    """The price of the worked job, so that nothing is simulated here."""
    monkeypatch.setattr("farwall.job.office.day.priced_of", lambda *_: PRICED)


def papers(*entries, language="en", **told):
    made = ground(ACCEPTED, *entries, **told)
    return PaperGround(made, language)


def text_of(pdf, tmp_path):
    path = tmp_path / "paper.pdf"
    path.write_bytes(pdf)
    done = subprocess.run(
        ["pdftotext", "-layout", str(path), "-"], capture_output=True, text=True, check=True
    )
    return done.stdout


@pdftotext
def test_the_final_invoice_says_what_is_to_pay(tmp_path):
    made = papers(DEPOSIT, PAID, CHANGE, WAITED, OVER, FINAL)
    text = text_of(office_files(made, ("invoice",))["invoice.pdf"], tmp_path)
    for told in ("Invoice 22", "3,880.92", "-3,301.63", "7,182.55", "Saturday, June 13, 2026",
                 "Change order 1: move the drain", "Sales tax, 8.25 % of 6,635.15"):  # fmt: skip
        assert told in text, told
    assert "draft" not in text


ON_MATERIALS = (Tax("sales tax", 8.25, on="materials"),)


@pdftotext
@pytest.mark.parametrize(
    ("language", "words"),
    [
        ("en", ("Where 0 % stands no tax was told", "(6.5 h at 50.00 an hour)",
                "(materials 40.10", "Allowance: we came late",
                "Paid on Tuesday, June 2, 2026:", "of Thursday, May 21, 2026 is contained")),
        ("es", ("Donde dice 0 % no se dijo", "(6.5 h a 50.00 la hora)",
                "(materiales 40.10", "Descuento: we came late",
                "Pagado el martes 2 de junio de 2026:", "del jueves 21 de mayo de 2026 está")),
    ],
)  # fmt: skip
def test_where_materials_alone_are_taxed_each_line_says_what_it_holds(tmp_path, language, words):
    """Before, both lines of an order said the same, and the paper denied the tax it reckoned."""
    final = ("invoiced", "06-13", {"number": "22", "part": "final", "allowance": "20.00",
                                   "why": "we came late"})  # fmt: skip
    made = papers(DEPOSIT, PAID, CHANGE, OVER, final, taxes=ON_MATERIALS, language=language)
    text = " ".join(
        text_of(office_files(made, ("invoice",))["invoice.pdf"], tmp_path).split()
    ).replace("\u00a0", " ")
    for one in words:
        assert one in text, one
    assert "8.25 %" in text
    assert "none is reckoned here" not in text
    assert lacking(made, ("invoice",))["invoice.xml"][0].what.endswith("a part of the lines.")


@pdftotext
def test_without_a_number_it_is_a_draft_and_says_so(tmp_path):
    text = text_of(office_files(papers(), ("invoice",))["invoice.pdf"], tmp_path)
    assert "Invoice, draft" in text
    assert "no invoice" in text
    assert "Nobody's yes" not in text


@pdftotext
@pytest.mark.parametrize(
    ("language", "words"), [("en", "Nobody's yes to an offer"), ("es", "aceptara una oferta")]
)
def test_a_price_that_nobody_agreed_to_says_so(tmp_path, language, words):
    made = PaperGround(ground(), language)
    assert words in text_of(office_files(made, ("invoice",))["invoice.pdf"], tmp_path)


@pdftotext
@pytest.mark.parametrize("name", ODD, ids=["long", "right-to-left", "cjk", "marks"])
def test_odd_names_stand_whole(tmp_path, name):
    made = papers(FINAL)
    job = replace(
        made.job, customer=Party(name, Address(("1 Elm",), country="US")),
        firm=replace(made.job.firm, name=name),
    )  # fmt: skip
    made = PaperGround(replace(made.ground, job=job))
    files = office_files(made, ONLY)
    text = text_of(files["invoice.pdf"], tmp_path)
    if name.isascii() or "&" in name:
        assert name in text.replace("\n", "")
    assert name.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;") in (
        files["invoice.xml"].decode()
    )


def test_empty_parts_are_left_out_and_the_data_file_says_what_lacks():
    made = papers()
    job = replace(made.job, firm=Firm(), customer=Party(),
                  prices=replace(made.job.prices, taxes=()))  # fmt: skip
    made = PaperGround(replace(made.ground, job=job))
    files = office_files(made, ONLY)
    assert set(files) == {"invoice.pdf", "change-order.pdf"}
    assert {one.where for one in lacking(made, ONLY)["invoice.xml"]} >= {"number", "prices.taxes"}
    with pytest.raises(Refused):
        office_files(made, ("invoice.xml",))


@pdftotext
def test_in_spanish_nothing_of_ours_stays_english(tmp_path):
    made = papers(DEPOSIT, PAID, CHANGE, WAITED, OVER, FINAL, language="es")
    files = office_files(made, ONLY)
    text = text_of(files["invoice.pdf"], tmp_path) + text_of(files["change-order.pdf"], tmp_path)
    for english in ("Change order", "Without tax", "To pay", "Paid", "an hour", "besides", "Due",
                    "Standby", "finisher", "contained"):  # fmt: skip
        assert english not in text, english
    assert "Por pagar" in text
    assert "Orden de cambio 1: move the drain" in files["invoice.xml"].decode()


@pdftotext
def test_a_change_order_is_a_page_each_or_one_blank(tmp_path):
    less = ("change", "06-10", {"what": "leave the closet", "agreed_by": "R.", "amount": "-90"})
    text = text_of(paper_pdf(change_order(papers(CHANGE, less)), papers(CHANGE, less)), tmp_path)
    assert text.count("\f") == 2
    assert "6,395.15" in text  # 6,100.00 and 385.15 less 90.00
    blank = text_of(paper_pdf(change_order(papers()), papers()), tmp_path)
    assert blank.count("\f") == 1
    assert "An hour of one person is 50.00 USD" in blank


@pdftotext
def test_a_change_order_bears_the_whole_address_of_who_pays(tmp_path):
    made = papers(CHANGE)
    buyer = Party("R. Invented", Address(("1 Elm", "Floor 2"), "Norfield", "OK", "73000"))
    made = PaperGround(replace(made.ground, job=replace(made.job, customer=buyer)))
    text = text_of(paper_pdf(change_order(made), made), tmp_path)
    for line in ("R. Invented", "1 Elm", "Floor 2", "Norfield OK 73000"):
        assert line in text, line


def test_the_same_bytes_from_the_same_facts():
    first, again = (office_files(papers(CHANGE, FINAL), ONLY) for _ in range(2))
    assert first == again
    assert invoice_paper.invoice_made(papers(FINAL)).number == "22"
