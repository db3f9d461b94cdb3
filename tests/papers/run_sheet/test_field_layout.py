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


def test_so_many_bands_that_the_map_would_be_an_inch_high_go_to_the_next_page_too():
    """48 bands of two sprayers once left it 100 pt: no letter or number on it could be read."""
    many = many_bands().fields[0]
    many = replace(many, bands=(*many.bands, *many.bands)[:48])
    layout = laid(replace(WORDS, points=(SHORT,) * 7), many_bands(), many)
    assert len(many.bands) == 48
    assert (layout.bands_apart, layout.ticks_apart) == (True, True)
    assert layout.map_height > 170
    assert layout.left_pt >= 0
    assert not laid(WORDS).bands_apart


@pytest.mark.parametrize(("remedies_pt", "apart"), [(80.0, False), (400.0, True)])
def test_where_remedies_fill_the_page_of_a_no_its_map_stands_on_the_next(remedies_pt, apart):
    stop = ("NOT AS IT STANDS", "Only with a helper who swaps full tanks.")
    layout = laid(replace(WORDS, stop=stop, ticks=(), why=(), remedies_pt=remedies_pt))
    assert layout.ticks_apart == apart
    assert layout.map_height > 170
