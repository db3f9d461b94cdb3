"""Houses drawn as SVG read back: rooms, openings, and a scale that is told or asked."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.pages import Look, sketched, svg_page
from tests.strategies.floors import House, houses

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes

looks = st.builds(
    Look,
    ratio=st.sampled_from([20.0, 48.0, 50.0, 75.0, 100.0]),
    printed=st.sampled_from(["", "", "SCALE: AS NOTED"]),
    bar=st.booleans(),
    dimensions=st.sampled_from(["m", "ft"]),
    arcs=st.sampled_from(["curve", "chords"]),
    glyphs=st.booleans(),
    unit=st.sampled_from(["mm", "in", "px"]),
    nested=st.booleans(),
)


def areas(house: House) -> list[float]:
    return sorted((x1 - x0) * (y1 - y0) for x0, y0, x1, y1 in map(house.box, house.cells))


def found(reading: Reading) -> list[float]:
    return sorted(room.polygon.shape.area for room in reading.floor.rooms)


def codes(reading: Reading) -> set[str]:
    return {note.code for note in (*reading.mended, *reading.left, *reading.asks)}


@settings(max_examples=25)
@given(houses(most=2), looks)
def test_any_house_with_dimensions_reads_back(house: House, look: Look) -> None:
    """Within 1 %: feet and inches are lettered to the inch, over sides of two metres and more."""
    reading = read_bytes(svg_page(sketched(house, look), look))
    if reading.scale_m_per_unit is None:  # two lettered inches may differ by more than 1 %
        assert look.dimensions == "ft"
        return
    slack = 1e-3 if look.dimensions == "m" else 0.03
    assert found(reading) == pytest.approx(areas(house), rel=slack)
    assert len(reading.floor.openings) == len(house.passages)
    assert len(reading.exits) == 1


@settings(max_examples=15)
@given(houses(most=2), st.sampled_from([(50.0, "1:50"), (48.0, '1/4" = 1\'-0"')]), st.booleans())
def test_a_printed_scale_alone_is_taken_and_its_check_asked(
    house: House, scale: tuple[float, str], chords: bool
) -> None:
    look = Look(ratio=scale[0], printed=scale[1], arcs="chords" if chords else "curve")
    reading = read_bytes(svg_page(sketched(house, look), look))
    assert found(reading) == pytest.approx(areas(house), rel=1e-3)
    assert "check-scale" in codes(reading)
    assert reading.scale_m_per_unit == pytest.approx(scale[0] / 1000)


@pytest.fixture(scope="module")
def house() -> House:
    from tests.strategies.floors import OUTSIDE, Passage

    doors = (
        Passage(((0, 0), (1, 0)), "door", 4.0, 1.0, 4.1, 1.9),
        Passage(((1, 0), OUTSIDE), "outside", 5.0, -0.1, 5.9, 0.0),
    )
    return House((4.0, 3.0), (3.5,), 0.1, doors)


def read(house: House, look: Look, scale: float | None = None) -> Reading:
    return read_bytes(svg_page(sketched(house, look), look), scale_m_per_unit=scale)


def test_a_bar_alone_is_offered_and_the_scale_asked(house: House) -> None:
    reading = read(house, Look(bar=True))
    assert reading.scale_m_per_unit is None
    [ask] = [note for note in reading.asks if note.code == "scale"]
    assert "0-1-2-4 metres tells 0.05 m a unit" in ask.what
    assert len(reading.floor.rooms) == 2


def test_a_bar_and_a_printed_scale_that_agree_are_taken(house: House) -> None:
    reading = read(house, Look(bar=True, printed="M 1:50"))
    assert reading.scale_m_per_unit == pytest.approx(0.05, rel=1e-6)
    assert "check-scale" not in codes(reading)


def test_a_resized_page_shows_both_figures(house: House) -> None:
    reading = read(house, Look(bar=True, printed="M 1:50", resized=0.7071))
    assert reading.scale_m_per_unit is None
    [ask] = [note for note in reading.asks if note.code == "scale"]
    assert "0.05 m a unit" in ask.what
    assert "0.03535 m a unit" in ask.what


def test_a_page_saved_at_half_size_is_caught_by_its_doors(house: House) -> None:
    reading = read(house, Look(printed="1:50", resized=0.5))
    assert reading.scale_m_per_unit is None
    assert "scale-doubted" in codes(reading)


def test_bare_millimetres_are_taken_by_custom_and_told(house: House) -> None:
    reading = read(house, Look(ratio=100.0, dimensions="mm"))
    assert reading.scale_m_per_unit == pytest.approx(0.1, rel=1e-3)
    assert "unit-custom" in codes(reading)


def test_pixels_without_anything_are_asked_for(house: House) -> None:
    reading = read(house, Look(unit="px"))
    assert reading.scale_m_per_unit is None
    assert "scale" in {note.code for note in reading.asks}
    assert len(reading.floor.rooms) == 2


def test_a_printed_scale_over_pixels_is_offered_both_ways(house: House) -> None:
    reading = read(house, Look(unit="px", printed="1:50"))
    [ask] = [note for note in reading.asks if note.code == "scale"]
    assert "96 units to the inch" in ask.what
    assert "72 units to the inch" in ask.what


def test_the_users_scale_overrules_and_is_compared(house: House) -> None:
    reading = read(house, Look(bar=True, dimensions="m"), scale=0.06)
    assert reading.scale_m_per_unit == 0.06
    assert "scale-doubted" in codes(reading)


PAGE = (
    '<svg xmlns="http://www.w3.org/2000/svg" xmlns:x="http://www.w3.org/1999/xlink" '
    'width="100mm" height="100mm" viewBox="0 0 100 100">%s</svg>'
)
BOX = '<g id="walls"><path %s stroke="#000" fill="none" d="M10 10H90V90H10Z"/></g>'
MARK = '<text x="50" y="50">SCALE 1:100</text>'


def drawn(inner: str) -> Reading:
    return read_bytes((PAGE % (inner + MARK)).encode())


def test_a_box_is_a_room_of_its_size() -> None:
    assert found(drawn(BOX % "")) == pytest.approx([64.0])


@pytest.mark.parametrize(
    "hidden",
    [
        'display="none"',
        'visibility="hidden"',
        'style="opacity:0"',
        'style="stroke:#fff"',
        'stroke-opacity="0"',
        'style="stroke-width:0"',
        'class="gone"',
    ],
)
def test_what_is_not_shown_is_not_drawn(hidden: str) -> None:
    assert found(drawn("<style>.gone{display:none}</style>" + BOX % hidden)) == []


def test_symbols_nested_views_and_turned_groups_end_where_they_are_seen() -> None:
    symbol = f'<symbol id="s" viewBox="0 0 200 200">{BOX % ""}</symbol>'
    view = 'x="5" y="5" width="50%" height="50%" viewBox="0 0 100 100"'
    inner = f'<svg {view}><use x:href="#s"/></svg>'
    turned = f'<g transform="rotate(90 50 50) translate(0,-3)">{inner}</g>'
    assert found(drawn(symbol + turned)) == pytest.approx([4.0])  # 80 of 200 of 50 mm, at 1:100


def test_a_dark_page_has_light_walls() -> None:
    dark = '<rect width="100%" height="100%" fill="#222"/>'
    light = '<path class="wall" d="M10 10H90V90H10Z" stroke="#eee" fill="none"/>'
    assert found(drawn(dark + light)) == pytest.approx([64.0])


def test_walls_filled_without_a_stroke_close_a_room() -> None:
    walls = "".join(
        f'<rect class="wall" x="{x}" y="{y}" width="{w}" height="{h}" fill="#333"/>'
        for x, y, w, h in ((10, 10, 80, 1), (10, 89, 80, 1), (10, 10, 1, 80), (89, 10, 1, 80))
    )
    assert found(drawn(walls)) == pytest.approx([78.0**2 / 100])


def test_dashed_lines_are_known_as_such() -> None:
    dashed = '<path class="wall" stroke="#000" stroke-dasharray="2 1" d="M50 10V90"/>'
    assert found(drawn(BOX % "" + dashed)) == pytest.approx([64.0])
