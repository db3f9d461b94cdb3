"""From dose to colour: two forms of how stain darkens a slab, with lime that runs out.

What a litre of stain on a square metre leaves in sight is bound by lime, so that each coat adds
less: after a dose D in all, M·(1 - exp(-D/M)) of it counts where every drop takes its share of the
lime that is left, and D/(1 + (D/M)³)^⅓ where all is bound until the lime comes to its end. In the
forms `scattering` the bound metal adds to K/S of the slab ([curtis-1997], after Kubelka and Munk),
in the forms `absorbing` to its optical depth (Beer and Lambert). None is the truth of a floor;
`colour.belief` weighs them by what the samples say. The wet face of a slab is taken off first
([saunderson-1942]).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from farwall.colour.channels import (
    LEAST,
    channels_of_lab,
    lab_of_channels,
    lightness_of_channels,
)
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
Optics = Literal["scattering", "absorbing"]
Lime = Literal["by share", "to its end"]


@dataclass(frozen=True)
class Form:
    """One of the forms: how metal darkens, how lime runs out."""

    optics: Optics
    lime: Lime


FORMS: tuple[Form, ...] = (
    Form("scattering", "by share"), Form("scattering", "to its end"),
    Form("absorbing", "by share"), Form("absorbing", "to its end"),
)  # fmt: skip

OUTER, INNER = 0.02, 0.47
"""Share thrown back by a wet face, from outside and, diffuse, from inside [saunderson-1942]: those
of water, from memory."""


@dataclass(frozen=True)
class Laid:
    """A coat on a patch: number of the stain, litres of stain (not of mix) on a square metre."""

    stain: int
    l_per_m2: float


def body_of_wet(lab: Floats) -> Floats:
    """Reflectance of the slab's body under its wet face, by channel."""
    seen = np.clip(channels_of_lab(lab), LEAST, 0.999)
    return np.asarray(seen / ((1 - OUTER) * (1 - INNER) + INNER * seen))


def wet_of_body(body: Floats) -> Floats:
    """Lab of the clean wet look of a body."""
    return lab_of_channels(_wet(body))


def wet_lightness_of_body(body: Floats) -> Floats:
    """L alone of it, without the last axis."""
    return lightness_of_channels(_wet(body))


def _wet(body: Floats) -> Floats:
    return np.asarray((1 - OUTER) * (1 - INNER) * body / (1 - INNER * body))


def depth_of_body(body: Floats, form: Form) -> Floats:
    """What adds up coat by coat: K/S, or the optical depth."""
    if form.optics == "scattering":
        return np.asarray((1 - body) ** 2 / (2 * body))
    return np.asarray(-np.log(body))


def body_of_depth(depth: Floats, form: Form) -> Floats:
    """The way back."""
    if form.optics == "scattering":
        return np.asarray(1 / (1 + depth + np.sqrt(depth**2 + 2 * depth)))
    return np.asarray(np.exp(-depth))


@dataclass(frozen=True)
class Schedules:
    """What was laid on some patches: litres of stain by patch and coat, and which stain it was.

    Patches with fewer coats than others hold nothing in the places that are left.
    """

    l_per_m2: Floats
    stain: NDArray[np.intp]


def schedules(patches: Sequence[Sequence[Laid]]) -> Schedules:
    """Those of several patches side by side."""
    most = max((len(one) for one in patches), default=0)
    laid = np.zeros((len(patches), most))
    stain = np.zeros((len(patches), most), dtype=np.intp)
    for n, coats in enumerate(patches):
        for k, coat in enumerate(coats):
            laid[n, k], stain[n, k] = coat.l_per_m2, coat.stain
    return Schedules(laid, stain)


def counted(
    form: Form, laid: Schedules, stains: int, *, factor: Floats, lime: Floats,
    takes: Floats | None = None,
) -> Floats:  # fmt: skip
    """Dose that counts by stain, L/m²: (rows, patches, stains); all coats draw on one lime.

    factor: of each dose, for thirst and hand, (rows, patches) · lime: M, litres of the first stain
    on a square metre, (rows, 1) · takes: lime that a litre of each stain takes against a litre of
    the first, (rows, stains); all alike where nobody says.
    """
    if stains == 1:
        # What each coat adds is not asked: only all of them together.
        return _bound(form, laid.l_per_m2.sum(axis=1) * factor, lime)[..., None]
    found = np.zeros((stains, *factor.shape))
    after, bound = np.zeros((1, factor.shape[1])), np.zeros(1)
    for litres, stain in zip(laid.l_per_m2.T, laid.stain.T, strict=True):
        appetite = 1.0 if takes is None else takes[:, stain]
        after = after + litres * appetite
        before, bound = bound, _bound(form, after * factor, lime)
        each = (bound - before) / appetite
        for one in range(stains):
            found[one] += each * (stain == one)
    return np.moveaxis(found, 0, -1)


def _bound(form: Form, laid: Floats, lime: Floats) -> Floats:
    if form.lime == "to its end":
        return np.asarray(laid / np.cbrt(1 + (laid / lime) ** 3))
    return np.asarray(-lime * np.expm1(-laid / lime))
