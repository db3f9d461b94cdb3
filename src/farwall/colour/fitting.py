"""One form fitted to all patches at once: damped Gauss-Newton steps on CIELAB, tied to a belief."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form, body_of_wet, depth_of_body
from farwall.colour.looks import HAIR, looks, patch_moves
from farwall.colour.nouns import AT_FLOOR, Told

Floats = NDArray[np.float64]
ROUNDS = 3
_MOST_STEPS, _CLOSE = 40, 1e-4


@dataclass(frozen=True)
class Task:
    """One form's least squares: what was told, with which weights, tied to which belief."""

    form: Form
    told: Told
    weight: Floats
    middle: Floats
    tied: Floats

    def off(self, theta: Floats) -> Floats:
        """What was seen less what these parameters show."""
        told = self.told
        seen = looks(self.form, theta[None], told.laid, told.stains, places=told.places)
        return told.labs - seen.reshape(-1)

    def worth(self, theta: Floats) -> float:
        """Square of how far off they are, weighed, with what ties them to the belief before."""
        off, moved = self.off(theta), theta - self.middle
        return float(off @ self.weight @ off + moved @ self.tied @ moved)

    def worths(self, theta: Floats) -> Floats:
        """The same of many rows at once."""
        told = self.told
        seen = looks(self.form, theta, told.laid, told.stains, places=told.places)
        off, moved = told.labs - seen.reshape(len(theta), -1), theta - self.middle
        return np.asarray(
            ((off @ self.weight) * off).sum(axis=1) + ((moved @ self.tied) * moved).sum(axis=1)
        )

    def slope(self, theta: Floats) -> Floats:
        """How all looks move with each parameter, by differences."""
        size, told = len(theta), self.told
        many = np.concatenate((theta + HAIR * np.eye(size), theta - HAIR * np.eye(size)))
        seen = looks(self.form, many, told.laid, told.stains, places=told.places)
        return np.asarray((seen[:size] - seen[size:]).reshape(size, -1).T / (2 * HAIR))


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
    theta, patchy, of = middle, 1.0, told.prior.patchy_of
    for _ in range(ROUNDS):
        # What blurs a patch depends on where the fit lies: fit, blur, fit again.
        moves = patch_moves(
            form, theta[None], told.laid, told.stains, places=told.places, prior=told.prior
        )
        patchy, of = patchiness(moves, told)
        noise = _noise(moves, told, patchy)
        task = Task(form, told, _inverse(noise), middle, tied)
        theta, slope = _least(task, theta)
    left = np.linalg.inv(slope.T @ task.weight @ slope + tied)
    constant = -0.5 * (
        task.worth(theta) + np.linalg.slogdet(noise)[1] + np.linalg.slogdet(spread)[1]
        - np.linalg.slogdet(left)[1]
    )  # fmt: skip
    return Normal(task, theta, (left + left.T) / 2, patchy, of, float(constant))


def patchiness(moves: tuple[Floats, Floats], told: Told) -> tuple[float, float]:
    """Square of how patchy the floor is against what is usual, and what stands behind it.

    Variances of several spots add up as a scaled inverse chi-squared belief has them.
    """
    of = told.prior.patchy_of
    several = ~np.isnan(told.spread_l) & (told.spots > 1) & (told.places >= AT_FLOOR)
    usual = sum(np.square(move[0, :, 0]) for move in moves) + told.prior.spot**2
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


def _noise(moves: tuple[Floats, Floats], told: Told, patchy: float) -> Floats:
    """Covariance of all that was seen: photo, spot, and the patch's own thirst and shade."""
    prior = told.prior
    found = np.kron(told.photo, np.diag(np.square(prior.photo)))
    for i, spots in enumerate(told.spots):
        at = slice(3 * i, 3 * i + 3)
        own = sum(np.outer(move[0, i], move[0, i]) for move in moves)
        found[at, at] += (np.eye(3) * prior.spot**2 + patchy * own) / spots
    return found


def _least(task: Task, theta: Floats) -> tuple[Floats, Floats]:
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
