"""Every paper that the tool makes, opened by poppler: job, revision, hash, page n of N on each
page, and a square that a camera reads where the address of the house is known."""

from __future__ import annotations

import io
import re
from dataclasses import replace
from functools import cache

import cv2
import numpy as np
import pypdfium2
import pytest
from PIL import Image
from tests.days.shop import typical
from tests.papers.office import houses, looked_at

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.facts.job import Wishes
from farwall.facts.photo_shown import PhotoShown
from farwall.facts.sealer import Sealer
from farwall.job.acid_day.day import acid_day
from farwall.job.go import go_or_no_go
from farwall.job.seal_day import seal_day
from farwall.papers.acid_files import PAPERS as ACID_PAPERS
from farwall.papers.chain.sheet import chain_pdf, made_from
from farwall.papers.go_page import go_pdf
from farwall.papers.office.bundles import BY_FILE
from farwall.papers.office.wrapped import _of_acid
from farwall.papers.seal_sheet import seal_sheet_pdf
from farwall.papers.walk_paper.sheet import walk_sheet_pdf
from farwall.web.pages.house_papers import ACID, DAYS
from farwall.web.pages.papers import PAPERS as SHEETS

IN_BOTH = ("keep-out.pdf", "labels.pdf")
"""Read by whoever comes by: their foot is in both languages at once, that of the job first."""
BY_TURNS = ("cards.pdf",)
"""A page in the language of the job, then the same in the other."""
CUT_OUT = ("cards.pdf", "labels.pdf")
"""Squares of their own on each card and label: `tests/papers/acid/test_foot.py` reads them."""
OF_NO_JOB = ("walk-sheet.pdf",)
"""Blank sheets, of no job yet: they carry lines for house and day, and their number."""
NOT_PAPER = (
    "shopping-list.xlsx", "invoice.xml", "days.ics", "floor.svg", "moments.svg", "seal.svg",
    "days.svg", "year.svg",
)  # fmt: skip
"""No pages: a workbook, an invoice for machines, a calendar, and drawings of a screen: the year of
the firm is one of these and of no job, it carries its place, its house and its weather file."""
SCREENS = {
    "run-sheet.pdf": "phone", "go.pdf": "survey", "wash-day.pdf": "acid/washing",
    "waste-page.pdf": "acid/waste", "seal-sheet.pdf": "log", "chain.pdf": "papers",
    "colour-target.pdf": "colour", "before-after.pdf": "colour", "schedule.pdf": "papers",
    "care.pdf": "papers", "warranty.pdf": "papers", "enquiry.pdf": "papers",
    "people.pdf": "acid/people", "keep-out.pdf": "acid/people",
}  # fmt: skip
"""Where some squares lead; of the others only the house is held."""
SAID = {
    "en": ("Page", "of", "facts", "inputs"),
    "es": ("Página", "de", "datos", "entradas"),
}
REVISION = 3
SEALER = Sealer(type="water acrylic", wet_edge_min=8, m2_per_l=10, coats=2)


@cache
def ground(language, screens):
    """The house of twelve rooms with its whole log and two photos of a place."""
    known = houses.twelve().ground(language=language, screens=screens)
    return replace(known, pair=(photo((150, 150, 150)), photo((120, 80, 50))))


def photo(colour):
    into = io.BytesIO()
    Image.new("RGB", (120, 90), colour).save(into, "JPEG")
    return PhotoShown(into.getvalue(), 120, 90, None, "2026-05-14T10:20:30")


@cache
def calendar_told():
    told = document(calendar(typical()))
    return told, told["houses"][0]


def made_acid(name, language, screens):
    told = _of_acid(ground(language, screens))
    return ACID_PAPERS[name](told, acid_day(told), screens)


def made_go(language, screens):
    job = ground(language, screens).job
    return go_pdf(go_or_no_go(job), job, screens=screens)


@cache
def sealed():
    job = replace(houses.bare().job, sealer=SEALER, revision=REVISION, name="Two rooms")
    return seal_day(job)


def made_seal(language, screens):
    day = sealed()
    return seal_sheet_pdf(
        day.plan, day.sealing, Wishes(language=language), revision=REVISION, screens=screens
    )


def made_chain(language, screens):
    told, house = calendar_told()
    return chain_pdf(told, house, ground("en", "").job, language=language, screens=screens)


OF_ACID = [*IN_BOTH, *BY_TURNS, "people.pdf"]
OF_BUNDLES = [one for one in BY_FILE if one.endswith(".pdf") and one not in OF_ACID]
OTHERS = {"seal-sheet.pdf": made_seal, "chain.pdf": made_chain, "go.pdf, no plan": made_go}
NUMBERED = [*OF_BUNDLES, *OTHERS, *OF_ACID]
PAPERS = [one for one in NUMBERED if one not in CUT_OUT]
"""Those with one square on each page."""


@cache
def made(name, language, screens=houses.HERE):
    if name in OTHERS:
        return OTHERS[name](language, screens)
    if name in OF_ACID:
        return made_acid(name, language, screens)
    return BY_FILE[name].make(ground(language, screens))


def job_and_hash(name):
    if name == "seal-sheet.pdf":
        return "Two rooms", sealed().plan.inputs_hash
    if name == "chain.pdf":
        told, house = calendar_told()
        return house["name"], made_from(told, house, ground("en", "").job)
    return houses.twelve().job.name, houses.twelve().plan.inputs_hash


def texts(pdf):
    """The words of each page as poppler reads them, in one line."""
    told = looked_at.poppler("pdftotext", pdf, "-layout", "-", "-")
    return [" ".join(page.split()) for page in told.split("\f")[:-1]]


def addresses(pdf):
    """What a camera reads of the square at the foot of each page."""
    found = []
    for page in pypdfium2.PdfDocument(pdf):
        seen = page.render(scale=4, grayscale=True).to_numpy()
        picture = np.ascontiguousarray(seen.reshape(seen.shape[:2]))
        high, wide = picture.shape
        corner = picture[high - high // 7 :, wide - wide // 5 :]
        found.append(cv2.QRCodeDetector().detectAndDecode(corner)[0])
    return found


def test_no_paper_of_the_tool_is_left_out_here():
    """Whatever a screen or a command hands out is tried here, or told as no paper."""
    listed = {*BY_FILE, *ACID_PAPERS, *ACID, *DAYS, *SHEETS, *OF_NO_JOB}
    tried = {*NUMBERED, *OF_NO_JOB, *NOT_PAPER}
    assert listed - tried == set()


def languages_of(name, language, number):
    """In which languages the foot of a page is, in their order."""
    other = "es" if language == "en" else "en"
    if name in IN_BOTH:
        return (language, other)
    return (other,) if name in BY_TURNS and number % 2 == 0 else (language,)


@pytest.mark.parametrize("name", NUMBERED)
@pytest.mark.parametrize("language", ["en", "es"])
def test_every_page_has_job_revision_hash_and_its_number(name, language):
    pages = texts(made(name, language))
    job, hash_ = job_and_hash(name)
    for number, text in enumerate(pages, 1):
        said = [SAID[one] for one in languages_of(name, language, number)]
        numbered = " / ".join(f"{page} {number} {of} {len(pages)}" for page, of, _, _ in said)
        revision, inputs = (" / ".join(one[n] for one in said) for n in (2, 3))
        foot = re.search(rf"{numbered} · (.+?) · ", text)
        assert foot, (number, text[-300:])
        assert job.startswith(foot[1].removesuffix("…")), foot[1]
        shown = re.search(rf"{revision} {REVISION} · {inputs} ([0-9a-f]{{12}})\b", text)
        assert shown, (number, text[-300:])
        if name != "go.pdf, no plan":  # of facts alone: the hash is that of the facts
            assert shown[1] == hash_[:12]


@pytest.mark.parametrize("name", PAPERS)
def test_a_camera_reads_the_square_on_every_page(name):
    found = set(addresses(made(name, "en")))
    assert len(found) == 1, found
    (address,) = found
    house, _, screen = address.partition(f"{houses.HERE}/")
    assert house == "", address
    assert screen == SCREENS.get(name, screen or "none")


@pytest.mark.parametrize("name", PAPERS)
def test_without_an_address_no_page_has_a_square(name):
    assert set(addresses(made(name, "en", ""))) == {""}


@pytest.mark.parametrize(
    ("language", "said"),
    [("en", ("House", "Day", "Room {n} of 3")), ("es", ("Casa", "Día", "Cuarto {n} de 3"))],
)
def test_a_blank_sheet_of_no_job_has_lines_for_house_and_day_and_its_number(language, said):
    pages = texts(walk_sheet_pdf(3, language=language))
    assert len(pages) == 3
    for n, text in enumerate(pages, 1):
        for word in said:
            assert word.format(n=n) in text
