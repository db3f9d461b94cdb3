"""Edges between the bands of a plan, in a room, by what is done."""

from dataclasses import dataclass
from types import SimpleNamespace

import pytest
import shapely

from farwall.job.colour.band_edges import LEAST_M, band_edges


@dataclass(frozen=True)
class Shape:
    shape: shapely.Polygon


def band(number, x0, x1, field="a", depth=3.0):
    return SimpleNamespace(
        id=f"{field}.{number}", order=number, polygon=Shape(shapely.box(x0, 0, x1, depth))
    )


def plan(*fields, overlap_m=0.2):
    rooms = [SimpleNamespace(id="hall", polygon=Shape(shapely.box(0, 0, 4, 3)))]
    told = [SimpleNamespace(coat=coat, bands=bands) for coat, bands in fields]
    inputs = SimpleNamespace(
        floor=SimpleNamespace(rooms=rooms), tools=SimpleNamespace(overlap_m=overlap_m),
        coats=[SimpleNamespace(id="first"), SimpleNamespace(id="second")],
    )  # fmt: skip
    return SimpleNamespace(fields=told, inputs=inputs)


THREE = (band(1, 0, 1), band(2, 1, 2.2), band(3, 2.2, 4))


def test_each_two_neighbours_meet_in_the_middle_of_the_strip_that_both_wet():
    found = band_edges(plan(("first", THREE)), "hall")
    assert [(one.coat, one.band) for one in found] == [(1, 1), (1, 2)]
    for one, at in zip(found, (0.9, 2.1), strict=True):
        assert [x for x, _ in one.line] == pytest.approx([at] * len(one.line))
        assert shapely.LineString(one.line).length == pytest.approx(3.0)


def test_coats_are_counted_as_the_plan_lists_them():
    found = band_edges(plan(("second", THREE), ("first", THREE[:2])), "hall")
    assert [(one.coat, one.band) for one in found] == [(1, 1), (2, 1), (2, 2)]


def test_what_is_not_sprayed_has_no_edge_yet():
    assert [one.band for one in band_edges(plan(("first", THREE)), "hall", {"a.1", "a.2"})] == [1]
    assert band_edges(plan(("first", THREE)), "hall", {"a.1"}) == ()


def test_another_room_and_bands_that_touch_by_a_corner_give_none():
    assert band_edges(plan(("first", THREE)), "attic") == ()
    short = (band(1, 0, 1, depth=LEAST_M / 2), band(2, 1, 2))
    assert band_edges(plan(("first", short)), "hall") == ()
    apart = (band(1, 0, 1), band(3, 2.2, 4))
    assert band_edges(plan(("first", apart)), "hall") == ()
