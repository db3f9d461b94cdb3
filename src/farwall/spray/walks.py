"""Walks from many places of a field at once, along the links of its lattice.

They are those of `Lattice.walks_from`, by Dijkstra's algorithm, which is faster
when they are asked for from hundreds of places, and may be *stretched*: a metre
one way counting for more than a metre the other.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

import numpy as np

from farwall.spray.lattice import Bools, Floats, Ints, Lattice

if TYPE_CHECKING:  # loaded where it is used: it takes a quarter of a second
    from scipy.sparse import csr_matrix


def links_of(lattice: Lattice) -> tuple[Ints, Ints]:
    """Both ends of every link, each link once."""
    here, there = [], []
    for scan in lattice.scans:
        same = np.diff(scan.apart) == 0
        here.append(scan.order[:-1][same])
        there.append(scan.order[1:][same])
    return np.concatenate(here), np.concatenate(there)


def walk_graph(lattice: Lattice, stretch: tuple[float, float] = (1.0, 1.0)) -> csr_matrix:
    """The links with their lengths, a metre along and across the grid counting `stretch`. [m]"""
    from scipy.sparse import coo_matrix

    here, there = links_of(lattice)
    uv = lattice.grid.to_uv(lattice.xy)
    legs = (uv[there] - uv[here]) * np.asarray(stretch)
    count = len(lattice)
    return coo_matrix((np.hypot(*legs.T), (here, there)), shape=(count, count)).tocsr()


def stretched_walks(lattice: Lattice, asked: Sequence[tuple[int, tuple[float, float]]]) -> Floats:
    """For each (place, stretch) the shortest stretched walks to all places, k x n in metres.

    Infinite where none leads. The digits are those of `nearest_walk`: each is the least of the same
    sums, added up from the start on. All at once and in rounds over the links: a field asks for a
    score of them, and to load the library takes five times as long.
    """
    next_to, legs = _rows_of_links(lattice)
    each = {stretch: np.hypot(*(legs * np.asarray(stretch)).T).T for _, stretch in asked}
    long_m = np.stack([each[stretch] for _, stretch in asked], axis=-1)
    walks = np.full((len(lattice), len(asked)), np.inf)
    walks[[place for place, _ in asked], np.arange(len(asked))] = 0.0
    by_way = np.empty_like(walks)
    while True:
        before = walks.copy()
        for there, on_m in zip(next_to, long_m, strict=True):
            np.take(walks, there, axis=0, out=by_way, mode="clip")
            np.minimum(walks, np.add(by_way, on_m, out=by_way), out=walks)
        if np.array_equal(before, walks):
            return np.ascontiguousarray(walks.T)


def _rows_of_links(lattice: Lattice) -> tuple[Ints, Floats]:
    """For each way along a link the place there, itself where there is none, and the leg. [m]

    Ways x places, and ways x places x 2 along and across the grid.
    """
    uv = lattice.grid.to_uv(lattice.xy)
    next_to = np.tile(np.arange(len(lattice)), (2 * len(lattice.scans), 1))
    for number, scan in enumerate(lattice.scans):
        same = np.diff(scan.apart) == 0
        here, there = scan.order[:-1][same], scan.order[1:][same]
        next_to[2 * number, here] = there
        next_to[2 * number + 1, there] = here
    return next_to, uv[next_to] - uv


def all_walks(graph: csr_matrix, places: Ints | None = None) -> Floats:
    """The shortest walks from `places` (from all) to every place, infinite where none leads. [m]"""
    from scipy.sparse.csgraph import dijkstra

    return np.asarray(dijkstra(graph, directed=False, indices=places))


def nearest_walk(graph: csr_matrix, places: Ints) -> Floats:
    """The shortest walk to each place from any of `places`. [m]"""
    from scipy.sparse.csgraph import dijkstra

    return np.asarray(dijkstra(graph, directed=False, indices=places, min_only=True))


def parts_of(graph: csr_matrix, inside: Bools) -> list[Ints]:
    """The places inside, parted where no links inside join them."""
    from scipy.sparse.csgraph import connected_components

    places = np.flatnonzero(inside)
    count, label = connected_components(graph[places][:, places], directed=False)
    return [places[label == number] for number in range(count)]
