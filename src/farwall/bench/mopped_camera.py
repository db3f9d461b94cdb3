"""A mopped floor as a person's telephone sees it: aslant, lit from windows, glaring, noisy, JPEG.

A pinhole at the height of the eye. Windows light the floor and are mirrored in its film of water;
a person and things stand in that light. Frozen with `bench.mopped_floors`. Rank of every figure:
guess, of what telephones and rooms do.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.bench.mopped_floors import MoppedFloor
from farwall.bench.mopped_light import Room, lit, mirrored, room_of
from farwall.bench.mopped_noise import Chance, Field, chance, clouds, soft
from farwall.nouns import dataclass

Reals = NDArray[np.float64]


@dataclass(frozen=True)
class FloorPhoto:
    """The picture as JPEG bytes, and what the camera knows of where things lie.

    corners: the four corners of the piece as they lie in the picture (x right, y down, in its
    points, perhaps outside it), lower left first, then lower right, upper right, upper left of the
    plan.
    """

    data: bytes
    wide_px: int
    high_px: int
    corners: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class _Eye:
    place: Reals
    axes: Reals
    focal: float
    size: tuple[int, int]

    def rays(self) -> Field:
        """(rows, columns, 3): where each point of the picture looks, of length 1."""
        wide, high = self.size
        u = (np.arange(wide) + 0.5 - wide / 2) / self.focal
        v = (np.arange(high) + 0.5 - high / 2) / self.focal
        look = (
            u[None, :, None] * self.axes[0] - v[:, None, None] * self.axes[1] + self.axes[2]
        ).astype(np.float32)
        return np.asarray(look / np.linalg.norm(look, axis=2, keepdims=True), np.float32)

    def seen_at(self, place: tuple[float, float]) -> tuple[float, float]:
        """Where a place of the floor lies in the picture."""
        right, up, ahead = self.axes @ (np.array([*place, 0.0]) - self.place)
        wide, high = self.size
        return (
            float(wide / 2 + self.focal * right / ahead),
            float(high / 2 - self.focal * up / ahead),
        )


def photograph(floor: MoppedFloor, *, long_px: int = 1440, part: int = 20) -> FloorPhoto:
    """The floor photographed from its lower side; the same for a seed.

    part: of the generator that throws stand, room and camera; another photo takes another.
    """
    throws = chance(floor.seed, part)
    eye, room = _standing(floor, throws, long_px), room_of(floor, throws)
    rays = eye.rays()
    down = np.minimum(rays[..., 2], -1e-3)
    far = -eye.place[2] / down
    x = np.asarray(eye.place[0] + far * rays[..., 0], np.float32)
    y = np.asarray(eye.place[1] + far * rays[..., 1], np.float32)
    on_floor = (rays[..., 2] < -1e-3) & (x > 0) & (y < floor.high_m) & (x < floor.wide_m)
    on_floor &= y > -1.0
    matt = _fetched(floor, x, y, np.asarray(far / eye.focal, np.float32))
    light = lit(room, x, y)
    seen = matt * light[..., None] * room.warmth
    glint, veil = mirrored(room, (x, y), rays, _ripple(floor, x, y))
    seen = seen + (soft(glint, 0.0022 * long_px) + veil)[..., None] * room.sky
    seen = np.where(on_floor[..., None], seen, _walls(floor, room, eye.place, rays)[..., None])
    return FloorPhoto(
        _developed(seen, on_floor, throws, eye), *eye.size,
        tuple(eye.seen_at(p) for p in _piece(floor)),
    )  # fmt: skip


def _piece(floor: MoppedFloor) -> tuple[tuple[float, float], ...]:
    wide, high = floor.wide_m, floor.high_m
    return (0.0, 0.0), (wide, 0.0), (wide, high), (0.0, high)


def _standing(floor: MoppedFloor, throws: Chance, long_px: int) -> _Eye:
    """Someone at the lower side, arms up, telephone tilted down at the piece."""
    upright = floor.high_m > 1.15 * floor.wide_m or throws.uniform() < 0.25
    size = (long_px * 3 // 4, long_px) if upright else (long_px, long_px * 3 // 4)
    place = np.array([
        floor.wide_m * throws.uniform(0.3, 0.7), -throws.uniform(0.7, 1.7),
        throws.uniform(1.5, 1.8),
    ])  # fmt: skip
    aim = np.array([
        floor.wide_m * throws.uniform(0.42, 0.58),
        min(floor.high_m * throws.uniform(0.30, 0.44), 1.9), 0.0,
    ])  # fmt: skip
    ahead = (aim - place) / np.linalg.norm(aim - place)
    roll = throws.normal(0, 0.02)
    right = np.cross(ahead, [0.0, 0.0, 1.0])
    right /= np.linalg.norm(right)
    up = np.cross(right, ahead)
    c, s = np.cos(roll), np.sin(roll)
    axes = np.array([c * right + s * up, c * up - s * right, ahead])
    return _Eye(place, axes, throws.uniform(0.66, 0.78) * long_px, size)


def _fetched(floor: MoppedFloor, x: Field, y: Field, fine_m: Field) -> Field:
    """The look under each point of the picture, from a copy as coarse as the point is wide."""
    import cv2

    m = floor.m_per_px
    columns, rows = x / m - 0.5, (floor.high_m - y) / m - 0.5
    wanted = np.clip(np.log2(np.maximum(1.6 * fine_m / m, 1e-3)), 0, 2)
    copies, got = np.asarray(floor.look, np.float32), np.zeros((*x.shape, 3), np.float32)
    for level in range(3):
        fetched = cv2.remap(
            copies, columns / 2**level, rows / 2**level, cv2.INTER_LINEAR,
            borderMode=cv2.BORDER_REFLECT,
        )  # fmt: skip
        share = np.clip(1 - np.abs(wanted - level), 0, 1)
        got += share[..., None] * fetched
        copies = np.asarray(
            cv2.resize(copies, None, fx=0.5, fy=0.5, interpolation=cv2.INTER_AREA), np.float32
        )
    return np.asarray(got * _grain(floor, x, y, fine_m)[..., None], np.float32)


def _grain(floor: MoppedFloor, x: Field, y: Field, fine_m: Field) -> Field:
    """Sand and paste finer than the plan is drawn; it fades where the picture is coarser."""
    import cv2

    throws, cell = chance(floor.seed, 21), 0.0015
    tile = clouds(throws, (1024, 1024), 5.0, 3, 0.9)
    seen = cv2.remap(tile, np.mod(x / cell, 1023), np.mod(y / cell, 1023), cv2.INTER_LINEAR)
    fades = 1 / (1 + (fine_m / (1.5 * cell)) ** 2)
    return np.asarray(np.exp(throws.uniform(0.02, 0.06) * fades * seen), np.float32)


def _ripple(floor: MoppedFloor, x: Field, y: Field) -> tuple[Field, Field]:
    """How the film is tilted under each point, right and up: it follows the face of the slab."""
    import cv2

    m = floor.m_per_px
    face = soft(floor.relief, 0.006 / m)
    tilts = []
    for axis in (1, 0):
        slope = np.gradient(face, axis=axis).astype(np.float32)
        slope *= np.float32(0.022 / max(float(slope.std()), 1e-6))
        tilts.append(
            cv2.remap(slope, x / m, (floor.high_m - y) / m, cv2.INTER_LINEAR,
                      borderMode=cv2.BORDER_REFLECT)
        )  # fmt: skip
    return np.asarray(tilts[0], np.float32), np.asarray(-tilts[1], np.float32)


def _walls(floor: MoppedFloor, room: Room, eye: Reals, rays: Field) -> Field:
    """Painted board above a low base; the walls stand at three sides of the piece."""
    nearest = np.full(rays.shape[:2], np.inf, np.float32)
    for axis, at in ((0, 0.0), (0, floor.wide_m), (1, floor.high_m)):
        far = (at - eye[axis]) / np.where(np.abs(rays[..., axis]) < 1e-6, 1e-6, rays[..., axis])
        nearest = np.where((far > 0.05) & (far < nearest), far, nearest)
    nearest = np.where(np.isfinite(nearest), nearest, 50.0)
    up = eye[2] + nearest * rays[..., 2]
    board = 0.55 + 0.1 * np.tanh(up)
    base = np.where(np.abs(up - 0.09) < 0.004, 0.25, 0.72)
    return np.asarray(room.wall * np.where(up < 0.094, base, board), np.float32)


def _developed(seen: Field, on_floor: NDArray[np.bool_], throws: Chance, eye: _Eye) -> bytes:
    """Exposed on the floor, vignetted, soft, noisy, rounded to bytes, JPEG."""
    import cv2

    wide, high = eye.size
    usual = float(np.median(seen[on_floor].mean(axis=1))) if on_floor.any() else 0.2
    exposed = seen * np.float32(throws.uniform(0.11, 0.22) / usual)
    balance = 1 + throws.normal(0, 0.035, 3)
    u = (np.arange(wide) - wide / 2) / eye.focal
    v = (np.arange(high) - high / 2) / eye.focal
    fall = (1 + u[None, :] ** 2 + v[:, None] ** 2) ** -throws.uniform(0.4, 1.3)
    raw = np.asarray(exposed * (balance * fall[..., None]), np.float32)
    raw = np.dstack([soft(raw[..., n], throws.uniform(0.55, 1.1) * wide / 1600) for n in range(3)])
    grain = throws.standard_normal(raw.shape, np.float32)
    raw = raw + grain * np.sqrt(np.maximum(raw, 0) * throws.uniform(4e-5, 3e-4) + 4e-6)
    curve = 1.055 * np.maximum(raw, 0) ** (1 / 2.4) - 0.055
    told = np.where(raw <= 0.0031308, 12.92 * raw, curve)
    picture = np.clip(np.round(255 * told), 0, 255).astype(np.uint8)[..., ::-1]
    asked = [cv2.IMWRITE_JPEG_QUALITY, int(throws.integers(84, 96))]
    done, data = cv2.imencode(".jpg", np.ascontiguousarray(picture), asked)
    if not done:
        raise ValueError("the picture could not be kept as JPEG")
    return bytes(data)
