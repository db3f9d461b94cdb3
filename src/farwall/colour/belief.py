"""What is believed of a slab's colour after its samples.

All forms of `colour.dose` are fitted to all patches at once (`colour.fitting`); what is left
unknown is drawn (`colour.posterior`), and the forms are weighed by their evidence.
A patch's own thirst and shade blur what it tells along its own dose and lightness; a photo's error
is shared by all that was taken in it. The floor is told as a change from the place of the samples,
a room as a change from the floor.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.colour.dose import FORMS
from farwall.colour.fitting import fit
from farwall.colour.nouns import FLOOR, SAMPLES, USUAL, Belief, Fit, Seen, told
from farwall.colour.posterior import pool
from farwall.colour.prior import Prior, Strength, Three

__all__ = ["FLOOR", "SAMPLES", "Belief", "Fit", "Prior", "Seen", "Strength", "believe", "learned"]

DRAWS = 512
"""Floors that are drawn to tell what may come."""


def believe(
    seen: Sequence[Seen], *, stains: int, prior: Prior = USUAL, rooms: Sequence[str] = ()
) -> Belief:
    """What the patches tell: at least one patch; doses above 0 and below 5 L/m².

    A patch that names no photo has one of its own. rooms: those that are asked of later whether or
    not they were seen; an unseen one differs from the floor as `prior` says.
    """
    given = told(seen, stains=stains, rooms=rooms, prior=prior)
    pools = [pool(fit(form, given)) for form in FORMS]
    best = max(one.evidence for one in pools)
    raw = [float(np.exp(one.evidence - best)) for one in pools]
    weights = tuple(one / sum(raw) for one in raw)
    fits = tuple(
        one.kept(round(DRAWS * weight)) for one, weight in zip(pools, weights, strict=True)
    )
    return Belief(stains, fits, weights, given.rooms, prior)


def learned(belief: Belief, stain: int) -> Strength:
    """How strong a job found that stain: what a library of closed jobs keeps of it.

    Middle by optics over the forms that have it, weighed; the spreads are those left about the
    likeliest form, never below 0.05.
    """
    own = slice(3 * stain, 3 * stain + 3)
    likeliest = belief.fits[int(np.argmax(belief.weights))]
    left = likeliest.spread[own, own]
    shared = max(float(left[~np.eye(3, dtype=bool)].mean()), 0.0)
    alone = max(float(np.diag(left).mean()) - shared, 0.0)
    return Strength(
        scattering=_middle(belief, "scattering", own),
        absorbing=_middle(belief, "absorbing", own),
        spread=max(0.05, shared**0.5),
        channel_spread=max(0.05, alone**0.5),
    )


def _middle(belief: Belief, optics: str, own: slice) -> Three:
    pairs = [
        (fit.middle[own], weight)
        for fit, weight in zip(belief.fits, belief.weights, strict=True)
        if fit.form.optics == optics
    ]
    # A hair of weight each, so that optics nobody believes in still say something.
    weights = np.array([weight + 1e-9 for _, weight in pairs])
    mean = np.average(np.array([middle for middle, _ in pairs]), axis=0, weights=weights)
    a, b, c = np.exp(mean)
    return float(a), float(b), float(c)
