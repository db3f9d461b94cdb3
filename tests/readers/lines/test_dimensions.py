"""Dimensions drawn as loose strokes: found by number and marks, whatever the unit."""

from dataclasses import replace

import pytest

from farwall.readers.lines.dimensions import loose_dimensions, without_dimensions
from farwall.readers.lines.sheet import Role, Sheet, Stroke, Words

Ends = tuple[float, float, float, float]
LINE: list[Ends] = [(0, 0, 4, 0)]
TICKS: list[Ends] = [(-0.1, -0.1, 0.1, 0.1), (3.9, -0.1, 4.1, 0.1)]
HEADS: list[Ends] = [(0, 0, 0.2, 0.05), (0, 0, 0.2, -0.05), (4, 0, 3.8, 0.05), (4, 0, 3.8, -0.05)]
WITNESSES: list[Ends] = [(0, 0.8, 0, -0.2), (4, 0.8, 4, -0.2)]
WALLS: list[Ends] = [(0, 3, 0, 0), (4, 3, 4, 0)]


def strokes(*groups: list[Ends], role: Role = Role.OTHER) -> tuple[Stroke, ...]:
    return tuple(Stroke(e[:2], e[2:], "0", role) for group in groups for e in group)


def drawn(*groups: list[Ends], text: str = "4.00 m") -> Sheet:
    words = (Words(text, (2.0, 0.2), 0.2, 0.0, "0"),)
    return Sheet(strokes=strokes(*groups), words=words)


@pytest.mark.parametrize("marks", [[TICKS], [HEADS], [WITNESSES], [TICKS, WITNESSES]])
@pytest.mark.parametrize("factor", [0.001, 1.0, 39.37])
def test_a_line_with_marks_and_a_number_is_a_dimension(
    marks: list[list[Ends]], factor: float
) -> None:
    sheet = drawn(LINE, *marks).scaled(factor)
    (measure,) = loose_dimensions(sheet).measures
    assert (measure.text, measure.length) == ("4.00 m", pytest.approx(4 * factor))
    assert measure.at == pytest.approx((2 * factor, 0))
    rest, count = without_dimensions(sheet)
    assert (len(rest.strokes), count) == (0, 1)


def test_a_chain_gives_each_number_its_own_length() -> None:
    ticks: list[Ends] = [(x - 0.1, -0.1, x + 0.1, 0.1) for x in (0.0, 1.5, 4.0)]
    words = (Words("1.50 m", (0.75, 0.2), 0.2, 0, "0"), Words("2.50 m", (2.7, 0.2), 0.2, 0, "0"))
    found = loose_dimensions(Sheet(strokes=strokes(LINE, ticks), words=words))
    assert [(m.text, m.length) for m in found.measures] == [
        ("1.50 m", pytest.approx(1.5)),
        ("2.50 m", pytest.approx(2.5)),
    ]


def test_a_wall_beside_a_number_is_no_dimension() -> None:
    """The walls at its ends do not run past it."""
    outline: list[Ends] = [(0, 0, 4, 0), (4, 0, 4, 3), (4, 3, 0, 3), (0, 3, 0, 0)]
    assert loose_dimensions(drawn(outline)).measures == ()
    assert loose_dimensions(drawn(LINE, WALLS)).measures == ()


def test_a_doors_size_beside_square_lines_is_none() -> None:
    assert loose_dimensions(drawn(LINE, WITNESSES, text="2668")).measures == ()
    assert len(loose_dimensions(drawn(LINE, TICKS, text="2668")).measures) == 1


def test_words_that_are_no_length_make_none() -> None:
    assert loose_dimensions(drawn(LINE, TICKS, text="KITCHEN")).measures == ()
    assert loose_dimensions(replace(drawn(LINE, TICKS), words=())).measures == ()


@pytest.mark.parametrize("role", [Role.OPENING, Role.FIXTURE, Role.HEADER])
def test_layers_of_doors_and_casework_hold_none(role: Role) -> None:
    sheet = replace(drawn(), strokes=strokes(LINE, TICKS, role=role))
    assert without_dimensions(sheet) == (sheet, 0)
