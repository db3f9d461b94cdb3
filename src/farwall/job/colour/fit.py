"""What each stain does here, by dose, as the samples tell it, and how well they tell it. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtri

from farwall.colour.belief import believe
from farwall.colour.difference import de2000
from farwall.colour.foresight import foreseen
from farwall.colour.lab import triple
from farwall.colour.nouns import FLOOR, SAMPLES, Belief
from farwall.colour.prior import Prior
from farwall.colour.sealed import sealing
from farwall.errors import Unanswerable
from farwall.facts.settled import SettledJob
from farwall.job.colour.asked import Asked, settled_of
from farwall.job.colour.fit_noun import Between, FitAnswer, FormWeight, Swatch, ToldAgain
from farwall.job.colour.laid import LaidCoat, planned_coat
from farwall.job.colour.library import prior_of
from farwall.job.colour.seen import Ask, Gathered, Patch, gathered
from farwall.job.colour.standard import standard_of
from farwall.job.story import story as story_of

SWATCH_PARTS = (1.0, 2.0, 4.0, 8.0, 15.0)
"""Parts of water to one of stain that swatches are shown of."""
_END = float(ndtri(0.9))


def doses_of(asked: Asked, found: Gathered) -> tuple[Swatch, ...]:
    """The bare floor, then doses of each sampled stain on it and over the first coat.

    found: what was gathered of the same question, at least one patch.
    """
    prior, _ = prior_of(asked.job, found.stains, asked.lessons)
    belief = believe(found.seen, stains=len(found.stains), prior=prior)
    return tuple(_swatches(belief, found, settled_of(asked), asked))


def colour_fit(asked: Asked) -> FitAnswer:
    """What the samples say. Raises Unanswerable where none is known by dose and wet look."""
    story = story_of(asked.plan, asked.kept) if asked.kept else None
    found = gathered(asked.job, asked.plan, asked.kept, story)
    sealed = sealing(found.pairs)
    standard, asks = standard_of(found, sealed)
    if not found.patches:
        reason = "The samples say nothing yet: none is known by dose and wet look."
        raise Unanswerable(reason, remedies=[one.what for one in (*found.asks, *asks)])
    settled = settled_of(asked)
    prior, learned_from = prior_of(asked.job, found.stains, asked.lessons)
    belief = believe(found.seen, stains=len(found.stains), prior=prior)
    bare, *swatches = _swatches(belief, found, settled, asked)
    return FitAnswer(
        job=asked.job.id,
        bare=bare,
        swatches=tuple(swatches),
        forms=tuple(
            FormWeight(fit.form.optics, fit.form.lime, weight)
            for fit, weight in zip(belief.fits, belief.weights, strict=True)
        ),
        told=told_again(found, prior),
        unknown=tuple(_unknown(belief, found)),
        sealing=sealed,
        standard=standard,
        found=found,
        asks=(*found.asks, *asks, *_asks(found)),
        learned_from=learned_from,
    )


def told_again(found: Gathered, prior: Prior) -> tuple[ToldAgain, ...]:
    """Each patch as all others tell it; none where there is only one."""
    if len(found.patches) < 2:
        return ()
    return tuple(_told(found, patch, prior) for patch in found.patches)


def _told(found: Gathered, patch: Patch, prior: Prior) -> ToldAgain:
    others = [one for one in found.patches if one is not patch]
    place = patch.seen.place
    rooms = () if place in {SAMPLES, FLOOR} else (place,)
    belief = believe(
        [one.seen for one in others], stains=len(found.stains), prior=prior, rooms=rooms
    )
    told = triple(foreseen(belief, [patch.seen.coats], place=place).mean(axis=0)[0])
    known = {coat.stain for one in others for coat in one.coats}
    alone = any(coat.stain not in known for coat in patch.coats)
    return ToldAgain(patch.name, patch.seen.lab, told, float(de2000(told, patch.seen.lab)), alone)


def _swatches(belief: Belief, found: Gathered, settled: SettledJob, asked: Asked) -> list[Swatch]:
    """The bare floor, doses of each sampled stain on it, and of a second colour over the first."""
    first = planned_coat(asked.plan, asked.plan.inputs.coats[0].id)
    laid: list[tuple[LaidCoat, ...]] = [()]
    for stain in found.stains:
        if not found.sampled(stain):
            continue
        m2_per_l = _m2_per_l(settled, stain)
        doses = [
            LaidCoat("", stain, f"1:{parts:g}", 1 / m2_per_l, "", "") for parts in SWATCH_PARTS
        ]
        laid += [(one,) for one in doses]
        if stain != first.stain and found.sampled(first.stain):
            laid += [(first, one) for one in doses]
    looks = foreseen(belief, [[one.dose(found.stains) for one in coats] for coats in laid])
    return [_swatch(coats, looks[:, n]) for n, coats in enumerate(laid)]


def _swatch(coats: tuple[LaidCoat, ...], looks: NDArray[np.float64]) -> Swatch:
    low, high = np.quantile(looks[:, 0], (0.1, 0.9))
    lab = triple(looks.mean(axis=0))
    if not coats:
        return Swatch("", "", 0.0, 0.0, (), lab, float(low), float(high))
    last = coats[-1]
    return Swatch(
        last.stain, last.cut, last.l_per_m2, last.stain_l_per_m2, coats[:-1], lab,
        float(low), float(high),
    )  # fmt: skip


def _m2_per_l(settled: SettledJob, stain: str) -> float:
    own = [one for one in settled.coats if one.stain.id == stain]
    return (own or list(settled.coats))[0].m2_per_l


def _unknown(belief: Belief, found: Gathered) -> Iterator[Between]:
    """Strength of each sampled stain, lime, and how the floor differs from the samples."""
    n = 3 * belief.stains
    best = belief.fits[int(np.argmax(belief.weights))]
    for number, stain in enumerate(found.stains):
        if found.sampled(stain):
            own = slice(3 * number, 3 * number + 3)
            spread = float(np.sqrt(best.spread[own, own].mean()))
            yield _between(f"strength of {stain}", "times the likely one", 0.0, spread)
    mean, spread = _weighed(belief, n)
    yield _between("lime", "L of stain on a square metre", mean, spread)
    mean, spread = _weighed(belief, n + 7)
    yield _between("thirst of the floor", "times that of the samples", mean, spread)


def _between(name: str, unit: str, mean: float, spread: float) -> Between:
    low, likely, high = np.exp([mean - _END * spread, mean, mean + _END * spread])
    return Between(name, unit, float(low), float(likely), float(high))


def _weighed(belief: Belief, at: int) -> tuple[float, float]:
    """Mean and standard deviation of a parameter over all forms, weighed."""
    pairs = [
        (weight, float(fit.middle[at]), float(fit.spread[at, at]))
        for fit, weight in zip(belief.fits, belief.weights, strict=True)
    ]
    mean = sum(weight * middle for weight, middle, _ in pairs)
    square = sum(weight * (own + (middle - mean) ** 2) for weight, middle, own in pairs)
    return mean, float(np.sqrt(square))


def _asks(found: Gathered) -> Sequence[Ask]:
    """What would tell more: a ladder of doses, the bare slab, the floor."""
    asks = []
    doses = {
        round(coat.stain_l_per_m2, 4)
        for one in found.patches if not one.of_floor for coat in one.coats
    }  # fmt: skip
    if len(doses) < 3:
        what = "Lay three dilutions side by side, weak, expected and strong: one dose says little."
        asks.append(Ask("ladder", what))
    if all(one.coats for one in found.patches):
        what = "Look at the bare slab clean and wet too: it fixes where the colour begins."
        asks.append(Ask("bare-look", what))
    if not found.pairs:
        what = "Seal a sample that was seen clean and wet and look at it again: the sealed look."
        asks.append(Ask("sealed-pair", what))
    return asks
