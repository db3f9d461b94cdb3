"""The drawing's unit: the header believed, doubted, overruled, or asked for."""

from dataclasses import replace
from itertools import pairwise

import pytest

from farwall.readers.lines.scales import METRES
from farwall.readers.lines.sheet import Calibration, Measure, Role, Sheet, Stroke, Swing, Words
from farwall.readers.lines.unit import find_unit

HEADER = {"in": 1, "ft": 2, "mm": 4, "cm": 5, "m": 6, "": 0}


def box(wide: float, high: float) -> tuple[Stroke, ...]:
    corners = [(0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high), (0.0, 0.0)]
    return tuple(Stroke(a, b, "A-WALL", Role.WALL) for a, b in pairwise(corners))


def swing(radius: float, x: float = 0.0) -> Swing:
    return Swing((x, 0), ((x + radius, 0), (x, radius)), radius, 90.0, "A-DOOR", Role.OPENING)


@pytest.mark.parametrize("unit", METRES)
def test_a_plausible_header_is_believed(unit: str) -> None:
    sheet = Sheet(strokes=box(12 / METRES[unit], 9 / METRES[unit]), header_code=HEADER[unit])
    found = find_unit(sheet)
    assert (found.unit, found.scale, found.mended, found.asks) == (unit, METRES[unit], (), ())


def test_lettered_dimensions_overrule_the_header() -> None:
    sheet = Sheet(strokes=box(696, 564), measures=(Measure(696, "58'-0\""),), header_code=4)
    found = find_unit(sheet)
    assert (found.unit, found.header, found.scale) == ("in", "mm", 0.0254)
    assert [note.code for note in found.mended] == ["unit-overruled"]
    assert "header says millimetres" in found.mended[0].what
    assert "1 lettered dimension fit" in found.mended[0].what


def test_door_codes_beside_their_swings_overrule_the_header() -> None:
    codes = (Words("2668", (10, 10), 5, 0, "A-TEXT"),)
    found = find_unit(Sheet(strokes=box(696, 564), swings=(swing(30),), words=codes, header_code=4))
    assert (found.unit, found.header) == ("in", "mm")


def test_stated_room_sizes_overrule_the_header() -> None:
    label = (Words("4.00 m x 3.00 m", (200, 150), 10, 0, "A-TEXT"),)
    found = find_unit(Sheet(strokes=box(400, 300), words=label, header_code=1))
    assert (found.unit, found.header) == ("cm", "in")


def test_stated_sizes_without_a_unit_tell_it_when_they_differ_from_the_drawing() -> None:
    label = (Words("4.00 x 3.00", (2000, 1500), 100, 0, "A-TEXT"),)
    found = find_unit(Sheet(strokes=box(4000, 3000), words=label, header_code=1))
    assert (found.unit, found.header) == ("mm", "in")


def test_a_stated_size_that_fits_one_side_only_says_nothing() -> None:
    label = (Words("4.00 m x 5.00 m", (200, 150), 10, 0, "A-TEXT"),)
    found = find_unit(Sheet(strokes=box(400, 300), words=label, header_code=5))
    assert (found.unit, found.mended) == ("cm", ())


@pytest.mark.common_practice
def test_swings_alone_tell_inches_when_the_header_cannot_be_no_source() -> None:
    """Leaves of 28 to 36 are inches on a plan 696 units wide: common practice, no source."""
    swings = tuple(swing(r, 50.0 * r) for r in (28, 30, 36))
    found = find_unit(Sheet(strokes=box(696, 564), swings=swings, header_code=4))
    assert (found.unit, [n.code for n in found.mended]) == ("in", ["unit-overruled"])


@pytest.mark.parametrize(
    ("text", "length", "unit"),
    [("3.50", 3500, "mm"), ("3,50", 350, "cm"), ("3500", 3.5, "m"), ("12.5", 150, "in")],
)
def test_bare_numbers_that_differ_from_the_drawn_length_tell_both_units(
    text: str, length: float, unit: str
) -> None:
    wide = 12 / METRES[unit]
    found = find_unit(Sheet(strokes=box(wide, wide), measures=(Measure(length, text),)))
    assert (found.unit, [note.code for note in found.mended]) == (unit, ["unit-found"])


def test_a_bare_number_equal_to_the_drawn_length_tells_nothing() -> None:
    found = find_unit(Sheet(strokes=box(12, 9), measures=(Measure(3.5, "3.5"),)))
    assert found.scale is None


def test_evidence_that_contradicts_itself_is_not_followed() -> None:
    measures = (Measure(100, "100 mm"), Measure(100, '100"'))
    found = find_unit(Sheet(strokes=box(12000, 9000), measures=measures, header_code=4))
    assert found.unit == "mm"


@pytest.mark.parametrize("header", ["", "mm"])
def test_nothing_to_go_by_asks_for_the_scale(header: str) -> None:
    found = find_unit(
        Sheet(strokes=box(120, 90) if header else box(12, 9), header_code=HEADER[header])
    )
    assert (found.scale, found.unit) == (None, "")
    assert [note.code for note in found.asks] == ["scale"]
    assert "--scale" in found.asks[0].what


def test_the_users_word_wins_and_doubt_is_told() -> None:
    sheet = Sheet(strokes=box(696, 564), measures=(Measure(696, "58'-0\""),), header_code=4)
    found = find_unit(sheet, scale_m_per_unit=0.01)
    assert (found.scale, found.unit) == (0.01, "cm")
    assert [note.code for note in found.mended] == ["scale-told", "scale-doubted"]
    assert [n.code for n in find_unit(sheet, scale_m_per_unit=0.0254).mended] == ["scale-told"]


def test_an_empty_sheet_asks() -> None:
    assert find_unit(Sheet()).scale is None


def test_header_and_drawing_that_differ_are_shown_with_both_figures() -> None:
    sheet = Sheet(strokes=box(696, 564), measures=(Measure(696, "58'-0\""),), header_code=4)
    (note,) = find_unit(sheet).mended
    assert "0.001 m a unit" in note.what
    assert "0.0254 m a unit" in note.what


def test_a_dimension_that_lies_is_told_with_its_place_and_not_followed() -> None:
    honest = tuple(Measure(length, f"{length / 1000:.2f} m") for length in (4000, 3000, 2500))
    lie = Measure(3000, "4.00 m", (1500, -300))
    found = find_unit(Sheet(strokes=box(12000, 9000), measures=(*honest, lie), header_code=4))
    assert (found.unit, found.scale) == ("mm", 0.001)
    (note,) = found.left
    assert (note.code, note.where) == ("dimension-doubted", (1.5, -0.3))
    assert "4.00 m" in note.what
    assert "3.000 m" in note.what


def test_a_lone_dimension_that_lies_does_not_overrule_a_header() -> None:
    lie = (Measure(3000, "4.00 m"),)
    found = find_unit(Sheet(strokes=box(12000, 9000), measures=lie, header_code=4))
    assert (found.unit, [note.code for note in found.left]) == ("mm", ["dimension-doubted"])


def printed(*scales: tuple[str, float]) -> Sheet:
    """A sheet in points with further calibrations."""
    calibrations = tuple(Calibration(*one) for one in scales)
    return Sheet(strokes=box(680, 510), calibrations=calibrations, format="PDF")


def test_a_calibration_scales_a_sheet_that_is_in_no_unit() -> None:
    found = find_unit(printed(("the printed scale 1:50", 0.0176389)))
    assert (found.scale, found.unit, found.asks) == (0.0176389, "", ())
    assert "the printed scale 1:50" in found.mended[0].what


@pytest.mark.parametrize(
    ("second", "told"), [(1.009, []), (1.012, ["scales-differ"]), (0.5, ["scales-differ"])]
)
def test_two_calibrations_more_than_1_percent_apart_are_both_shown(
    second: float, told: list[str]
) -> None:
    """Neither outweighs the other: the scale is asked for, with both figures."""
    found = find_unit(printed(("the printed scale", 0.02), ("the drawn bar", 0.02 * second)))
    assert [note.code for note in found.mended if note.code == "scales-differ"] == told
    assert (found.scale is None) == bool(told)
    for note in [*found.asks, *(n for n in found.mended if n.code == "scales-differ")]:
        assert "0.02 m a unit" in note.what
        assert f"{0.02 * second:.4g} m a unit" in note.what


def test_dimensions_settle_between_two_calibrations_and_the_other_is_told() -> None:
    sheet = printed(("the printed scale", 0.02), ("the drawn bar", 0.021))
    measures = tuple(Measure(length / 0.02, f"{length:.2f} m") for length in (4, 5, 6, 7))
    found = find_unit(replace(sheet, measures=measures))
    assert found.scale == 0.02
    assert [note.code for note in found.mended] == ["unit-found", "scales-differ"]
    assert "5.0 % apart" in found.mended[1].what


def test_the_users_word_is_doubted_at_more_than_1_percent() -> None:
    sheet = printed(("the printed scale", 0.02))
    assert [n.code for n in find_unit(sheet, scale_m_per_unit=0.0201).mended] == ["scale-told"]
    doubted = find_unit(sheet, scale_m_per_unit=0.0203)
    assert (doubted.scale, doubted.mended[1].code) == (0.0203, "scale-doubted")


@pytest.mark.common_practice
def test_numbers_of_four_digits_are_millimetres_and_that_is_told_no_source() -> None:
    """Common practice of metric drawings, no source."""
    measures = tuple(Measure(length / 20, str(length)) for length in (3500, 4200, 2750))
    found = find_unit(Sheet(strokes=box(680, 510), measures=measures, format="PDF"))
    assert found.scale == pytest.approx(0.02)
    assert "taken for millimetres" in found.mended[0].what


def test_a_scaled_sheet_keeps_its_evidence() -> None:
    sheet = replace(printed(("the bar", 0.02)), measures=(Measure(5, "5 m", (1, 2)),)).scaled(2)
    assert sheet.calibrations == (Calibration("the bar", 0.01),)
    assert sheet.measures == (Measure(10, "5 m", (2, 4)),)


def test_leaves_too_wide_for_any_door_are_told() -> None:
    swings = tuple(swing(4.0, 10.0 * n) for n in range(3))
    measures = (Measure(3, "3.00 m"), Measure(4, "4.00 m"))
    found = find_unit(Sheet(strokes=box(40, 30), swings=swings, measures=measures, header_code=6))
    assert (found.unit, [note.code for note in found.mended]) == ("m", ["scale-doubted"])


def test_room_sizes_seen_through_doorways_do_not_overrule_a_header() -> None:
    """Two sizes of 1.2 m over spans of 3.8 m: told, not followed."""
    words = tuple(Words("1.20 m x 1.20 m", (190.0, y), 10, 0, "0") for y in (190.0, 191.0))
    found = find_unit(Sheet(strokes=box(380, 380), words=words, header_code=5))
    assert (found.unit, found.scale) == ("cm", 0.01)
    assert [note.code for note in found.mended] == ["scales-differ"]


@pytest.mark.parametrize(
    ("code", "unit", "metres"),
    [
        (10, "yd", 0.9144),
        (14, "dm", 0.1),
        (21, "ft", 0.3048),
        (22, "in", 0.0254),
        (23, "yd", 0.9144),
    ],
)
def test_headers_of_rarer_units_are_believed_before_the_swings_are_asked(
    code: int, unit: str, metres: float
) -> None:
    """A leaf of 0.9 m is 0.98 yards, which read as metres made a floor a fifth too large."""
    drawn = Sheet(
        strokes=box(12 / metres, 9 / metres), swings=(swing(0.9 / metres),), header_code=code
    )
    found = find_unit(drawn)
    assert (found.scale, found.unit) == (metres, unit)
    assert (found.mended, found.asks) == ((), ())
