"""The exported DXF, opened by another reader: layers by their words, metres, names to be seen."""

import io
from dataclasses import replace

import ezdxf
from tests.shapes import TWO_ROOMS
from tests.strategies.plans import small_plan

from farwall.facts.reading import Reading
from farwall.floor.nouns import Floor
from farwall.job.exchange import collection_of, exchanged_plan
from farwall.papers.exchange.dxf import dxf_bytes


def opened(data: bytes):
    return ezdxf.read(io.StringIO(data.decode()))


def test_each_kind_has_a_layer_of_its_own_by_hand() -> None:
    """Two rooms 3 m by 3 m, a tub, a cut of half a metre, a stop line: as `small_plan` has them."""
    plan = small_plan()
    document = opened(dxf_bytes(collection_of(exchanged_plan(plan), plan=plan)))
    drawn = {}
    for one in document.modelspace().query("LWPOLYLINE"):
        drawn.setdefault(one.dxf.layer, []).append([tuple(p) for p in one.get_points("xy")])
    assert drawn["ROOMS"] == [
        [(0.0, 0.0), (3.0, 0.0), (3.0, 3.0), (0.0, 3.0)],
        [(3.0, 0.0), (6.0, 0.0), (6.0, 3.0), (3.0, 3.0)],
    ]
    assert drawn["SAW-CUTS"] == [[(0.0, 2.0), (0.5, 2.0)]]
    assert drawn["STOP-LINES"] == [[(0.0, 1.0), (0.0, 1.9)]]
    assert drawn["WAYS-OUT"] == [[(0.0, 1.0), (0.0, 1.9)]]
    assert len(drawn["OPENINGS"]) == 2
    assert len(drawn["BANDS"]) == len(drawn["FIXTURES"]) == 1
    assert document.header["$INSUNITS"] == 6
    assert document.header["$ACADVER"] == "AC1024"


def test_rooms_are_lettered_and_north_is_an_arrow_by_hand() -> None:
    """North 90 degrees clockwise from up points right: a shaft of one metre along x."""
    floor = Floor(TWO_ROOMS.floor.rooms, TWO_ROOMS.floor.openings, north_deg=90.0)
    reading = Reading("", "m", "m", 1.0, floor, TWO_ROOMS.exits)
    space = opened(dxf_bytes(collection_of(reading))).modelspace()
    assert {one.dxf.text for one in space.query("TEXT")} == {r.label for r in floor.rooms}
    shaft = space.query('LWPOLYLINE[layer=="NORTH"]')[0].get_points("xy")
    (ax, ay), (bx, by) = shaft
    assert (round(bx - ax, 9), round(by - ay, 9)) == (1.0, 0.0)


def test_storeys_have_layers_of_their_own() -> None:
    rooms = TWO_ROOMS.floor.rooms
    low, up = replace(rooms[0], storey="Ground floor"), replace(rooms[1], storey="Étage 1")
    floor = Floor((low, up))
    document = opened(dxf_bytes(collection_of(Reading("", "m", "m", 1.0, floor))))
    layers = {one.dxf.layer for one in document.modelspace().query("LWPOLYLINE")}
    assert layers == {"ROOMS-GROUND-FLOOR", "ROOMS-ETAGE-1"}
