"""One form fitted to all patches at once: damped Gauss-Newton steps on CIELAB, tied to a belief."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form, body_of_wet, depth_of_body
from farwall.colour.looks import HAIR, looks, patch_moves
from farwall.colour.nouns import Fit, Told

Floats = NDArray[np.float64]
_MOST_STEPS, _CLOSE = 40, 1e-6


def fit(form: Form, told: Told) -> Fit:
    """The form after what was seen."""
    middle, spread = before(form, told)
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


def before(form: Form, told: Told) -> tuple[Floats, Floats]:
    """Middle and covariance before anything was seen; the bare slab about what looks barest."""
    prior, stains, rooms = told.prior, told.stains, len(told.rooms)
    labs = told.labs.reshape(-1, 3)
    barest = depth_of_body(body_of_wet(labs[int(np.argmax(labs[:, 0]))]), form)
    n = 3 * stains
    strengths = [prior.strength(stain) for stain in range(stains)]
    logs = [np.log(getattr(one, form.optics)) for one in strengths]
    middle = np.concatenate((*logs, [np.log(prior.lime)], np.log(barest), np.zeros(4 + 2 * rooms)))
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
    return middle, spread


def _noise(form: Form, theta: Floats, told: Told) -> Floats:
    """Covariance of all that was seen: photo, spot, and the patch's own thirst and shade."""
    prior = told.prior
    found = np.kron(told.photo, np.diag(np.square(prior.photo)))
    moves = patch_moves(form, theta[None], told.laid, told.stains, places=told.places, prior=prior)
    for i, spots in enumerate(told.spots):
        at = slice(3 * i, 3 * i + 3)
        own = [np.outer(move[0, i], move[0, i]) for move in moves]
        found[at, at] += (np.eye(3) * prior.spot**2 + sum(own)) / spots
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
        told = self.told
        seen = looks(self.form, theta[None], told.laid, told.stains, places=told.places)
        return told.labs - seen.reshape(-1)

    def worth(self, theta: Floats) -> float:
        off, moved = self.off(theta), theta - self.middle
        return float(off @ self.weight @ off + moved @ self.tied @ moved)

    def slope(self, theta: Floats) -> Floats:
        """How all looks move with each parameter, by differences."""
        size, told = len(theta), self.told
        many = np.concatenate((theta + HAIR * np.eye(size), theta - HAIR * np.eye(size)))
        seen = looks(self.form, many, told.laid, told.stains, places=told.places)
        return np.asarray((seen[:size] - seen[size:]).reshape(size, -1).T / (2 * HAIR))


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
