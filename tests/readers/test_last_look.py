"""What slips through a reader and could not be planned on is left aside and named."""

from dataclasses import replace

from tests.hostile.seeds import geojson
from tests.shapes import TWO_ROOMS

from farwall.facts.reading import Reading, Stated
from farwall.floor.faults import faults_of
from farwall.floor.geometry import PolygonGeometry
from farwall.floor.nouns import Exit, Fixture, Opening, Room
from farwall.readers.any_plan import read_bytes
from farwall.readers.last_look import looked_over

SOUND = read_bytes(geojson())
HALL, DEN = SOUND.floor.rooms
INNER, OUT = SOUND.floor.openings


def box(x: float, y: float, side: float = 1.0) -> PolygonGeometry:
    corners = [(x, y), (x + side, y), (x + side, y + side), (x, y + side), (x, y)]
    return PolygonGeometry((tuple(corners),))


def with_floor(**changes: object) -> Reading:
    return replace(SOUND, floor=replace(SOUND.floor, **changes))


def codes(reading: Reading) -> list[str]:
    return [note.code for note in reading.left]


def test_a_sound_reading_stays_the_same() -> None:
    assert looked_over(SOUND) is SOUND
    assert TWO_ROOMS.floor.rooms


def test_a_reading_without_a_scale_is_no_floor_yet() -> None:
    odd = replace(with_floor(openings=(INNER, INNER)), scale_m_per_unit=None)
    assert looked_over(odd) is odd


def test_a_room_far_off_goes_with_its_doors_and_what_was_told_of_it() -> None:
    far = replace(DEN, polygon=box(9000.0, 0.0))
    stated = {"den": Stated(9.0, "net"), "hall": Stated(12.0, "net")}
    odd = replace(with_floor(rooms=(HALL, far)), stated=stated, ceilings_m={"den": 2.5})
    found = looked_over(odd)
    assert found.floor.rooms == (HALL,)
    assert found.floor.openings == (OUT,)
    assert codes(found) == ["room-unsound"]
    assert "5000 m from the origin. Left aside." in found.left[0].what
    assert (list(found.stated), found.ceilings_m) == (["hall"], {})
    assert faults_of(found.floor, found.exits) == []


def test_a_door_in_mid_air_goes_with_its_exit_and_the_way_out_is_asked() -> None:
    odd = with_floor(openings=(INNER, replace(OUT, line=((2.0, 1.5), (2.9, 1.5)))))
    found = looked_over(odd)
    assert found.floor.openings == (INNER,)
    assert found.exits == ()
    assert codes(found) == ["opening-unsound"]
    assert found.asks[0].code == "way-out"
    assert faults_of(found.floor, found.exits) == []


def test_a_fixture_in_no_room_and_an_exit_that_leads_nowhere_go() -> None:
    odd = with_floor(fixtures=(Fixture("tub", box(30.0, 0.0)),))
    found = looked_over(replace(odd, exits=(*SOUND.exits, Exit("e2", "none"))))
    assert found.floor == SOUND.floor
    assert found.exits == SOUND.exits
    assert sorted(codes(found)) == ["exit-unsound", "fixture-unsound"]


def test_rooms_that_overlap_stay_and_are_named() -> None:
    found = looked_over(with_floor(rooms=(HALL, DEN, Room("bay", box(1.0, 1.0)))))
    assert len(found.floor.rooms) == 3
    assert codes(found) == ["floor-unsound"]
    assert "overlap" in found.left[0].what


def test_where_no_room_can_be_kept_a_tracing_is_asked_for() -> None:
    far = replace(HALL, polygon=box(9000.0, 0.0))
    found = looked_over(with_floor(rooms=(far,), openings=()))
    assert found.floor.rooms == ()
    assert found.asks[0].code == "tracing"


def test_a_door_of_a_room_that_is_not_there_goes() -> None:
    odd = Opening("d9", "door", INNER.line, ("hall", "none"), 0.8)
    found = looked_over(with_floor(openings=(INNER, OUT, odd)))
    assert found.floor.openings == (INNER, OUT)
    assert codes(found) == ["opening-unsound"]
