import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.readers.walk.json_walk import walk_from_json
from farwall.units import M_PER_IN

TOLD = {
    "walk": 1,
    "tape": "feet",
    "rooms": [
        {
            "name": "Den",
            "walls": [{"length": "10' 6\""}, {"length": 3.0}, {"length": None}, {"length": 3.0}],
            "ways": [{"wall": 1, "at": "1'", "width": 0.8, "to": "Hall", "depth": '4 1/2"'}],
            "diagonals": [{"corners": [1, 3], "length": 4.4}],
            "across": [{"walls": [1, 3], "length": 3.0}],
        },
        {"name": "Hall", "walls": [{"length": 2, "turn_deg": 90}] * 4},
    ],
    "shared": [{"rooms": ["Den", "hall"], "walls": [2, 1], "depth": 0.1}],
}
anything = st.recursive(
    st.none() | st.booleans() | st.floats() | st.integers() | st.text(max_size=5),
    lambda one: st.lists(one, max_size=3) | st.dictionaries(st.text(max_size=5), one, max_size=3),
    max_leaves=8,
)


def mistakes(told):
    with pytest.raises(Refused) as refused:
        walk_from_json(told if isinstance(told, str) else json.dumps(told))
    return [str(one) for one in refused.value.mistakes]


def test_a_walk_in_json():
    walk = walk_from_json(json.dumps(TOLD))
    den, hall = walk.rooms
    assert den.walls[0].length_m == pytest.approx(126 * M_PER_IN)
    assert den.walls[2].length_m is None
    assert (den.ways[0].wall, den.ways[0].to, den.ways[0].kind) == (0, "Hall", "door")
    assert (den.diagonals[0].start, den.diagonals[0].end) == (0, 2)
    assert hall.walls[0].turn_deg == 90
    assert (walk.shared[0].wall, walk.shared[0].other_wall) == (1, 0)


@pytest.mark.parametrize(
    ("told", "word"),
    [
        ("{", "no JSON"),
        ('{"walk": ' + "[" * 200_000, "nested"),
        ([], "no walk"),
        ({"walk": 2}, "version 1"),
        ({"walk": 1, "tape": "ells"}, "feet or in metres"),
        ({"walk": 1, "rooms": {}}, "a list"),
        ({"walk": 1, "rooms": [3]}, "an object"),
        ({"walk": 1, "rooms": [{"name": 4}]}, "a text"),
        ({"walk": 1, "rooms": [{"name": "A", "walls": [{"length": True}]}]}, "a number"),
        ({"walk": 1, "rooms": [{"name": "A", "walls": [{"length": "far"}]}]}, "no length"),
        ({"walk": 1, "rooms": [{"name": "A", "ways": [{"wall": 0}]}]}, "whole number"),
        ({"walk": 1, "rooms": [{"name": "A", "ways": [{"kind": "hatch", "wall": 1}]}]}, "kind"),
        ({"walk": 1, "rooms": [{"name": "A", "diagonals": [{"corners": [1]}]}]}, "two numbers"),
        ({"walk": 1, "rooms": [{"name": "A"}], "shared": [{"rooms": ["A"]}]}, "two names"),
        ({"walk": 1, "rooms": [{"name": "A"}], "shared": [{"rooms": ["A", "A"]}]}, "no two rooms"),
        ('{"walk": 1, "rooms": [{"name": "A", "walls": [{"length": NaN}]}]}', "a number"),
    ],
)
def test_what_is_wrong_is_said(told, word):
    assert any(word in one for one in mistakes(told))


@given(anything, st.sampled_from(["tape", "rooms", "shared"]))
def test_any_json_is_a_walk_or_refused(value, key):
    try:
        walk_from_json(json.dumps({**TOLD, key: value}))
    except Refused:
        return


@given(anything, st.sampled_from(["name", "walls", "ways", "diagonals", "across"]))
def test_any_room_is_a_room_or_refused(value, key):
    try:
        walk_from_json(json.dumps({"walk": 1, "rooms": [{**TOLD["rooms"][0], key: value}]}))
    except Refused:
        return
