"""Lights, targets and stains as spectra, for invented photos. Frozen; shares nothing of ours.

Lights, the eye and the 24 reflectances come from the data of the library colour-science; inks and
stains are invented.
"""

from __future__ import annotations

import warnings
from functools import cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from farwall.nouns import dataclass

Floats = NDArray[np.float64]
NM = np.arange(400.0, 701.0, 10.0)
LIGHTS = {"sun": "D55", "shade": "D75", "bulb": "A", "tube": "FL11", "LED": "LED-B3"}
"""The five lights, by the names of the CIE in the data of colour-science."""


@dataclass(frozen=True)
class Sheet:
    """What lies on the floor: which material is where, and the reflectance of each by band.

    which: rows from the top, an index into `reflects` · px_mm: picture points to a millimetre.
    """

    which: NDArray[np.intp]
    px_mm: float
    reflects: Floats

    @property
    def size_mm(self) -> tuple[float, float]:
        """Across and down."""
        high, wide = self.which.shape
        return wide / self.px_mm, high / self.px_mm

    def lab_at(self, x_mm: float, y_mm: float) -> tuple[float, float, float]:
        """What an instrument reads there: CIELAB under D50."""
        index = self.which[int(y_mm * self.px_mm), int(x_mm * self.px_mm)]
        return lab_d50(self.reflects[index])


@cache
def _data() -> Any:
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        import colour

    return colour


def _bands(spectrum: Any) -> Floats:
    known = np.asarray(spectrum.wavelengths), np.asarray(spectrum.values)
    return np.asarray(np.interp(NM, *known), dtype=np.float64)


@cache
def light(name: str) -> Floats:
    """The spectrum of one of the five, 1 in the mean."""
    found = _bands(_data().SDS_ILLUMINANTS[LIGHTS.get(name, name)])
    return np.asarray(found / found.mean())


@cache
def eye_of_1931() -> Floats:
    """The CIE's standard observer of 1931, bands by x, y, z."""
    eye = _data().MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]
    known = np.asarray(eye.wavelengths), np.asarray(eye.values)
    return np.stack([np.interp(NM, known[0], known[1][:, k]) for k in range(3)], axis=1)


def lab_d50(reflects: Floats) -> tuple[float, float, float]:
    """CIELAB of a reflectance by band under D50, the eye of 1931."""
    weights = light("D50")[:, None] * eye_of_1931()
    ratio = (reflects @ weights) / weights.sum(axis=0)
    f = [r ** (1 / 3) if r > 0.008856 else 7.787 * r + 16 / 116 for r in ratio]
    return float(116 * f[1] - 16), float(500 * (f[0] - f[1])), float(200 * (f[1] - f[2]))


def hump(middle: float, wide: float) -> Floats:
    """A bell over the bands, 1 at its middle."""
    return np.asarray(np.exp(-0.5 * ((NM - middle) / wide) ** 2))


def common_24(px_mm: float = 2.0) -> Sheet:
    """The common target of 24 patches on its dark ground, by the reflectances of thirty of it."""
    sets = iter(_data().SDS_COLOURCHECKERS.values())
    patches = np.array([_bands(one) for one in next(sets).values()])
    ground = np.full_like(NM, 0.035)
    pitch, side, edge = 32.0, 28.0, 7.0
    size = (2 * edge + 6 * pitch - 4, 2 * edge + 4 * pitch - 4)
    which = np.full((round(size[1] * px_mm), round(size[0] * px_mm)), 24)
    for k in range(24):
        x, y = edge + (k % 6) * pitch, edge + (k // 6) * pitch
        across = slice(round(x * px_mm), round((x + side) * px_mm))
        which[round(y * px_mm) : round((y + side) * px_mm), across] = k
    return Sheet(which, px_mm, np.vstack([patches, ground]))


def printed(page: NDArray[np.uint8], px_mm: float) -> Sheet:
    """A page as an invented office printer lays it down: dots of four inks, cells of Neugebauer."""
    flat = page.reshape(-1, 3) // 3 * 3
    colours, which = np.unique(flat, axis=0, return_inverse=True)
    return Sheet(which.reshape(page.shape[:2]), px_mm, _inked(np.minimum(colours / 252.0, 1.0)))


def _inked(rgb: Floats) -> Floats:
    paper = 0.87 * (1 - 0.10 * hump(400, 25))
    inks = [
        1 - 0.93 * (hump(640, 60) + 0.35 * hump(700, 40)).clip(0, 1),
        1 - 0.93 * (hump(535, 38) + 0.15 * hump(420, 30)).clip(0, 1),
        1 - 0.92 * (1 / (1 + np.exp((NM - 497) / 9))),
        np.full_like(NM, 0.035),
    ]
    dots = 1 - rgb
    black = 0.9 * dots.min(axis=1, keepdims=True) ** 1.3
    dots = np.hstack([(dots - black) / (1 - black + 1e-9), black]).clip(0, 1) ** 0.7
    n = 1.8  # of Yule and Nielsen
    total = np.zeros((len(rgb), len(NM)))
    for cell in range(16):
        share, film = np.ones(len(rgb)), paper.copy()
        for ink in range(4):
            laid = bool(cell >> ink & 1)
            share = share * (dots[:, ink] if laid else 1 - dots[:, ink])
            film = film * (inks[ink] if laid else 1.0)
        total += share[:, None] * np.maximum(film, 0.012) ** (1 / n)
    return np.asarray(total**n)


def stained_pieces() -> dict[str, Floats]:
    """Reflectances of a bare slab and of stains on it, from a wash to nearly black."""
    bare = 0.36 + 0.14 / (1 + np.exp(-(NM - 520) / 55))
    takes = {
        "brown": 1.5 / (1 + np.exp((NM - 560) / 38)) + 0.25,
        "tan": 0.9 / (1 + np.exp((NM - 520) / 32)) + 0.06,
        "red": 1.8 / (1 + np.exp((NM - 578) / 20)) + 0.12,
        "blue-green": 1.1 * hump(640, 75) + 0.5 * hump(405, 35) + 0.08,
        "black": 1.3 + 0.2 * hump(430, 80),
    }
    found = {"bare": bare}
    for name, film in takes.items():
        for dose in (0.45, 1.2):
            found[f"{name} {dose:g}"] = bare * np.exp(-dose * film)
    found["brown on tan"] = bare * np.exp(-0.7 * takes["brown"] - 0.8 * takes["tan"])
    return found
