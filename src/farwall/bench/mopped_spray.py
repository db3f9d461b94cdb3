"""How invented floors are sprayed: bands, overlapping circles, edges that wait for the next band.

Everything lies in a frame whose rows run across the bands and whose columns run along them.
Frozen with `bench.mopped_floors`. Rank of every figure: guess, of the size the trade tells.
"""

from __future__ import annotations

import numpy as np

from farwall.bench.mopped_noise import Chance, Field, Shape, clouds, ragged, soft, stepped
from farwall.nouns import dataclass

CONE_M = 0.07
"""Spread of what a cone leaves on the floor about its middle."""


@dataclass(frozen=True)
class Edge:
    """Where one band ends and the next begins.

    dried: the line to which the first band was wet, by column [rows] · laid: from where the next
    band wets it again · waited_min: from the first to the second, by column · open_min: until the
    film was gone there.
    """

    dried: Field
    laid: Field
    waited_min: Field
    open_min: Field


def strokes(throws: Chance, shape: Shape, px: float, band_m: float) -> Field:
    """Litres by circles that overlap, against the mean; what ran together while wet is evened."""
    rows, columns = shape
    step, points = 0.012, []
    radius, ahead = throws.uniform(0.14, 0.24), throws.uniform(0.07, 0.12)
    margin = 0.3
    band = -margin
    while band < rows / px + margin:
        length = columns / px + 2 * margin
        turns = length * band_m / (2 * radius * ahead) * 0.6
        count = int(turns * 2 * np.pi * radius / step)
        along = np.linspace(0, length, count)
        hand = 1 + 0.15 * ragged(throws, count, max(count / 40, 4.0), 3)
        angle = np.cumsum(step / (radius * hand))
        sweep = np.abs(np.mod(along / (2 * ahead + 0.25), 2) - 1) * (band_m - radius) + radius / 2
        u = along - margin + radius * hand * np.cos(angle)
        v = band + sweep + radius * hand * np.sin(angle)
        points.append(np.stack([v, u]))
        band += band_m
    v, u = np.concatenate(points, axis=1) * px
    inside = (v >= 0) & (v < rows) & (u >= 0) & (u < columns)
    at = v[inside].astype(int) * columns + u[inside].astype(int)
    fallen = np.bincount(at, minlength=rows * columns).reshape(shape).astype(np.float32)
    dose = soft(fallen, CONE_M * px)
    dose = dose / soft(np.ones(shape, np.float32) * np.float32(fallen.mean()), CONE_M * px)
    smooth = dose / np.maximum(soft(dose, 0.6 * px), 1e-3) - 1
    uneven = throws.uniform(0.02, 0.06)
    return np.asarray(1 + uneven * smooth / max(float(smooth.std()), 1e-6), np.float32)


def edge(throws: Chance, shape: Shape, px: float, thirst: Field, dry_share: float) -> Edge:
    """The end of a band across the whole piece, its next band so late that so much of it is dry."""
    rows, columns = shape
    where = throws.uniform(0.15, 0.85) * rows
    u = np.linspace(0, 1, columns)
    bend = throws.normal(0, 0.06) * px * 4 * u * (1 - u) + throws.normal(0, 0.04) * px * (u - 0.5)
    waver = throws.uniform(0.01, 0.035) * px
    middle = where + bend + waver * ragged(throws, columns, 0.8 * px, 3)
    half = throws.uniform(0.03, 0.14) * px
    rough = throws.uniform(0.006, 0.022) * px
    dried = middle + half + rough * _scalloped(throws, columns, px)
    laid = middle - half + rough * _scalloped(throws, columns, px)
    drunk = thirst[np.clip(middle.astype(int), 0, rows - 1), np.arange(columns)]
    opened = throws.uniform(6, 14) / drunk * np.exp(0.12 * ragged(throws, columns, 0.6 * px, 3))
    back = 2 * columns / px / throws.uniform(2.0, 4.0) * (1 - u if throws.uniform() < 0.5 else u)
    late = np.quantile(opened - back, dry_share)
    f32 = np.float32
    return Edge(dried.astype(f32), laid.astype(f32), (back + late).astype(f32), opened.astype(f32))


def _scalloped(throws: Chance, columns: int, px: float) -> Field:
    """An edge as circles leave it: a chain of bows, frayed by drops."""
    at, bows = np.arange(columns) / px, np.full(columns, -3.0)
    place = -0.3
    while place < columns / px + 0.3:
        radius = throws.uniform(0.10, 0.22)
        inside = np.clip(1 - ((at - place) / radius) ** 2, 0, None)
        bows = np.maximum(bows, 2.2 * np.sqrt(inside) - 1.2 + throws.normal(0, 0.25))
        place += radius * throws.uniform(0.7, 1.3)
    frayed = 0.6 * ragged(throws, columns, 0.12 * px, 5, 0.75)
    return np.asarray(np.maximum(bows, -1.3) + frayed, np.float32)


def doubled(at: Edge, shape: Shape, px: float, throws: Chance) -> tuple[Field, Field]:
    """How much more reacted where the edge had dried (0 to about 1), and how dry it was by column.

    While the edge is wet the two bands run together and nothing shows. Where it is dry the strip
    that both wetted has two doses, and the rim of the first, where salt gathered, a little more.
    """
    rows = shape[0]
    dry = stepped(np.asarray(at.waited_min - at.open_min), 0.0, 0.25)
    v = np.arange(rows, dtype=np.float32)[:, None]
    frayed = 0.25 * np.clip(clouds(throws, shape, 0.05 * px, 3, 0.8), -2, 2)
    sharp, blunt = throws.uniform(0.003, 0.010) * px, throws.uniform(0.006, 0.025) * px
    strip = stepped(at.dried[None, :] - v + sharp * frayed, 0, sharp)
    strip = strip * stepped(v - at.laid[None, :] + blunt * frayed, 0, blunt)
    rim = np.exp(-(((v - at.dried[None, :] + 0.010 * px) / (0.009 * px)) ** 2))
    strip = strip * (1 + 0.12 * clouds(throws, shape, 0.15 * px, 3))
    return np.asarray(dry[None, :] * (strip + throws.uniform(0, 0.5) * rim), np.float32), dry
