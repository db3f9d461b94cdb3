"""A photographed floor comes back: its rooms, corners, doors; what was not told is asked."""

from contextlib import suppress
from math import dist

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.photos import A3_MM, RATIO, photo, sheet

from farwall.bench.sheet_drawn import Style
from farwall.bench.sheet_score import score
from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.hints import Hints, KnownLength
from farwall.readers.photo.read import read_photo


def read(hardship: str, style: Style = "filled", **told: object) -> Reading:
    hints = Hints(**{"scale_m_per_unit": RATIO, "paper_mm": A3_MM, **told})  # type: ignore[arg-type]
    return read_photo(photo(hardship, style).data, hints=hints)


@pytest.mark.parametrize("style", ["filled", "double"])
@pytest.mark.parametrize("hardship", ["scan", "square", "tailgate"])
def test_recorded_rooms_come_back_within_two_percent_and_fifty_millimetres(
    hardship: str, style: Style
) -> None:
    found = score(sheet(style).floor, read(hardship, style).floor)
    assert (found.found, found.false) == (found.rooms, 0)
    assert max(map(abs, found.area)) < 0.02
    assert max(found.corner_m) < 0.05
    assert found.ways_found == found.ways


def test_a_told_sheet_makes_the_unit_a_millimetre_of_paper() -> None:
    reading = read("square")
    assert (reading.length_unit, reading.scale_m_per_unit) == ("mm", RATIO)
    assert {"flattened", "scale-told"} <= {note.code for note in reading.mended}


def test_corners_that_were_only_seen_are_asked() -> None:
    reading = read("square")
    ask = next(note for note in reading.asks if note.code == "corners")
    seen = [float(part) for part in ask.what.rpartition(" ")[2].split(",")]
    true = photo("square").corners
    assert all(dist(seen[2 * k : 2 * k + 2], true[k]) < 3 for k in range(4))
    told = read("square", corners=true)
    assert "corners" not in {note.code for note in told.asks}


def test_without_a_scale_it_is_asked_and_no_size_is_told() -> None:
    reading = read("square", scale_m_per_unit=None)
    assert reading.scale_m_per_unit is None
    assert len(reading.floor.rooms) == 4
    assert "scale" in {note.code for note in reading.asks}


@pytest.mark.parametrize("paper_mm", [None, A3_MM])
def test_a_known_length_tells_the_scale(paper_mm: tuple[float, float] | None) -> None:
    """Between two places of the photo where the sheet's upper corners are: 420 mm are 21 m."""
    corners = photo("tailgate").corners
    length = KnownLength(corners[0], corners[1], 420 * RATIO)
    told = {"scale_m_per_unit": None, "paper_mm": paper_mm, "corners": corners, "length": length}
    found = score(sheet().floor, read("tailgate", **told).floor)
    assert found.found == found.rooms
    assert max(map(abs, found.area)) < 0.03


@pytest.mark.parametrize(
    ("corners", "words"),
    [
        (((0.0, 0.0),) * 3, "3 corners"),
        (((0.0, 0.0),) * 4, "make no sheet"),
        (((0.0, 0.0), (0.0, 900.0), (900.0, 900.0), (900.0, 0.0)), "clockwise"),
        (((0.0, 0.0), (900.0, 0.0), (900.0, 900.0), (900.0, 1.0)), "make no sheet"),
        (((0.0, 0.0), (9e9, 0.0), (9e9, 900.0), (0.0, 900.0)), "outside"),
        (((0.0, 0.0), (float("nan"), 0.0), (9.0, 900.0), (0.0, 900.0)), "outside"),
    ],
)
def test_corners_that_make_no_sheet_are_refused(
    corners: tuple[tuple[float, float], ...], words: str
) -> None:
    with pytest.raises(Refused, match=words):
        read("square", corners=corners)


def test_a_known_length_between_one_place_is_refused() -> None:
    length = KnownLength((800.0, 800.0), (801.0, 800.0), 4.0)
    with pytest.raises(Refused, match="too near"):
        read("square", scale_m_per_unit=None, length=length)


@pytest.mark.parametrize("light", [0, 128, 255])
def test_an_empty_picture_asks_for_a_tracing(light: int) -> None:
    import cv2

    data = bytes(cv2.imencode(".png", np.full((400, 500), light, np.uint8))[1])
    reading = read_bytes(data)
    assert reading.floor.rooms == ()
    assert {"tracing", "scale", "corners"} <= {note.code for note in reading.asks}


@settings(max_examples=12, deadline=None)
@given(st.integers(0, 2**32 - 1), st.integers(1, 60))
def test_any_picture_is_read_or_refused(seed: int, coarse: int) -> None:
    """Noise from single pixels to blots: a reading with its asks, or a sentence."""
    import cv2

    small = np.random.default_rng(seed).integers(0, 255, (240 // coarse + 2, 320 // coarse + 2))
    grey = cv2.resize(small.astype(np.uint8), (320, 240), interpolation=cv2.INTER_NEAREST)
    with suppress(Refused):
        assert read_bytes(bytes(cv2.imencode(".png", grey)[1])).asks
