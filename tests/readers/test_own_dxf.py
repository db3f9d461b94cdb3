"""Our own DXF after another program had it: read exactly while it stands, else as any drawing."""

import io
from dataclasses import replace

import ezdxf
import pytest
from tests.shapes import TWO_ROOMS
from tests.strategies.jobs import box

from farwall.facts.reading import Reading
from farwall.floor.nouns import Fixture
from farwall.papers.exchange.files import DXF, exchange_files
from farwall.readers.any_plan import read_bytes

READING = Reading("DXF", "m", "m", 1.0, TWO_ROOMS.floor, TWO_ROOMS.exits)


def changed(change) -> bytes:
    document = ezdxf.read(io.StringIO(exchange_files(READING)[DXF].decode()))
    change(document)
    text = io.StringIO()
    document.write(text)
    return text.getvalue().encode()


def rooms(document):
    return document.modelspace().query('LWPOLYLINE[layer=="ROOMS"]')


def test_saved_again_by_another_program_it_is_the_same_floor() -> None:
    back = read_bytes(changed(lambda document: document.layers.add("FURNITURE")))
    assert (back.floor, back.exits) == (READING.floor, READING.exits)


def test_a_thing_that_was_moved_there_is_read_where_it_lies_now() -> None:
    """A tub that is set 0.25 m to the right in a drawing program stands there."""
    tub = Fixture("tub", box(0.5, 0.5, 1.0, 0.5), "tub-1")
    reading = replace(READING, floor=replace(READING.floor, fixtures=(tub,)))
    document = ezdxf.read(io.StringIO(exchange_files(reading)[DXF].decode()))
    document.modelspace().query('LWPOLYLINE[layer=="FIXTURES"]')[0].translate(0.25, 0, 0)
    text = io.StringIO()
    document.write(text)
    (found,) = read_bytes(text.getvalue().encode()).floor.fixtures
    assert found.polygon.shape.bounds == (0.75, 0.5, 1.75, 1.0)
    assert found.id == "tub-1"


@pytest.mark.parametrize(
    "change",
    [
        lambda document: document.header.__setitem__("$INSUNITS", 1),
        lambda document: rooms(document)[0].set_points([(0, 0, 0.5), (4, 0, 0), (4, 3, 0)], "xyb"),
        lambda document: document.modelspace().add_entity(rooms(document)[0].copy()),
        lambda document: rooms(document)[0].set_xdata("FARWALL", [(1000, "[")]),
        lambda document: rooms(document)[0].set_xdata("FARWALL", [(1000, '{"piece":"x"}')]),
        lambda document: document.rootdict.discard("FARWALL"),
        lambda document: document.rootdict["FARWALL"].reset([(1, "no words")]),
    ],
    ids=["inches", "curved", "copied", "spoilt", "no number", "no mark", "spoilt mark"],
)
def test_what_is_no_longer_as_it_was_written_is_read_as_any_drawing(change) -> None:
    reading = read_bytes(changed(change))
    assert reading.floor != READING.floor
    assert reading.format == "DXF"
