"""A photo made fit for a page: small, by one light, its error said only where it is known."""

import io
from dataclasses import replace

import numpy as np
import pytest
from PIL import Image

from farwall.colour.lab import srgb_of_lab
from farwall.evidence import Rank
from farwall.readers.colour_photo.nouns import ColourPhoto, TargetSeen
from farwall.readers.colour_photo.shown import photo_shown

LAB = np.full((300, 2400, 3), (50.0, 20.0, 30.0), np.float32)
CORNERS = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
PHOTO = ColourPhoto(LAB, TargetSeen("24 patches", CORNERS, (), 0.7, 2.0), Rank.MEASURED, "2026")


def test_it_is_small_and_shows_the_colour():
    shown = photo_shown(PHOTO, most_px=600)
    picture = Image.open(io.BytesIO(shown.jpeg))
    assert picture.size == (shown.width_px, shown.height_px) == (600, 75)
    wanted = 255 * srgb_of_lab((50.0, 20.0, 30.0))
    assert np.asarray(picture)[30, 300] == pytest.approx(wanted, abs=3)
    assert (shown.error_de, shown.taken_at) == (0.7, "2026")


def test_a_guess_has_no_error():
    assert photo_shown(replace(PHOTO, rank=Rank.GUESS)).error_de is None
    assert photo_shown(replace(PHOTO, target=None, rank=Rank.GUESS)).error_de is None
