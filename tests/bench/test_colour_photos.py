"""The invented photos are what they claim: the same for a seed, true to their own spectra."""

import io

import numpy as np
import pytest
from PIL import Image
from tests.colour_photos import laid, shot

from farwall.bench.colour_photos import Hard, camera, photograph
from farwall.bench.colour_photos_score import _held_out, own_page, tried
from farwall.bench.colour_scene import (
    LIGHTS,
    NM,
    common_24,
    eye_of_1931,
    lab_d50,
    light,
    printed,
    stained_pieces,
)
from farwall.cli.bench_photos import lines
from farwall.colour.difference import de2000
from farwall.colour.targets.common24 import common_24 as known_24


def test_a_seed_gives_the_same_bytes_and_another_seed_others():
    small = {"hard": Hard(), "wide_px": 400}
    one = photograph(common_24(), "LED", seed=3, **small)
    assert one.data == photograph(common_24(), "LED", seed=3, **small).data
    assert one.data != photograph(common_24(), "LED", seed=4, **small).data


def test_the_reflectances_of_the_24_are_near_their_published_values():
    sheet = common_24()
    values = [one.lab for one in known_24("average-of-30").patches]
    off = [float(de2000(lab_d50(sheet.reflects[k]), lab)) for k, lab in enumerate(values)]
    assert np.median(off) < 0.5
    assert max(off) < 2


def test_a_perfect_white_is_white_and_stains_darken():
    assert lab_d50(np.ones_like(NM)) == pytest.approx((100, 0, 0), abs=0.01)
    pieces = {name: lab_d50(r)[0] for name, r in stained_pieces().items()}
    assert all(pieces[f"{n} 1.2"] < pieces[f"{n} 0.45"] < pieces["bare"] for n in ("brown", "red"))


@pytest.mark.parametrize("kind", range(3))
def test_no_camera_is_an_eye(kind):
    """No linear map makes its sensitivities into those of the eye: else nothing is metameric."""
    sees, eye = camera(kind).sees, eye_of_1931()
    mix, *_ = np.linalg.lstsq(sees, eye, rcond=None)
    assert np.abs(sees @ mix - eye).max() > 0.05 * eye.max()


def test_five_lights_differ():
    spectra = [light(name) for name in LIGHTS]
    assert len(LIGHTS) == 5
    assert all(np.abs(a - b).max() > 0.05 for k, a in enumerate(spectra) for b in spectra[:k])


def test_the_photo_shows_a_place_where_it_says():
    taken = shot("24")
    rgb = np.asarray(Image.open(io.BytesIO(taken.data))).astype(float)
    white = taken.place(7 + 14, 7 + 3 * 32 + 14)
    black = taken.place(7 + 5 * 32 + 14, 7 + 3 * 32 + 14)
    at = [rgb[int(y), int(x)].mean() for x, y in (white, black)]
    assert at[0] > at[1] + 100


def test_squares_are_held_out_of_what_the_reader_is_given():
    own = laid("24")
    held = [_held_out(own, seed) for seed in range(4)]
    assert all(3 <= len(one) <= 6 for one in held)
    assert len(set().union(*held)) == sum(map(len, held)) == 18
    found = tried(own, "sun", 2)
    assert len(found.squares) == len(held[2])
    assert len(found.floors) == 12


def test_a_print_is_not_what_was_asked_for():
    page, corner = own_page()
    sheet = printed(page, 3.0)
    white = sheet.lab_at(3, 3)
    assert 90 < white[0] < 97
    grey = sheet.lab_at(corner[0] + 11, corner[1] + 33)
    assert abs(grey[0] - 88) > 2


def test_the_table_has_a_line_for_each():
    from farwall.bench.colour_photos_score import Off

    assert len(lines([Off("sun", "24 patches", 1, 0, 1, 2, 3, 4, 5)])) == 5
