"""Houses drawn as PDF pages read back, whichever way the page is written."""

import zlib

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageDraw
from tests.pages import Look, content, file_of, pdf_file, pdf_page, sketched, stream
from tests.readers.svg.test_read import areas, codes, found
from tests.strategies.floors import OUTSIDE, House, Passage, houses

from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.hints import Hints
from farwall.readers.pdf.read import read_pdf

looks = st.builds(
    Look,
    ratio=st.sampled_from([20.0, 50.0, 100.0]),
    bar=st.booleans(),
    dimensions=st.just("m"),
    arcs=st.sampled_from(["curve", "chords"]),
    nested=st.booleans(),
    turn_deg=st.sampled_from([0, 90, 180, 270]),
)


@settings(max_examples=25)
@given(houses(most=2), looks)
def test_any_house_with_dimensions_reads_back(house: House, look: Look) -> None:
    reading = read_bytes(pdf_page(sketched(house, look), look))
    assert found(reading) == pytest.approx(areas(house), rel=1e-3)
    assert reading.scale_m_per_unit == pytest.approx(0.0254 / 72 * look.ratio, rel=1e-3)
    assert len(reading.floor.openings) == len(house.passages)
    assert len(reading.exits) == 1


@pytest.fixture(scope="module")
def house() -> House:
    doors = (
        Passage(((0, 0), (1, 0)), "door", 4.0, 1.0, 4.1, 1.9),
        Passage(((1, 0), OUTSIDE), "outside", 5.0, -0.1, 5.9, 0.0),
    )
    return House((4.0, 3.0), (3.5,), 0.1, doors)


def read(house: House, look: Look) -> Reading:
    return read_bytes(pdf_page(sketched(house, look), look))


def test_a_printed_scale_alone_is_taken_and_its_check_asked(house: House) -> None:
    reading = read(house, Look(printed="SCALE 1:50"))
    assert found(reading) == pytest.approx(areas(house), rel=1e-3)
    assert "check-scale" in codes(reading)


def test_a_user_unit_makes_the_page_larger(house: House) -> None:
    look = Look(printed="SCALE 1:25")
    data = pdf_page(sketched(house, look), look).replace(b"/Rotate 0", b"/UserUnit 2 /Rotate 0")
    reading = read_bytes(data)
    assert reading.scale_m_per_unit == pytest.approx(2 * 25 * 0.0254 / 72)


def test_layers_are_known_by_the_names_of_their_groups(house: House) -> None:
    look = Look(dimensions="m")
    sketch = sketched(house, look)
    sketch.lines += [("NOTES", [(x / 7, 0.2), (x / 5, 3.4)], False) for x in range(1, 20)]
    assert found(read_bytes(pdf_page(sketch, look))) == pytest.approx(areas(house), rel=1e-3)


def test_rooms_are_named_by_their_lettering(house: House) -> None:
    reading = read(house, Look(dimensions="m", turn_deg=90))
    assert sorted(room.name for room in reading.floor.rooms) == ["Room 00", "Room 10"]


def test_the_page_with_most_walls_is_read_and_others_named(house: House) -> None:
    look = Look(dimensions="m")
    empty = (b"BT /F1 12 Tf 20 20 Td (Notes) Tj ET", (400.0, 300.0))
    data = pdf_file([empty, content(sketched(house, look), look), empty], look)
    reading = read_bytes(data)
    assert found(reading) == pytest.approx(areas(house), rel=1e-3)
    [note] = [note for note in reading.left if note.code == "pages-left"]
    assert "page 2 was read" in note.what
    assert found(read_pdf(data, hints=Hints(page=2))) == found(reading)
    assert found(read_pdf(data, hints=Hints(page=1))) == []


@pytest.mark.parametrize("paint", ["1 1 1 RG", "0 0 1 1 re W n", "3 Tr"])
def test_what_is_white_or_clipped_is_not_drawn(paint: str) -> None:
    box = f"q {paint} 50 50 m 350 50 l 350 250 l 50 250 l h S Q"
    if paint == "3 Tr":
        box = "50 50 m 350 50 l 350 250 l 50 250 l h n"
    assert found(read_bytes(pdf_file([(box.encode(), (400.0, 300.0))], Look()))) == []


def test_a_clipped_line_ends_at_its_window() -> None:
    walls = "20 20 m 380 20 l S 20 280 m 380 280 l S 380 20 m 380 280 l S 20 20 m 20 280 l S "
    cut = "q 100 0 100 300 re W n 0 150 m 400 150 l S Q"
    letters = "BT /F1 12 Tf 30 30 Td (SCALE 1:50) Tj ET"
    data = pdf_file([(f"{walls}{cut} {letters}".encode(), (400.0, 300.0))], Look())
    assert len(read_bytes(data).floor.rooms) == 1


def test_a_scanned_page_is_traced_within_two_percent() -> None:
    """A page of lines painted at 200 dots to the inch, its walls filled, set in as a picture."""
    house = House((4.0, 3.0), (3.5,), 0.2, ())
    image = painted(house)
    wide, high = (side * 72 / 200 for side in image.size)
    head = f"/Type /XObject /Subtype /Image /Width {image.width} /Height {image.height}"
    pixels = stream(
        f"{head} /BitsPerComponent 8 /ColorSpace /DeviceGray /Filter /FlateDecode",
        zlib.compress(image.tobytes()),
    )
    given = f"<< /Type /Page /Parent 2 0 R /MediaBox [0 0 {wide} {high}] /Contents 4 0 R "
    objects = {
        1: b"<< /Type /Catalog /Pages 2 0 R >>",
        2: b"<< /Type /Pages /Kids [3 0 R] /Count 1 >>",
        3: (given + "/Resources << /XObject << /I 5 0 R >> >> >>").encode(),
        4: stream("", f"q {wide} 0 0 {high} 0 0 cm /I Do Q".encode()),
        5: pixels,
    }
    reading = read_bytes(file_of(objects), scale_m_per_unit=0.05)
    assert found(reading) == pytest.approx(areas(house), rel=0.02)
    assert "scan-traced" in codes(reading)


def painted(house: House) -> Image.Image:
    """The house at 1:50 with walls filled black."""
    per_m = 200 / 0.0254 / 50
    wide, high = (sum(sides) + 2.3 for sides in (house.columns, house.rows))
    image = Image.new("L", (round(wide * per_m), round(high * per_m)), 255)
    pen = ImageDraw.Draw(image)

    def box(x0: float, y0: float, x1: float, y1: float, ink: int) -> None:
        low, top = (x0 + 1) * per_m, (high - 1 - y1) * per_m
        pen.rectangle((low, top, (x1 + 1) * per_m - 1, (high - 1 - y0) * per_m - 1), fill=ink)

    far = house.box((len(house.columns) - 1, len(house.rows) - 1))
    box(-house.wall, -house.wall, far[2] + house.wall, far[3] + house.wall, 0)
    for cell in house.cells:
        box(*house.box(cell), 255)
    return image
