"""From bytes to a reading: units overruled or asked, north, far origins, calm refusals."""

import pytest
from tests.readers.gbxml.small import DOOR, TWO, flat, gbxml, opening, planar, space, surface

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.gbxml.read import read_gbxml, told_of

DOORED = surface("InteriorWall", ["a", "b"], opening("NonSlidingDoor", planar(DOOR)))


def test_two_rooms_and_their_door() -> None:
    reading = read_bytes(gbxml(TWO, DOORED))
    assert reading.format == "gbXML"
    (way,) = reading.floor.openings
    assert (way.kind, sorted(way.rooms)) == ("door", ["a", "b"])


def test_any_prefix_will_do() -> None:
    text = gbxml(TWO, DOORED).decode()
    text = text.replace("<", "<g:").replace("<g:/", "</g:").replace("<g:?xml", "<?xml")
    text = text.replace("xmlns=", "xmlns:g=")
    assert read_bytes(text.encode()).floor == read_bytes(gbxml(TWO, DOORED)).floor


def test_utf_16_will_do() -> None:
    data = gbxml(TWO, DOORED).decode().encode("utf-16")
    assert read_bytes(data).floor == read_bytes(gbxml(TWO, DOORED)).floor


def test_a_unit_that_is_not_told_is_asked_for() -> None:
    for units in ("", 'lengthUnit="Cubits"'):
        reading = read_bytes(gbxml(TWO, units=units))
        assert "scale" in {note.code for note in reading.asks}
        assert (reading.scale_m_per_unit, reading.length_unit) == (None, "")
    said = read_bytes(gbxml(TWO, units=""), scale_m_per_unit=0.3048)
    assert (said.scale_m_per_unit, said.length_unit) == (0.3048, "ft")


def test_the_users_word_overrules_the_file_and_both_are_said() -> None:
    told = told_of(gbxml(TWO), scale_m_per_unit=0.3048)
    assert told.spaces[0].shape.area == pytest.approx(12 * 0.3048**2)
    (word,) = [note.what for note in told.mended if note.code == "unit-overruled"]
    assert "Meters" in word
    assert "0.3048" in word


@pytest.mark.parametrize(("turned", "north"), [("0", 0), ("30", 330), ("-15.5", 15.5)])
def test_north_is_where_the_model_is_turned_from(turned: str, north: float) -> None:
    campus = f"<Location><CADModelAzimuth>{turned}</CADModelAzimuth></Location>"
    told = told_of(gbxml(TWO, campus=campus))
    assert told.north_deg == pytest.approx(north)
    assert ("north-turned" in {note.code for note in told.mended}) is (north != 0)


def test_without_a_word_on_north_there_is_none() -> None:
    assert told_of(gbxml(TWO)).north_deg is None
    campus = "<Location><CADModelAzimuth>NaN</CADModelAzimuth></Location>"
    assert told_of(gbxml(TWO, campus=campus)).north_deg is None


def test_a_model_far_from_its_origin_is_brought_near() -> None:
    far = space("a", planar(flat(445_000, 5_444_000, 445_004, 5_444_003)))
    reading = read_gbxml(gbxml(far))
    assert reading.floor.rooms[0].polygon.shape.area == pytest.approx(12)
    assert max(abs(v) for p in reading.floor.rooms[0].polygon.coordinates[0] for v in p) < 10
    assert "origin-moved" in {note.code for note in reading.mended}


def test_no_space_is_a_floor_to_trace() -> None:
    reading = read_gbxml(gbxml(""))
    assert reading.floor.rooms == ()
    assert "tracing" in {note.code for note in reading.asks}


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"<other/>", "Its root is other"),
        (b"<gbXML>", "no XML"),
        (b'<!DOCTYPE gbXML [<!ENTITY x "y">]><gbXML>&x;</gbXML>', "entities"),
        (b"<gbXML>" + b"<Space>" * 100_000, "nested more than"),
    ],
)
def test_calm_refusals(data: bytes, words: str) -> None:
    with pytest.raises(Refused, match=words):
        read_gbxml(data)
