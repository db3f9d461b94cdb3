"""Whole jobs of one colour in houses whose rooms drink unlike each other, by outlook and by habit.

Samples in a closet, three to nine of them, by photos of unlike goodness; the first coat alike in
all rooms, judged where most is drunk, each later one room by room. The habit sees the same rooms.
Beside the jobs every decision is held to what would have come of other ways: said chance of too
dark against the share that came out too dark.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
from numpy.typing import NDArray

from farwall.bench.colour import (
    COST_OF_COAT,
    COST_TOO_DARK,
    DARK_RANGE,
    HABIT,
    HABIT_EYE,
    LIGHT_RANGE,
    MOST_COATS,
    WAYS,
    Steps,
)  # fmt: skip
from farwall.bench.colour_floors import PATCHES, Coat, Patches, bare_patches
from farwall.bench.colour_rooms import House, house
from farwall.colour.belief import Belief, Seen, believe
from farwall.colour.difference import de2000
from farwall.colour.dose import Laid
from farwall.colour.next_coat import NextCoat, Way, next_coat
from farwall.nouns import dataclass

Floats = NDArray[np.float64]

USUAL_ERROR = 0.4
"""L: the error of a photo that counts as usual; a target in the photo tells its own."""
SPOTS = 4
"""Spots of a room that are photographed after a coat, all rooms of a coat in one photo."""
LADDER: tuple[Steps, ...] = (
    ((0, 1.0, 0.2),), ((0, 3.0, 0.2),), ((0, 2.0, 0.2),), ((0, 4.0, 0.2),),
    ((0, 1.0, 0.2), (0, 2.0, 0.14)), ((0, 2.0, 0.2), (0, 2.0, 0.14)),
    ((0, 1.0, 0.2), (0, 1.0, 0.2)), ((0, 6.0, 0.2),),
)  # fmt: skip
HELD = WAYS[::3]
"""Ways that are tried beside the chosen one for the table of chances."""


@dataclass(frozen=True)
class Told:
    """A chance of too dark that was said of a room and a coat, and whether it came."""

    said: float
    came: bool


@dataclass(frozen=True)
class Room:
    """How a room ended: its area, too dark or not, lighter than the range by, coats, CIEDE2000.

    rank: its thirst among its rooms, 0 the most · said: chance that its last coat was said to have.
    """

    area_m2: float
    too_dark: bool
    light: float
    coats: int
    away: float
    rank: int
    said: float


@dataclass(frozen=True)
class HouseJob:
    """A house led by what is foreseen, and the same by the habit; all chances that were said."""

    ours: tuple[Room, ...]
    habit: tuple[Room, ...]
    told: tuple[Told, ...]


def house_job(seed: int, *, held: bool = True) -> HouseJob:
    """The job of that number, both ways. held: try other ways too, for the table of chances."""
    of, throws = house(seed), np.random.Generator(np.random.PCG64([seed, 78]))
    seen, wanted = _samples(of, throws)
    ours, told = _ours(of, seen, wanted, held=held)
    return HouseJob(ours, _habit(of, wanted), told)


def cost(rooms: Sequence[Room]) -> float:
    """What a house is charged: coats and lightness by area, an overlay for any room too dark."""
    area = np.array([one.area_m2 for one in rooms])
    each = np.array([COST_OF_COAT * one.coats + one.light for one in rooms])
    dark = any(one.too_dark for one in rooms)
    return float((area * each).sum() / area.sum() + COST_TOO_DARK * dark)


def _samples(of: House, throws: np.random.Generator) -> tuple[list[Seen], Floats]:
    """Bare, some of the ladder, and the approved sample, which is looked at twice."""
    count = int(throws.integers(2, 9))
    approved: Steps = (
        (0, (1.0, 2.0, 3.0)[throws.integers(3)], 0.2),
        (0, (1.0, 2.0, 4.0, 8.0)[throws.integers(4)], (0.2, 0.136)[throws.integers(2)]),
    )
    closet = replace(of.closet, camera=of.closet.camera * throws.uniform(0.6, 2.0))
    order, error = throws.permutation(PATCHES), throws.normal(0.0, closet.camera)
    made, wanted = [], np.zeros(3)
    for n, steps in enumerate(((), *LADDER[:count], approved)):
        patch = bare_patches(closet, order[n : n + 1])
        for stain, water, litres in steps:
            patch = patch.laid(Coat(stain, 1 / (1 + water), litres), throws)
        wanted = patch.wet()[0]
        lab = wanted + error + throws.normal(0.0, 0.25, 3)
        made.append(Seen(_laid(steps), _triple(lab), "samples", "samples"))
    again = wanted + throws.normal(0.0, closet.camera)
    blur = float(closet.camera[0]) / USUAL_ERROR
    made = [replace(one, blur=blur) for one in made]
    made.append(Seen(made[-1].coats, _triple(again), "samples", "approved", blur=blur))
    return made, wanted


@dataclass
class _Led:
    """A house in work: its rooms, what lies on each, what was said of the last coat there."""

    of: House
    wanted: Floats
    sample: Seen
    rooms: dict[str, Patches]
    coats: dict[str, tuple[Laid, ...]]
    said: dict[str, float]

    def asked(self, belief: Belief, group: tuple[str, ...], ways: Sequence[Way]) -> NextCoat:
        return next_coat(
            belief, self.coats[group[0]], ways, sample_lab=self.sample.lab, dark_range=DARK_RANGE,
            places=group, sample_blur=self.sample.blur,
        )  # fmt: skip


def _ours(
    of: House, seen: list[Seen], wanted: Floats, *, held: bool
) -> tuple[tuple[Room, ...], tuple[Told, ...]]:
    throws = np.random.Generator(np.random.PCG64([of.seed, 79]))
    rooms = {f"room {n}": bare_patches(one, np.arange(PATCHES)) for n, one in enumerate(of.rooms)}
    led = _Led(of, wanted, seen[-1], rooms, dict.fromkeys(rooms, ()), dict.fromkeys(rooms, 0.0))
    told = [*seen, *_looked(led, list(rooms), "bare", throws)]
    chances: list[Told] = []
    open_rooms = list(rooms)
    for turn in range(MOST_COATS):
        belief = believe(told, stains=1)
        groups = [tuple(open_rooms)] if turn == 0 else [(one,) for one in open_rooms]
        chances += [one for group in groups if held for one in _held(led, belief, group[0])]
        open_rooms = [one for group in groups for one in _coated(led, belief, group, throws)]
        if not open_rooms:
            break
        told += _looked(led, open_rooms, f"after {turn + 1}", throws)
    ended = [
        _ended(of, n, rooms[name], wanted, last=(len(led.coats[name]), led.said[name]))
        for n, name in enumerate(rooms)
    ]
    return tuple(ended), tuple(chances)


def _coated(
    led: _Led, belief: Belief, group: tuple[str, ...], throws: np.random.Generator
) -> tuple[str, ...]:
    """The rooms of a group that got the coat that was chosen for them: all or none."""
    answer = led.asked(belief, group, WAYS)
    way = answer.chosen.way
    if answer.verdict == "stop" or way is None:
        return ()
    for name in group:
        led.rooms[name] = led.rooms[name].laid(_coat(way), throws)
        led.coats[name], led.said[name] = (*led.coats[name], way.laid), answer.chosen.too_dark
    return group


def _held(led: _Led, belief: Belief, name: str) -> list[Told]:
    """Chances said of a room, and what would have come of each way there."""
    throws = np.random.Generator(np.random.PCG64([led.of.seed, 80, len(led.coats[name])]))
    return [
        Told(one.too_dark, _too_dark(led.rooms[name].laid(_coat(one.way), throws), led.wanted))
        for one in led.asked(belief, (name,), HELD).ways
        if one.way is not None
    ]


def _habit(of: House, wanted: Floats) -> tuple[Room, ...]:
    """Two of water to one of stain in every room, then look, room by room."""
    throws, ended = np.random.Generator(np.random.PCG64([of.seed, 81])), []
    for n, room in enumerate(of.rooms):
        patches, coats = bare_patches(room, np.arange(PATCHES)).laid(HABIT[0], throws), 1
        while coats < MOST_COATS:
            looks = patches.wet()[:, 0].mean() + throws.normal(0.0, HABIT_EYE)
            if looks <= wanted[0] + LIGHT_RANGE:
                break
            patches, coats = patches.laid(HABIT[1], throws), coats + 1
        ended.append(_ended(of, n, patches, wanted, last=(coats, 0.0)))
    return tuple(ended)


def _looked(led: _Led, names: list[str], photo: str, throws: np.random.Generator) -> list[Seen]:
    """Some spots of each of these rooms, all in one photo."""
    error = throws.normal(0.0, led.of.closet.camera)
    made = []
    for name in names:
        which = throws.permutation(PATCHES)[:SPOTS]
        labs = led.rooms[name].wet()[which] + error + throws.normal(0.0, 0.25, (SPOTS, 3))
        spread = float(labs[:, 0].std(ddof=1))
        made.append(Seen(led.coats[name], _triple(labs.mean(axis=0)), name, photo, SPOTS, spread))
    return made


def _ended(of: House, n: int, patches: Patches, wanted: Floats, *, last: tuple[int, float]) -> Room:
    """last: how many coats, and the chance that the last was said to have."""
    coats, said = last
    looks = patches.wet()
    rank = sum(one > of.thirst[n] for one in of.thirst)
    light = max(0.0, float(looks[:, 0].mean() - wanted[0]) - LIGHT_RANGE)
    away = float(de2000(looks.mean(axis=0), wanted))
    return Room(of.area_m2[n], _too_dark(patches, wanted), light, coats, away, rank, said)


def _too_dark(patches: Patches, wanted: Floats) -> bool:
    return bool(np.quantile(patches.wet()[:, 0], 0.05) < wanted[0] - DARK_RANGE)


def _coat(way: Way) -> Coat:
    return Coat(way.stain, 1 / (1 + way.water_parts), way.l_per_m2)


def _laid(steps: Steps) -> tuple[Laid, ...]:
    return tuple(Way(stain, water, litres).laid for stain, water, litres in steps)


def _triple(lab: Floats) -> tuple[float, float, float]:
    return float(lab[0]), float(lab[1]), float(lab[2])
