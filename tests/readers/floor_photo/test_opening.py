"""A photo in its colours."""

from __future__ import annotations

import numpy as np
import pytest
from tests.floor_photos import SIZE, jpeg

from farwall.colour.library import science
from farwall.errors import Refused
from farwall.readers.floor_photo.opening import (
    BURNT,
    burnt,
    coded_of,
    colours,
    lab_of,
    light_in,
    linear,
)


def test_lab_is_that_of_the_standards_by_another_program():
    """colour-science: sRGB to XYZ, D65 to D50 by Bradford, to CIELAB; within the digits kept."""
    colour = science()
    rng = np.random.default_rng(4)
    rgb = rng.integers(0, 256, (40, 50, 3), np.uint8)
    white = colour.CCS_ILLUMINANTS["CIE 1931 2 Degree Standard Observer"]["D50"]
    xyz = colour.RGB_to_XYZ(rgb / 255, "sRGB", white, "Bradford", apply_cctf_decoding=True)
    told = colour.XYZ_to_Lab(xyz, white)
    assert lab_of(linear(rgb).astype(np.float32)) == pytest.approx(told, abs=0.12)


def test_white_is_white():
    white = np.full((1, 1, 3), 255, np.uint8)
    assert lab_of(linear(white).astype(np.float32))[0, 0] == pytest.approx((100, 0, 0), abs=0.01)
    assert burnt(white)[0, 0] == 255
    assert burnt(np.full((1, 1, 3), 240, np.uint8))[0, 0] == 0


def test_a_photo_is_opened_upright_in_its_colours():
    rgb, shrunk = colours(jpeg())
    assert rgb.shape == (SIZE[1], SIZE[0], 3)
    assert shrunk == 1.0
    middle = rgb[800, 1000].astype(int)
    assert middle[0] > middle[1] > middle[2]


def test_a_profile_of_srgb_changes_nothing_and_sixteen_bits_are_read():
    import io

    from PIL import Image, ImageCms

    picture = Image.new("RGB", (300, 240), (180, 90, 60))
    plain, wide = io.BytesIO(), io.BytesIO()
    picture.save(plain, "PNG")
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    picture.save(wide, "PNG", icc_profile=profile)
    for data in (plain, wide):
        rgb, _ = colours(data.getvalue())
        assert rgb[100, 100].astype(int) == pytest.approx([180, 90, 60], abs=1)
    deep = io.BytesIO()
    Image.fromarray(np.full((240, 300), 30_000, np.uint16)).save(deep, "PNG")
    assert colours(deep.getvalue())[0][100, 100, 0] == pytest.approx(30_000 / 257, abs=1)


def test_noise_is_no_photo():
    with pytest.raises(Refused):
        colours(b"no picture at all" * 100)


def test_light_taken_strip_by_strip_is_that_of_the_whole():
    found = light_in(jpeg())
    rgb, shrunk = colours(jpeg())
    assert found.size == (rgb.shape[1], rgb.shape[0])
    assert found.shrunk == shrunk
    for top, low in ((0, rgb.shape[0]), (64, 901)):
        light, hot = found.rows(top, low)
        assert (light == linear(rgb)[top:low]).all()
        assert (hot == burnt(rgb)[top:low]).all()
        assert (hot == np.where(rgb[top:low].max(axis=2) >= BURNT, 255, 0)).all()


@pytest.mark.parametrize("turn", range(1, 9))
def test_it_is_turned_as_its_exif_says(turn):
    import io

    from PIL import Image, ImageOps

    picture = Image.fromarray(np.random.default_rng(1).integers(0, 255, (210, 300, 3), np.uint8))
    picture.getexif()[274] = turn
    file = io.BytesIO()
    picture.save(file, "PNG", exif=picture.getexif())
    turned = np.asarray(ImageOps.exif_transpose(Image.open(file)))
    assert (colours(file.getvalue())[0] == turned).all()


def test_a_colour_is_shown_as_it_was_seen():
    rgb = np.random.default_rng(5).integers(0, 256, (40, 50, 3), np.uint8)
    again = coded_of(lab_of(linear(rgb).astype(np.float32)))
    assert again.astype(int) == pytest.approx(rgb.astype(int), abs=1)
    beyond = np.array([[[50.0, 120.0, -120.0], [0.0, 0.0, 0.0], [100.0, 0.0, 0.0]]], np.float32)
    assert (coded_of(beyond)[0, 1:] == [[0, 0, 0], [255, 255, 255]]).all()
