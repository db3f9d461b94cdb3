"""The middle of a photo as a look: read apart; a target at its edge tells how far to trust it."""

import io

import numpy as np
import pytest
from PIL import Image

from farwall.colour.lab import lab_of_srgb
from farwall.errors import Refused
from farwall.evidence import Rank
from farwall.readers.colour_photo.nouns import ColourPhoto, TargetSeen
from farwall.web.pages.colour.photo_look import look_told

MIDDLE, RIM = (120, 80, 60), (20, 200, 40)


def jpeg():
    """A brown sample in the middle half, and all around it what is not to be read."""
    picture = np.full((300, 400, 3), RIM, np.uint8)
    picture[60:240, 80:320] = MIDDLE
    held = io.BytesIO()
    Image.fromarray(picture).save(held, "PNG")
    return held.getvalue()


def seen(corners):
    lab = np.full((300, 400, 3), (41.0, 9.0, 20.0), np.float32)
    return ColourPhoto(lab, TargetSeen("own", corners, (), 1.26, 2.0), Rank.MEASURED)


def square(x, y):
    return ((x, y), (x + 60, y), (x + 60, y + 60), (x, y + 60))


def test_only_the_middle_half_is_read_and_without_a_target_it_is_a_guess():
    told = look_told(jpeg())
    expected = lab_of_srgb(np.array(MIDDLE) / 255)
    found = [float(told[key]) for key in ("lightness", "lab_a", "lab_b")]
    assert found == pytest.approx(list(expected), abs=1.0)
    assert float(told["spread_lightness"]) < 0.5
    assert "error_de" not in told


def test_a_target_at_the_edge_says_how_far_it_was_off(monkeypatch):
    found = seen(square(5, 5))
    monkeypatch.setattr("farwall.readers.apart.colours.read_colour_apart", lambda *_, **__: found)
    told = look_told(b"")
    assert told["error_de"] == "1.26"
    assert told["lightness"] == "41.00"


def test_a_target_in_the_middle_is_refused(monkeypatch):
    found = seen(square(170, 120))
    monkeypatch.setattr("farwall.readers.apart.colours.read_colour_apart", lambda *_, **__: found)
    with pytest.raises(Refused, match="target lies in the middle"):
        look_told(b"")


def test_what_is_no_photo_is_refused():
    with pytest.raises(Refused):
        look_told(b"no photo" * 40)
