"""Plan files: one comes back as it was, what is none is refused in words."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.strategies.plans import small_plan

from farwall.errors import Refused
from farwall.facts.plan import Plan
from farwall.readers.plan_json import plan_from, plan_to_dict, plan_to_text, read_plan

anything = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=6),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=6), inner),
    max_leaves=8,
)


def test_a_plan_comes_back_from_its_file_as_it_was(tmp_path):
    path = tmp_path / "plan.json"
    path.write_text(plan_to_text(small_plan()))
    assert read_plan(path) == small_plan()


def test_every_promised_key_is_written_even_when_empty():
    bare = plan_to_dict(replace(small_plan(), fields=(), mixes=(), clocks=(), cautions=()))
    promised = {"version", "inputs_hash", "starts_at", "inputs", "fields", "mixes", "clocks"}
    assert promised | {"cautions"} <= set(bare)
    inputs = {"floor", "openings", "exits", "fixtures", "saw_cuts", "crew", "tools", "coats"}
    assert inputs | {"l_per_m2"} <= set(bare["inputs"])


def test_a_key_from_a_later_day_is_passed_over():
    grown = plan_to_dict(small_plan()) | {"weather": "fine"}
    assert plan_from(grown, "a plan") == small_plan()


def test_a_later_version_is_refused():
    with pytest.raises(Refused, match="later Farwall"):
        plan_from(plan_to_dict(small_plan()) | {"version": 2}, "a plan")


def test_all_mistakes_come_at_once():
    spoilt = plan_to_dict(small_plan()) | {"starts_at": 7}
    spoilt["fields"][0]["verdict"] = "maybe"
    with pytest.raises(Refused) as refusal:
        plan_from(spoilt, "a plan")
    assert {one.where for one in refusal.value.mistakes} == {"starts_at", "fields[0].verdict"}


@given(anything, st.sampled_from(sorted(plan_to_dict(small_plan()))))
def test_anything_in_a_plan_gives_a_plan_or_a_refusal(data, key):
    spoilt = json.loads(plan_to_text(small_plan())) | {key: data}
    for candidate in (data, spoilt):
        try:
            answer = plan_from(candidate, "noise")
        except Refused as refusal:
            answer = refusal
        assert isinstance(answer, Plan) or answer.mistakes
