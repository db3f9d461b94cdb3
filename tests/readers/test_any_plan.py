"""The reader is chosen by what the file holds; what cannot be read is said calmly."""

import re
from pathlib import Path

import pytest
from tests.drawings import Manner, drawn
from tests.strategies.floors import House

from farwall.errors import Refused
from farwall.phrasebook import speaking, told
from farwall.readers.any_plan import read_bytes, read_plan


def test_a_drawing_is_read_whatever_it_is_called(tmp_path: Path) -> None:
    path = tmp_path / "plan.geojson"
    path.write_bytes(drawn(House((4.0,), (3.0,), 0.1, ()), Manner()))
    assert read_plan(path).format == "DXF"


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "The file is empty"),
        (b"  \r\n ", "The file is empty"),
        (b"AC1027\x00\x00", "a DWG drawing"),
        (b"ISO-10303-21;", "names no schema"),
        (b"<?xml version='1.0'?><ifcXML/>", "IFC in XML"),
        (b"GIF89a", "a GIF picture"),
        (b"RIFF\x24\x00\x00\x00WEBPVP8 ", "a WebP picture"),
        (b"II*\x00\x08\x00\x00\x00", "a TIFF picture"),
        (b"MM\x00*\x00\x00\x00\x08", "a TIFF picture"),
        (b"BM\x36\x00\x00\x00\x00\x00\x00\x00", "a BMP picture"),
        (b"RIFF\x24\x00\x00\x00WAVEfmt ", "no plan that is known"),
        (b"PK\x03\x04", "a zip archive"),
        (b"\x1f\x8b", "a compressed file"),
        (b"<html/>", "a web or XML file"),
        (b"hello, slab", "no plan that is known"),
        (bytes(range(256)), "no plan that is known"),
    ],
)
def test_what_cannot_be_read_says_what_can(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words) as refusal:
        read_bytes(data, name="thing")
    assert "DXF" in str(refusal.value)
    assert refusal.value.about == "thing was not read."


def test_rooms_told_in_words_are_told_how_a_walk_begins() -> None:
    with pytest.raises(Refused, match="first line does not say so") as refusal:
        read_bytes(b"unit: m\nroom Garage\n north 6.2\n")
    first, room, walls = re.findall(r'"([^"]+)"', refusal.value.mistakes[0].remedy)
    reading = read_bytes("\n".join((first, room, walls)).encode())  # what is advised is read
    assert [one.name for one in reading.floor.rooms] == ["Garage"]


@pytest.mark.parametrize("scale", [0.0, -1.0, float("nan"), float("inf"), 1e9])
def test_a_scale_that_cannot_be_is_refused(scale: float) -> None:
    with pytest.raises(Refused, match="cannot be"):
        read_bytes(b"", scale_m_per_unit=scale)


def test_a_missing_file_is_an_os_error(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        read_plan(tmp_path / "none.dxf")


@pytest.mark.parametrize("data", [b"RIFF\x24\x00\x00\x00WEBPVP8 ", b"GIF89a", b"AC1027", b"hello"])
def test_why_a_file_is_not_read_is_told_in_spanish_as_well(data: bytes) -> None:
    with pytest.raises(Refused) as refusal:
        read_bytes(data, name="cocina.webp")
    with speaking("es"):
        about, said = told(refusal.value.about), told(str(refusal.value.mistakes[0]))
    assert about == "cocina.webp no se leyó."
    assert "Se puede leer: DXF" in said
    assert " is " not in said
