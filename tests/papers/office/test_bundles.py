"""Every paper of the list, opened by poppler: whatever is listed is tried, new ones at once."""

from __future__ import annotations

import re
from dataclasses import fields, is_dataclass
from functools import cache, partial

import pypdfium2
import pytest
from tests.papers.office import houses, looked_at

from farwall.errors import Refused
from farwall.papers.office.blocks import Own
from farwall.papers.office.bundles import (
    BY_FILE,
    MOMENTS,
    PAPERS,
    chosen,
    office_files,
    written,
)
from farwall.papers.office.setting import own_names
from farwall.papers.run_sheet.margins import MARGIN_PT
from farwall.papers.words import names_in, own_first
from farwall.phrasebook import speaking, told

SETTINGS = {
    "twelve rooms": (houses.twelve, {"language": "en", "paper": "us-letter"}),
    "twelve rooms, Spanish, A4": (
        houses.twelve, {"language": "es", "paper": "a4", "units": "metric"},
    ),
    "long names": (houses.long_names, {"language": "en", "paper": "us-letter"}),
    "long names, Spanish, A4": (
        houses.long_names, {"language": "es", "paper": "a4", "units": "metric"},
    ),
    "other scripts": (houses.other_scripts, {"language": "en", "paper": "a4"}),
    "nothing optional": (houses.bare, {"language": "en", "paper": "us-letter", "screens": ""}),
}  # fmt: skip
FOOT_PT = MARGIN_PT + 32 - 4
INVISIBLE = re.compile("[\\s\u00ad\u200b-\u200f\u2028-\u202f\u2066-\u2069\ufeff\ufffe\u00a0]")

every = pytest.mark.parametrize("file", [one.file for one in PAPERS if one.file.endswith(".pdf")])
OF_BLOCKS = [one.file for one in PAPERS if isinstance(one.make, partial)]
"""Papers that are lists of blocks, set by the one template."""
setting = pytest.mark.parametrize("name", list(SETTINGS))


@cache
def ground(name):
    house, wishes = SETTINGS[name]
    return house().ground(**wishes)


@cache
def made(name, file):
    return BY_FILE[file].make(ground(name))


@cache
def sheets(name, file):
    return looked_at.sheets(made(name, file))


@every
@setting
def test_a_paper_is_tagged_and_carries_its_fonts(name, file):
    assert looked_at.is_tagged(made(name, file))
    assert looked_at.fonts_not_embedded(made(name, file)) == []


@every
@setting
def test_no_word_lies_on_another_and_none_beyond_the_margin(name, file):
    for number, sheet in enumerate(sheets(name, file), 1):
        assert sheet.words, number
        assert looked_at.on_each_other(sheet) == [], number
        margin = MARGIN_PT if file in OF_BLOCKS else 0
        assert looked_at.beyond(sheet, margin) == [], number


@pytest.mark.parametrize("file", OF_BLOCKS)
@setting
def test_the_foot_has_job_revision_hash_and_page_in_two_lines_and_nothing_runs_into_it(name, file):
    here = ground(name)
    pages = sheets(name, file)
    for number, sheet in enumerate(pages, 1):
        lines, crossing = looked_at.foot_lines(sheet, FOOT_PT)
        assert crossing == []
        assert len(lines) == 2, lines
        first = " ".join(lines[0])
        page, of = ("Page", "of") if here.language == "en" else ("Página", "de")
        assert first.startswith(f"{page} {number} {of} {len(pages)} ·")
        assert first.endswith(here.plan.inputs_hash[:12])
        revision = "facts" if here.language == "en" else "datos"
        assert f"{revision} {here.job.revision} ·" in first


@every
@pytest.mark.parametrize("name", ["twelve rooms, Spanish, A4", "nothing optional"])
def test_the_same_facts_give_the_same_bytes(name, file):
    house, wishes = SETTINGS[name]
    assert BY_FILE[file].make(house().ground(**wishes)) == made(name, file)


def strings(value):
    """Every text of a paper as it is set, pictures left out."""
    if isinstance(value, Own):
        yield value.text
    elif isinstance(value, str):
        yield told(value)
    elif isinstance(value, tuple):
        for one in value:
            yield from strings(one)
    elif is_dataclass(value):
        for field in fields(value):
            if field.name not in {"pen", "svg", "tone", "screen", "day"}:
                yield from strings(getattr(value, field.name))


def lost(one, text):
    """Words of a text that are nowhere: a row that goes on to the next page is taken out in two."""
    return [word for word in one.split() if bare(word) not in text]


def bare(text):
    return INVISIBLE.sub("", text)


@pytest.mark.parametrize("file", OF_BLOCKS)
@pytest.mark.parametrize("name", [one for one in SETTINGS if one != "other scripts"])
def test_every_text_of_a_paper_can_be_taken_out_whole(name, file):
    here = ground(name)
    (write,) = BY_FILE[file].make.args
    paper = written(write, here)
    with speaking(here.language, names_in(here.plan) | own_names(here)):
        texts = [own_first(one, here.units) for one in strings(paper)]
    pages = pypdfium2.PdfDocument(made(name, file))
    text = bare("".join(page.get_textpage().get_text_range() for page in pages))
    assert [one for one in texts if bare(one) not in text and lost(one, text)] == []


@every
def test_names_of_other_scripts_are_set_with_letters_that_have_a_shape(file):
    text = poppler_text("other scripts", file)
    assert "No font here" not in text
    assert "\ufffd" not in text
    fonts = looked_at.poppler("pdffonts", made("other scripts", file), "-")
    if file in {"labels.pdf", "slab-protection.pdf"}:
        return  # name no room
    if "庭の家" in text or "浴室" in text:
        assert "DroidSansFallback" in fonts
    if re.search("[\u0600-\u06ff\ufb50-\ufefc]", text):
        assert "NotoSansArabic" in fonts


def poppler_text(name, file):
    return looked_at.poppler("pdftotext", made(name, file), "-", "-")


def test_a_letter_without_a_shape_is_named_on_the_paper():
    house = houses.bare()
    here = house.ground(name="Lot 🏠 7")
    pages = pypdfium2.PdfDocument(BY_FILE["batch-log.pdf"].make(here))
    assert "U+1F3E0" in pages[0].get_textpage().get_text_range()


def test_a_moment_or_a_name_chooses_and_another_word_is_refused():
    days = chosen(("day",))
    assert {one.moment for one in days} == {"day"}
    assert [one.file for one in chosen(("punch-list", "batch-log"))] == [
        "batch-log.pdf", "punch-list.pdf",
    ]  # fmt: skip
    assert {one.moment for one in PAPERS} <= set(MOMENTS)
    assert len(BY_FILE) == len(PAPERS)
    with pytest.raises(Refused):
        chosen(("ledger",))
    only = office_files(ground("nothing optional"), ("batch-log",))
    assert list(only) == ["batch-log.pdf"]
