"""How a field's page is laid out: large figures first, the map not much smaller for them."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.papers.invented_plan import many_bands, small_house

from farwall.papers.drawing.scene import storeys
from farwall.papers.run_sheet.field_layout import FieldWords, field_layout
from farwall.papers.run_sheet.margins import paper_for

PLAN = small_house()
GREAT = PLAN.fields[4]
SIZE = paper_for("us", None)
SHORT = "No refill in this field: one tank lasts."
WORDS = FieldWords(
    title="Great room", clock="8:08 to 8:25", thirsty="", stop=(), remedies_pt=0.0,
    points=(SHORT,), why=("Tightest edge 2.9 of 5.8 min.",), ticks=(((("1.0",) * 4),),),
)  # fmt: skip


def laid(words: FieldWords, plan=PLAN, field=GREAT):
    return field_layout(plan, field, words, size=SIZE, grounds=storeys(plan))


def test_a_few_words_stand_beside_the_map_under_large_figures():
    layout = laid(WORDS)
    assert (layout.beside, layout.large, layout.points_beside) == (True, True, True)


def test_words_that_do_not_fit_beside_go_below_and_the_figures_stay_large():
    """Two coats of one field, whose words differ by a line, are to look alike."""
    layout = laid(replace(WORDS, points=(SHORT,) * 7))
    assert (layout.beside, layout.large, layout.points_beside) == (True, True, False)
    assert layout.left_pt >= 0


def test_ticks_go_to_the_next_page_where_they_would_leave_a_small_map_only():
    ticks = tuple(((f"{n}.0' 11½\" (12.34)",) * 25,) for n in range(8))
    layout = laid(replace(WORDS, ticks=ticks), many_bands(), many_bands().fields[0])
    assert layout.ticks_apart
    assert layout.map_height > 170


def test_without_ticks_nothing_is_turned():
    layout = laid(replace(WORDS, ticks=()), many_bands(), many_bands().fields[0])
    assert not layout.ticks_apart


@given(st.integers(0, 40), st.integers(0, 12), st.integers(0, 30), st.floats(0, 250))
def test_what_is_said_to_fit_leaves_nothing_over(points, why, marks, remedies_pt):
    layout = laid(
        replace(
            WORDS, points=(SHORT,) * points, why=("x" * 90,) * why,
            ticks=(((("12.34",) * marks),),), remedies_pt=remedies_pt,
        )
    )  # fmt: skip
    assert layout.map_height >= 100
    assert layout.map_width <= SIZE.inner_width
    assert not layout.sure or layout.left_pt > 0
    assert layout.columns == 1 or not layout.beside


@pytest.mark.parametrize("field", PLAN.fields, ids=lambda field: field.id)
def test_every_field_of_the_small_house_has_large_figures(field):
    assert laid(WORDS, field=field).large
