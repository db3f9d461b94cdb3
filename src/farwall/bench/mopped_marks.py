"""The marks of invented floors: what a wand, a drip, a shoe, a tape leaves in the dose.

Each is a field, 0 where nothing came of it, about 1 in its body, with the line it runs along where
it has one. Frozen with `bench.mopped_floors`. Rank of every figure: guess.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np

from farwall.bench.mopped_noise import Chance, Field, Shape, clouds, marbled, ragged, soft, stepped
from farwall.bench.mopped_spray import doubled, edge
from farwall.nouns import dataclass

Line = tuple[tuple[float, float], ...]
"""Points (column, row) of the grid."""


@dataclass(frozen=True)
class Scar:
    """A mark before it is weighed: kind, field, whether it lightens, lines it runs along [px]."""

    kind: str
    body: Field
    lightens: bool
    lines: tuple[Line, ...] = ()


@dataclass(frozen=True)
class Ground:
    """Where marks are made: rows and columns, points to a metre, what the slab drinks."""

    shape: Shape
    px: float
    thirst: Field


def lap(ground: Ground, throws: Chance) -> Scar:
    """The edge of a band that went dry before its neighbour came; it may run either way."""
    turned = bool(throws.uniform() < 0.5)
    thirst = ground.thirst.T if turned else ground.thirst
    shape = (thirst.shape[0], thirst.shape[1])
    share = throws.uniform(0.45, 1.0) if throws.uniform() < 0.6 else 1.0
    at = edge(throws, shape, ground.px, thirst, share)
    body, dry = doubled(at, shape, ground.px, throws)
    middle = (at.dried + at.laid) / 2
    lines = tuple(
        tuple((float(c), float(middle[c])) for c in run[:: max(1, len(run) // 60)])
        for run in _runs(dry > 0.5)
        if len(run) > 0.25 * ground.px
    )
    if turned:
        body, lines = body.T.copy(), tuple(tuple((y, x) for x, y in one) for one in lines)
    return Scar("lap line", body, lightens=False, lines=lines)


def _runs(of: np.ndarray) -> list[np.ndarray]:
    at = np.flatnonzero(of)
    return [] if at.size == 0 else np.split(at, np.flatnonzero(np.diff(at) > 1) + 1)


def crescent(ground: Ground, throws: Chance) -> Scar:
    """What lies between two circles of the wand that did not meet: inside one, outside the next."""
    v, u, px = *_about(ground, throws, 0.25), ground.px
    radius = throws.uniform(0.16, 0.34) * px
    gap = throws.uniform(0.035, 0.11) * px
    about = throws.uniform(0, 6.28)
    along, across = _turned(u, v, about)
    wave = 0.004 * px * clouds(throws, ground.shape, 0.06 * px, 3)
    outer = radius - np.hypot(along, across) + wave
    ratio = throws.uniform(0.95, 1.25)
    inner = np.hypot(along + gap + radius * (ratio - 1), across) - radius * ratio + wave
    body = stepped(outer, 0, throws.uniform(0.004, 0.014) * px)
    body = body * stepped(inner, 0, throws.uniform(0.004, 0.014) * px)
    body = body * stepped(along, -0.1 * radius, 0.05 * radius)
    reach = np.cos(throws.uniform(0.5, 1.35)) * radius
    body = body * stepped(along, reach, 0.03 * px)
    return Scar("missed crescent", np.asarray(body), lightens=True)


def light_patch(ground: Ground, throws: Chance) -> Scar:
    """Tight or soiled ground that took less: a cloud with ragged edges."""
    v, u, px = *_about(ground, throws, 0.35), ground.px
    size = np.exp(throws.uniform(np.log(0.12), np.log(0.45))) * px
    along, across = _turned(u, v, throws.uniform(0, 6.28))
    far = np.hypot(along / throws.uniform(1.0, 1.7), across) / size
    edge_of = far + throws.uniform(0.15, 0.4) * marbled(
        throws, ground.shape, 0.9 * size, 0.3 * size
    )
    body = stepped(-edge_of, -0.9, throws.uniform(0.03, 0.16)) * stepped(-far, -2.0, 0.05)
    return Scar("light patch", np.asarray(body), lightens=True)


def stripes(ground: Ground, throws: Chance) -> Scar:
    """Rows of a wand that swung straight: where two fans overlap, or do not quite."""
    v, u, px = *_about(ground, throws, 0.8), ground.px
    about = throws.choice([0.0, np.pi / 2]) + throws.normal(0, 0.06)
    along, across = _turned(u, v, about)
    pitch, count = throws.uniform(0.24, 0.45) * px, int(throws.integers(3, 7))
    length = throws.uniform(1.0, 2.4) * px
    body, lines = np.zeros(ground.shape, np.float32), []
    for row in range(count):
        at = (row - (count - 1) / 2) * pitch + throws.normal(0, 0.02) * px
        begins, ends = (side * length / 2 + throws.normal(0, 0.12) * px for side in (-1, 1))
        waver = throws.uniform(0.004, 0.015) * px * ragged(throws, 512, 90, 3)
        lane = np.interp(along, np.linspace(-1.5 * length, 1.5 * length, 512), waver)
        width = throws.uniform(0.018, 0.045) * px
        one = np.exp(-(((across - at - lane) / width) ** 2))
        one = one * stepped(along, begins, 0.05 * px) * stepped(-along, -ends, 0.05 * px)
        body = np.maximum(body, one * throws.uniform(0.7, 1.0))
        lines.append(_placed(u, v, about, (begins, at), (ends, at)))
    body = body * (1 + 0.15 * clouds(throws, ground.shape, 0.2 * px, 3))
    return Scar("stripe", np.asarray(body, np.float32), bool(throws.uniform() < 0.3), tuple(lines))


def drips(ground: Ground, throws: Chance) -> Scar:
    """Drops from the wand along its way: round, frayed, some with a splash beside."""
    v, u, px = *_about(ground, throws, 0.3), ground.px
    body = np.zeros(ground.shape, np.float32)
    heading, place = throws.uniform(0, 6.28), np.zeros(2)
    frayed = clouds(throws, ground.shape, 0.02 * px, 3, 0.8)
    for _ in range(int(throws.integers(1, 8))):
        radius = np.exp(throws.uniform(np.log(0.009), np.log(0.032))) * px
        far = np.hypot(u - place[0], v - place[1]) / radius + 0.12 * frayed
        body = np.maximum(body, stepped(-far, -1.0, 0.09) * throws.uniform(0.75, 1.0))
        body = np.maximum(body, 0.5 * np.exp(-(((far - 1.0) / 0.18) ** 2)))
        heading += throws.normal(0, 0.4)
        place = place + throws.uniform(0.07, 0.3) * px * np.array(
            [np.cos(heading), np.sin(heading)]
        )
    return Scar("drip", np.asarray(body, np.float32), bool(throws.uniform() < 0.12))


def ring(ground: Ground, throws: Chance) -> Scar:
    """The rim of a puddle that dried, or of a pail that stood."""
    v, u, px = *_about(ground, throws, 0.3), ground.px
    pail = throws.uniform() < 0.45
    along, across = _turned(u, v, throws.uniform(0, 6.28))
    radius = (throws.uniform(0.12, 0.16) if pail else throws.uniform(0.06, 0.32)) * px
    stretch = 1.0 if pail else throws.uniform(1.0, 1.6)
    wave = 0.0 if pail else 0.14 * marbled(throws, ground.shape, 1.1 * radius, 0.3 * radius)
    far = np.hypot(along / stretch, across) / radius + wave
    thick = (throws.uniform(0.004, 0.010) if pail else throws.uniform(0.006, 0.022)) * px / radius
    body = np.exp(-(((far - 1) / thick) ** 2))
    angle = np.arctan2(across, along)
    broken = 0.6 + 0.4 * np.cos(angle * throws.integers(1, 4) + throws.uniform(0, 6.28))
    body = body * np.clip(broken + throws.uniform(0.0, 0.6), 0, 1)
    if not pail:
        body = body + throws.uniform(0, 0.35) * stepped(-far, -1.0, thick)
    return Scar("ring", np.asarray(body, np.float32), lightens=False)


def tape_ghost(ground: Ground, throws: Chance) -> Scar:
    """Glue of a tape that lay: straight, of one width, clean at its sides, torn at its ends."""
    v, u, px = *_about(ground, throws, 0.5), ground.px
    wide = throws.choice([0.024, 0.036, 0.048]) * px
    about, place = throws.uniform(0, 6.28), (0.0, 0.0)
    body, lines = np.zeros(ground.shape, np.float32), []
    torn = clouds(throws, ground.shape, 0.03 * px, 3)
    for _ in range(int(throws.choice([1, 1, 2, 3]))):
        length = throws.uniform(0.4, 2.2) * px
        along, across = _turned(u - place[0], v - place[1], about)
        one = stepped(-np.abs(across), -wide / 2, throws.uniform(0.001, 0.003) * px)
        one = one * stepped(along + 0.4 * torn, 0, 0.8) * stepped(-along + 0.4 * torn, -length, 0.8)
        body = np.maximum(body, one)
        ends = (place[0] + length * np.cos(about), place[1] + length * np.sin(about))
        lines.append((_here(u, v, place), _here(u, v, ends)))
        place, about = ends, about + throws.choice([-1, 1]) * np.pi / 2
    held = stepped(clouds(throws, ground.shape, 0.12 * px, 4), -throws.uniform(0.6, 2.0), 0.25)
    return Scar(
        "tape ghost", np.asarray(body * held, np.float32), bool(throws.uniform() < 0.7),
        tuple(lines),
    )  # fmt: skip


def footprints(ground: Ground, throws: Chance) -> Scar:
    """Steps on a wet floor: sole and heel with their tread, half of it pressed."""
    v, u, px = *_about(ground, throws, 0.5), ground.px
    body, heading = np.zeros(ground.shape, np.float32), throws.uniform(0, 6.28)
    pressed = stepped(clouds(throws, ground.shape, 0.07 * px, 4), -0.7, 0.3)
    tread = throws.uniform(0.010, 0.018) * px
    count = int(throws.integers(1, 5))
    for step in range(count):
        ahead, side = (step - (count - 1) / 2) * 0.62 * px, (-1) ** step * 0.09 * px
        toe = heading + (-1) ** step * 0.15
        x, y = (
            ahead * np.cos(heading) - side * np.sin(heading),
            ahead * np.sin(heading) + side * np.cos(heading),
        )
        along, across = _turned(u - x, v - y, toe)
        along, across = along / px, across / px
        sole = 1.0 - np.hypot((along - 0.055) / 0.090, across / 0.050)
        heel = 1.0 - np.hypot((along + 0.095) / 0.045, across / 0.034)
        shoe = np.maximum(stepped(sole, 0, 0.05), stepped(heel, 0, 0.06))
        bars = 0.55 + 0.45 * np.sign(np.sin(2 * np.pi * along * px / tread))
        body = np.maximum(body, shoe * bars)
    return Scar(
        "footprint", np.asarray(soft(body * pressed, 0.002 * px), np.float32),
        bool(throws.uniform() < 0.6),
    )  # fmt: skip


MAKERS: dict[str, tuple[float, float, float, Callable[[Ground, Chance], Scar]]] = {
    "lap line": (0.30, 1.0, 6.0, lap),
    "missed crescent": (0.18, 1.5, 6.0, crescent),
    "light patch": (0.12, 1.2, 6.0, light_patch),
    "stripe": (0.10, 0.8, 3.5, stripes),
    "drip": (0.10, 2.0, 8.0, drips),
    "ring": (0.07, 1.5, 6.0, ring),
    "tape ghost": (0.07, 1.0, 5.0, tape_ghost),
    "footprint": (0.06, 1.0, 4.0, footprints),
}
"""How often of all marks, and the contrast wished: L against the floor beside, even in its log."""


def _about(ground: Ground, throws: Chance, margin_m: float) -> tuple[Field, Field]:
    """Rows and columns counted from a place at least so far from the walls."""
    rows, columns = ground.shape
    margin = [min(margin_m * ground.px, 0.4 * n) for n in (rows, columns)]
    row, column = (throws.uniform(m, n - m) for m, n in zip(margin, (rows, columns), strict=True))
    v = np.arange(rows, dtype=np.float32)[:, None] - np.float32(row)
    u = np.arange(columns, dtype=np.float32)[None, :] - np.float32(column)
    return np.broadcast_to(v, ground.shape), np.broadcast_to(u, ground.shape)


def _turned(u: Field, v: Field, about: float) -> tuple[Field, Field]:
    c, s = np.float32(np.cos(about)), np.float32(np.sin(about))
    return np.asarray(u * c + v * s), np.asarray(v * c - u * s)


def _here(u: Field, v: Field, place: tuple[float, float]) -> tuple[float, float]:
    return float(place[0] - u[0, 0]), float(place[1] - v[0, 0])


def _placed(u: Field, v: Field, about: float, *ends: tuple[float, float]) -> Line:
    c, s = np.cos(about), np.sin(about)
    return tuple(_here(u, v, (a * c - b * s, a * s + b * c)) for a, b in ends)
