"""What was seen of a slab's colour, and what is believed of it after that."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from farwall.colour.dose import Form, Laid, Schedules, schedules
from farwall.colour.prior import Prior
from farwall.nouns import dataclass

Floats = NDArray[np.float64]
USUAL = Prior()
Places = NDArray[np.intp]

SAMPLES, FLOOR = "samples", "floor"
AT_SAMPLES, AT_FLOOR = -1, 0
"""Numbers of places; rooms count from 1."""


@dataclass(frozen=True)
class Seen:
    """A patch as it was seen clean and wet: its coats so far, its Lab, where, in which photo.

    place: "samples", "floor" (a mean over it), or the id of a room · spots: over how many spots it
    is the mean · spread_l: standard deviation of L between those spots, where there are several ·
    blur: how many times the usual error of a corrected photo, above 0.
    """

    coats: tuple[Laid, ...]
    lab: tuple[float, float, float]
    place: str = SAMPLES
    photo: str = ""
    spots: int = 1
    spread_l: float | None = None
    blur: float = 1.0


@dataclass(frozen=True)
class Fit:
    """One form after the samples: parameters, what is left unknown of them, log evidence.

    drawn: rows of parameters, as likely one as the other, (rows, parameters) · scale: how patchy
    the floor is against what is usual, one for each of these rows.

    The parameters: log strength of each stain by channel, log M, log depth of the bare slab at the
    samples by channel, its change to the floor by channel, change of thirst to the floor; then for
    each room its change of thirst from the floor, for each room its change of log depth, and for
    each stain but the first the log of how much lime a litre of it takes against the first; with
    more than one stain, by channel, what two colours add to each other where both lie
    (`looks.meeting`).
    """

    form: Form
    middle: Floats
    spread: Floats
    evidence: float
    drawn: Floats
    scale: Floats


@dataclass(frozen=True)
class Belief:
    """All forms with their weights, 0 to 1; rooms: those that are known by name, seen or not.

    A form's share of all rows that are drawn is its weight.
    """

    stains: int
    fits: tuple[Fit, ...]
    weights: tuple[float, ...]
    rooms: tuple[str, ...] = ()
    prior: Prior = USUAL

    def place(self, name: str) -> int:
        """Number of "samples", "floor" or a room. Raises ValueError where it is none of them."""
        return number_of(name, self.rooms)


@dataclass(frozen=True)
class Told:
    """All that was seen, as arrays: schedules, places, Lab in a row, spots and how they differ.

    spread_l: not a number where nobody told · photos: number of the photo of each, from 0 · blur:
    times the usual error of a corrected photo.
    """

    laid: Schedules
    places: Places
    labs: Floats
    spots: Floats
    spread_l: Floats
    photos: Places
    blur: Floats
    stains: int
    rooms: tuple[str, ...]
    prior: Prior


def number_of(name: str, rooms: Sequence[str]) -> int:
    """Number of a place. Raises ValueError where nobody named it."""
    if name == SAMPLES:
        return AT_SAMPLES
    if name == FLOOR:
        return AT_FLOOR
    if name not in rooms:
        raise ValueError(f"the room “{name}” was neither seen nor named; give it in rooms=")
    return rooms.index(name) + 1


def told(seen: Sequence[Seen], *, stains: int, rooms: Sequence[str], prior: Prior) -> Told:
    """What was seen as arrays; rooms in the order in which they were named, then seen."""
    named = [one.place for one in seen if one.place not in {SAMPLES, FLOOR}]
    known = tuple(dict.fromkeys((*rooms, *named)))
    photos = [(one.photo, -1) if one.photo else ("", n) for n, one in enumerate(seen)]
    numbers = {photo: n for n, photo in enumerate(dict.fromkeys(photos))}
    return Told(
        laid=schedules([one.coats for one in seen]),
        places=np.array([number_of(one.place, known) for one in seen], dtype=np.intp),
        labs=np.array([one.lab for one in seen], dtype=np.float64).reshape(-1),
        spots=np.array([float(one.spots) for one in seen]),
        spread_l=np.array([np.nan if one.spread_l is None else one.spread_l for one in seen]),
        photos=np.array([numbers[one] for one in photos], dtype=np.intp),
        blur=np.array([one.blur for one in seen], dtype=np.float64),
        stains=stains,
        rooms=known,
        prior=prior,
    )
