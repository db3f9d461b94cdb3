"""A photo as colours that can be compared: `read_colour_photo`."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from farwall.colour.ciede2000 import quick_de2000
from farwall.colour.lab import lab_of_xyz, triple
from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.readers.colour_photo.fit import (
    Fit,
    Seen,
    as_it_stands,
    balanced,
    best_fit,
    lie_of_paper,
)
from farwall.readers.colour_photo.found import (
    PAPER,
    PAPER_LAB,
    Found,
    Values,
    found_target,
    joined,
    own_beside,
    seen_paper,
    seen_patches,
)
from farwall.readers.colour_photo.markers import placed
from farwall.readers.colour_photo.nouns import ColourPhoto, PatchSeen, TargetSeen
from farwall.readers.colour_photo.opening import opened_colour
from farwall.readers.colour_photo.print_seen import print_seen
from farwall.readers.colour_photo.spoilt import NO_TARGET, NOT_MEASURED, spoilt
from farwall.readers.colour_photo.tube import SAID as TUBE
from farwall.readers.colour_photo.tube import narrow_bands
from farwall.readers.colour_photo.whole import lab_of_photo

Real = NDArray[np.float64]
_LEAST_KNOWN = 4


def read_colour_photo(data: bytes, *, own_values: Values | None = None) -> ColourPhoto:
    """The photo as CIELAB under D50, corrected by the target in it; without one, a guess.

    data: JPEG, PNG or HEIC · own_values: measured Lab by name of patch, of the print or target that
    was used. Our own sheet without them is balanced by its paper only and stays a guess. Raises
    Refused for what is no such picture, broken, too large or too small.
    """
    coded = opened_colour(data)
    found = found_target(coded.rgb, own_values)
    if found is None:
        lab = lab_of_photo(coded.rgb, as_it_stands())
        warnings: tuple[str, ...] = (NO_TARGET,)
        return ColourPhoto(lab, None, Rank.GUESS, coded.taken_at, warnings, coded.file_px)
    known = int(found.usable.sum()) >= _LEAST_KNOWN
    seen, fit, errors = _by_patches(found, own_values) if known else _by_paper(found)
    lie = _lie(seen, fit)
    lab = lab_of_photo(coded.rgb, fit, (_to_places(found), lie.slope, lie.zero))
    error = float(np.median(errors))
    told = spoilt(
        coded.rgb, found, slope=lie.slope, shadow=lie.shadow, error_de=error if known else 0.0
    )
    if known and narrow_bands(seen, fit, found):
        told = (TUBE, *told)
    target = replace(
        _told(found, replace(fit, lie=lie.slope)), error_de=error, worst_de=float(errors.max()),
        warnings=told if known else (*told, NOT_MEASURED),
    )  # fmt: skip
    rank = Rank.MEASURED if known else Rank.GUESS
    beside = own_beside(coded.rgb, found)
    prints = () if beside is None else print_seen(lab, beside)
    return ColourPhoto(lab, target, rank, coded.taken_at, (), coded.file_px, prints)


@dataclass(frozen=True)
class _Lie:
    """Slope of the light's logarithm by place, its value where it is 1, what no slope tells."""

    slope: Real
    zero: float
    shadow: float


def _lie(seen: Seen, fit: Fit) -> _Lie:
    if seen.paper is None:
        return _Lie(fit.lie, 0.0, 0.0)
    slope, shadow = lie_of_paper(seen, fit.tones)
    return _Lie(slope, float(seen.place.mean(axis=0) @ slope), shadow)


def _by_patches(found: Found, values: Values | None) -> tuple[Seen, Fit, Real]:
    seen = seen_patches(found, found.usable)
    if values and PAPER in values and found.patches.paper is not None:
        seen = joined(seen, seen_paper(found, values[PAPER], only_middle=True))
    fit, errors = best_fit(seen)
    return seen, fit, errors


def _by_paper(found: Found) -> tuple[Seen, Fit, Real]:
    """Balanced by the bare paper; what the greys then show, against what the printer was asked."""
    bare = seen_paper(found, PAPER_LAB)
    fit = balanced(bare)
    greys = np.array([one.grey for one in found.target.patches])
    seen = seen_patches(found, greys)
    errors = quick_de2000(lab_of_xyz(fit.xyz(fit.even(seen))), seen.lab)
    return bare, fit, errors


def _to_places(found: Found) -> Real:
    wide, high = found.target.size_mm
    half = wide / 2
    to_place = np.array([[1 / half, 0, -1], [0, 1 / half, -high / wide], [0, 0, 1.0]])
    return np.asarray(to_place @ np.linalg.inv(found.plane))


def _told(found: Found, fit: Fit) -> TargetSeen:
    """The target as it is seen, errors and warnings not told yet."""
    every = seen_patches(found, np.ones(len(found.target.patches), bool))
    labs = lab_of_xyz(fit.xyz(fit.even(every)))
    wide, high = found.target.size_mm
    corners = placed(found.plane, np.array([(0, 0), (wide, 0), (wide, high), (0, high)]))
    one, two, three, four = ((float(x), float(y)) for x, y in corners)
    patches = tuple(
        PatchSeen(patch.name, triple(np.array(patch.lab)), triple(lab))
        for patch, lab in zip(found.target.patches, labs, strict=True)
    )
    return TargetSeen(
        found.target.name, (one, two, three, four), patches, 0.0, 0.0,
        size_mm=found.target.size_mm if found.target.markers else None, correction=fit.mixing,
    )  # fmt: skip
