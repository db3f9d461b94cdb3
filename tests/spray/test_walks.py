"""Walks from many places at once: the same as those of the lattice, and stretched ones by hand."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.shapes import AWKWARD
from tests.spray.grounds import along, ground
from tests.spray.hand_floors import hall

from farwall.spray.lattice import FAR_M
from farwall.spray.walks import all_walks, links_of, nearest_walk, parts_of, walk_graph


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


def test_a_hall_without_its_middle_falls_into_two_parts():
    here = ground(hall(8, 2))
    x = along(here)
    parts = parts_of(walk_graph(here.lattice), (x < 3) | (x > 5))
    assert sorted((x[part].max() < 4) for part in parts) == [False, True]
    assert sum(map(len, parts)) == ((x < 3) | (x > 5)).sum()
