"""The exported SVG: groups by their words, one unit a metre, at 1:100, storeys side by side."""

from dataclasses import replace
from xml.etree import ElementTree

from tests.shapes import TWO_ROOMS
from tests.strategies.plans import small_plan

from farwall.facts.reading import Reading
from farwall.floor.nouns import Floor
from farwall.job.exchange import collection_of, exchanged_plan
from farwall.papers.exchange.svg import svg_bytes

SVG = "{http://www.w3.org/2000/svg}"


def test_groups_have_the_words_of_the_trade_by_hand() -> None:
    plan = small_plan()
    root = ElementTree.fromstring(svg_bytes(collection_of(exchanged_plan(plan), plan=plan)))
    groups = {one.get("id"): one for one in root.iter(f"{SVG}g") if one.get("id")}
    assert set(groups) == {
        "bands", "rooms", "fixtures", "saw-cuts", "openings", "ways-out", "stop-lines", "names",
        "scale-bar",
    }  # fmt: skip
    first = next(groups["rooms"].iter(f"{SVG}path"))
    assert first.get("d") == "M0.0,0.0 3.0,0.0 3.0,3.0 0.0,3.0Z"


def test_it_prints_at_one_to_a_hundred_by_hand() -> None:
    """Six metres of floor and a metre of margin on either side are 8 m: 80 mm of paper."""
    plan = small_plan()
    root = ElementTree.fromstring(svg_bytes(collection_of(exchanged_plan(plan))))
    assert root.get("width") == "80mm"
    assert root.get("viewBox", "").split()[2] == "8"


def test_storeys_stand_side_by_side_and_keep_their_metres() -> None:
    low, up = TWO_ROOMS.floor.rooms[0], TWO_ROOMS.floor.rooms[0]
    floor = Floor((replace(low, storey="low"), replace(up, id="over", storey="up")))
    root = ElementTree.fromstring(svg_bytes(collection_of(Reading("", "m", "m", 1.0, floor))))
    rooms = next(one for one in root.iter(f"{SVG}g") if one.get("id") == "rooms")
    shifts = [one.get("transform") for one in rooms.iter(f"{SVG}g") if one.get("transform")]
    assert len(set(shifts)) == 2
    first, second = rooms.iter(f"{SVG}path")
    assert first.get("d") == second.get("d")
