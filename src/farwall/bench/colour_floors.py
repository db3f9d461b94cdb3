"""Invented floors that take colour, for judging what is predicted of them. Frozen; of its own kind.

Nothing of `farwall.colour` is used here: the reaction is followed in small steps with lime that
runs out, light goes through sixteen bands of the spectrum, a room is patchy, a camera errs. Rank of
every figure: guess, of the size that trade and handbooks tell; what is judged on it is judged on
invented floors and on nothing else.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray

from farwall.nouns import dataclass

Floats = NDArray[np.float64]

BANDS_NM = np.arange(400.0, 701.0, 20.0)
PATCHES = 24
"""Pieces of a floor that are followed by themselves."""
_STEPS = 40


@dataclass(frozen=True)
class Pigment:
    """What a stain leaves in the concrete: absorption by band for a mole on a square metre."""

    absorbs: Floats
    mol_l: float


@dataclass(frozen=True)
class Floor:
    """A floor: bare look by patch and band, lime, suction and thirst by patch, how fast it reacts.

    lime_mol: what may bind metal, by patch · sinks: share of what is laid that goes too deep to be
    seen, by patch · thirst: litres taken against the mean, by patch · rate: of the reaction, 1/min
    · wet_min: minutes until the film is gone · washed: share that the scrub takes · camera: spread
    of a photo's error in L, a, b.
    """

    bare: Floats
    lime_mol: Floats
    sinks: Floats
    thirst: Floats
    rate: float
    wet_min: float
    pigments: tuple[Pigment, ...]
    washed: float
    camera: Floats
    seed: int


@dataclass(frozen=True)
class Coat:
    """A coat as it is laid: which stain, litres of stain in a litre, litres on a square metre."""

    stain: int
    share: float
    l_per_m2: float


@dataclass
class Patches:
    """Where some patches stand: lime left, and moles of each stain bound in sight."""

    floor: Floor
    which: NDArray[np.intp]
    lime: Floats
    bound: Floats

    def laid(self, coat: Coat, throws: np.random.Generator) -> Patches:
        """The same patches after a coat, dwell and scrub; nobody lays twice alike."""
        floor = self.floor
        hand = np.exp(throws.normal(0.0, 0.06, len(self.which)))
        laid = coat.share * coat.l_per_m2 * floor.pigments[coat.stain].mol_l
        free = laid * floor.thirst[self.which] * hand * (1 - floor.sinks[self.which])
        lime, fixed = self.lime.copy(), np.zeros_like(free)
        step = floor.wet_min / _STEPS
        for _ in range(_STEPS):
            eats = floor.rate * step * free * lime / (lime + 0.3 * floor.lime_mol[self.which])
            eats = np.minimum(eats, np.minimum(free, lime))
            free, lime, fixed = free - eats, lime - eats, fixed + eats
        kept = fixed * (1 - floor.washed) + 0.04 * free
        bound = self.bound.copy()
        bound[:, coat.stain] += kept
        return Patches(floor, self.which, lime, bound)

    def wet(self) -> Floats:
        """Lab of the clean wet look, patch by patch, without a camera."""
        return _lab(_surface(self._body(), inner=0.42, outer=0.02))

    def sealed(self) -> Floats:
        """Lab of the sealed look."""
        return _lab(_surface(self._body(), inner=0.46, outer=0.04))

    def dry(self) -> Floats:
        """Lab of the dry look, with powder on it."""
        return _lab(_surface(self._body(), inner=0.12, outer=0.0) * 0.95 + 0.03)

    def _body(self) -> Floats:
        bare = self.floor.bare[self.which]
        absorbs = (1 - bare) ** 2 / (2 * bare)
        for number, pigment in enumerate(self.floor.pigments):
            absorbs = absorbs + self.bound[:, number, None] * pigment.absorbs
        return np.asarray(1 + absorbs - np.sqrt(absorbs**2 + 2 * absorbs))

    def photographed(self, throws: np.random.Generator) -> Floats:
        """Lab of the wet look as a corrected photo gives it: an error of the photo, one of each."""
        of_photo = throws.normal(0.0, self.floor.camera)
        return self.wet() + of_photo + throws.normal(0.0, 0.25, (len(self.which), 3))


def floor(seed: int, *, stains: int = 1) -> Floor:
    """The floor of that number; the same on every machine."""
    throws = np.random.Generator(np.random.PCG64(seed))
    grey = throws.uniform(0.26, 0.42)
    slope = throws.uniform(0.0, 0.10)
    patchy = throws.normal(0, 0.06, PATCHES)
    bands = (BANDS_NM - 550) / 150
    bare = np.clip(grey * np.exp(patchy)[:, None] * (1 + slope * bands), 0.08, 0.7)
    tight = throws.lognormal(0, throws.uniform(0.08, 0.25), PATCHES)
    lime = throws.lognormal(np.log(0.12), 0.45) * tight**-0.6
    lime = lime * throws.lognormal(0, 0.07, PATCHES)
    return Floor(
        bare=bare,
        lime_mol=np.asarray(lime),
        sinks=np.clip(throws.uniform(0.05, 0.3) * tight, 0.0, 0.6),
        thirst=np.asarray(tight / tight.mean()),
        rate=throws.lognormal(np.log(0.25), 0.4),
        wet_min=throws.lognormal(np.log(22), 0.35),
        pigments=tuple(_pigment(throws) for _ in range(stains)),
        washed=throws.uniform(0.02, 0.15),
        camera=np.array([0.35, 0.25, 0.3]) * throws.uniform(0.6, 1.4),
        seed=seed,
    )


def bare_patches(of: Floor, which: NDArray[np.intp]) -> Patches:
    """Those patches before anything was laid."""
    return Patches(of, which, of.lime_mol[which].copy(), np.zeros((len(which), len(of.pigments))))


def _pigment(throws: np.random.Generator) -> Pigment:
    """Iron browns, manganese blacks, copper greens and what lies between."""
    kind = throws.choice(["brown", "black", "green"], p=[0.5, 0.25, 0.25])
    edge, width = throws.uniform(490, 560), throws.uniform(28, 50)
    brown = 1 / (1 + np.exp((BANDS_NM - edge) / width)) + throws.uniform(0.05, 0.2)
    black = 0.7 + 0.25 * (550 - BANDS_NM) / 150
    red = np.exp(-(((BANDS_NM - throws.uniform(640, 720)) / 80) ** 2))
    violet = np.exp(-(((BANDS_NM - 400) / throws.uniform(35, 60)) ** 2))
    green = red + 0.6 * violet + 0.08
    shape = {"brown": brown, "black": black, "green": green}[str(kind)]
    return Pigment(
        np.asarray(shape * throws.lognormal(np.log(55), 0.35)), float(throws.uniform(0.35, 0.9))
    )


def _surface(body: Floats, *, inner: float, outer: float) -> Floats:
    """What comes out through a wet or sealed face, which throws part of it back inside."""
    return (1 - outer) * (1 - inner) * body / (1 - inner * body)


@cache
def _observer() -> tuple[Floats, Floats]:
    """To XYZ from bands: matching functions weighted by the light, and its white."""
    import warnings

    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        import colour
    matching = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]
    light = colour.SDS_ILLUMINANTS["D50"]
    weights = np.array(
        [np.asarray(matching[float(one)]) * float(light[float(one)]) for one in BANDS_NM]
    )
    weights /= weights[:, 1].sum()
    return weights, weights.sum(axis=0)


def _lab(reflected: Floats) -> Floats:
    weights, white = _observer()
    ratio = reflected @ weights / white
    f = np.where(ratio > (6 / 29) ** 3, np.cbrt(ratio), ratio / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.stack(
        (116 * f[..., 1] - 16, 500 * (f[..., 0] - f[..., 1]), 200 * (f[..., 1] - f[..., 2])),
        axis=-1,
    )
