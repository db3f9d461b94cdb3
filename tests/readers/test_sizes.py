"""Sizes as they are lettered: feet and inches, metres, areas, door codes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.sizes import door_code, length_m, rounding_m, stated_size

IN, FT = 0.0254, 0.3048


@pytest.mark.parametrize(
    ("text", "metres"),
    [
        ("58'-0\"", 58 * FT),
        ("3'-1\"", 37 * IN),
        ("13'8", 164 * IN),
        ("14'", 14 * FT),
        ("7'-6 1/2\"", 90.5 * IN),
        ("10' 3/4\"", 120.75 * IN),
        ('30"', 30 * IN),
        ('5 1/2"', 5.5 * IN),
        ("8′ 4″", 100 * IN),
        ("17.68 m", 17.68),
        ("3,45 m", 3.45),
        ("3450 mm", 3.45),
        ("345cm", 3.45),
        ("345", None),
        ("", None),
        ("R 3'", None),
        ("two feet", None),
    ],
)
def test_lengths(text: str, metres: float | None) -> None:
    assert length_m(text) == (None if metres is None else pytest.approx(metres))


@pytest.mark.parametrize(
    ("text", "sides"),
    [
        ("13'8 x 14'", (164 * IN, 168 * IN)),
        ("21'2 x 20'10", (254 * IN, 250 * IN)),
        ("5' x 8'1", (60 * IN, 97 * IN)),
        ("12'-0\" X 10'-6\"", (144 * IN, 126 * IN)),
        ("12' × 10'", (12 * FT, 10 * FT)),
        ("12' by 10'", (12 * FT, 10 * FT)),
        ("3.45 m x 4.20 m", (3.45, 4.2)),
        ("3600 x 4200", (3.6, 4.2)),
    ],
)
def test_stated_sides(text: str, sides: tuple[float, float]) -> None:
    size = stated_size(text)
    assert size is not None
    assert size.sides_m == pytest.approx(sides)


@pytest.mark.parametrize(
    ("text", "area"),
    [
        ("148 SQ FT", 148 * FT**2),
        ("1,543 sq. ft.", 1543 * FT**2),
        ("148 S.F.", 148 * FT**2),
        ("12.5 m2", 12.5),
        ("12.5 m²", 12.5),
        ("Area: 30 sqm", 30.0),
    ],
)
def test_stated_areas(text: str, area: float) -> None:
    size = stated_size(text)
    assert size is not None
    assert size.area_m2 == pytest.approx(area)


def test_numbers_without_a_unit_stay_bare() -> None:
    size = stated_size("3.5 x 4.2")
    assert size is not None
    assert (size.sides_m, size.area_m2, size.bare) == (None, None, (3.5, 4.2))


@pytest.mark.parametrize(
    "text",
    ["BEDROOM 2", "2668", "FLOOR PLAN", "MIN. 22x30 ATTIC ACCESS", '22"x 30" ATTIC ACCESS',
     '18" MIN. RAISED', "2 CAR GARAGE", "0 x 0", "x", "R-309.2"],
)  # fmt: skip
def test_no_sizes(text: str) -> None:
    assert stated_size(text) is None


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("text", "width", "height", "words"),
    [
        ("2668", 30, 80, ""),
        ("3068", 36, 80, ""),
        ("2468", 28, 80, ""),
        ("6068 S.G.D.", 72, 80, "S.G.D."),
        ("16070 O.H. DOOR", 192, 84, "O.H. DOOR"),
        ("5050 XO", 60, 60, "XO"),
        ("21068", 34, 80, ""),
        ("4010 XO", 48, 12, "XO"),
    ],
)
def test_door_codes_hold_their_size_no_source(
    text: str, width: int, height: int, words: str
) -> None:
    """Feet and inches of the width, then of the height; common practice on US plans, no source."""
    code = door_code(text)
    assert code is not None
    assert any(
        size == pytest.approx((width * IN, height * IN), abs=1e-6) for size in code.sizes_m
    ), code
    assert code.words == words


@pytest.mark.parametrize("text", ["2006 IRC, SECT", "99", "26", "BED 2668", "0000", "1234567"])
def test_no_door_codes(text: str) -> None:
    code = door_code(text)
    assert code is None or code.words  # digits with a note behind them fit no opening by width


@given(st.integers(1, 60), st.integers(0, 11), st.integers(1, 60), st.integers(0, 11))
def test_every_room_size_in_feet_and_inches_is_read(a: int, b: int, c: int, d: int) -> None:
    size = stated_size(f"{a}'{b} x {c}'{d}")
    assert size is not None
    assert size.sides_m == pytest.approx(((12 * a + b) * IN, (12 * c + d) * IN))


@given(st.text(max_size=40))
def test_any_text_is_a_size_or_none(text: str) -> None:
    size = stated_size(text)
    assert size is None or size.text
    code = door_code(text)
    assert code is None or code.sizes_m
    length = length_m(text)
    assert length is None or length >= 0


@pytest.mark.parametrize(
    ("text", "half"),
    [
        ("58'-0\"", 0.0127),
        ("4'-6 1/2\"", 0.00635),
        ("4.00 m", 0.005),
        ("350 cm", 0.005),
        ("3 m", 0.5),
    ],
)
def test_half_of_the_last_digit(text: str, half: float) -> None:
    assert rounding_m(text) == pytest.approx(half)
