"""Photos with and without a target: found where it lies, corrected, honest about what is left."""

import io

import numpy as np
import pytest
from PIL import Image
from tests.colour_photos import laid, shot
from tests.readers.photo.test_opening import TURNED_SHEET

from farwall.bench.colour_photos import Hard
from farwall.colour.ciede2000 import quick_de2000
from farwall.colour.lab import lab_of_srgb
from farwall.errors import Refused
from farwall.evidence import Rank
from farwall.readers.colour_photo.read import read_colour_photo
from farwall.readers.colour_photo.spot import spot_of


def off(photo, taken):
    return [float(quick_de2000(spot_of(photo, p.polygon_px).lab, p.lab)) for p in taken.pieces]


def kept(rgb, kind="PNG", **how):
    into = io.BytesIO()
    Image.fromarray(np.asarray(rgb, np.uint8)).save(into, kind, **how)
    return into.getvalue()


@pytest.mark.parametrize("name", ["24", "own"])
@pytest.mark.parametrize("light", ["sun", "bulb"])
def test_a_floor_beside_a_measured_target_comes_out_as_it_is(name, light):
    taken = shot(name, light)
    photo = read_colour_photo(taken.data, own_values=laid(name).values)
    assert photo.rank == Rank.MEASURED
    assert photo.target.error_de < 2.5
    assert photo.target.worst_de >= photo.target.error_de
    assert np.median(off(photo, taken)) < 2.5
    bare = read_colour_photo(taken.data) if name == "own" else None
    if bare is not None:
        assert np.median(off(photo, taken)) < np.median(off(bare, taken))


def test_a_telephones_heic_is_read_as_the_jpeg_is():
    """The same photo packed both ways (`turned-sheet.heic`), held upright in the one."""
    heic = TURNED_SHEET.read_bytes()
    there = read_colour_photo(heic, own_values=laid("own").values)
    here = read_colour_photo(shot("own").data, own_values=laid("own").values)
    assert there.rank == Rank.MEASURED
    assert there.lab.shape == (1200, 900, 3)
    assert there.target.error_de == pytest.approx(here.target.error_de, abs=0.3)
    assert there.taken_at == "2026-05-14T10:20:30"


@pytest.mark.parametrize("turn", [0, 90, 180, 270])
@pytest.mark.parametrize("name", ["24", "own"])
def test_the_target_is_found_whichever_way_it_lies(name, turn):
    taken = shot(name)
    picture = Image.open(io.BytesIO(taken.data)).rotate(turn, expand=True)
    found = read_colour_photo(kept(picture), own_values=laid(name).values).target
    straight = read_colour_photo(kept(picture.rotate(-turn, expand=True))).target
    assert found.name == straight.name
    wide, high = picture.size
    at = np.array(found.corners_px) - (wide / 2, high / 2)
    c, s = np.cos(np.radians(turn)), np.sin(np.radians(turn))
    back = at @ np.array([[c, -s], [s, c]]).T
    size = picture.rotate(-turn, expand=True).size
    wanted = np.array(straight.corners_px) - np.array(size) / 2
    assert np.abs(back - wanted).max() < 2.0


def test_without_a_target_it_is_taken_as_it_stands_and_is_a_guess():
    ramp = np.zeros((240, 320, 3), np.uint8)
    ramp[..., 0], ramp[..., 1], ramp[..., 2] = 140, np.arange(320) % 256, 60
    photo = read_colour_photo(kept(ramp))
    assert photo.target is None
    assert photo.rank == Rank.GUESS
    assert len(photo.warnings) == 1
    assert photo.lab == pytest.approx(lab_of_srgb(ramp / 255), abs=0.1)


def test_a_print_that_nobody_measured_is_balanced_by_its_paper_and_stays_a_guess():
    photo = read_colour_photo(shot("own", "bulb").data)
    assert photo.rank == Rank.GUESS
    assert photo.target.correction == "grey"
    assert "measured this print" in photo.target.warnings[-1]
    greys = [p for p in photo.target.patches if abs(p.own_lab[1]) + abs(p.own_lab[2]) < 0.1]
    assert max(np.hypot(p.seen_lab[1], p.seen_lab[2]) for p in greys) < 8


def test_the_size_of_our_sheet_gives_the_scale_of_the_photo():
    taken = shot("own")
    target = read_colour_photo(taken.data).target
    assert target.size_mm == (176.0, 132.0)
    wanted = [taken.place(20 + x, 25 + y) for x, y in ((0, 0), (176, 0), (176, 132), (0, 132))]
    assert np.array(target.corners_px) == pytest.approx(np.array(wanted), abs=1.5)


def test_a_shadow_over_the_sheet_is_told_and_taken_out_of_its_squares():
    taken = shot("own", "sun", 11, Hard(shadow=0.5, tilt_deg=10))
    target = read_colour_photo(taken.data, own_values=laid("own").values).target
    assert any("shadow" in one for one in target.warnings)
    assert target.error_de < 1.5


def test_burnt_squares_are_named_and_not_used():
    rgb = np.asarray(Image.open(io.BytesIO(shot("24").data))).astype(float)
    target = read_colour_photo(kept(np.clip(rgb * 1.35, 0, 255))).target
    assert target.warnings[0].startswith("Burnt out")
    assert target.error_de < 3


def test_a_small_and_a_soft_target_are_told():
    picture = Image.open(io.BytesIO(shot("own").data))
    small = kept(picture.resize((360, 270), Image.Resampling.BOX))
    told = read_colour_photo(small).target
    assert told is None or any("small" in one for one in told.warnings)
    import cv2

    soft = cv2.GaussianBlur(np.asarray(picture), (0, 0), 5.0)
    target = read_colour_photo(kept(soft)).target
    assert target is None or any("focus" in one for one in target.warnings)


@pytest.mark.parametrize("data", [b"", b"nothing", b"\xff\xd8\xff\xe0 cut short"])
def test_what_is_no_picture_is_refused(data):
    with pytest.raises(Refused):
        read_colour_photo(data)


def test_a_large_photo_is_made_smaller_and_says_by_how_much():
    photo = read_colour_photo(kept(np.full((300, 3000, 3), 120), "JPEG"))
    assert photo.lab.shape == (200, 2000, 3)
    assert photo.file_px == pytest.approx(1.5)


def test_it_is_turned_as_the_camera_was_and_dated():
    rgb = np.full((240, 320, 3), 200, np.uint8)
    rgb[:120] = 30
    exif = Image.Exif()
    exif[0x0112] = 6
    exif[306] = "2026:05:14 10:20:30"
    photo = read_colour_photo(kept(rgb, "JPEG", exif=exif))
    assert photo.lab.shape == (320, 240, 3)
    assert photo.lab[160, 20, 0] > photo.lab[160, 220, 0]
    assert photo.taken_at == "2026-05-14T10:20:30"
