"""A sheet that bows and is folded comes out flat, by what its edges show."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.photos import A3_MM, HARDSHIP, RATIO, photo, sheet

from farwall.bench import sheet_photo
from farwall.bench.sheet_drawn import Style
from farwall.bench.sheet_photo import Photo, photograph
from farwall.bench.sheet_score import score
from farwall.facts.reading import Reading
from farwall.readers.hints import Hints
from farwall.readers.photo.bent import Bend, find_bend
from farwall.readers.photo.flatten import flatten
from farwall.readers.photo.opening import opened
from farwall.readers.photo.read import read_photo
from farwall.readers.photo.rims import find_rims

PLACES = 241


def bowed(most: float = 0.1) -> Bend:
    """A sheet of 400 by 200, its middle as high as that share of the eye, which stands over it."""
    rise = most * np.sin(np.pi * np.linspace(0, 1, PLACES))
    return Bend((400, 200), (200.0, 100.0), np.array([rise, rise]), np.zeros((2, PLACES)))


def read(hardship: str, style: Style = "filled") -> Reading:
    taken = photo(hardship, style)
    hints = Hints(RATIO, corners=taken.corners, paper_mm=A3_MM)
    return read_photo(taken.data, hints=hints)


def codes(reading: Reading) -> set[str]:
    return {note.code for note in (*reading.mended, *reading.asks)}


def test_what_stands_high_is_seen_farther_from_the_eyes_foot_by_hand() -> None:
    """In the middle, 0.1 of the eye's height up, 90 off its foot: 90 / (1 - 0.1) = 100."""
    x, y = bowed().seen(np.array(200.0), np.array(190.0))
    assert (float(x), float(y)) == pytest.approx((200.0, 200.0))
    assert bowed().laid(200.0, 200.0) == pytest.approx((200.0, 190.0))


def test_where_two_folds_cross_the_sheet_stands_as_high_as_the_higher_one() -> None:
    """On a bend of 0.02 a fold of 0.01 each way: 0.03 at their crossing, by hand, and not 0.04."""
    places = np.linspace(0, 1, PLACES)
    ridge = 0.01 * np.maximum(0, 1 - np.abs(places - 0.5) / 0.08)
    both = np.array([ridge, ridge])
    bend = Bend((400, 200), (0.0, 0.0), 0.02 + both, both)
    for place, height in (
        ((200, 100), 0.03),
        ((200, 20), 0.03),
        ((40, 100), 0.03),
        ((40, 20), 0.02),
    ):
        x, y = (np.array(float(value)) for value in place)
        assert float(bend.seen(x, y)[0]) == pytest.approx(place[0] / (1 - height))


def test_how_far_things_are_moved_is_told_by_hand() -> None:
    """0.1 of the eye's height up all over: the corners, the farthest, by a ninth of their way."""
    flat = np.full((2, PLACES), 0.1)
    bend = Bend((400, 200), (200.0, 100.0), flat, 0 * flat)
    assert bend.moved_px == pytest.approx(np.hypot(200, 100) / 9)


def test_between_unlike_edges_a_sheet_runs_straight_by_hand() -> None:
    """0.02 up at the upper edge, 0.04 at the lower: 0.025 a quarter of the way down."""
    flat = np.ones(PLACES)
    bend = Bend((400, 200), (0.0, 0.0), np.array([0.02 * flat, 0.04 * flat]), np.zeros((2, PLACES)))
    x, _ = bend.seen(np.array(100.0), np.array(50.0))
    assert float(x) == pytest.approx(100 / (1 - 0.025))


@given(st.floats(0, 400), st.floats(0, 200), st.floats(-0.05, 0.1))
def test_what_is_seen_is_laid_back(x: float, y: float, most: float) -> None:
    bend = bowed(most)
    seen = bend.seen(np.array(x), np.array(y))
    assert bend.laid(float(seen[0]), float(seen[1])) == pytest.approx((x, y), abs=0.05)


def test_an_edge_is_followed_where_it_bows_and_not_along_the_frame_drawn_in_it() -> None:
    """Paper from y = 100 + 8 sin(pi x / 600) on, with a line of 4 pixels 30 below its edge."""
    x, y = np.meshgrid(np.arange(700), np.arange(500))
    top = 100 + 8 * np.sin(np.pi * (x - 49.5) / 600)
    grey = np.where((x < 50) | (x >= 650) | (y < top - 0.5) | (y >= 400), 60, 220)
    grey = np.where((np.abs(y - top - 30) < 2) & (x > 80) & (x < 620), 30, grey).astype(np.uint8)
    corners = ((50.0, 100.0), (650.0, 100.0), (650.0, 400.0), (50.0, 400.0))
    rims = find_rims(grey, corners)
    assert rims[0] is not None
    wanted = 100 + 8 * np.sin(np.pi * (rims[0][:, 0] - 50) / 600)
    assert np.median(np.abs(rims[0][:, 1] - wanted)) < 0.4
    assert np.max(np.abs(rims[0][:, 1] - wanted)) < 1.5
    assert rims[2] is not None
    assert np.allclose(rims[2][:, 1], 400.0, atol=0.3)


def test_edges_that_are_not_seen_show_no_bend_and_that_is_said() -> None:
    grey = np.full((500, 700), 200, np.uint8)
    corners = ((50.0, 100.0), (650.0, 100.0), (650.0, 400.0), (50.0, 400.0))
    assert find_rims(grey, corners) == [None] * 4
    assert find_bend(grey, corners, np.eye(3), (600, 300)) is None
    assert flatten(grey, corners).bend is None


def test_the_edge_of_another_sheet_is_not_followed() -> None:
    """A sheet on a larger one of its colour: the edges seen run 12 pixels off the corners told."""
    grey = np.full((500, 700), 60, np.uint8)
    grey[88:412, 38:662] = 220
    corners = ((50.0, 100.0), (650.0, 100.0), (650.0, 400.0), (50.0, 400.0))
    assert find_rims(grey, corners) == [None] * 4


def test_the_heights_of_a_bent_sheet_come_back() -> None:
    """Bent 3 mm along its length, folds of 2 mm (sheet_photo): more than 5 mm of 432 and less."""
    taken = photo("bent")
    bend = flatten(opened(taken.data)[0], taken.corners, A3_MM).bend
    assert bend is not None
    assert not bend.straight
    assert not bend.contradicts
    quarter = bend.across[0][PLACES // 4]
    assert quarter == pytest.approx(3 * np.sin(np.pi / 4) / 432, rel=0.1)
    assert 4 / 432 < bend.across.max() < 5.3 / 432
    assert abs(bend.down[0][PLACES // 5]) < 0.3 / 432


@pytest.mark.parametrize("style", ["filled", "double"])
@pytest.mark.parametrize("hardship", ["bent", "rough"])
def test_rooms_of_a_bent_sheet_come_back_within_two_percent_and_fifty_millimetres(
    hardship: str, style: Style
) -> None:
    reading = read(hardship, style)
    found = score(sheet(style).floor, reading.floor)
    assert (found.found, found.false) == (found.rooms, 0)
    assert max(map(abs, found.area)) < 0.02
    assert max(found.corner_m) < 0.05
    assert "laid-back" in codes(reading)
    assert "bent" not in codes(reading)


def coned(height: object) -> Photo:
    """The sheet photographed from 7 degrees off, standing as high as that."""
    drawn = sheet()
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(sheet_photo._Camera, "height", height)
        return photograph(drawn.grey, drawn.px_per_mm, HARDSHIP["square"], 5, wide_px=2400)


def cone(camera: object, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    u, v = np.clip(x / A3_MM[0], 0, 1), np.clip(y / A3_MM[1], 0, 1)
    return np.asarray((1 + 7 * v) * np.sin(np.pi * u))


def test_a_sheet_that_stands_up_like_a_cone_is_laid_back() -> None:
    taken = coned(cone)
    reading = read_photo(taken.data, hints=Hints(RATIO, corners=taken.corners, paper_mm=A3_MM))
    found = score(sheet().floor, reading.floor)
    assert (found.found, found.false) == (found.rooms, 0)
    assert max(found.corner_m) < 0.05
    assert "laid-back" in codes(reading)


def bulge(camera: object, x: np.ndarray, y: np.ndarray) -> np.ndarray:
    u, v = np.clip(x / A3_MM[0], 0, 1), np.clip(y / A3_MM[1], 0, 1)
    return np.asarray(12 * np.sin(np.pi * u) * np.sin(np.pi * v / 2) ** 8)


def test_edges_too_unlike_for_one_sheet_are_asked_about() -> None:
    """The lower edge stands 12 mm up, the upper one lies on the table."""
    taken = coned(bulge)
    reading = read_photo(taken.data, hints=Hints(RATIO, corners=taken.corners, paper_mm=A3_MM))
    assert {"laid-back", "bent"} <= codes(reading)


def test_a_flat_sheet_is_not_touched() -> None:
    taken = photo("square")
    flat = flatten(opened(taken.data)[0], taken.corners, A3_MM)
    assert flat.bend is not None
    assert flat.bend.straight
    assert "laid-back" not in codes(read("square"))


def test_a_place_of_the_picture_goes_where_its_pixel_went() -> None:
    """A dot of the photo of a bent sheet is found again at its place in the flattened picture."""
    taken = photo("bent")
    grey = opened(taken.data)[0].copy()
    corners = np.array(taken.corners)
    for share in (0.2, 0.5, 0.7):
        spot = corners[0] + share * (corners[2] - corners[0])
        x, y = (round(float(value)) for value in spot)
        marked = grey.copy()
        marked[y - 12 : y + 12, x - 12 : x + 12] = 255
        marked[y - 4 : y + 4, x - 4 : x + 4] = 0
        flat = flatten(marked, taken.corners, A3_MM)
        fx, fy = flat.place((float(x), float(y)))
        near = flat.grey[round(fy) - 9 : round(fy) + 9, round(fx) - 9 : round(fx) + 9]
        dark = np.argwhere(near < 60)
        assert dark.mean(axis=0) + 0.5 == pytest.approx(
            (fy - round(fy) + 9, fx - round(fx) + 9), abs=1.0
        )
