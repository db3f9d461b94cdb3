"""Walks from many places at once: the same as those of the lattice, and stretched ones by hand."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD
from tests.spray.grounds import along, ground
from tests.spray.hand_floors import hall

from farwall.spray.lattice import FAR_M, lattice_of
from farwall.spray.walks import (
    all_walks,
    links_of,
    nearest_walk,
    parts_of,
    stretched_walks,
    walk_graph,
)


def apart_lattice():
    """Two squares side by side, a slit between them that no walk crosses."""
    rooms = [shapely.box(0, 0, 2, 2), shapely.box(2.02, 0, 4, 2)]
    neck = shapely.box(1.9, 1.99, 2.1, 2.0)  # of one piece, and narrower than any step
    return lattice_of(shapely.union_all([*rooms, neck]), rooms, 0.2)


@pytest.mark.parametrize("name", AWKWARD)
def test_walks_are_those_of_the_lattice(name):
    """Another algorithm over the same links: scans along chains there, Dijkstra here."""
    lattice = ground(AWKWARD[name]).lattice
    places = np.arange(0, len(lattice), 37)
    start = np.full((len(places), len(lattice)), FAR_M)
    start[np.arange(len(places)), places] = 0.0
    found = all_walks(walk_graph(lattice), places)
    assert found == pytest.approx(lattice.walks_from(start), abs=1e-6)
    assert nearest_walk(walk_graph(lattice), places) == pytest.approx(found.min(axis=0))


def test_each_link_comes_once():
    here, there = links_of(ground(AWKWARD["island kitchen"]).lattice)
    pairs = np.sort(np.stack([here, there]), axis=0)
    assert len(np.unique(pairs, axis=1).T) == len(here)


@settings(max_examples=20)
@given(st.floats(0.1, 1.0))
def test_a_stretched_walk_down_a_hall_by_hand(share):
    """By hand: along a hall a metre counts `share` of one, whatever counts across."""
    here = ground(hall(8, 2))
    first = int(np.argmin(along(here)))
    row = np.abs(here.lattice.xy[:, 1] - here.lattice.xy[first, 1]) < 1e-9
    found = nearest_walk(walk_graph(here.lattice, (share, 1.0)), np.array([first]))
    assert found[row] == pytest.approx(share * (along(here) - along(here)[first])[row])


@pytest.mark.parametrize("name", AWKWARD)
def test_stretched_walks_have_the_digits_of_dijkstra(name):
    """Two algorithms, not one digit apart: both take the least of the same sums."""
    lattice = ground(AWKWARD[name]).lattice
    asked = [(0, (1.0, 1.0)), (len(lattice) // 2, (0.3, 1.0)), (len(lattice) - 1, (1.0, 0.1))]
    for (first, stretch), walks in zip(asked, stretched_walks(lattice, asked), strict=True):
        dijkstra = nearest_walk(walk_graph(lattice, stretch), np.array([first]))
        assert np.array_equal(walks, dijkstra)


def test_no_stretched_walk_leads_through_a_wall():
    """Two rooms without an opening: infinite beyond the wall, 0 where it begins."""
    lattice = apart_lattice()
    first = int(np.flatnonzero(lattice.owner == 0)[0])
    (walks,) = stretched_walks(lattice, [(first, (1.0, 0.5))])
    assert walks[first] == 0
    assert np.isfinite(walks[lattice.owner == 0]).all()
    assert np.isinf(walks[lattice.owner == 1]).all()


def test_a_hall_without_its_middle_falls_into_two_parts():
    here = ground(hall(8, 2))
    x = along(here)
    parts = parts_of(walk_graph(here.lattice), (x < 3) | (x > 5))
    assert sorted((x[part].max() < 4) for part in parts) == [False, True]
    assert sum(map(len, parts)) == ((x < 3) | (x > 5)).sum()
