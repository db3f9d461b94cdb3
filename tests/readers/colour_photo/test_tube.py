"""The sign of a tube with narrow bands, on squares of an invented print by the spectrum."""

from functools import cache

import numpy as np
import pytest

from farwall.bench.colour_photos import camera, photograph
from farwall.bench.colour_photos_score import laid_own, own_page
from farwall.bench.colour_scene import lab_d50, light, printed
from farwall.colour.targets.own import asked_srgb, own_target
from farwall.phrasebook import speaking, told
from farwall.readers.colour_photo.fit import Seen, best_fit
from farwall.readers.colour_photo.read import read_colour_photo
from farwall.readers.colour_photo.tube import NARROW, SAID, _sign

PATCHES = own_target().patches
GREY = np.array([one.grey for one in PATCHES])


@cache
def print_():
    page = np.array([[asked_srgb(one) for one in PATCHES] + [(255, 255, 255)]], np.uint8)
    sheet = printed(page, 1.0)
    return sheet.reflects[sheet.which[0]]


def sign(kind, lit_by, which=None):
    """Of a camera and a light; the camera's tones are straight, its mixing and white its own."""
    made, prints = camera(kind), print_()
    spectrum = light(lit_by)[:, None] * made.sees
    shown = np.clip((prints @ spectrum / spectrum.sum(axis=0)) @ made.mixes.T, 1e-4, None) * 0.85
    labs = np.array([lab_d50(one) for one in prints])
    count = len(PATCHES)
    use = np.ones(count, bool) if which is None else which
    seen = Seen(
        shown[:count][use], np.zeros((use.sum(), 3)), np.repeat(shown[count:], use.sum(), 0),
        labs[:count][use],
    )  # fmt: skip
    return _sign(seen, best_fit(seen)[0], GREY[use])


@pytest.mark.parametrize("kind", range(3))
@pytest.mark.parametrize("lit_by", ["FL10", "FL12", "tube"])
def test_tubes_of_three_bands_are_told(kind, lit_by):
    assert sign(kind, lit_by) > NARROW


@pytest.mark.parametrize("kind", range(3))
@pytest.mark.parametrize("lit_by", ["sun", "shade", "bulb", "LED", "LED-B1", "FL7"])
def test_lights_of_broad_bands_are_not(kind, lit_by):
    assert sign(kind, lit_by) < NARROW


def test_too_few_squares_tell_nothing():
    dark = np.array([one.lab[0] < 60 for one in PATCHES])
    assert sign(0, "tube", dark) == 0.0


@pytest.fixture(scope="module")
def laid():
    return laid_own(*own_page())


@pytest.mark.parametrize(("lit_by", "said"), [("FL12", True), ("D50", False)])
def test_a_photo_says_it_first(laid, lit_by, said):
    photo = read_colour_photo(photograph(laid.sheet, lit_by, seed=2).data, own_values=laid.values)
    assert (photo.target.warnings[:1] == (SAID,)) is said


def test_it_is_said_in_spanish():
    with speaking("es"):
        assert told(SAID).startswith("La luz puede ser de un tubo")
