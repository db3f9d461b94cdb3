"""Invented photos of a target on a stained floor, by the spectrum. Frozen; shares nothing of ours.

Light falls as a spectrum on reflectances, a camera of its own kind sees it by three sensitivities
that no linear map makes into an eye, balances the white with an error, mixes its channels, bends
its tones, adds noise and keeps a JPEG. Light is uneven, the lens darkens its corners, the camera
stands aslant. Cameras and tones are invented. What is judged on it is judged on invented photos.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray

from farwall.bench.colour_scene import (
    Floats,
    Sheet,
    eye_of_1931,
    hump,
    lab_d50,
    light,
    stained_pieces,
)
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Piece:
    """A stained piece of floor beside the sheet: its true CIELAB and where it lies in the photo."""

    name: str
    lab: tuple[float, float, float]
    polygon_px: tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class Shot:
    """A photo as JPEG bytes; `to_px` takes a place of the sheet [mm] into it."""

    data: bytes
    to_px: Floats
    pieces: tuple[Piece, ...]

    def place(self, x_mm: float, y_mm: float) -> tuple[float, float]:
        """Where a place of the sheet lies in the photo [px]."""
        x, y, w = self.to_px @ np.array([x_mm, y_mm, 1.0])
        return float(x / w), float(y / w)


@dataclass(frozen=True)
class Hard:
    """How hard a photo is. tilt_deg: of the camera · uneven: how far the light falls, share ·
    noise: of the white · shadow: light left in a shadow over a part of it, 1 is none."""

    tilt_deg: float = 25.0
    uneven: float = 0.25
    noise: float = 0.006
    shadow: float = 1.0
    quality: int = 90


@dataclass(frozen=True)
class Camera:
    """sees: by band and channel · mixes: channels after the white balance to sRGB, linear ·
    bend, shoulder: of its tones · lasts: share of a wrong white that it leaves."""

    sees: Floats
    mixes: Floats
    bend: float
    shoulder: float
    lasts: float


@cache
def camera(kind: int) -> Camera:
    """One of three cameras, each with filters, tones and a mixing of its own."""
    middles = ((600, 538, 457), (606, 545, 463), (594, 530, 450))[kind % 3]
    wides = ((36, 40, 30), (42, 46, 33), (31, 36, 27))[kind % 3]
    sees = np.stack([hump(m, w) for m, w in zip(middles, wides, strict=True)], axis=1)
    sees[:, 0] += 0.06 * hump(450, 22) + 0.10 * sees[:, 1]
    sees[:, 2] += 0.05 * sees[:, 1]
    seen = light("D65")[:, None] * sees
    dice = np.random.default_rng(100 + kind)
    waves = [hump(m, w) for m in range(380, 730, 35) for w in (30.0, 70.0)]
    trained = np.array([0.05 + 0.9 * dice.dirichlet(np.full(len(waves), 0.15)) @ np.array(waves)
                        for _ in range(300)])  # fmt: skip
    raw = trained @ seen / seen.sum(axis=0)
    eye = light("D65")[:, None] * eye_of_1931()
    xyz = trained @ eye / eye[:, 1].sum()
    to_rgb = np.array([[3.2406, -1.5372, -0.4986], [-0.9689, 1.8758, 0.0415],
                       [0.0557, -0.2040, 1.0570]])  # fmt: skip
    mixes = np.linalg.lstsq(raw, xyz @ to_rgb.T, rcond=None)[0].T
    mixes /= mixes.sum(axis=1, keepdims=True)
    lively = (1.0, 1.12, 1.06)[kind % 3]
    grey = np.full((3, 3), 1 / 3)
    mixes = grey + lively * (mixes - grey)
    return Camera(sees, mixes, (0.05, 0.11, -0.04)[kind % 3], (0.0, 0.10, 0.05)[kind % 3],
                  (0.15, 0.25, 0.35)[kind % 3])  # fmt: skip


def _developed(linear: Floats, made: Camera) -> Floats:
    """Linear channels as a file holds them, 0 to 1."""
    lit = np.clip(linear, 0, 1)
    coded = np.where(lit <= 0.0031308, 12.92 * lit, 1.055 * lit ** (1 / 2.4) - 0.055)
    bent = coded - made.bend * np.sin(2 * np.pi * coded) / (2 * np.pi) * 2
    return np.asarray((1 + made.shoulder) * bent / (1 + made.shoulder * bent))


_PIECE_MM, _APART_MM = 55.0, 18.0


def photograph(
    sheet: Sheet, lit_by: str, *, seed: int, hard: Hard | None = None, wide_px: int = 2000
) -> Shot:
    """The sheet on a floor, with twelve stained pieces around it; the same bytes for a seed."""
    import cv2

    hard = hard or Hard()
    dice = np.random.default_rng(seed)
    made = camera(int(dice.integers(3)))
    size = (wide_px, wide_px * 3 // 4)
    to_px = _aslant(sheet.size_mm, size, hard.tilt_deg, dice)
    places = _places(sheet.size_mm)
    stains = stained_pieces()
    order = dice.permutation(len(stains))
    names = [list(stains)[k] for k in order][: len(places)]
    materials = np.vstack([sheet.reflects, *(stains[n][None] for n in names), stains["tan 0.45"]])
    x, y = _on_floor(to_px, size)
    which = _which(sheet, places, x, y)
    spectrum = light(lit_by)[:, None] * made.sees
    raw = materials @ spectrum
    white = spectrum.sum(axis=0)
    meant = light("D65")[:, None] * made.sees
    left = (white / white[1] * meant.sum(axis=0)[1] / meant.sum(axis=0)) ** made.lasts
    off = np.exp(dice.normal(0, 0.02, 3))
    seen = np.clip((raw / white * left * off) @ made.mixes.T, 0, None)
    brightest = np.percentile((sheet.reflects @ spectrum / white * left * off) @ made.mixes.T, 99)
    exposure = dice.uniform(0.72, 0.88) / max(brightest, 0.3)
    field = _field(x, y, sheet.size_mm, size=size, hard=hard, dice=dice)
    mottled = np.where(which == len(materials) - 1, _mottle(size, dice), 1.0)
    picture = (seen * exposure)[which] * (field * mottled)[..., None]
    picture = cv2.GaussianBlur(picture, (0, 0), dice.uniform(0.6, 1.0) * wide_px / 2000)
    grain = dice.normal(0, 1, picture.shape) * hard.noise * np.sqrt(np.maximum(picture, 0.02))
    coded = (_developed(picture + grain, made) * 255).round().astype(np.uint8)
    done, data = cv2.imencode(".jpg", coded[..., ::-1], [cv2.IMWRITE_JPEG_QUALITY, hard.quality])
    assert done
    shot = Shot(bytes(data), to_px, ())
    pieces = tuple(
        Piece(n, lab_d50(stains[n]), tuple(shot.place(*at) for at in _inner(corner)))
        for n, corner in zip(names, places, strict=False)
    )
    return Shot(bytes(data), to_px, pieces)


def _places(size: tuple[float, float]) -> list[tuple[float, float]]:
    wide, high = size
    rows = [(k + 0.5) * high / 3 - _PIECE_MM / 2 for k in range(3)]
    columns = [(k + 0.5) * wide / 3 - _PIECE_MM / 2 for k in range(3)]
    beside = _APART_MM + _PIECE_MM
    return [(-beside, y) for y in rows] + [(wide + _APART_MM, y) for y in rows] + [
        (x, -beside) for x in columns] + [(x, high + _APART_MM) for x in columns]  # fmt: skip


def _inner(corner: tuple[float, float]) -> list[tuple[float, float]]:
    x, y = corner
    low, high = 0.2 * _PIECE_MM, 0.8 * _PIECE_MM
    return [(x + low, y + low), (x + high, y + low), (x + high, y + high), (x + low, y + high)]


def _aslant(
    sheet: tuple[float, float], size: tuple[int, int], tilt_deg: float, dice: np.random.Generator
) -> Floats:
    """From the floor [mm] to the photo [px], by a pinhole that stands aslant."""
    tilt = np.radians(tilt_deg * dice.uniform(0.3, 1.0))
    about, turn = dice.uniform(0, 2 * np.pi), dice.uniform(-0.5, 0.5)
    focal = 0.8 * size[0]
    whole = max(sheet[0] / size[0], sheet[1] / size[1]) + 1.4 * (_PIECE_MM + _APART_MM) / size[1]
    far = focal * whole * 1.22 * (1 + 0.5 * np.sin(tilt))
    ahead = -np.array([np.sin(tilt) * np.cos(about), np.sin(tilt) * np.sin(about), -np.cos(tilt)])
    right = np.cross([-np.sin(turn), np.cos(turn), 0.0], ahead)
    right /= np.linalg.norm(right)
    down = np.cross(ahead, right)
    middle = np.array([sheet[0] / 2, sheet[1] / 2, 0.0])
    eye = middle - far * ahead
    turned = np.array([right, down, ahead])
    inside = np.array([[focal, 0, size[0] / 2], [0, focal, size[1] / 2], [0, 0, 1.0]])
    plane = np.column_stack([turned[:, 0], turned[:, 1], -turned @ eye])
    found = inside @ plane
    return np.asarray(found / found[2, 2])


def _on_floor(to_px: Floats, size: tuple[int, int]) -> tuple[Floats, Floats]:
    back = np.linalg.inv(to_px)
    u, v = np.meshgrid(np.arange(size[0]) + 0.5, np.arange(size[1]) + 0.5)
    x, y, w = (back[k, 0] * u + back[k, 1] * v + back[k, 2] for k in range(3))
    return np.asarray(x / w), np.asarray(y / w)


def _which(
    sheet: Sheet, places: list[tuple[float, float]], x: Floats, y: Floats
) -> NDArray[np.intp]:
    count = len(sheet.reflects)
    which = np.full(x.shape, count + len(places))
    for k, (px, py) in enumerate(places):
        inside = (x >= px) & (x < px + _PIECE_MM) & (y >= py) & (y < py + _PIECE_MM)
        which[inside] = count + k
    wide, high = sheet.size_mm
    on = (x >= 0) & (x < wide) & (y >= 0) & (y < high)
    rows = np.minimum((y[on] * sheet.px_mm).astype(int), sheet.which.shape[0] - 1)
    columns = np.minimum((x[on] * sheet.px_mm).astype(int), sheet.which.shape[1] - 1)
    which[on] = sheet.which[rows, columns]
    return which


def _field(
    x: Floats, y: Floats, sheet: tuple[float, float], *, size: tuple[int, int], hard: Hard,
    dice: np.random.Generator,
) -> Floats:  # fmt: skip
    """Light by place: a lamp or a window to one side, the lens's corners, a shadow's edge."""
    about = dice.uniform(0, 2 * np.pi)
    along = (x - sheet[0] / 2) * np.cos(about) + (y - sheet[1] / 2) * np.sin(about)
    far = 900.0 / max(hard.uneven, 1e-6) / 2
    lamp = far**2 / ((far - along).clip(0.3 * far) ** 2 + 1.0)
    u, v = np.meshgrid(np.linspace(-1, 1, size[0]), 0.75 * np.linspace(-1, 1, size[1]))
    field = lamp * (1 + 0.30 * (u**2 + v**2)) ** -1.0
    if hard.shadow < 1:
        edge = 1 / (1 + np.exp(-(along - dice.uniform(-40, 40)) / 6.0))
        field = field * (hard.shadow + (1 - hard.shadow) * edge)
    return np.asarray(field)


def _mottle(size: tuple[int, int], dice: np.random.Generator) -> Floats:
    import cv2

    rough = dice.normal(0, 1, (size[1] // 20, size[0] // 20))
    soft = cv2.resize(cv2.GaussianBlur(rough, (0, 0), 2.0), size, interpolation=cv2.INTER_CUBIC)
    return np.asarray(np.exp(0.6 * soft))
