"""A page is not begun for its last line: lines stand closer where one would go past the foot."""

from datetime import datetime

import pypdfium2
import pytest
from tests.midday import EXAMPLES, day_of

from farwall.job.acid_day.fumes.caution import with_fumes
from farwall.papers.run_sheet import run_sheet_pdf
from farwall.papers.run_sheet.sheet import _compiled, sheet_data
from farwall.readers.job_json import read_job

LEAST = 80
"""Words of a page that is worth a sheet; some thirty of them stand at its foot."""


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("house", ["quince-street", "sorrel-rise"])
def test_no_page_of_a_full_sheet_holds_but_a_sentence(house, language):
    plan = day_of(house)
    made = run_sheet_pdf(plan, job_name=plan.job, language=language)
    document = pypdfium2.PdfDocument(made)
    words = [len(page.get_textpage().get_text_range().split()) for page in document]
    document.close()
    assert len(words) > 15
    assert [n + 1 for n, count in enumerate(words) if count < LEAST] == []


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("house", ["quince-street", "sorrel-rise"])
def test_pages_of_which_one_is_sure_come_out_as_if_they_had_been_measured(house, language):
    plan = day_of(house)
    data = sheet_data(plan, job_name=plan.job, units="us", language=language)
    data |= {"qr": "", "screen": ""}
    fields = data["fields"]
    assert {True, False} == {field["sure"] for field in fields}
    measured = data | {"fields": [field | {"sure": False} for field in fields]}
    moment = datetime.fromisoformat(plan.starts_at)
    assert _compiled(data, moment) == _compiled(measured, moment)


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_great_field_has_its_map_large_and_its_ticks_on_the_page_after(language):
    """Sorrel Rise's last field has 22 and 25 bands and twelve walls: its map was an inch wide
    above them."""
    plan = day_of("sorrel-rise")
    great = [f for f in plan.fields if f.area_m2 == max(one.area_m2 for one in plan.fields)]
    data = sheet_data(plan, job_name=plan.job, units="us", language=language)
    apart = [field for field in data["fields"] if field["ticks_apart"]]
    assert len(apart) == len(great) == 2
    assert all(not field["beside"] for field in apart)
    made = run_sheet_pdf(plan, job_name=plan.job, units="us", language=language)
    document = pypdfium2.PdfDocument(made)
    pages = [page.get_textpage().get_text_range() for page in document]
    document.close()
    for field in apart:
        first, then = (n for n, page in enumerate(pages) if page.startswith(field["kicker"]))
        assert then == first + 1
        at = [mark["at"] for row in field["ticks"] for wall in row for mark in wall["marks"]]
        assert len(at) > 20
        assert not any(one in pages[first] for one in at)
        assert all(one in pages[then] for one in at)


TITLES = {"en": ("The day", "Six moments"), "es": ("El día", "Seis momentos")}


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize(("house", "day_pages"), [("thistle-end", 2), ("fennel-court", 1)])
def test_what_is_done_before_is_one_page_and_the_day_no_page_more(house, day_pages, language):
    """With the longest cautions that a plan is given: those of its fumes.

    Thistle End's second coat waits for the morning: a tape for each day, the table overleaf.
    """
    job = read_job(EXAMPLES / house / "job.json")
    plan = with_fumes(day_of(house), job, None)
    made = run_sheet_pdf(plan, job_name=job.name, units="us", language=language)
    document = pypdfium2.PdfDocument(made)
    pages = [page.get_textpage().get_text_range() for page in document]
    document.close()
    day, moments = TITLES[language]
    assert pages[1].startswith(day)
    assert pages[1 + day_pages].startswith(moments)


def test_a_field_that_must_be_planned_again_gives_nobody_bands_or_refills():
    """Thistle End's great room in the low sun: why not, what would help; where, on the page after.

    On the same page its map was an inch wide.
    """
    plan = day_of("thistle-end")
    made = run_sheet_pdf(plan, job_name=plan.job, units="us")
    document = pypdfium2.PdfDocument(made)
    pages = [page.get_textpage().get_text_range() for page in document]
    document.close()
    again = [n for n, page in enumerate(pages) if "NOT AS IT STANDS" in page]
    assert len(again) == 2
    assert again[1] == again[0] + 1
    assert ["What would make it possible" in pages[n] for n in again] == [True, False]
    assert "leave to" in pages[again[1]]
    for n in again:
        assert "clock" not in pages[n]
        assert "Start only with" not in pages[n]
        assert "full tank" not in pages[n].lower()
        assert pages[n + 1].startswith("Field ")
