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
@pytest.mark.parametrize(
    ("house", "told"), [("quince-street", "sure"), ("sorrel-rise", "sure"), ("sorrel-rise", "over")]
)
def test_pages_of_which_one_is_sure_come_out_as_if_they_had_been_measured(house, told, language):
    plan = day_of(house)
    data = sheet_data(plan, job_name=plan.job, units="us", language=language)
    data |= {"qr": "", "screen": ""}
    fields = data["fields"]
    assert {True, False} == {field[told] for field in fields}
    measured = data | {"fields": [field | {told: False} for field in fields]}
    moment = datetime.fromisoformat(plan.starts_at)
    assert _compiled(data, moment) == _compiled(measured, moment)


TITLES = {"en": ("The day", "Six moments"), "es": ("El día", "Seis momentos")}


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("house", ["thistle-end", "fennel-court"])
def test_what_is_done_before_is_one_page_and_the_day_no_page_more(house, language):
    """With the longest cautions that a plan is given: those of its fumes."""
    job = read_job(EXAMPLES / house / "job.json")
    plan = with_fumes(day_of(house), job, None)
    made = run_sheet_pdf(plan, job_name=job.name, units="us", language=language)
    document = pypdfium2.PdfDocument(made)
    pages = [page.get_textpage().get_text_range() for page in document]
    document.close()
    day, moments = TITLES[language]
    assert pages[1].startswith(day)
    assert pages[2].startswith(moments)
