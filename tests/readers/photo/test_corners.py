"""The sheet's corners are found where they are, to a pixel or two, however it is photographed."""

from math import dist

import numpy as np
import pytest
from tests.photos import photo

from farwall.readers.photo.corners import find_corners
from farwall.readers.photo.opening import opened


@pytest.mark.parametrize(
    ("hardship", "most_px"), [("scan", 0.6), ("tailgate", 1.5), ("bent", 6.0), ("rough", 6.0)]
)
def test_recorded_corners_are_found_to_parts_of_a_pixel(hardship: str, most_px: float) -> None:
    """A bent sheet's side is a curve: its corner is found by what lies beside it, less well."""
    taken = photo(hardship)
    found = find_corners(opened(taken.data)[0])
    assert len(found) == 4
    assert max(dist(a, b) for a, b in zip(found, taken.corners, strict=True)) < most_px


def test_corners_by_hand() -> None:
    """White paper from pixel 150 to 649 across, 100 to 399 down: its corners lie between pixels."""
    grey = np.full((500, 800), 40, np.uint8)
    grey[100:400, 150:650] = 240
    found = find_corners(grey)
    wanted = ((150, 100), (650, 100), (650, 400), (150, 400))
    assert max(dist(a, b) for a, b in zip(found, wanted, strict=True)) < 0.2


@pytest.mark.parametrize("light", [0, 128, 255])
def test_a_picture_without_a_sheet_has_no_corners(light: int) -> None:
    assert find_corners(np.full((400, 600), light, np.uint8)) == ()


def test_noise_has_no_corners_or_four() -> None:
    noise = np.random.default_rng(5).integers(0, 255, (400, 600), np.uint8)
    assert len(find_corners(noise)) in {0, 4}
