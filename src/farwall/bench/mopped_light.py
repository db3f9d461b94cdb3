"""The light of an invented room: windows, what stands before them, their mirror in a wet floor.

Frozen with `bench.mopped_floors`. Rank of every figure: guess; how the light falls and is mirrored
is geometry.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.bench.mopped_floors import MoppedFloor
from farwall.bench.mopped_noise import Chance, Field
from farwall.nouns import dataclass

Reals = NDArray[np.float64]
_GRID_M = 0.05
_WATER = 0.0205
"""What water throws back of light that falls straight on it, (1.333 - 1)² / (1.333 + 1)²."""


@dataclass(frozen=True)
class Window:
    """An opening in a wall: which wall (axis, where, towards the room), span along it, heights."""

    axis: int
    at: float
    inward: float
    begins: float
    ends: float
    low: float
    top: float
    bright: float

    def points(self) -> Reals:
        """Places over its face that light is counted from."""
        made = []
        for a in (0.1, 0.37, 0.63, 0.9):
            for h in (0.15, 0.5, 0.85):
                along = self.begins + a * (self.ends - self.begins)
                place = [self.at, along] if self.axis == 0 else [along, self.at]
                made.append([*place, self.low + h * (self.top - self.low)])
        return np.array(made)


@dataclass(frozen=True)
class Post:
    """Something upright that shades: a person, a stud, a step ladder."""

    x: float
    y: float
    radius: float
    high: float


@dataclass(frozen=True)
class Room:
    """All that lights and shades a piece of floor.

    plain: light from everywhere against the windows' mean · wall: brightness of the walls.
    """

    wide_m: float
    high_m: float
    windows: tuple[Window, ...]
    posts: tuple[Post, ...]
    plain: float
    wall: float
    warmth: Field
    sky: Field


def room_of(floor: MoppedFloor, throws: Chance) -> Room:
    """One to three windows in three walls, and what may stand before them."""
    windows = tuple(_window(floor, throws) for _ in range(throws.integers(1, 4)))
    posts = []
    if throws.uniform() < 0.5:
        posts.append(Post(floor.wide_m * throws.uniform(0.2, 0.8), -throws.uniform(0.2, 0.7),
                          0.2, 1.75))  # fmt: skip
    for _ in range(throws.integers(0, 3)):
        side = throws.choice([-0.15, floor.wide_m + 0.15])
        posts.append(Post(float(side), floor.high_m * throws.uniform(0.1, 0.9),
                          throws.uniform(0.05, 0.3), throws.uniform(0.5, 2.2)))  # fmt: skip
    warm = throws.normal(0, 0.03)
    return Room(
        floor.wide_m, floor.high_m, windows, tuple(posts), throws.uniform(0.35, 1.2),
        throws.uniform(0.5, 0.9), np.array([1 + warm, 1, 1 - warm], np.float32),
        np.array([0.97, 1.0, 1.05], np.float32),
    )  # fmt: skip


def _window(floor: MoppedFloor, throws: Chance) -> Window:
    axis, at, inward = ((0, 0.0, 1.0), (0, floor.wide_m, -1.0), (1, floor.high_m, -1.0))[
        throws.integers(3)
    ]
    span = floor.high_m if axis == 0 else floor.wide_m
    wide = throws.uniform(0.6, 1.5)
    begins = throws.uniform(0.1, max(0.15, span - wide))
    # A wall may lie further off than the piece that is photographed.
    at = at - inward * throws.choice([0.0, 0.0, 1.0, 2.5])
    low = throws.choice([0.1, 0.6, 0.9])
    return Window(axis, float(at), inward, begins, begins + wide, float(low),
                  throws.uniform(1.9, 2.2), throws.uniform(4, 22))  # fmt: skip


def lit(room: Room, x: Field, y: Field) -> Field:
    """Light on the floor at each place, 1 in the mean of the piece."""
    import cv2

    gx = np.arange(-0.5, room.wide_m + 0.5, _GRID_M)
    gy = np.arange(-1.5, room.high_m + 0.5, _GRID_M)
    px, py = np.meshgrid(gx, gy)
    total = np.zeros_like(px)
    for window in room.windows:
        share = np.zeros_like(px)
        for place in window.points():
            share += _falls(window, place, px, py) * _unshaded(room.posts, place, px, py)
        total += window.bright * share / 12
    total = total / total.mean() + room.plain
    for away in (px, room.wide_m - px, room.high_m - py):
        total *= 1 - 0.35 * np.exp(-np.maximum(away, 0) / 0.06)
    coarse = (total / total.mean()).astype(np.float32)
    return np.asarray(
        cv2.remap(coarse, (x - np.float32(gx[0])) / np.float32(_GRID_M),
                  (y - np.float32(gy[0])) / np.float32(_GRID_M), cv2.INTER_CUBIC,
                  borderMode=cv2.BORDER_REPLICATE),
        np.float32,
    )  # fmt: skip


def _falls(window: Window, place: Reals, px: Reals, py: Reals) -> Reals:
    off = np.stack([place[0] - px, place[1] - py, np.full_like(px, place[2])])
    far = np.linalg.norm(off, axis=0)
    face = np.clip(-off[window.axis] * window.inward, 0.02, None) / far
    return np.asarray(off[2] / far * face / (far**2 + 0.1))


def _unshaded(posts: tuple[Post, ...], place: Reals, px: Reals, py: Reals) -> Reals:
    """How much of the light of one place passes the posts, soft by a few centimetres."""
    left = np.ones_like(px)
    for post in posts:
        dx, dy = place[0] - px, place[1] - py
        flat = np.maximum(dx**2 + dy**2, 1e-6)
        along = np.clip(((post.x - px) * dx + (post.y - py) * dy) / flat, 0, 1)
        away = np.hypot(px + along * dx - post.x, py + along * dy - post.y)
        above = along * place[2]
        inside = 1 / (1 + np.exp(np.clip((away - post.radius) / 0.02, -30, 30)))
        left *= 1 - inside * (above < post.high)
    return left


def mirrored(
    room: Room, place: tuple[Field, Field], rays: Field, tilts: tuple[Field, Field]
) -> tuple[Field, Field]:
    """What the film mirrors: the windows, and the walls as a veil; as linear light."""
    onward = [np.asarray(rays[..., n] - 2 * rays[..., 2] * tilts[n], np.float32) for n in (0, 1)]
    rise = -rays[..., 2]
    steep = np.clip(rise, 0.02, 1)
    fresnel = np.asarray(_WATER + (1 - _WATER) * (1 - steep) ** 5, np.float32)
    glint = np.zeros_like(place[0])
    for window in room.windows:
        towards = onward[window.axis]
        far = (window.at - place[window.axis]) / np.where(np.abs(towards) < 1e-4, 1e-4, towards)
        other = 1 - window.axis
        along = np.asarray(place[other] + far * onward[other], np.float32)
        height, edge = (np.asarray(v, np.float32) for v in (far * rise, 0.03 + 0.012 * np.abs(far)))
        inside = _between(along, window.begins, window.ends, edge)
        inside = inside * _between(height, window.low, window.top, edge) * (far > 0)
        glint += np.float32(window.bright) * inside
    return np.asarray(fresnel * glint, np.float32), np.asarray(
        0.55 * room.wall * fresnel, np.float32
    )


def _between(of: Field, low: float, top: float, edge: Field) -> Field:
    def above(at: Field) -> Field:
        return np.asarray(1 / (1 + np.exp(np.clip(-at / edge, -30, 30))), np.float32)

    over, under = above(of - np.float32(low)), above(np.float32(top) - of)
    return np.asarray(over * under, np.float32)
