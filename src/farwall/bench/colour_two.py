"""Whole jobs of two colours, base and accent over it, held to a sample of both; beside the habit.

The next coat may be of either stain at any cut. The habit lays the base, lays the accent over it,
and then looks.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.bench.colour import (
    COST_OF_COAT,
    COST_TOO_DARK,
    DARK_RANGE,
    HABIT,
    HABIT_EYE,
    LIGHT_RANGE,
    MOST_COATS,
    SPOTS,
    Steps,
)
from farwall.bench.colour_floors import PATCHES, Coat, Floor, Patches, bare_patches, floor
from farwall.colour.belief import Seen, believe
from farwall.colour.difference import de2000
from farwall.colour.dose import Laid
from farwall.colour.next_coat import Way, next_coat
from farwall.nouns import dataclass

Floats = NDArray[np.float64]

WAYS = tuple(
    Way(stain, water, litres)
    for stain in (0, 1)
    for water in (1.0, 2.0, 3.0, 4.0, 6.0)
    for litres in (0.2, 0.136)
)
LADDER: tuple[Steps, ...] = (
    ((0, 1.0, 0.2),), ((0, 3.0, 0.2),), ((1, 1.0, 0.2),), ((1, 3.0, 0.2),),
    ((0, 1.0, 0.2), (1, 2.0, 0.14)),
)  # fmt: skip
ACCENT = Coat(1, 1 / 3, 0.136)


@dataclass(frozen=True)
class TwoColours:
    """How a floor of two colours ended: too dark, what it is charged, coats, CIEDE2000."""

    too_dark: bool
    cost: float
    coats: int
    away: float


def two_colours(seed: int) -> tuple[TwoColours, TwoColours]:
    """The floor of that number by what is foreseen, and by the habit."""
    of, throws = floor(seed, stains=2), np.random.Generator(np.random.PCG64([seed, 90]))
    order = throws.permutation(PATCHES)
    seen, wanted = _samples(of, order, throws)
    rest = order[len(LADDER) + 2 :]
    return _ours(of, rest, seen, wanted), _habit(of, rest, wanted)


def _samples(
    of: Floor, order: NDArray[np.intp], throws: np.random.Generator
) -> tuple[list[Seen], Floats]:
    """Bare, the ladder, the approved one after its base, and in a photo of its own after both."""
    base: Steps = ((0, (1.0, 2.0, 3.0)[throws.integers(3)], 0.2),)
    both: Steps = (*base, (1, (1.0, 2.0, 4.0)[throws.integers(3)], 0.136))
    error, made, patch = throws.normal(0.0, of.camera), [], bare_patches(of, order[:1])
    for n, steps in enumerate(((), *LADDER, base)):
        patch = bare_patches(of, order[n : n + 1])
        for stain, water, litres in steps:
            patch = patch.laid(Coat(stain, 1 / (1 + water), litres), throws)
        lab = patch.wet()[0] + error + throws.normal(0.0, 0.25, 3)
        made.append(Seen(_laid(steps), _triple(lab), "samples", "samples"))
    stain, water, litres = both[-1]
    wanted = patch.laid(Coat(stain, 1 / (1 + water), litres), throws).wet()[0]
    lab = wanted + throws.normal(0.0, of.camera)
    made.append(Seen(_laid(both), _triple(lab), "samples", "approved"))
    return made, wanted


def _ours(of: Floor, rest: NDArray[np.intp], seen: list[Seen], wanted: Floats) -> TwoColours:
    throws = np.random.Generator(np.random.PCG64([of.seed, 91]))
    patches, sample = bare_patches(of, rest), seen[-1].lab
    coats: tuple[Laid, ...] = ()
    told = [*seen, _spots(patches, coats, throws)]
    while len(coats) < MOST_COATS:
        answer = next_coat(
            believe(told, stains=2), coats, WAYS, sample_lab=sample, dark_range=DARK_RANGE
        )
        way = answer.chosen.way
        if answer.verdict == "stop" or way is None:
            break
        patches = patches.laid(Coat(way.stain, 1 / (1 + way.water_parts), way.l_per_m2), throws)
        coats = (*coats, way.laid)
        told.append(_spots(patches, coats, throws))
    return _charged(patches, wanted, len(coats))


def _habit(of: Floor, rest: NDArray[np.intp], wanted: Floats) -> TwoColours:
    throws = np.random.Generator(np.random.PCG64([of.seed, 92]))
    patches, coats = bare_patches(of, rest).laid(HABIT[0], throws).laid(ACCENT, throws), 2
    while coats < MOST_COATS:
        looks = patches.wet()[:, 0].mean() + throws.normal(0.0, HABIT_EYE)
        if looks <= wanted[0] + LIGHT_RANGE:
            break
        patches, coats = patches.laid(ACCENT, throws), coats + 1
    return _charged(patches, wanted, coats)


def _charged(patches: Patches, wanted: Floats, coats: int) -> TwoColours:
    looks = patches.wet()
    dark = bool(np.quantile(looks[:, 0], 0.05) < wanted[0] - DARK_RANGE)
    light = max(0.0, float(looks[:, 0].mean() - wanted[0]) - LIGHT_RANGE)
    cost = COST_OF_COAT * coats + light + COST_TOO_DARK * dark
    return TwoColours(dark, cost, coats, float(de2000(looks.mean(axis=0), wanted)))


def _spots(patches: Patches, coats: Sequence[Laid], throws: np.random.Generator) -> Seen:
    some = throws.permutation(len(patches.which))[:SPOTS]
    labs = patches.wet()[some] + throws.normal(0.0, patches.floor.camera)
    labs = labs + throws.normal(0.0, 0.25, labs.shape)
    spread = float(labs[:, 0].std(ddof=1))
    return Seen(tuple(coats), _triple(labs.mean(axis=0)), "floor", f"{len(coats)}", SPOTS, spread)


def _laid(steps: Steps) -> tuple[Laid, ...]:
    return tuple(Way(stain, water, litres).laid for stain, water, litres in steps)


def _triple(lab: Floats) -> tuple[float, float, float]:
    return float(lab[0]), float(lab[1]), float(lab[2])
