"""Invented slabs: cement paste, trowels, cracks, cuts, patches, before any stain is laid.

Frozen with `bench.mopped_floors`. Rank of every figure: guess, of the size that floors show.
"""

from __future__ import annotations

from dataclasses import field

import numpy as np

from farwall.bench.mopped_noise import (
    Chance,
    Field,
    Shape,
    chance,
    clouds,
    marbled,
    ragged,
    soft,
    stepped,
    streaks,
)
from farwall.nouns import dataclass

Point = tuple[float, float]
Ring = tuple[Point, ...]


@dataclass(frozen=True)
class Decoy:
    """What is in the slab and no fault of the spraying: kind, and its line or outline [m]."""

    kind: str
    line: Ring
    wide_m: float


@dataclass
class Slab:
    """Fields over the plan, row 0 at the top.

    grey: reflectance of the dry paste · thirst: what it drinks against the mean · lime: what there
    is to react with against the mean · relief: of the face, spread 1 · lines: 1 in cracks and cuts.
    """

    m_per_px: float
    grey: Field
    thirst: Field
    lime: Field
    relief: Field
    lines: Field
    decoys: list[Decoy] = field(default_factory=list)

    @property
    def shape(self) -> Shape:
        """Rows and columns."""
        return self.grey.shape[0], self.grey.shape[1]


def slab(seed: int, wide_m: float, high_m: float, m_per_px: float) -> Slab:
    """The slab of that seed, so wide and high."""
    throws = chance(seed, 11)
    shape = (round(high_m / m_per_px), round(wide_m / m_per_px))
    px = 1 / m_per_px
    broad = clouds(throws, shape, 1.3 * px, 5)
    middle = marbled(throws, shape, 0.35 * px, 0.10 * px)
    fine = clouds(throws, shape, 0.03 * px, 3, 0.8)
    trowel = _trowelled(throws, shape, px)
    tight = 0.5 * broad + 0.35 * middle + 0.55 * trowel
    grey = throws.uniform(0.30, 0.46) * np.exp(
        0.06 * broad + 0.05 * middle - 0.07 * trowel + 0.035 * fine
    )
    made = Slab(
        m_per_px,
        np.asarray(grey, np.float32),
        np.asarray(np.exp(-throws.uniform(0.05, 0.16) * tight), np.float32),
        np.asarray(np.exp(throws.uniform(0.08, 0.2) * marbled(throws, shape, 0.7 * px, 0.25 * px)
                          + 0.06 * fine), np.float32),
        np.asarray(0.6 * trowel + 0.5 * fine + 0.4 * middle, np.float32),
        np.zeros(shape, np.float32),
    )  # fmt: skip
    _specks(made, throws)
    _flaws(made, throws)
    return made


def _trowelled(throws: Chance, shape: Shape, px: float) -> Field:
    """Burnish of a machine's rings and of a hand's arcs, spread about 1."""
    total = np.zeros(shape, np.float32)
    machine = throws.uniform(0.3, 1.0)
    for _ in range(int(shape[0] * shape[1] / (0.35 * px) ** 2)):
        radius = throws.uniform(0.36, 0.52) * px
        _arc(total, throws, radius * 0.25, radius, machine * throws.uniform(0.3, 1.0), turn=6.28)
    hand = throws.uniform(0.2, 1.0)
    for _ in range(int(shape[0] * shape[1] / (0.5 * px) ** 2)):
        radius = throws.uniform(0.5, 0.9) * px
        inner = radius - throws.uniform(0.09, 0.13) * px
        _arc(total, throws, inner, radius, hand * throws.uniform(0.4, 1.2),
             turn=throws.uniform(0.5, 1.5))  # fmt: skip
    return np.asarray(total / max(float(total.std()), 1e-6), np.float32)


def _arc(
    total: Field, throws: Chance, inner: float, outer: float, strength: float, *, turn: float
) -> None:
    """One sweep of a blade, added: fine lines round a middle, a ridge where the blade's end ran."""
    import cv2

    rows, columns = total.shape
    mid = throws.uniform(0, rows), throws.uniform(0, columns)
    top, left = max(0, int(mid[0] - outer)), max(0, int(mid[1] - outer))
    foot, right = min(rows, int(mid[0] + outer) + 1), min(columns, int(mid[1] + outer) + 1)
    lines = streaks(throws, 256, max(int(outer - inner), 8), throws.uniform(30, 120))
    start = throws.uniform(0, 6.28)
    y, x = np.mgrid[top:foot, left:right].astype(np.float32)
    y, x = y - np.float32(mid[0]), x - np.float32(mid[1])
    if y.size == 0:
        return
    reach, angle = np.hypot(x, y), (np.arctan2(y, x) + start) % (2 * np.pi)
    place = (reach - inner) / (outer - inner)
    seen = cv2.remap(
        lines, np.asarray(angle * (255 / (2 * np.pi)), np.float32),
        np.asarray(place * (len(lines) - 1), np.float32), cv2.INTER_LINEAR,
        borderMode=cv2.BORDER_REPLICATE,
    )  # fmt: skip
    inside = stepped(place, 0.04, 0.02) * stepped(-place, -0.97, 0.012)
    if turn < 6:
        inside = inside * stepped(angle, 0.15, 0.06) * stepped(-angle, -turn - 0.15, 0.06)
    ridge = np.exp(-(((place - 0.95) / 0.025) ** 2))
    total[top:foot, left:right] += strength * inside * (0.55 * seen + 0.5 + 0.8 * ridge)


def _specks(made: Slab, throws: Chance) -> None:
    """Pinholes and grains of sand, darker or lighter by a little."""
    rows, columns = made.shape
    grains = throws.standard_normal((rows, columns)).astype(np.float32)
    made.grey *= np.exp(0.02 * grains)
    count = throws.integers(3, 30) * int(rows * columns * made.m_per_px**2)
    at = throws.integers(0, rows, count), throws.integers(0, columns, count)
    holes = np.zeros(made.shape, np.float32)
    holes[at] = throws.uniform(0.5, 3.0, count)
    made.grey *= np.exp(-0.5 * soft(holes, 0.7))


def _flaws(made: Slab, throws: Chance) -> None:
    """By chance: cracks, saw cuts, a patch of another pour, spots of the builder."""
    for _ in range(throws.choice([0, 1, 2, 3], p=[0.5, 0.25, 0.15, 0.1])):
        _crack(made, throws)
    if throws.uniform() < 0.3:
        _cut(made, throws)
    if throws.uniform() < 0.12:
        _another_pour(made, throws)
    deep = np.exp(-0.9 * made.lines)
    made.grey *= deep
    made.thirst *= 1 + 0.25 * soft(made.lines, 0.012 / made.m_per_px)


def _crack(made: Slab, throws: Chance) -> None:
    """A hairline that wanders in short jags."""
    rows, columns = made.shape
    place = np.array([throws.uniform(0, columns), throws.uniform(0, rows)])
    heading, line = throws.uniform(0, 6.28), []
    for _ in range(int(throws.uniform(20, 130))):
        heading += throws.normal(0, 0.09)
        jag = heading + throws.normal(0, 0.38)
        step = throws.uniform(0.012, 0.04) / made.m_per_px
        place = place + step * np.array([np.cos(jag), np.sin(jag)])
        line.append(place)
    _draw_line(made, np.array(line), throws.uniform(0.0015, 0.003), "crack",
               throws.uniform(0.4, 1.0))  # fmt: skip


def _cut(made: Slab, throws: Chance) -> None:
    """A saw cut or joint, wall to wall, straight."""
    rows, columns = made.shape
    if throws.uniform() < 0.5:
        x = throws.uniform(0.2, 0.8) * columns
        line = np.array([[x, -2], [x + throws.normal(0, 3), rows + 2]])
    else:
        y = throws.uniform(0.2, 0.8) * rows
        line = np.array([[-2, y], [columns + 2, y + throws.normal(0, 3)]])
    _draw_line(made, line, throws.uniform(0.003, 0.006), "joint", 1.0)


def _draw_line(made: Slab, line: np.ndarray, wide_m: float, kind: str, depth: float) -> None:
    import cv2

    layer = np.zeros(made.shape, np.uint8)
    thick = max(1, round(wide_m / made.m_per_px))
    points = np.asarray(np.round(line * 16), np.int32).reshape(-1, 1, 2)
    cv2.polylines(layer, [points], isClosed=False, color=255, thickness=thick,
                  lineType=cv2.LINE_AA, shift=4)  # fmt: skip
    drawn = (
        layer.astype(np.float32) / 255 * np.float32(depth * min(1.5, wide_m / made.m_per_px + 0.4))
    )
    made.lines = np.maximum(made.lines, drawn)
    m, high = made.m_per_px, made.shape[0]
    ring = tuple((float(x * m), float((high - y) * m)) for x, y in line)
    made.decoys.append(Decoy(kind, ring, wide_m))


def _another_pour(made: Slab, throws: Chance) -> None:
    """A trench that was filled later: other paste, other thirst, edges that are nearly straight."""
    rows, columns = made.shape
    wide = throws.uniform(0.3, 0.9) / made.m_per_px
    centre = throws.uniform(0.15, 0.85) * columns
    waver = 0.006 / made.m_per_px * ragged(throws, rows, 0.4 / made.m_per_px)
    x = np.arange(columns, dtype=np.float32)[None, :] - np.float32(centre) - waver[:, None]
    inside = stepped(-np.abs(x), -wide / 2, 0.4)
    foot = throws.uniform(0.3, 1.0) * rows
    y = np.arange(rows, dtype=np.float32)[:, None]
    inside = inside * stepped(-y, -foot, 0.4)
    made.grey *= np.exp(throws.normal(0, 0.12) * inside)
    made.thirst *= np.exp(throws.normal(0, 0.3) * inside)
    made.lime *= np.exp(throws.normal(0, 0.2) * inside)
    edge = inside * (1 - inside) * 4 * stepped(clouds(throws, made.shape, 0.1 * wide, 3), 0, 0.4)
    made.lines = np.maximum(made.lines, throws.uniform(0.1, 0.5) * edge)
    m = made.m_per_px
    left, right = (centre - wide / 2) * m, (centre + wide / 2) * m
    top, low = rows * m, (rows - foot) * m
    outline = ((left, top), (right, top), (right, low), (left, low))
    made.decoys.append(Decoy("patch of another pour", outline, wide * m))
