"""One form fitted to all patches at once: damped Gauss-Newton steps on CIELAB, tied to a belief."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form, body_of_wet, depth_of_body
from farwall.colour.looks import looks, parts_of
from farwall.colour.noise import noise_of
from farwall.colour.nouns import AT_FLOOR, Told
from farwall.colour.slopes import Around, around
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
ROUNDS = (0.05, 0.05, 1e-3)
"""In each round of fit and blur: by how little a step must better the fit to be the last."""
_MOST_STEPS = 40


@dataclass(frozen=True)
class Task:
    """One form's least squares: what was told, with which weights, tied to which belief."""

    form: Form
    told: Told
    weight: Floats
    middle: Floats
    tied: Floats

    def worth(self, at: Around) -> float:
        """Square of how far off they are, weighed, with what ties them to the belief before."""
        moved = at.theta - self.middle
        return float(at.off @ self.weight @ at.off + moved @ self.tied @ moved)

    def worths(self, theta: Floats) -> Floats:
        """The same of many rows."""
        parts = parts_of(len(theta), len(self.told.places))
        return np.concatenate([self._worths(theta[one]) for one in parts])

    def _worths(self, theta: Floats) -> Floats:
        told = self.told
        seen = looks(self.form, theta, told.laid, told.stains, places=told.places)
        off, moved = told.labs - seen.reshape(len(theta), -1), theta - self.middle
        return np.asarray(
            ((off @ self.weight) * off).sum(axis=1) + ((moved @ self.tied) * moved).sum(axis=1)
        )


@dataclass(frozen=True)
class Normal:
    """One form's likeliest parameters and the normal about them (Laplace).

    patchy, patchy_of: square of how patchy the floor is against what is usual, likely, and degrees
    of freedom behind it · constant: log evidence but for the parameters.
    """

    task: Task
    middle: Floats
    spread: Floats
    patchy: float
    patchy_of: float
    constant: float


def fit(form: Form, told: Told) -> Normal:
    """The form after what was seen."""
    middle, spread = before(form, told)
    tied = _inverse(spread)
    at, patchy, of = around(form, middle, told), 1.0, told.prior.patchy_of
    for close in ROUNDS:
        # What blurs a patch depends on where the fit lies: fit, blur, fit again.
        thirst, shade = at.thirst * told.prior.patch_thirst, at.shade * told.prior.patch_shade
        patchy, of = patchiness((thirst, shade), told)
        noise = noise_of(_own(thirst, shade, told, patchy), told)
        task = Task(form, told, noise.weight, middle, tied)
        at = _least(task, at, close)
    left = np.linalg.inv(at.slope.T @ task.weight @ at.slope + tied)
    constant = -0.5 * (
        task.worth(at) + noise.log_size + np.linalg.slogdet(spread)[1]
        - np.linalg.slogdet(left)[1]
    )  # fmt: skip
    return Normal(task, at.theta, (left + left.T) / 2, patchy, of, float(constant))


def patchiness(moves: tuple[Floats, Floats], told: Told) -> tuple[float, float]:
    """Square of how patchy the floor is against what is usual, and what stands behind it.

    Variances of several spots add up as a scaled inverse chi-squared belief has them.
    """
    of = told.prior.patchy_of
    several = ~np.isnan(told.spread_l) & (told.spots > 1) & (told.places >= AT_FLOOR)
    usual = sum(np.square(move[:, 0]) for move in moves) + told.prior.spot**2
    more = np.where(several, told.spots - 1, 0.0)
    total = of + float((more * np.where(several, told.spread_l, 0.0) ** 2 / usual).sum())
    return total / (of + float(more.sum())), of + float(more.sum())


def before(form: Form, told: Told) -> tuple[Floats, Floats]:
    """Middle and covariance before anything was seen; the bare slab about what looks barest."""
    prior, stains, rooms = told.prior, told.stains, len(told.rooms)
    labs = told.labs.reshape(-1, 3)
    barest = depth_of_body(body_of_wet(labs[int(np.argmax(labs[:, 0]))]), form)
    n = 3 * stains
    strengths = [prior.strength(stain) for stain in range(stains)]
    logs = [np.log(getattr(one, form.optics)) for one in strengths]
    rest = np.zeros(3 + 2 * rooms + stains + 3 * (stains > 1))
    middle = np.concatenate((*logs, [np.log(prior.lime)], np.log(barest), rest))
    spread = np.zeros((len(middle), len(middle)))
    for stain, one in enumerate(strengths):
        own = slice(3 * stain, 3 * stain + 3)
        spread[own, own] = one.spread**2 + np.eye(3) * one.channel_spread**2
    spread[n, n] = prior.lime_spread**2
    spread[n + 1 : n + 4, n + 1 : n + 4] = np.eye(3) * 0.3**2 + 0.3**2
    spread[n + 4 : n + 7, n + 4 : n + 7] = prior.place_shade**2 + np.eye(3) * 0.02**2
    spread[n + 7, n + 7] = prior.place_thirst**2
    thirsts, shades = slice(n + 8, n + 8 + rooms), slice(n + 8 + rooms, n + 8 + 2 * rooms)
    spread[thirsts, thirsts] = np.eye(rooms) * prior.room_thirst**2
    spread[shades, shades] = np.eye(rooms) * prior.room_shade**2
    last = n + 8 + 2 * rooms
    appetites, meets = slice(last, last + stains - 1), slice(last + stains - 1, len(middle))
    spread[appetites, appetites] = np.eye(stains - 1) * prior.takes_spread**2
    spread[meets, meets] = np.eye(len(middle) - meets.start) * prior.meets_spread**2
    return middle, spread


def _own(thirst: Floats, shade: Floats, told: Told, patchy: float) -> Floats:
    """Covariance of each patch by itself: spot, thirst and shade, less where more spots tell it."""
    moved = np.stack((thirst, shade))
    own = np.einsum("kpi,kpj->pij", moved, moved)
    return np.asarray((np.eye(3) * told.prior.spot**2 + patchy * own) / told.spots[:, None, None])


def _least(task: Task, at: Around, close: float) -> Around:
    """Damped Gauss-Newton steps to the least."""
    damp, worth = 1e-2, task.worth(at)
    inner, pull = _normal(task, at)
    for _ in range(_MOST_STEPS):
        move = np.linalg.solve(inner + damp * np.diag(np.diag(inner)), pull)
        there = around(task.form, at.theta + move, task.told)
        tried = task.worth(there)
        if tried > worth:
            damp *= 4
            if damp > 1e6:
                break
            continue
        at, damp, gained, worth = there, damp / 4, worth - tried, tried
        if gained < close:
            break
        inner, pull = _normal(task, at)
    return at


def _normal(task: Task, at: Around) -> tuple[Floats, Floats]:
    """Both sides of the step's equations."""
    weighed = at.slope.T @ task.weight
    pull = weighed @ at.off - task.tied @ (at.theta - task.middle)
    return np.asarray(weighed @ at.slope + task.tied), np.asarray(pull)


def _inverse(matrix: Floats) -> Floats:
    return np.asarray(np.linalg.inv(matrix), dtype=np.float64)
