"""Where nouns lie in plain values, and the nearest known word."""

from __future__ import annotations

from farwall.facts.job import Coat, Job, RoomSurvey, Tools
from farwall.floor.geometry import PolygonGeometry
from farwall.readers.shape import did_you_mean, entries, keys_of


def test_the_keys_of_a_noun_come_in_its_own_order():
    assert list(keys_of(Coat))[:3] == ["id", "stain", "cut"]


def test_every_noun_is_found_with_its_place():
    raw = {
        "floor": {"rooms": [{"id": "a", "polygon": {"coordinates": []}}]},
        "survey": {"rooms": {"a": {"drop_s": 3}}},
        "tools": {},
    }
    found = {entry.place: entry.noun for entry in entries(raw, Job)}
    assert found[("floor", "rooms", 0, "polygon")] is PolygonGeometry
    assert found[("survey", "rooms", "a")] is RoomSurvey
    assert found[("tools",)] is Tools


def test_values_of_the_wrong_kind_hide_no_nouns_beside_them():
    raw = {"floor": 7, "survey": [], "samples": {"id": "x"}, "tools": {"tank_l": []}}
    assert [entry.noun for entry in entries(raw, Job)] == [Job, Tools]


def test_the_nearest_word_is_offered_and_a_stranger_gets_the_whole_list():
    assert did_you_mean("tnak_l", ["tank_l", "band_m"]) == "Did you mean `tank_l`?"
    assert did_you_mean("colour", ["tank_l", "band_m"]) == "Known here: tank_l, band_m."
    assert did_you_mean("x", []) == "Nothing may stand here."
