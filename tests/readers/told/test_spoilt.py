"""Models with wounds: numbers swapped for other words, pieces cut out or doubled, bytes flipped."""

import json
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.strategies.told_houses import Door, House, as_gbxml, as_geojson, as_indoorgml

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.reading_json import reading_json

HOUSE = House(
    {"r00": (0, 0, 4, 3), "r10": (4.1, 0, 8, 3)},
    (
        Door("d0", ("r00", "r10"), ((4.05, 1), (4.05, 1.8))),
        Door("d-out", ("r00",), ((1, -0.05), (1.9, -0.05))),
    ),
    0.1,
)
WHOLE = {
    "gbXML": as_gbxml(HOUSE),
    "IndoorGML": as_indoorgml(HOUSE),
    "GeoJSON": as_geojson(HOUSE, per_degree=(75_000, 111_000)),
}
NUMBER = re.compile(rb"-?\d+\.?\d*")
WORDS = [b"NaN", b"Infinity", b"1e999", b"-1e308", b"1e8", b"0", b"", b"-", b"abc", b"9" * 400,
         b"null", b"[]", b"{}", b"1e-320", b"-7.5"]  # fmt: skip


@st.composite
def spoilt(draw: st.DrawFn, whole: bytes) -> bytes:
    """A model with one to five wounds."""
    data = whole
    for _ in range(draw(st.integers(1, 5))):
        start = draw(st.integers(0, len(data) - 1))
        wound = draw(st.sampled_from(["number", "number", "cut", "double", "flip"]))
        end = start + draw(st.integers(1, 300))
        if wound == "number" and (found := NUMBER.search(data, start)):
            data = data[: found.start()] + draw(st.sampled_from(WORDS)) + data[found.end() :]
        elif wound == "cut":
            data = data[:start] + data[end:] or b" "
        elif wound == "double":
            data = data[:end] + data[start:]
        elif wound == "flip":
            data = data[:start] + bytes([draw(st.integers(0, 255))]) + data[start + 1 :]
    return data


@pytest.mark.parametrize("kind", WHOLE)
@given(data=st.data())
@settings(max_examples=120)
def test_a_spoilt_model_is_refused_calmly_or_read_soundly(kind: str, data: st.DataObject) -> None:
    text = data.draw(spoilt(WHOLE[kind]))
    try:
        reading = read_bytes(text)
    except Refused as refusal:
        assert all(mistake.what for mistake in refusal.mistakes)  # noqa: PT017
        return
    json.dumps(reading_json(reading), allow_nan=False)
    assert all(room.polygon.shape.is_valid for room in reading.floor.rooms)
    if reading.floor.rooms == ():
        assert reading.asks


@pytest.mark.parametrize("kind", WHOLE)
def test_the_whole_model_has_both_rooms_and_both_doors(kind: str) -> None:
    reading = read_bytes(WHOLE[kind])
    assert (len(reading.floor.rooms), len(reading.floor.openings), len(reading.exits)) == (2, 2, 1)
