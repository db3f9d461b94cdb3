"""The run sheet in Spanish: every word that is set, but for names."""

from __future__ import annotations

import pytest
from tests.papers.invented_plan import small_house

from farwall.papers.floor_drawing import floor_svg
from farwall.papers.lettering import clipped, text_width, wrap
from farwall.papers.plan_files import files_of
from farwall.papers.run_sheet.before_page import before_page
from farwall.papers.run_sheet.buying import Buying
from farwall.papers.run_sheet.day_page import day_page
from farwall.papers.run_sheet.field_page import field_pages
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.run_sheet.sheet import run_sheet_pdf
from farwall.papers.wall_clock import wall_clock
from farwall.papers.words import listed, names_in
from farwall.phrasebook import speaking
from farwall.web.pages.told import reads_english

PLAN = small_house()
OF_THE_PLAN = ("closet sample", "Added acid: none planned")
"""Words that only the invented plan says, never the core."""
SIZE = paper_for("us", None)


def said(plan=PLAN):
    buying = Buying.of(plan)
    with speaking("es", names_in(plan)):
        return in_language({
            "before": before_page(plan, buying, job_name="Lot 7", units="us", notes="Call first."),
            "day": day_page(plan, job_name="Lot 7", units="us", size=SIZE),
            "fields": field_pages(plan, buying, units="us", size=SIZE),
        })  # fmt: skip


def texts(value):
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for key, one in value.items():
            if key not in {"notes", "job", "phrases"}:
                yield from texts(one)
    elif isinstance(value, list | tuple):
        for one in value:
            yield from texts(one)


def test_no_sentence_of_the_sheet_is_left_in_english():
    told = [one for one in texts(said()) if not one.startswith("<svg")]
    assert len(told) > 100
    left = [one for one in told if reads_english(one)]
    assert [one for one in left if not any(own in one for own in OF_THE_PLAN)] == []


def test_the_words_of_the_user_stay():
    assert said()["before"]["notes"] == "Call first."
    assert said()["day"]["job"] == "Lot 7"


def test_the_emergency_line_and_the_cautions_are_whole():
    sheet = said()
    assert sheet["fields"][0]["emergency"] == [
        "¿Se lastimó? Cruce derecho.", "El piso no importa.",
    ]  # fmt: skip
    assert any("El ácido" in one or "agua" in one for one in sheet["before"]["morning"])


def test_what_is_measured_is_what_is_set():
    with speaking("es"):
        assert text_width("stop line", 9) == text_width("línea de parada", 9)
        assert wrap("sprayed, keep off", 500, 9) == ("rociado, no pisar",)
        assert clipped("way out", 500, 9) == "salida"
    assert clipped("way out", 500, 9) == "way out"


def test_names_in_a_row_and_times_are_said_in_spanish():
    clock = wall_clock("2026-06-05T08:00:00-05:00", last_min=3000, units="us")
    with speaking("es"):
        assert listed(["Hall", "Bath", "Den"]) == "Hall, Bath y Den"
        assert clock.time(1500) == "sáb. 9:00 a. m."
        assert clock.span(0, 30) == "8:00 a 8:30 a. m."
    assert listed(["Hall", "Bath"]) == "Hall and Bath"


def test_a_drawing_says_its_words_in_spanish_and_keeps_its_names():
    with speaking("es", names_in(PLAN)):
        drawn = floor_svg(PLAN, units="us")
    assert "salida" in drawn
    assert "way out" not in drawn
    assert any(room.label.split()[0] in drawn for room in PLAN.inputs.floor.rooms)


def test_the_pdf_is_another_and_the_same_each_time():
    english = run_sheet_pdf(PLAN, job_name="Lot 7")
    spanish = run_sheet_pdf(PLAN, job_name="Lot 7", language="es")
    assert spanish[:4] == b"%PDF"
    assert spanish != english
    assert spanish == run_sheet_pdf(PLAN, job_name="Lot 7", language="es")


@pytest.mark.parametrize("name", ["floor.svg", "moments.svg"])
def test_files_of_a_plan_are_in_english_unless_asked(name):
    assert b"l\xc3\xadnea de parada" not in files_of(PLAN, {}, units="us")[name]
