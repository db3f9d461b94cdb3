"""Pictures from strangers are opened by what they are, or refused calmly."""

import io
import random
import struct
import zlib
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from tests.colour_photos import shot

from farwall.errors import Refused
from farwall.readers.photo import opening
from farwall.readers.photo.opening import opened

TURNED_SHEET = Path(__file__).with_name("turned-sheet.heic")


def picture(mode: str = "RGB", size: tuple[int, int] = (300, 240)) -> Image.Image:
    """Dark on its left half, light on its right."""
    grey = np.full((size[1], size[0]), 255, np.uint8)
    grey[:, : size[0] // 2] = 0
    return Image.fromarray(grey).convert(mode)


def kept(made: Image.Image, kind: str, **how: object) -> bytes:
    into = io.BytesIO()
    made.save(into, kind, **how)
    return into.getvalue()


@pytest.mark.parametrize(
    ("mode", "kind"),
    [("RGB", "PNG"), ("L", "PNG"), ("1", "PNG"), ("P", "PNG"), ("RGBA", "PNG"), ("LA", "PNG"),
     ("RGB", "JPEG"), ("L", "JPEG"), ("CMYK", "JPEG")],
)  # fmt: skip
def test_every_mode_becomes_light_from_black_to_white(mode: str, kind: str) -> None:
    grey, shrunk = opened(kept(picture(mode), kind))
    assert grey.shape == (240, 300)
    assert grey.dtype == np.uint8
    assert shrunk == 1.0
    assert grey[120, 20] < 10
    assert grey[120, 280] > 245


def test_sixteen_bits_are_spread_over_eight() -> None:
    deep = np.full((240, 300), 40_000, np.uint16)
    deep[:, :150] = 10_000
    grey, _ = opened(kept(Image.fromarray(deep), "PNG"))
    assert (grey[0, 0], grey[0, 299]) == (0, 255)


def test_what_is_clear_lies_on_white_paper() -> None:
    clear = Image.new("RGBA", (300, 240), (0, 0, 0, 0))
    assert opened(kept(clear, "PNG"))[0].min() == 255


def test_a_photo_is_turned_as_its_exif_says() -> None:
    exif = Image.Exif()
    exif[0x0112] = 6  # the picture's right side is its top as shown
    grey, _ = opened(kept(picture(), "JPEG", exif=exif))
    assert grey.shape == (300, 240)
    assert grey[20, 120] < 10
    assert grey[280, 120] > 245


def test_a_telephones_heic_is_opened_and_turned() -> None:
    """`turned-sheet.heic`: the invented photo of our own sheet (`tests/colour_photos.py`), held
    upright, packed once at quality 50 by libheif 1.23 (x265); Pillow packs the same as JPEG."""
    grey, shrunk = opened(TURNED_SHEET.read_bytes())
    as_jpeg, _ = opened(shot("own").data)
    assert shrunk == 1.0
    assert grey.shape == (1200, 900)
    apart = np.rot90(as_jpeg, -1).astype(int) - grey
    assert abs(apart).mean() < 4  # what both packings lose


@pytest.mark.parametrize("share", [0.02, 0.3, 0.6, 0.95])
def test_a_heic_that_is_cut_short_is_refused(share: float) -> None:
    whole = TURNED_SHEET.read_bytes()
    with pytest.raises(Refused, match="broken or cut short"):
        opened(whole[: int(share * len(whole))])


def test_a_spoilt_heic_is_opened_or_refused() -> None:
    whole = TURNED_SHEET.read_bytes()
    refused = 0
    for seed in range(60):
        dice, spoilt = random.Random(seed), bytearray(whole)
        for _ in range(3):
            spoilt[dice.randrange(900)] = dice.randrange(256)
        try:
            opened(bytes(spoilt))
        except Refused:
            refused += 1
    assert 0 < refused < 60


def test_of_an_animation_the_first_picture_is_taken() -> None:
    first, second = picture("L"), Image.new("L", (300, 240), 128)
    grey, _ = opened(kept(first, "PNG", save_all=True, append_images=[second]))
    assert grey[120, 20] < 10


@pytest.mark.parametrize("kind", ["PNG", "JPEG"])
@pytest.mark.parametrize("share", [0.02, 0.3, 0.6, 0.95])
def test_a_picture_that_is_cut_short_is_refused(kind: str, share: float) -> None:
    noise = np.random.default_rng(1).integers(0, 255, (240, 300, 3), np.uint8)
    data = kept(Image.fromarray(noise), kind)
    with pytest.raises(Refused, match="broken or cut short"):
        opened(data[: int(share * len(data))])


def chunk(name: bytes, content: bytes) -> bytes:
    check = zlib.crc32(name + content)
    return struct.pack(">I", len(content)) + name + content + struct.pack(">I", check)


@pytest.mark.parametrize("size", [(100_000, 100_000), (30_000, 300), (9000, 9000)])
def test_a_picture_of_too_many_pixels_is_refused_by_its_header(size: tuple[int, int]) -> None:
    """A few hundred bytes that would unpack to gigabytes: nothing is unpacked."""
    header = struct.pack(">IIBBBBB", *size, 8, 0, 0, 0, 0)
    body = chunk(b"IHDR", header) + chunk(b"IDAT", zlib.compress(bytes(1000))) + chunk(b"IEND", b"")
    with pytest.raises(Refused, match=r"too many|claims more|broken"):
        opened(b"\x89PNG\r\n\x1a\n" + body)


def test_a_picture_of_too_few_pixels_is_refused() -> None:
    with pytest.raises(Refused, match="only 90 × 80 pixels"):
        opened(kept(Image.new("L", (90, 80)), "PNG"))


def test_a_larger_picture_is_made_smaller_and_says_how_much(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(opening, "WORKING_PIXELS", 300 * 240 // 4)
    grey, shrunk = opened(kept(picture(), "PNG"))
    assert grey.shape == (120, 150)
    assert shrunk == 2.0


@pytest.mark.parametrize("data", [b"\x89PNG\r\n\x1a\n", b"\xff\xd8\xff\xe0", b"RIFF", b"GIF89a"])
def test_what_is_no_picture_is_refused(data: bytes) -> None:
    with pytest.raises(Refused):
        opened(data + bytes(500))
