"""The real workshop: one hall of open strokes, its scale a drawn bar, its label a glyph each.

Source: workshop_graphic_scale.svg (tests/published/data/plans/README.md, MIT). The bar runs from
0 to 48 feet over 439.468 units of the page (x from -36.96 to 402.508 in the file), which is
48 x 0.3048 / 439.468 = 0.033291 m a unit; a quarter arc of 27.467 units is then a leaf of 0.914 m,
36 inches.
"""

import lzma
from pathlib import Path

import pytest

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.lines.bars import find_bars
from farwall.readers.svg.gather import gather
from farwall.readers.svg.tree import open_tree

FILE = Path(__file__).parent / "data" / "plans" / "workshop_graphic_scale.svg.xz"
M_PER_UNIT = 48 * 0.3048 / (402.508 + 36.96)


@pytest.fixture(scope="module")
def data() -> bytes:
    return lzma.decompress(FILE.read_bytes())


@pytest.fixture(scope="module")
def reading(data: bytes) -> Reading:
    return read_bytes(data)


def test_its_scale_is_asked_and_not_guessed(reading: Reading) -> None:
    assert reading.scale_m_per_unit is None
    assert reading.length_unit == ""
    assert "scale" in {note.code for note in reading.asks}


def test_the_bar_is_offered_with_its_figure(reading: Reading) -> None:
    [ask] = [note for note in reading.asks if note.code == "scale"]
    assert "0-16-32-48 feet" in ask.what
    assert "--scale 0.03329" in ask.what
    assert "0.91 m" in ask.what


def test_the_bar_is_measured_within_a_thousandth(data: bytes) -> None:
    [bar] = find_bars(gather(open_tree(data)).sheet)
    assert bar.m_per_unit == pytest.approx(M_PER_UNIT, rel=1e-3)


def test_letters_in_an_element_each_are_words(data: bytes) -> None:
    words = {words.text for words in gather(open_tree(data)).sheet.words}
    assert {"GRAPHIC SCALE", "FEET", "0", "16", "32", "48"} <= words


def test_all_its_swings_are_leaves_of_doors(data: bytes) -> None:
    radii = [s.radius * M_PER_UNIT for s in gather(open_tree(data)).sheet.swings]
    assert len(radii) == 12
    assert all(0.7 < radius < 0.95 for radius in radii)


def test_what_is_no_wall_is_left_aside_and_told(reading: Reading) -> None:
    assert {"import-missing", "bar-aside", "grid-lines"} <= {note.code for note in reading.left}


def test_its_closed_rooms_come_out_at_the_scale_told(data: bytes) -> None:
    """The right one of the two rooms at the lower side: 537.188 to 669.271 by 398.137 to 488.228.

    Its right wall is drawn in pieces that lie up to 0.7 units aside of each other: half a percent.
    """
    reading = read_bytes(data, scale_m_per_unit=M_PER_UNIT)
    wanted = (669.271 - 537.188) * (488.228 - 398.137) * M_PER_UNIT**2
    areas = [room.polygon.shape.area for room in reading.floor.rooms]
    assert min(abs(area / wanted - 1) for area in areas) < 0.005
