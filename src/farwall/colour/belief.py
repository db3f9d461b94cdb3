"""What is believed of a slab's colour after its samples.

All forms of `colour.dose` are fitted to all patches at once by damped Gauss-Newton steps on CIELAB;
what is left unknown is taken to be normal about the fit (Laplace), and the forms are weighed by
their evidence. A patch's own thirst and shade blur what it tells along its own dose and lightness;
a photo's error is shared by all that was taken in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import (
    FORMS,
    Form,
    Laid,
    Schedules,
    body_of_depth,
    body_of_wet,
    counted,
    depth_of_body,
    schedules,
    wet_of_body,
)

Floats = NDArray[np.float64]

STRENGTH, STRENGTH_SPREAD, CHANNEL_SPREAD = 10.0, 1.0, 0.8
"""Depth that a litre of stain on a square metre adds: middle, spread of all channels together and
of each by itself, as logarithms. A guess; a library of samples replaces it."""
LIME, LIME_SPREAD = 0.4, 0.8
"""M, litres of stain on a square metre, and its spread. A guess, kept after the tuning half."""
PLACE_SPREAD, SHADE_SPREAD = 0.12, 0.08
"""How the floor differs from the place of the samples: in thirst, in the slab's own depth."""
PATCH_THIRST, PATCH_SHADE = 0.13, 0.06
"""The same of patches of one place. All guesses, of the size of the trade's variegation."""
PHOTO = (0.4, 0.3, 0.35)
"""Error of a corrected photo in L, a, b, where it is good. A guess."""
SPOT = 0.3
PATCHY_OF = 5.0
"""Degrees of freedom behind the usual patchiness, before the floor was looked at. A guess."""
HAIR = 1e-4
_MOST_STEPS, _CLOSE = 40, 1e-6


@dataclass(frozen=True)
class Seen:
    """A patch as it was seen clean and wet: its coats so far, its Lab, where, in which photo.

    place: "samples" or "floor" · spots: over how many spots it is the mean · spread_l: standard
    deviation of L between those spots, where there are several.
    """

    coats: tuple[Laid, ...]
    lab: tuple[float, float, float]
    place: str = "samples"
    photo: str = ""
    spots: int = 1
    spread_l: float | None = None


@dataclass(frozen=True)
class Fit:
    """One form after the samples: parameters, what is left unknown of them, log evidence.

    The parameters: log strength of each stain by channel, log M, log depth of the bare slab at the
    samples by channel, its change to the floor by channel, change of thirst to the floor.
    """

    form: Form
    middle: Floats
    spread: Floats
    evidence: float


@dataclass(frozen=True)
class Belief:
    """All forms with their weights, 0 to 1; how patchy the floor is against what is usual.

    patchy, patchy_of: square of that ratio, likely, and degrees of freedom behind it.
    """

    stains: int
    fits: tuple[Fit, ...]
    weights: tuple[float, ...]
    patchy: float = 1.0
    patchy_of: float = PATCHY_OF


@dataclass(frozen=True)
class Told:
    """All that was seen, as arrays: schedules, which lie on the floor, Lab in a row, photos."""

    laid: Schedules
    on_floor: NDArray[np.bool_]
    labs: Floats
    spots: Floats
    same_photo: NDArray[np.bool_]
    stains: int


def believe(seen: Sequence[Seen], *, stains: int) -> Belief:
    """What the patches tell: at least one patch; doses above 0 and below 5 L/m².

    A patch that names no photo has one of its own.
    """
    told = _told(seen, stains)
    fits = tuple(_fit(form, told) for form in FORMS)
    best = max(one.evidence for one in fits)
    raw = [float(np.exp(one.evidence - best)) for one in fits]
    patchy, of = _patchiness(fits[int(np.argmax(raw))], seen, stains)
    return Belief(stains, fits, tuple(one / sum(raw) for one in raw), patchy, of)


def looks(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, on_floor: NDArray[np.bool_],
    thirst: float = 0.0,
) -> Floats:  # fmt: skip
    """Lab of patches under rows of parameters: (rows, patches, 3). thirst: log factor of doses."""
    n = 3 * stains
    strength = np.exp(theta[:, :n]).reshape(len(theta), stains, 3)
    floor = on_floor[None, :, None]
    bare = theta[:, None, n + 1 : n + 4] + np.where(floor, theta[:, None, n + 4 : n + 7], 0.0)
    factor = np.exp(thirst + np.where(on_floor[None], theta[:, n + 7, None], 0.0))
    counts = counted(form, laid, stains, factor=factor, lime=np.exp(theta[:, n, None]))
    depth = np.exp(bare) + np.einsum("pns,psc->pnc", counts, strength)
    return wet_of_body(body_of_depth(depth, form))


def patch_moves(
    form: Form, theta: Floats, laid: Schedules, stains: int, *, on_floor: NDArray[np.bool_]
) -> tuple[Floats, Floats]:
    """By how much Lab of a patch moves with one spread of its thirst, and of its shade."""
    n = 3 * stains
    usual = looks(form, theta, laid, stains, on_floor=on_floor)
    thirsty = looks(form, theta, laid, stains, on_floor=on_floor, thirst=HAIR)
    shaded = theta.copy()
    shaded[:, n + 1 : n + 4] += HAIR
    dark = looks(form, shaded, laid, stains, on_floor=on_floor)
    return (thirsty - usual) / HAIR * PATCH_THIRST, (dark - usual) / HAIR * PATCH_SHADE


def _told(seen: Sequence[Seen], stains: int) -> Told:
    photos = [one.photo or f"alone {n}" for n, one in enumerate(seen)]
    return Told(
        laid=schedules([one.coats for one in seen]),
        on_floor=np.array([one.place == "floor" for one in seen]),
        labs=np.array([one.lab for one in seen], dtype=np.float64).reshape(-1),
        spots=np.array([float(one.spots) for one in seen]),
        same_photo=np.array([[one == other for other in photos] for one in photos]),
        stains=stains,
    )


def _patchiness(fit: Fit, seen: Sequence[Seen], stains: int) -> tuple[float, float]:
    """Square of how patchy the floor is against what is usual, and what stands behind it.

    Variances of several spots add up as a scaled inverse chi-squared belief has them.
    """
    total, of = PATCHY_OF, PATCHY_OF
    for one in seen:
        if one.spread_l is not None and one.spots > 1 and one.place == "floor":
            moves = patch_moves(
                fit.form, fit.middle[None], schedules([one.coats]), stains,
                on_floor=np.array([True]),
            )  # fmt: skip
            usual = sum(float(move[0, 0, 0]) ** 2 for move in moves) + SPOT**2
            total += (one.spots - 1) * one.spread_l**2 / usual
            of += one.spots - 1
    return float(total / of), of


def _prior(form: Form, told: Told) -> tuple[Floats, Floats]:
    """Middle and covariance before anything was seen; the bare slab about what looks barest."""
    labs, stains = told.labs.reshape(-1, 3), told.stains
    barest = depth_of_body(body_of_wet(labs[int(np.argmax(labs[:, 0]))]), form)
    n = 3 * stains
    middle = np.array([*[np.log(STRENGTH)] * n, np.log(LIME), *np.log(barest), 0, 0, 0, 0])
    spread = np.zeros((len(middle), len(middle)))
    for stain in range(stains):
        own = slice(3 * stain, 3 * stain + 3)
        spread[own, own] = STRENGTH_SPREAD**2 + np.eye(3) * CHANNEL_SPREAD**2
    spread[n, n] = LIME_SPREAD**2
    spread[n + 1 : n + 4, n + 1 : n + 4] = np.eye(3) * 0.3**2 + 0.3**2
    spread[n + 4 : n + 7, n + 4 : n + 7] = SHADE_SPREAD**2 + np.eye(3) * 0.02**2
    spread[n + 7, n + 7] = PLACE_SPREAD**2
    return middle, spread


def _noise(form: Form, theta: Floats, told: Told) -> Floats:
    """Covariance of all that was seen: photo, spot, and the patch's own thirst and shade."""
    found = np.kron(told.same_photo.astype(np.float64), np.diag(np.square(PHOTO)))
    moves = patch_moves(form, theta[None], told.laid, told.stains, on_floor=told.on_floor)
    for i, spots in enumerate(told.spots):
        at = slice(3 * i, 3 * i + 3)
        own = [np.outer(move[0, i], move[0, i]) for move in moves]
        found[at, at] += (np.eye(3) * SPOT**2 + sum(own)) / spots
    return found


@dataclass(frozen=True)
class _Task:
    """One form's least squares: what was told, with which weights, tied to which belief."""

    form: Form
    told: Told
    weight: Floats
    middle: Floats
    tied: Floats

    def off(self, theta: Floats) -> Floats:
        seen = looks(
            self.form, theta[None], self.told.laid, self.told.stains, on_floor=self.told.on_floor
        )
        return self.told.labs - seen.reshape(-1)

    def worth(self, theta: Floats) -> float:
        off, moved = self.off(theta), theta - self.middle
        return float(off @ self.weight @ off + moved @ self.tied @ moved)

    def slope(self, theta: Floats) -> Floats:
        """How all looks move with each parameter, by differences."""
        size, told = len(theta), self.told
        many = np.concatenate((theta + HAIR * np.eye(size), theta - HAIR * np.eye(size)))
        seen = looks(self.form, many, told.laid, told.stains, on_floor=told.on_floor)
        return np.asarray((seen[:size] - seen[size:]).reshape(size, -1).T / (2 * HAIR))


def _fit(form: Form, told: Told) -> Fit:
    middle, spread = _prior(form, told)
    tied = _inverse(spread)
    theta = middle
    for _ in range(3):
        # What blurs a patch depends on where the fit lies: fit, blur, fit again.
        noise = _noise(form, theta, told)
        task = _Task(form, told, _inverse(noise), middle, tied)
        theta, slope = _least(task, theta)
    left = np.linalg.inv(slope.T @ task.weight @ slope + tied)
    evidence = -0.5 * (
        task.worth(theta) + np.linalg.slogdet(noise)[1] + np.linalg.slogdet(spread)[1]
        - np.linalg.slogdet(left)[1]
    )  # fmt: skip
    return Fit(form, theta, (left + left.T) / 2, float(evidence))


def _least(task: _Task, theta: Floats) -> tuple[Floats, Floats]:
    """Damped Gauss-Newton steps to the least; the parameters, and the slope there."""
    damp, worth, slope = 1e-2, task.worth(theta), task.slope(theta)
    for _ in range(_MOST_STEPS):
        inner = slope.T @ task.weight @ slope + task.tied
        pull = slope.T @ task.weight @ task.off(theta) - task.tied @ (theta - task.middle)
        move = np.linalg.solve(inner + damp * np.diag(np.diag(inner)), pull)
        tried = task.worth(theta + move)
        if tried > worth:
            damp *= 4
            if damp > 1e6:
                break
            continue
        theta, damp, gained, worth = theta + move, damp / 4, worth - tried, tried
        slope = task.slope(theta)
        if gained < _CLOSE:
            break
    return theta, slope


def _inverse(matrix: Floats) -> Floats:
    return np.asarray(np.linalg.inv(matrix), dtype=np.float64)
