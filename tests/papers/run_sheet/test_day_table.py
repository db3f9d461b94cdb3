"""The table of fields on the day's page: what goes first where rooms' names lack room."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest
from tests.papers.office.grounds import planned

from farwall.papers.run_sheet.day_page import day_page
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.words import names_in
from farwall.phrasebook import speaking

LETTER = paper_for("us", None)


@cache
def page(language="en", inner_width=LETTER.inner_width, longer=""):
    """The day's page of the invented house; `longer` is put to every room's name."""
    _, plan = planned()
    rooms = plan.inputs.floor.rooms
    floor = replace(
        plan.inputs.floor, rooms=tuple(replace(one, name=f"{one.label}{longer}") for one in rooms)
    )
    plan = replace(plan, inputs=replace(plan.inputs, floor=floor))
    size = replace(LETTER, width=LETTER.width - LETTER.inner_width + inner_width)
    with speaking(language, names_in(plan)):
        return day_page(plan, job_name="A house", units="us", size=size)


def rows(told):
    return [row for coat in told["coats"] for row in coat["rows"]]


def test_on_a_wide_page_all_of_it_stands():
    told = page(inner_width=900.0)
    assert told["spans"]
    assert told["stops"]
    assert all("gal (" in row["volume"] for row in rows(told))


def test_stop_lines_go_first_then_the_second_unit_then_the_ends():
    widths = [900.0, 560.0, 440.0, 330.0]
    told = [page(inner_width=width) for width in widths]
    kept = [
        (one["stops"], all("(" in row["volume"] for row in rows(one)), one["spans"]) for one in told
    ]
    assert kept == sorted(kept, reverse=True)
    assert kept[0] == (True, True, True)
    assert kept[-1] == (False, False, False)
    assert all(ends or not both for _, both, ends in kept)
    assert all(both or not stops for stops, both, _ in kept)


def test_words_are_measured_in_the_language_of_the_page():
    """*necesita un ayudante* is wider than *needs a helper*: Spanish gives up a column sooner."""
    english = [page("en", width)["stops"] for width in range(440, 901, 46)]
    spanish = [page("es", width)["stops"] for width in range(440, 901, 46)]
    assert sum(spanish) < sum(english)


@pytest.mark.parametrize("language", ["en", "es"])
def test_longer_names_never_leave_more_columns(language):
    def kept(width, longer=""):
        told = page(language, width, longer)
        return [told["stops"], told["spans"], "(" in rows(told)[0]["volume"]]

    for width in range(400, 901, 100):
        assert kept(width) >= kept(width, " of the second storey")
