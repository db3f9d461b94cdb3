"""How an invented slab looks clean and wet after reactive stains: what binds, and what light does.

Frozen with `bench.mopped_floors`. Rank of every figure: guess, of the size that floors show.
"""

from __future__ import annotations

import numpy as np

from farwall.bench.mopped_noise import Chance, Field, chance, clouds, marbled, one_of, stepped
from farwall.bench.mopped_slab import Decoy, Ring, Slab
from farwall.bench.mopped_spray import strokes
from farwall.nouns import dataclass

PIGMENTS = {
    "umber": (0.85, 1.25, 1.9), "rust": (0.35, 1.05, 2.4), "amber": (0.22, 0.75, 2.3),
    "black": (1.45, 1.5, 1.45), "green": (1.5, 0.62, 0.95), "blue-green": (1.75, 0.72, 0.62),
    "olive": (0.95, 0.75, 1.7),
}  # fmt: skip
"""What red, green and blue lose in a pigment, against one another."""
PAIRS = (
    ("umber", "rust"), ("umber", "amber"), ("rust", "amber"), ("black", "umber"),
    ("green", "blue-green"), ("olive", "green"), ("olive", "umber"), ("black", "black"),
)  # fmt: skip
"""The two phases a stain may set to, side by side in one floor."""
ODDS = (5.0, 4.0, 3.0, 3.0, 2.0, 1.5, 2.0, 1.0)
DRYING = 0.12
"""Share of floors that have begun to dry when the photo is taken."""
_DEPTH = 2.6
"""What a full measure of pigment absorbs against what the paste scatters."""
_INNER = 0.42
"""Share of light that a wet face throws back inside."""


@dataclass(frozen=True)
class Coat:
    """A stain as it is laid: its two phases, how strong, what falls where, which phase where."""

    phases: tuple[str, str]
    strength: float
    fallen: Field
    share: Field


@dataclass(frozen=True)
class Stained:
    """A slab, the coats that are laid on it, and how far the film of the mop is gone, 0 to 1."""

    slab: Slab
    coats: tuple[Coat, ...]
    dry: Field


def stained(seed: int, slab: Slab) -> Stained:
    """The coats of that seed: one colour, or a second over it."""
    throws = chance(seed, 12)
    px = 1 / slab.m_per_px
    coats = [_coat(throws, slab, px, float(np.exp(throws.uniform(np.log(0.35), np.log(1.9)))))]
    if throws.uniform() < 0.45:
        coats.append(_coat(throws, slab, px, throws.uniform(0.12, 0.5)))
    return Stained(slab, tuple(coats), _drying(throws, slab, px))


def _drying(throws: Chance, slab: Slab, px: float) -> Field:
    """On few floors the film has begun to go, where the slab drinks and at its thinnest."""
    if throws.uniform() > DRYING:
        return np.zeros(slab.shape, np.float32)
    thin = marbled(throws, slab.shape, 0.9 * px, 0.2 * px) + 2 * (slab.thirst - 1)
    gone = stepped(thin, float(np.quantile(thin, throws.uniform(0.90, 0.98))), 0.06)
    slab.decoys.extend(Decoy("drying", ring, 0.0) for ring in _rings(gone, slab.m_per_px))
    return np.asarray(gone * throws.uniform(0.3, 1.0), np.float32)


def _rings(body: Field, m_per_px: float) -> list[Ring]:
    import cv2

    found, _ = cv2.findContours(
        (body > 0.5).astype(np.uint8), cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE
    )
    high, kept = body.shape[0], []
    for one in found:
        line = cv2.approxPolyDP(one, 1.5, closed=True)[:, 0, :]
        if len(line) >= 3:
            kept.append(tuple((float(x * m_per_px), float((high - y) * m_per_px)) for x, y in line))
    return kept


def _coat(throws: Chance, slab: Slab, px: float, strength: float) -> Coat:
    shape = slab.shape
    pair = PAIRS[int(one_of(throws, [str(n) for n in range(len(PAIRS))], ODDS))]
    fallen = strokes(throws, shape, px, throws.uniform(0.85, 1.2))
    # Where the film stood longest more is bound, with edges like clouds.
    pooled = marbled(throws, shape, throws.uniform(0.18, 0.6) * px, throws.uniform(0.05, 0.2) * px)
    cloudy = stepped(pooled, throws.uniform(-0.5, 0.8), throws.uniform(0.15, 0.5))
    small = clouds(throws, shape, 0.06 * px, 4, 0.7)
    depth = throws.uniform(0.05, 0.26)
    fallen = fallen * np.exp(depth * (1.6 * (cloudy - 0.5) + 0.5 * pooled + 0.35 * small))
    phase = marbled(throws, shape, 0.4 * px, 0.15 * px) + 0.5 * small - 0.6 * slab.relief
    share = stepped(phase, throws.uniform(-0.8, 0.8), throws.uniform(0.3, 0.9))
    return Coat(pair, strength, np.asarray(fallen, np.float32), share)


def looks(of: Stained, more: Field | None = None) -> Field:
    """(rows, columns, 3) linear red, green, blue of the clean wet floor, 0 to 1.

    more: natural logarithm of how much more of every coat came to act, by place; none: 0.
    """
    slab, lime = of.slab, of.slab.lime.copy()
    gain = np.exp(more) if more is not None else np.float32(1)
    lost = ((1 - slab.grey) ** 2 / (2 * slab.grey))[..., None] * np.array([0.96, 1.0, 1.09])
    lost = lost.astype(np.float32)
    for coat in of.coats:
        came = coat.strength * coat.fallen * slab.thirst * gain
        bound = lime * (1 - np.exp(-came / np.maximum(lime, 0.05)))
        lime = np.maximum(lime - 0.6 * bound, 0.05)
        first, second = (np.array(PIGMENTS[name], np.float32) for name in coat.phases)
        mixed = coat.share[..., None] * first + (1 - coat.share[..., None]) * second
        lost += np.asarray(_DEPTH * bound[..., None] * mixed, np.float32)
    lost += np.asarray(1.5 * slab.lines[..., None], np.float32)
    body = 1 + lost - np.sqrt(lost * (lost + 2))
    inner = (_INNER - 0.24 * of.dry)[..., None]
    face = (1 - inner) * body / (1 - inner * body)
    return np.asarray(face + 0.012 * of.dry[..., None], np.float32)


def lightness(look: Field) -> Field:
    """L of CIELAB against the perfect white, from linear red, green, blue."""
    bright = look @ np.array([0.2126, 0.7152, 0.0722], np.float32)
    cubed = np.where(bright > 0.008856, np.cbrt(bright), 7.787 * bright + 16 / 116)
    return np.asarray(116 * cubed - 16, np.float32)
