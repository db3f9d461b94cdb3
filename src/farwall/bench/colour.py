"""How well the look of the next coat is foreseen, and what comes of letting it choose the coat.

On invented floors (`bench.colour_floors`): samples in a closet, the first coat, six spots of the
floor photographed, the second coat foreseen; then whole jobs, coat by coat, by what is foreseen and
by the habit of the trade side by side. Half of the floors were for tuning, the other half judges.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.bench.colour_floors import PATCHES, Coat, Floor, Patches, bare_patches, floor
from farwall.colour.belief import Seen, believe
from farwall.colour.difference import de2000
from farwall.colour.dose import Laid
from farwall.colour.foresight import foreseen
from farwall.colour.next_coat import Way, next_coat
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
Steps = tuple[tuple[int, float, float], ...]
"""Coats of a sample: stain, parts of water, litres on a square metre."""

JUDGING, TUNING = 1_000_000, 0
SPOTS = 6
DARK_RANGE = 3.0
"""L below the sample at which a floor is too dark where one patch in twenty is darker still."""
LIGHT_RANGE, COST_OF_COAT, COST_TOO_DARK = 1.0, 1.0, 12.0
"""What a job is charged: a coat, each L that stays lighter than the range, a floor too dark. The
proportion is a guess: a coat is a day, a floor too dark is an overlay."""
MOST_COATS = 4
WAYS = tuple(
    Way(0, water, litres)
    for water in (1.0, 2.0, 3.0, 4.0, 6.0, 8.0)
    for litres in (0.2, 0.136, 0.1)
)
HABIT = (Coat(0, 1 / 3, 0.2), Coat(0, 1 / 3, 0.136))
"""Two of water to one of stain, then look: common practice, no source; the first coat wetter."""
HABIT_EYE = 1.2
"""Error in L of an eye that compares from memory. A guess."""

FOUR: tuple[Steps, ...] = (
    ((0, 1.0, 0.2),), ((0, 2.0, 0.2),), ((0, 4.0, 0.2),), ((0, 1.0, 0.2), (0, 2.0, 0.14)),
)  # fmt: skip
SEVEN: tuple[Steps, ...] = (
    *FOUR, ((0, 3.0, 0.2),), ((0, 1.0, 0.2), (0, 1.0, 0.2)),
    ((0, 2.0, 0.2), (0, 2.0, 0.14), (0, 3.0, 0.14)),
)  # fmt: skip
TWO_COLOURS: tuple[Steps, ...] = (
    ((0, 1.0, 0.2),), ((0, 2.0, 0.2),), ((0, 4.0, 0.2),), ((1, 1.0, 0.2),), ((1, 3.0, 0.2),),
    ((0, 1.0, 0.2), (1, 2.0, 0.14)), ((0, 1.0, 0.2), (1, 4.0, 0.14)),
)  # fmt: skip
SECOND = ((2.0, 0.14), (3.0, 0.14), (1.0, 0.14))


@dataclass(frozen=True)
class Foreseen:
    """CIEDE2000 between what was foreseen and what came, over all floors.

    change: how far the coat itself moved the floor, in the middle · bias: foreseen less true, L,
    in the middle · held_percent: of floors whose L lay in the range of four in five.
    """

    patches: str
    floors: int
    median: float
    p90: float
    change: float
    bias: float
    held_percent: float


@dataclass(frozen=True)
class Jobs:
    """Whole jobs by one way of choosing: all in the mean, per cent of jobs."""

    rule: str
    floors: int
    too_dark_percent: float
    cost: float
    coats: float
    away: float


def score_foreseen(seeds: Sequence[int]) -> tuple[Foreseen, ...]:
    """The second coat foreseen from four patches, from seven, and in a second colour."""
    sets = (("4", FOUR, 1), ("7", SEVEN, 1), ("7 of two colours", TWO_COLOURS, 2))
    return tuple(_foreseen(name, ladder, stains, seeds) for name, ladder, stains in sets)


def score_jobs(seeds: Sequence[int]) -> tuple[Jobs, Jobs]:
    """Jobs by what is foreseen, and the same floors by the habit."""
    rows = [_job(seed) for seed in seeds]
    ours, habit = (np.array([row[side] for row in rows], dtype=np.float64) for side in (0, 1))
    return _jobs("weakest coat that closes the gap", ours), _jobs("1:2, then look", habit)


def _foreseen(name: str, ladder: Sequence[Steps], stains: int, seeds: Sequence[int]) -> Foreseen:
    rows = np.array([_one(seed, ladder, stains) for seed in seeds], dtype=np.float64)
    return Foreseen(
        patches=name, floors=len(seeds), median=float(np.median(rows[:, 0])),
        p90=float(np.quantile(rows[:, 0], 0.9)), change=float(np.median(rows[:, 1])),
        bias=float(np.median(rows[:, 2])), held_percent=float(100 * rows[:, 3].mean()),
    )  # fmt: skip


def _one(seed: int, ladder: Sequence[Steps], stains: int) -> tuple[float, float, float, bool]:
    of, throws = floor(seed, stains=stains), np.random.Generator(np.random.PCG64([seed, 1]))
    order = throws.permutation(PATCHES)
    seen = _samples(of, order, ladder, throws)
    rest = order[len(ladder) + 1 :]
    patches = bare_patches(of, rest)
    seen.append(_spots(patches, (), "bare", throws))
    patches = patches.laid(Coat(0, 0.5, 0.2), throws)
    first = Laid(0, 0.1)
    seen.append(_spots(patches, (first,), "after 1", throws))
    water, litres = SECOND[seed % len(SECOND)]
    second = Way(stains - 1, water, litres).laid
    drawn = foreseen(believe(seen, stains=stains), [(first, second)])[:, 0]
    before = patches.wet().mean(axis=0)
    patches = patches.laid(Coat(stains - 1, 1 / (1 + water), litres), throws)
    true = patches.wet().mean(axis=0)
    low, high = np.quantile(drawn[:, 0], (0.1, 0.9))
    return (
        float(de2000(drawn.mean(axis=0), true)), float(de2000(before, true)),
        float(drawn[:, 0].mean() - true[0]), bool(low <= true[0] <= high),
    )  # fmt: skip


def _samples(
    of: Floor, order: NDArray[np.intp], ladder: Sequence[Steps], throws: np.random.Generator
) -> list[Seen]:
    """A bare spot and the patches of the ladder, all in one photo."""
    error = throws.normal(0.0, of.camera)
    made = []
    for n, steps in enumerate(((), *ladder)):
        patch = bare_patches(of, order[n : n + 1])
        for stain, water, litres in steps:
            patch = patch.laid(Coat(stain, 1 / (1 + water), litres), throws)
        lab = patch.wet()[0] + error + throws.normal(0.0, 0.25, 3)
        laid = tuple(Way(stain, water, litres).laid for stain, water, litres in steps)
        made.append(Seen(laid, _triple(lab), "samples", "samples"))
    return made


def _spots(
    patches: Patches, laid: tuple[Laid, ...], photo: str, throws: np.random.Generator
) -> Seen:
    """Six spots of the floor in one photo: their mean and how they differ."""
    some = Patches(
        patches.floor, patches.which[:SPOTS], patches.lime[:SPOTS], patches.bound[:SPOTS]
    )
    labs = some.photographed(throws)
    spread = float(labs[:, 0].std(ddof=1))
    return Seen(laid, _triple(labs.mean(axis=0)), "floor", photo, SPOTS, spread)


def _triple(lab: Floats) -> tuple[float, float, float]:
    return float(lab[0]), float(lab[1]), float(lab[2])


Charged = tuple[bool, float, int, float]


def _job(seed: int) -> tuple[Charged, Charged]:
    of, throws = floor(seed), np.random.Generator(np.random.PCG64([seed, 2]))
    order = throws.permutation(PATCHES)
    first, second = (1.0, 2.0, 3.0)[throws.integers(3)], (1.0, 2.0, 4.0, 8.0)[throws.integers(4)]
    approved = ((0, first, 0.2), (0, second, (0.2, 0.136)[throws.integers(2)]))
    seen = _samples(of, order, (*FOUR[:3], approved), throws)
    sample = bare_patches(of, order[4:5])
    for stain, water, litres in approved:
        sample = sample.laid(Coat(stain, 1 / (1 + water), litres), throws)
    # The approved sample is looked at again, in the same photo as it was judged in.
    wanted = sample.wet()[0]
    seen[-1] = Seen(
        seen[-1].coats, _triple(wanted + throws.normal(0.0, of.camera)), "samples", "approved"
    )
    rest = order[6:]
    return _ours(of, rest, seen, wanted), _habit(of, rest, wanted)


def _ours(of: Floor, rest: NDArray[np.intp], seen: list[Seen], wanted: Floats) -> Charged:
    throws = np.random.Generator(np.random.PCG64([of.seed, 3]))
    patches, laid, sample = bare_patches(of, rest), (), seen[-1].lab
    told = [*seen, _spots(patches, (), "bare", throws)]
    coats: tuple[Laid, ...] = laid
    while len(coats) < MOST_COATS:
        answer = next_coat(
            believe(told, stains=1), coats, WAYS, sample_lab=sample, dark_range=DARK_RANGE
        )
        way = answer.chosen.way
        if answer.verdict == "stop" or way is None:
            break
        patches = patches.laid(Coat(0, 1 / (1 + way.water_parts), way.l_per_m2), throws)
        coats = (*coats, way.laid)
        told.append(_spots(patches, coats, f"after {len(coats)}", throws))
    return _charged(patches, wanted, len(coats))


def _habit(of: Floor, rest: NDArray[np.intp], wanted: Floats) -> Charged:
    throws = np.random.Generator(np.random.PCG64([of.seed, 4]))
    patches, coats = bare_patches(of, rest).laid(HABIT[0], throws), 1
    while coats < MOST_COATS:
        looks = patches.wet()[:, 0].mean() + throws.normal(0.0, HABIT_EYE)
        if looks <= wanted[0] + LIGHT_RANGE:
            break
        patches, coats = patches.laid(HABIT[1], throws), coats + 1
    return _charged(patches, wanted, coats)


def _charged(patches: Patches, wanted: Floats, coats: int) -> Charged:
    looks = patches.wet()
    too_dark = bool(np.quantile(looks[:, 0], 0.05) < wanted[0] - DARK_RANGE)
    light = max(0.0, float(looks[:, 0].mean() - wanted[0]) - LIGHT_RANGE)
    cost = COST_OF_COAT * coats + light + COST_TOO_DARK * too_dark
    return too_dark, cost, coats, float(de2000(looks.mean(axis=0), wanted))


def _jobs(rule: str, rows: Floats) -> Jobs:
    dark, cost, coats, away = rows.mean(axis=0)
    return Jobs(rule, len(rows), float(100 * dark), float(cost), float(coats), float(away))
