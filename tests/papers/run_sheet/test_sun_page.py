"""The page of the sun: there when a sun was reckoned, its advice in the clock of the sheet."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pypdfium2
import pytest
from tests.job.sun_house import sun_job

from farwall.job.moments import moment_at
from farwall.job.plan_job import plan_job
from farwall.papers.drawing.moment_view import sun_at
from farwall.papers.drawing.scene import storeys
from farwall.papers.film_strip import film_strip_svg
from farwall.papers.run_sheet import run_sheet_pdf
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.run_sheet.sun_page import MOST_ADVICE, sun_page


@cache
def plan():
    return plan_job(sun_job(at="11:45"))


def test_the_page_shows_the_hours_and_says_what_to_do_on_the_clock_of_the_sheet():
    told = sun_page(plan(), units="us", size=paper_for("us", None))
    assert told["pictures"].startswith("<svg")
    assert "pm" in " ".join(told["advice"])
    assert "West room" in told["advice"][0]


def test_no_sun_no_page():
    bare = replace(plan(), sun=None)
    assert sun_page(bare, units="us", size=paper_for("us", None)) is None


def test_advice_beyond_what_fits_is_counted():
    sun = replace(plan().sun, advice=plan().sun.advice[:1] * (MOST_ADVICE + 3))
    told = sun_page(replace(plan(), sun=sun), units="us", size=paper_for("us", None))
    assert len(told["advice"]) == MOST_ADVICE + 1
    assert "3 more" in told["advice"][-1]


def test_the_moments_show_the_patch_of_their_half_hour():
    field = next(f for f in plan().fields if "west" in f.rooms and f.coat == "coat-2")
    at = field.start_min + 1
    shown = sun_at(plan(), storeys(plan())[0], at)
    assert any(one.room == "west" and one.from_min <= at < one.to_min for one in shown)
    strip = film_strip_svg(plan(), coat="coat-2", minutes=[at])
    assert "url(#strip-sun)" in strip
    assert "url(#strip-sun)" not in film_strip_svg(
        replace(plan(), sun=None), coat="coat-2", minutes=[at]
    )
    assert moment_at(plan(), "coat-2", at).field == field


def as_high_as_may_be(_scenes, *, width, height, **_):
    """Pictures that take all the height that they are given."""
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}"></svg>'


@pytest.mark.parametrize("units", ["us", "metric"])
@pytest.mark.parametrize("language", ["en", "es"])
def test_the_page_of_a_sun_that_tightens_nothing_is_one_page(language, units, monkeypatch):
    """Its last three lines once stood alone on a page of their own."""
    monkeypatch.setattr("farwall.papers.run_sheet.sun_page.sun_svg", as_high_as_may_be)
    quiet = replace(plan(), sun=replace(plan().sun, advice=()), so_far=None)
    made = run_sheet_pdf(quiet, job_name="Sun", units=units, language=language)
    document = pypdfium2.PdfDocument(made)
    pages = [page.get_textpage().get_text_range() for page in document]
    document.close()
    first, last = {"en": ("No edge of this plan", "lungs need"),
                   "es": ("Ninguna orilla", "pulmones")}[language]  # fmt: skip
    there = next(page for page in pages if first in page)
    assert last in " ".join(there.split())
