"""Floors cut into 64 cells at most: the shapes of the bench, and drawn polyominoes.

A cell is floor when its middle lies on the floor; cells are neighbours when the line between their
middles stays on it. What does not hang together with the exit is left out and told by its share.
Frozen: a test holds the digest.
"""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

import numpy as np
import shapely
from tests.spray.cells import SIDES, Cell, CellFloor, cell_floor

from farwall.bench.shapes import SHAPES
from farwall.floor.thresholds import join_thresholds
from farwall.spray.approach import connected
from farwall.spray.building import build_world
from farwall.spray.lattice import main_angle, turned

MOST_CELLS = 64
DRAWN = 40
_FINER = 0.98


def grid_cases() -> Iterator[tuple[str, CellFloor]]:
    """Each case with its name, always in the same order."""
    for name in SHAPES:
        yield name, rastered(name)
    for seed in range(DRAWN):
        yield f"drawn {seed}", drawn(seed)


def rastered(name: str) -> CellFloor:
    """A shape of the bench in as many square cells as 64 allow."""
    shape = SHAPES[name]
    world = build_world(join_thresholds(shape.floor), (shape.exit,))
    floor = connected(world, list(world.pieces))
    angle = main_angle(floor)
    way_out = next(seam for seam in world.seams if seam.is_way_out).chord
    straight, line = (
        shapely.transform(one, lambda xy: turned(xy, -angle)) for one in (floor, way_out)
    )
    step = float(np.sqrt(floor.area / MOST_CELLS)) / _FINER
    while len(cells := _cells(straight, step)) > MOST_CELLS:
        step /= _FINER
    return _hanging(straight, cells, line)


def _cells(floor: shapely.Polygon, step: float) -> dict[Cell, tuple[float, float]]:
    """Cells whose middle lies on the floor, centred on its box."""
    x0, y0, x1, y1 = floor.bounds
    counts = [max(1, round(long / step)) for long in (x1 - x0, y1 - y0)]
    low = [(a + b - n * step) / 2 for a, b, n in zip((x0, y0), (x1, y1), counts, strict=True)]
    middles = {
        (i, j): (round(low[0] + (i + 0.5) * step, 6), round(low[1] + (j + 0.5) * step, 6))
        for i in range(counts[0])
        for j in range(counts[1])
    }
    return {cell: at for cell, at in middles.items() if shapely.contains_xy(floor, *at)}


def _hanging(
    floor: shapely.Polygon, cells: dict[Cell, tuple[float, float]], way_out: shapely.LineString
) -> CellFloor:
    exit_ = min(
        cells, key=lambda cell: (round(way_out.distance(shapely.Point(cells[cell])), 6), cell)
    )
    linked: dict[Cell, list[Cell]] = {
        cell: [
            there
            for dx, dy in SIDES
            if (there := (cell[0] + dx, cell[1] + dy)) in cells
            and floor.covers(shapely.LineString([cells[cell], cells[there]]))
        ]
        for cell in cells
    }
    reached, front = {exit_}, [exit_]
    while front:
        front = [there for cell in front for there in linked[cell] if there not in reached]
        reached.update(front)
    listed = tuple(sorted(reached))
    number = {cell: at for at, cell in enumerate(listed)}
    edges = tuple(
        (number[cell], number[there])
        for cell in listed
        for there in sorted(linked[cell])
        if there > cell
    )
    return CellFloor(listed, edges, number[exit_])


def drawn(seed: int) -> CellFloor:
    """A polyomino of 16 to 64 cells: grown cell by cell, half of them lumpy, half of them long."""
    dice = Random(f"polyomino {seed}")
    count = 16 + int(dice.random() * 49)
    cells = [(0, 0)]
    while len(cells) < count:
        recent = cells[-6:] if seed % 2 else cells
        x, y = recent[int(dice.random() * len(recent))]
        dx, dy = SIDES[int(dice.random() * 4)]
        if (x + dx, y + dy) not in cells:
            cells.append((x + dx, y + dy))
    x0, y0 = min(x for x, _ in cells), min(y for _, y in cells)
    floor = cell_floor([(x - x0, y - y0) for x, y in cells])
    return CellFloor(floor.cells, floor.edges, int(dice.random() * count))
