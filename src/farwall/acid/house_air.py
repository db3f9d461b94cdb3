"""The air of a house while its floor is sprayed and dries: films and rooms, step by step together.

Many cases of one house are carried at once, for what is not known must be tried high and low.
Acid laid = given to the air + eaten by lime or drunk + left on the floor, in every case.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt

from farwall.acid.film import Fate, Standing, stepped
from farwall.acid.rooms import Rooms, Step, step_of
from farwall.acid.vapours import Vapours
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]
SOAKED_UP = 5.0
"""Water is held by air, board and furnishings together about five times as much as by the air
alone: a guess, the same as for the drying of the floor."""
_SPENT_MOL = 1e-6


@dataclass(frozen=True)
class Laid:
    """What is sprayed, patch by patch in order of time: P patches, S cases.

    room: (P,) index · at_min: (P,) when its spraying begins · spray_min: (P,) how long it takes ·
    m2: (P,) · on_m2: what a square metre gets, (S, P) · mist: (S,), share of the acid (0 to 1) that
    stays in the air as mist.
    """

    room: npt.NDArray[np.intp]
    at_min: Array
    spray_min: Array
    m2: Array
    on_m2: Standing
    mist: Array

    @property
    def acid_mol(self) -> Array:
        """All acid that is sprayed, by case. [mol]"""
        total: Array = (self.on_m2.acid_mol * self.m2).sum(axis=-1)
        return total


@dataclass(frozen=True)
class Near:
    """The one who sprays: floor within reach of the breath, air that passes there, (S,)."""

    m2: float
    passing_m3_min: Array


@dataclass(frozen=True)
class HouseAir:
    """What came of it: hydrogen chloride in mol/m³ at the ends of the steps, S cases, R rooms.

    held: (T+1, S, R) · by_person: (T+1, S), where somebody sprays, else 0 · released: (T, S, R),
    mol a minute · to_air_mol, eaten_mol, left_mol: (S,), whose sum is what was laid.
    """

    step_min: float
    held: Array
    by_person: Array
    released: Array
    to_air_mol: Array
    eaten_mol: Array
    left_mol: Array


def house_air(
    laid: Laid, fate: Fate, rooms: Rooms, vapours: Vapours, near: Near, *,
    outside_water_mol_m3: float, until_min: float, step_min: float = 1.0,
) -> HouseAir:  # fmt: skip
    """The house from minute 0 to `until_min`. Deterministic; no air is taken to move by itself.

    fate: arrays (S, P). outside_water_mol_m3: what the air that comes in holds of water.
    """
    steps = int(np.ceil(until_min / step_min))
    run = _Run(
        laid, fate, rooms, vapours, near=near, outside=outside_water_mol_m3, step_min=step_min,
        steps=steps,
    )  # fmt: skip
    for n in range(steps):
        run.step(n)
    left = (run.acid * laid.m2).sum(axis=-1)
    return HouseAir(step_min, run.held, run.by_person, run.released, run.to_air, run.eaten, left)


class _Run:
    """The state of a house while it is stepped; only `house_air` makes one."""

    def __init__(
        self, laid: Laid, fate: Fate, rooms: Rooms, vapours: Vapours, *,
        near: Near, outside: float, step_min: float, steps: int,
    ) -> None:  # fmt: skip
        self.laid, self.fate, self.vapours, self.near = laid, fate, vapours, near
        self.step_min, self.outside = step_min, outside
        damp = Rooms(rooms.volume_m3 * SOAKED_UP, rooms.out_m3_min, rooms.between_m3_min)
        self.hcl_step: Step = step_of(rooms, step_min)
        self.water_step: Step = step_of(damp, step_min)
        cases, patches = laid.on_m2.acid_mol.shape
        count = rooms.volume_m3.shape[-1]
        self.into = np.zeros((patches, count))
        self.into[np.arange(patches), laid.room] = laid.m2
        self.begins = np.floor((laid.at_min + laid.spray_min / 2) / step_min).astype(int)
        self.acid = laid.on_m2.acid_mol * (1 - laid.mist[:, None])
        self.water = laid.on_m2.water_kg.copy()
        self.chloride = laid.on_m2.chloride_mol.copy()
        self.mist = _mist_per_min(laid, step_min, steps, count)
        self.held = np.zeros((steps + 1, cases, count))
        self.damp = np.zeros((cases, count))
        self.released = np.zeros((steps, cases, count))
        self.by_person = np.zeros((steps + 1, cases))
        self.to_air, self.eaten = np.zeros(cases), np.zeros(cases)
        self.first = 0

    def step(self, n: int) -> None:
        """One step of films, then of rooms."""
        last = int(np.searchsorted(self.begins, n, side="right"))
        while self.first < last and self.acid[:, self.first].max() < _SPENT_MOL:
            self.first += 1
        freed, wet = self.mist[n], np.zeros_like(self.damp)
        fresh = np.zeros(len(freed))
        if self.first < last:
            film_freed, wet, fresh = self._films(slice(self.first, last), n)
            freed = freed + film_freed
        self.to_air += freed.sum(axis=-1) * self.step_min
        self.released[n] = freed
        self.held[n + 1] = self.hcl_step.after(self.held[n], freed)
        self.damp = self.water_step.after(self.damp, wet)
        self._breathed(n, fresh)

    def _films(self, those: slice, n: int) -> tuple[Array, Array, Array]:
        """What the films give rooms: acid and water, mol a minute; the newest, mol/(m²·min)."""
        rooms = self.laid.room[those]
        film, gone = stepped(
            Standing(self.water[:, those], self.acid[:, those], self.chloride[:, those]),
            Fate(
                self.fate.water_m_s[:, those], self.fate.open_min[:, those],
                self.fate.lime_half_min[:, those], self.fate.salts_count[:, those],
            ),
            self.vapours, self.step_min,
            hcl_mol_m3=self.held[n][:, rooms], water_mol_m3=self.outside + self.damp[:, rooms],
        )  # fmt: skip
        self.water[:, those], self.acid[:, those] = film.water_kg, film.acid_mol
        self.chloride[:, those] = film.chloride_mol
        self.eaten += (gone.eaten_mol * self.laid.m2[those]).sum(axis=-1)
        into = self.into[those] / self.step_min
        vapour_mol = gone.water_kg * (1000 / 18.015)
        return gone.to_air_mol @ into, vapour_mol @ into, gone.to_air_mol[:, -1] / self.step_min

    def _breathed(self, n: int, fresh: Array) -> None:
        """What the one who sprays breathes: the room, and over it what comes off close by."""
        at = (n + 0.5) * self.step_min
        going = (self.laid.at_min <= at) & (at < self.laid.at_min + self.laid.spray_min)
        if not going.any():
            return
        where = int(self.laid.room[np.argmax(going)])
        close = self.mist[n][:, where] + fresh * self.near.m2
        self.by_person[n + 1] = self.held[n + 1][:, where] + close / self.near.passing_m3_min


def _mist_per_min(laid: Laid, step_min: float, steps: int, rooms: int) -> Array:
    """Mist by step, case and room, mol a minute: even through the spraying of each patch."""
    ends = np.arange(steps + 1) * step_min
    ends_of = (laid.at_min + laid.spray_min)[:, None]
    shared = np.minimum(ends[None, 1:], ends_of) - np.maximum(ends[None, :-1], laid.at_min[:, None])
    share = np.maximum(shared, 0.0) / laid.spray_min[:, None]
    total = share.sum(axis=1, keepdims=True)
    share /= np.where(total > 0, total, 1.0)
    mol = laid.on_m2.acid_mol * laid.m2 * laid.mist[:, None]
    # A patch is sprayed within a step or a few: a product over all of them is mostly nothing, and
    # large enough to wake threads that then cost more than it does.
    per_step = np.zeros((steps, len(mol), rooms))
    for patch, room in enumerate(laid.room):
        within = np.flatnonzero(share[patch])
        per_step[within, :, room] += share[patch, within, None] * mol[None, :, patch]
    return per_step / step_min
