"""A sheet of paper as a telephone sees it: tilted, bent, folded, shadowed, out of focus, noisy.

A pinhole camera over the sheet. What stands off the table by a fold or a bend is seen where the
ray through it meets the table, so that no four corners can take it back.
"""

from __future__ import annotations

from math import cos, pi, radians, sin

import numpy as np
import numpy.typing as npt

from farwall.bench.dice import Dice
from farwall.nouns import dataclass

Grey = npt.NDArray[np.uint8]
Real = npt.NDArray[np.float64]


@dataclass(frozen=True)
class Hardship:
    """How badly a sheet is photographed. All invented, from what telephones and tables do.

    tilt_deg: of the camera off the upright · bend_mm, fold_mm: how high the sheet stands ·
    shadow: how much of the light is left in it · blur_px, noise: of the photo, noise of 255.
    """

    name: str
    tilt_deg: float
    turn_deg: float
    bend_mm: float
    fold_mm: float
    shadow: float
    blur_px: float
    noise: float
    jpeg: int


HARDSHIPS = (
    Hardship("scan", 0.0, 0.8, 0.0, 0.0, 1.0, 0.7, 2.0, 90),
    Hardship("square", 7.0, 2.0, 0.0, 0.0, 0.8, 0.8, 4.0, 90),
    Hardship("tailgate", 24.0, 5.0, 0.0, 1.0, 0.55, 1.0, 6.0, 80),
    Hardship("bent", 24.0, 5.0, 3.0, 2.0, 0.6, 1.0, 6.0, 80),
    Hardship("rough", 38.0, 9.0, 4.0, 3.0, 0.4, 1.4, 10.0, 65),
)


@dataclass(frozen=True)
class Photo:
    """The picture as JPEG bytes, and where the sheet's corners lie in it [px], clockwise."""

    data: bytes
    corners: tuple[tuple[float, float], ...]


def photograph(
    sheet: Grey, px_per_mm: float, hardship: Hardship, seed: int, *, wide_px: int = 4000
) -> Photo:
    """The sheet photographed; the same bytes for a seed. The picture is 4 to 3."""
    import cv2

    dice = Dice(seed)
    high, wide = sheet.shape
    paper = np.array([wide, high]) / px_per_mm
    size = (wide_px, wide_px * 3 // 4)
    camera = _Camera(paper, hardship, dice, size)
    gx, gy = np.meshgrid(np.arange(size[0]) + 0.5, np.arange(size[1]) + 0.5)
    seen = camera.on_table(gx, gy)
    place = camera.on_sheet(*seen)
    soft = cv2.GaussianBlur(sheet, (0, 0), max(0.3, 0.35 * camera.px_of_sheet(px_per_mm)))
    maps = [np.asarray(p * px_per_mm - 0.5, np.float32) for p in place]
    picture = cv2.remap(soft, maps[0], maps[1], cv2.INTER_LINEAR, borderValue=0).astype(np.float32)
    inside = (place[0] > 0) & (place[1] > 0) & (place[0] < paper[0]) & (place[1] < paper[1])
    table = 70 + 12 * np.sin(gx / 23) + 8 * np.sin(gy / 41)
    picture = np.where(inside, picture * camera.fold_shade(*place), table)
    picture *= _light(gx / size[0], gy / size[1], hardship.shadow, dice)
    return Photo(_developed(np.asarray(picture, np.float64), hardship, seed), camera.corners())


class _Camera:
    def __init__(self, paper: Real, hardship: Hardship, dice: Dice, size: tuple[int, int]) -> None:
        self.paper, self.hard = paper, hardship
        tilt, turn = radians(hardship.tilt_deg), radians(hardship.turn_deg) * dice.one_of((-1, 1))
        about = 2 * pi * dice.between(0, 99) / 100
        self.folds = tuple(dice.between(40, 60) / 100 for _ in range(2))
        focal = 0.85 * size[0]
        far = focal * max(paper[0] / size[0], paper[1] / size[1]) * 1.16 * (1 + 0.35 * sin(tilt))
        ahead = np.array([sin(tilt) * cos(about), sin(tilt) * sin(about), cos(tilt)])
        self.eye = np.array([paper[0] / 2, paper[1] / 2, 0.0]) + far * ahead
        right = np.cross([0.0, 1.0, 0.0], ahead)
        right /= np.linalg.norm(right)
        up = np.cross(ahead, right)
        c, s = cos(turn), sin(turn)
        self.axes = np.array([c * right + s * up, -s * right + c * up, ahead])
        self.focal, self.size = focal, size

    def on_table(self, x: Real, y: Real) -> tuple[Real, Real]:
        """Where the ray of a pixel meets the table: mm from the sheet's upper left, y down."""
        u, v = (x - self.size[0] / 2) / self.focal, -(y - self.size[1] / 2) / self.focal
        ray = u[..., None] * self.axes[0] + v[..., None] * self.axes[1] - self.axes[2]
        t = -self.eye[2] / ray[..., 2]
        return self.eye[0] + t * ray[..., 0], self.paper[1] - (self.eye[1] + t * ray[..., 1])

    def on_sheet(self, x: Real, y: Real) -> tuple[Real, Real]:
        """The place of the sheet that is seen there, as it stands off the table."""
        sx, sy = x.copy(), y.copy()
        eye_y = self.paper[1] - self.eye[1]
        for _ in range(4):
            back = 1 - self.height(sx, sy) / self.eye[2]
            sx = self.eye[0] + (x - self.eye[0]) * back
            sy = eye_y + (y - eye_y) * back
        return sx, sy

    def height(self, x: Real, y: Real) -> Real:
        """How high the sheet stands [mm]: a bend along its length, a fold each way."""
        u, v = np.clip(x / self.paper[0], 0, 1), np.clip(y / self.paper[1], 0, 1)
        bend = self.hard.bend_mm * np.sin(pi * u)
        ridge = [
            np.maximum(0, 1 - np.abs(w - f) / 0.08) for w, f in zip((u, v), self.folds, strict=True)
        ]
        return np.asarray(bend + self.hard.fold_mm * np.maximum(*ridge))

    def fold_shade(self, x: Real, y: Real) -> Real:
        """Light of a fold's two sides and of its crease."""
        u, v = x / self.paper[0], y / self.paper[1]
        shade = np.ones_like(u)
        for w, f in zip((u, v), self.folds, strict=True):
            deep = min(1.0, self.hard.fold_mm / 2)
            side = np.sign(w - f) * np.maximum(0, 1 - np.abs(w - f) / 0.08)
            crease = np.exp(-(((w - f) / 0.0015) ** 2))
            shade *= 1 + 0.10 * deep * side - 0.16 * deep * crease
        return np.asarray(shade)

    def px_of_sheet(self, px_per_mm: float) -> float:
        """Pixels of the drawn sheet to one of the photo."""
        return float(px_per_mm * np.linalg.norm(self.eye[2]) / self.focal)

    def corners(self) -> tuple[tuple[float, float], ...]:
        """Upper left, upper right, lower right, lower left of the sheet, in the photo."""
        w, h = self.paper
        found = []
        for x, y in ((0, h), (w, h), (w, 0), (0, 0)):
            off = self.axes @ (np.array([x, y, 0.0]) - self.eye)
            u, v = off[0] / -off[2], off[1] / -off[2]
            found.append(
                (float(self.size[0] / 2 + u * self.focal), float(self.size[1] / 2 - v * self.focal))
            )
        return tuple(found)


def _light(u: Real, v: Real, left: float, dice: Dice) -> Real:
    """A falling-off of light, and the soft edge of a shadow across the sheet."""
    import cv2

    about = 2 * pi * dice.between(0, 99) / 100
    side = (u - 0.5) * cos(about) + (v - 0.5) * sin(about)
    fall = 1 - 0.25 * (1 - left) * (side + 0.7)
    shadow = np.where(side > dice.between(-10, 20) / 100, left, 1.0).astype(np.float32)
    return np.asarray(fall * cv2.GaussianBlur(shadow, (0, 0), 0.004 * u.shape[1]))


def _developed(picture: Real, hardship: Hardship, seed: int) -> bytes:
    import cv2

    soft = cv2.GaussianBlur(picture.astype(np.float32), (0, 0), hardship.blur_px)
    grain = np.random.default_rng(seed).normal(0, hardship.noise, (*soft.shape, 3))
    warm = np.array([0.9, 0.97, 1.0])
    colour = np.clip(soft[..., None] * warm + grain, 0, 255).astype(np.uint8)
    done, data = cv2.imencode(".jpg", colour, [cv2.IMWRITE_JPEG_QUALITY, hardship.jpeg])
    if not done:
        raise ValueError("the picture could not be kept as JPEG")
    return bytes(data)
