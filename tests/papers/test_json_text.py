"""The text of plan.json: the same values, a point to a line."""

import json

from hypothesis import given
from hypothesis import strategies as st

from farwall.papers.json_text import json_text

scalars = st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False) | st.text()
values = st.recursive(
    scalars, lambda inner: st.lists(inner) | st.dictionaries(st.text(), inner), max_leaves=30
)


@given(values)
def test_any_values_come_back_as_they_were(value):
    assert json.loads(json_text(value)) == value


@given(st.lists(st.lists(st.floats(allow_nan=False), min_size=1, max_size=3), min_size=1))
def test_a_path_takes_a_line_a_point(path):
    lines = json_text({"path": path}).splitlines()
    assert len(lines) == len(path) + 4
    assert json.loads("\n".join(lines)) == {"path": path}


def test_the_text_of_a_small_plan_by_hand():
    plan = {"id": "d1", "line": [[0.0, 1], [2.5, 1]], "rooms": ["a", "b"], "none": [], "bands": [
        {"order": 1, "polygon": {"coordinates": [[[0, 0], [1, 0], [0, 0]]]}}]}  # fmt: skip
    assert json_text(plan) == (
        '{\n "id": "d1",\n "line": [\n  [0.0, 1],\n  [2.5, 1]\n ],\n "rooms": ["a", "b"],\n'
        ' "none": [],\n "bands": [\n  {\n   "order": 1,\n   "polygon": {\n    "coordinates": [\n'
        "     [\n      [0, 0],\n      [1, 0],\n      [0, 0]\n     ]\n    ]\n   }\n  }\n ]\n}"
    )
