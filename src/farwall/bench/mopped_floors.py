"""Invented mopped floors with true marks, for judging what finds marks on them. Frozen.

Nothing of the finder, of `farwall.colour`, of the readers or of the job is used here. A slab is
trowelled, cracked, patched; a wand lays circles on it; stain reacts with the lime there is; an edge
that goes dry before its neighbour comes is wetted twice. What is judged on it is judged on invented
floors and on nothing else. Every second floor or so has no mark at all. Cracks, cuts, patches of
another pour, halos of the trowel and ground that has begun to dry are there and are no marks.
"""

from __future__ import annotations

import numpy as np

from farwall.bench.mopped_marks import MAKERS, Ground, Line, Scar
from farwall.bench.mopped_noise import Chance, Field, chance, one_of, soft
from farwall.bench.mopped_slab import Decoy, Point, Ring, slab
from farwall.bench.mopped_stain import Stained, lightness, looks, stained
from farwall.nouns import dataclass

M_PER_PX = 0.005
FREE = 0.45
"""Share of floors without a mark."""
LEAST_L = 0.6
"""What comes out fainter than that is taken off the floor again."""
_TRIES = 8


@dataclass(frozen=True)
class TrueMark:
    """A mark that is there: kind, outlines of its parts on the plan [m], L against beside it.

    lines: what it runs along, for laps, stripes and tape · lighter: above 0 lighter than beside.
    """

    kind: str
    rings: tuple[Ring, ...]
    lines: tuple[Ring, ...]
    lighter: float


@dataclass(frozen=True)
class MoppedFloor:
    """A piece of a room: its clean wet look (linear RGB, row 0 at the top), and what is true of it.

    The lower left corner of the piece is the origin of the plan, y up.
    """

    seed: int
    m_per_px: float
    wide_m: float
    high_m: float
    look: Field
    relief: Field
    marks: tuple[TrueMark, ...]
    decoys: tuple[Decoy, ...]


def mopped(seed: int) -> MoppedFloor:
    """The floor of that number."""
    throws = chance(seed, 10)
    wide, high = (round(float(throws.uniform(2.4, 5.4)), 2) for _ in range(2))
    ground = slab(seed, wide, high, M_PER_PX)
    coats = stained(seed, ground)
    scars = () if throws.uniform() < FREE else _scars(coats, throws)
    look, kept = _weighed(coats, scars, throws)
    return MoppedFloor(
        seed, M_PER_PX, wide, high, look, ground.relief,
        tuple(_true(scar, lighter, high) for scar, lighter in kept), tuple(ground.decoys),
    )  # fmt: skip


def _scars(coats: Stained, throws: Chance) -> tuple[Scar, ...]:
    """One to four marks that do not lie on one another."""
    kinds, px = list(MAKERS), 1 / M_PER_PX
    odds = [MAKERS[kind][0] for kind in kinds]
    ground = Ground(coats.slab.shape, px, coats.slab.thirst)
    wanted = int(throws.choice([1, 2, 3, 4], p=[0.35, 0.3, 0.2, 0.15]))
    taken, made = np.zeros(ground.shape, bool), list[Scar]()
    for _ in range(_TRIES):
        if len(made) == wanted:
            break
        scar = MAKERS[one_of(throws, kinds, odds)][3](ground, throws)
        inside = scar.body > 0.3
        if not inside.any() or (inside & taken).any():
            continue
        taken |= soft(inside.astype(np.float32), 0.08 * px) > 0.02
        made.append(scar)
    return tuple(made)


def _weighed(
    coats: Stained, scars: tuple[Scar, ...], throws: Chance
) -> tuple[Field, list[tuple[Scar, float]]]:
    """The look with every mark about as strong as its kind may be, and how strong it came out."""
    free = looks(coats)
    wished = [_wished(scar.kind, throws) for scar in scars]
    signs = [-1.0 if scar.lightens else 1.0 for scar in scars]
    weights = [0.3 for _ in scars]
    for _ in range(3 if scars else 0):
        came = _contrasts(coats, scars, signs, weights, free)
        weights = [
            float(np.clip(w * want / max(abs(c), 0.05), 0.01, 2.2))
            for w, want, c in zip(weights, wished, came, strict=True)
        ]
    came = _contrasts(coats, scars, signs, weights, free)
    weights = [w if abs(c) >= LEAST_L else 0.0 for w, c in zip(weights, came, strict=True)]
    look = looks(coats, _more(scars, signs, weights)) if any(weights) else free
    kept = [(s, c) for s, c, w in zip(scars, came, weights, strict=True) if w]
    return look, kept


def _wished(kind: str, throws: Chance) -> float:
    _, least, most, _ = MAKERS[kind]
    return float(np.exp(throws.uniform(np.log(least), np.log(most))))


def _more(scars: tuple[Scar, ...], signs: list[float], weights: list[float]) -> Field | None:
    if not scars:
        return None
    parts = [
        np.float32(s * w) * scar.body for scar, s, w in zip(scars, signs, weights, strict=True)
    ]
    return np.asarray(np.sum(parts, axis=0), np.float32)


def _contrasts(
    coats: Stained, scars: tuple[Scar, ...], signs: list[float], weights: list[float], free: Field
) -> list[float]:
    """L that each mark changed its own ground by, in the mean of its body."""
    changed = lightness(looks(coats, _more(scars, signs, weights))) - lightness(free)
    return [float(changed[scar.body > 0.5 * scar.body.max()].mean()) for scar in scars]


def _true(scar: Scar, lighter: float, high_m: float) -> TrueMark:
    def placed(line: Line) -> Ring:
        return tuple(_metres(column, row, high_m) for column, row in line)

    rings = tuple(placed(one) for one in _outlines(scar.body))
    return TrueMark(scar.kind, rings, tuple(placed(one) for one in scar.lines), round(lighter, 2))


def _metres(column: float, row: float, high_m: float) -> Point:
    return round(column * M_PER_PX, 3), round(high_m - row * M_PER_PX, 3)


def _outlines(body: Field) -> list[Line]:
    """Outlines of the body, its crumbs closed up, none smaller than a thumb's nail."""
    import cv2

    px = 1 / M_PER_PX
    inside = (soft(body, 0.006 * px) > 0.25).astype(np.uint8)
    inside = np.asarray(
        cv2.morphologyEx(inside, cv2.MORPH_CLOSE, np.ones((9, 9), np.uint8)), np.uint8
    )
    found, _ = cv2.findContours(inside, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE)
    kept = []
    for one in found:
        if cv2.contourArea(one) < (0.012 * px) ** 2:
            continue
        line = cv2.approxPolyDP(one, 1.0, closed=True)[:, 0, :]
        if len(line) >= 3:
            kept.append(tuple((float(x), float(y)) for x, y in line))
    return kept
