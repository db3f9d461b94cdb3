"""The reader is chosen by what the file holds; what cannot be read is said calmly."""

from pathlib import Path

import pytest
from tests.drawings import Manner, drawn
from tests.strategies.floors import House

from farwall.errors import Refused
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


@pytest.mark.parametrize("scale", [0.0, -1.0, float("nan"), float("inf"), 1e9])
def test_a_scale_that_cannot_be_is_refused(scale: float) -> None:
    with pytest.raises(Refused, match="cannot be"):
        read_bytes(b"", scale_m_per_unit=scale)


def test_a_missing_file_is_an_os_error(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        read_plan(tmp_path / "none.dxf")
