"""When the invented floors really dry: another physics than that of the clocks, many at a time.

- The slab: explicit steps of five minutes through cells of three centimetres,
  concrete over a bed over soil, the ground kept at its warmth below.
- Leaving water: heat and mass transfer alike (Lewis relation), still and
  moving air joined by their cubes, gusts hour by hour, the film cooled by what
  leaves it.
- Suction: the square root of time, not a steady uptake.
- Drying: a first stretch at full rate, then one that falls with what is left,
  and a part of the water that never needs to leave.
- Dry-down: a front that sinks into the slab and grows its own resistance.

Relations from memory, sizes set once so that a mild day lands near what
finishers say (two hours between coats, a day of dry-down). A bench's truth
only: nothing here is for a job.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import numpy.typing as npt

from farwall.bench.floors_drawn import AFTER_H, BEFORE_H, Floor
from farwall.nouns import dataclass

Array = npt.NDArray[np.float64]

STEP_S = 300.0
_STEPS_AN_HOUR = 12
_CELL_M, _CELLS = 0.03, 30
_NEVER = np.inf


@dataclass(frozen=True)
class Truth:
    """Minutes, one row a floor; `room` is what is foretold, `closet` what was watched."""

    open_time: tuple[Array, Array]
    recoat: tuple[Array, Array]
    neutralise: tuple[Array, Array]
    dry_down: tuple[Array, Array]
    sealer: tuple[Array, Array]
    slab_c: Array
    """Surface at each hour from `BEFORE_H` before the first stroke, a row a floor."""


def truth_of(floors: Sequence[Floor]) -> tuple[Truth, tuple[Floor, ...]]:
    """What happens on these floors, and the floors with the infrared reading filled in."""
    slab_c = _slab(floors)
    both = [_Place(floors, slab_c, 0), _Place(floors, slab_c, 1)]
    coat = [(place.dry(0, 1.0), place.dry(1, 0.7)) for place in both]
    salt = _of(floors, "salt_factor")
    truth = Truth(
        open_time=(both[0].open_time(), both[1].open_time()),
        recoat=(coat[0][0], coat[1][0]),
        neutralise=(coat[0][1] * salt, coat[1][1] * salt),
        dry_down=(both[0].dry_down(), both[1].dry_down()),
        sealer=(both[0].sealer(), both[1].sealer()),
        slab_c=slab_c[:, ::_STEPS_AN_HOUR],
    )
    filled = tuple(
        replace(
            floor,
            known=replace(
                floor.known,
                slab_c=float(truth.slab_c[n, BEFORE_H]) + floor.true.reading_error_c,
            ),
        )
        for n, floor in enumerate(floors)
    )
    return truth, filled


def _of(floors: Sequence[Floor], name: str) -> Array:
    return np.array([getattr(one.true, name) for one in floors], dtype=float)


def _slab(floors: Sequence[Floor]) -> Array:
    """Surface of the slab at each step, a row a floor. [°C]"""
    air = _of(floors, "air_c")
    depth = (np.arange(_CELLS) + 0.5) * _CELL_M
    thick = _of(floors, "concrete_m")[:, None]
    w_mk = np.where(
        depth < thick, _of(floors, "concrete_w_mk")[:, None], _of(floors, "bed_w_mk")[:, None]
    )
    heat = np.where(depth < thick, 2.1e6, 1.8e6) * _CELL_M
    between = 2 / (_CELL_M / w_mk[:, 1:] + _CELL_M / w_mk[:, :-1])
    to_air = 1 / (1 / _of(floors, "surface_w_m2k") + _CELL_M / 2 / w_mk[:, 0])
    ground = _of(floors, "ground_c")
    mean = air[:, :BEFORE_H].mean(axis=1)
    cells = mean[:, None] + (ground - mean)[:, None] * (depth / depth[-1])
    told = np.empty((len(floors), air.shape[1] * _STEPS_AN_HOUR))
    to_ground = 2 * w_mk[:, -1] / _CELL_M
    for n in range(told.shape[1]):
        now = air[:, n // _STEPS_AN_HOUR]
        flow = between * (cells[:, 1:] - cells[:, :-1])
        in_top = to_air * (now - cells[:, 0])
        told[:, n] = cells[:, 0] + in_top * (_CELL_M / 2 / w_mk[:, 0])
        gained = np.zeros_like(cells)
        gained[:, 0] += in_top
        gained[:, :-1] += flow
        gained[:, 1:] -= flow
        gained[:, -1] += to_ground * (ground - cells[:, -1])
        cells = cells + gained * STEP_S / heat
    return told


def _vapour_kg_m3(temperature_c: Array) -> Array:
    """Water in saturated air, after Magnus. [kg/m³]"""
    pressure = 610.94 * np.exp(17.625 * temperature_c / (temperature_c + 243.04))
    return np.asarray(pressure / (461.5 * (temperature_c + 273.15)))


class _Place:
    """One of the two rooms of every floor: rates at each step from the hour that it begins."""

    def __init__(self, floors: Sequence[Floor], slab_c: Array, which: int) -> None:
        self.floors, self.which = floors, which
        begins = [one.room_at_h if which else one.closet_at_h for one in floors]
        first = np.round((np.array(begins) + BEFORE_H) * _STEPS_AN_HOUR).astype(int)
        last = (BEFORE_H + AFTER_H) * _STEPS_AN_HOUR - 1
        steps = np.minimum(first[:, None] + np.arange(AFTER_H * _STEPS_AN_HOUR), last)
        hours = steps // _STEPS_AN_HOUR
        rows = np.arange(len(floors))[:, None]
        self.slab_c = slab_c[rows, steps]
        air_c = _of(floors, "air_c")[rows, hours]
        damp = _of(floors, "rh_percent")[rows, hours] / 100 * _vapour_kg_m3(air_c)
        warm = np.abs(self.slab_c - air_c) + 1.0
        speed = _of(floors, "air_speed_m_s")[rows, hours]
        self.heat_w_m2k = ((1.6 * np.cbrt(warm)) ** 3 + (5.5 * speed**0.8) ** 3) ** (1 / 3)
        local = _of(floors, "leaving") * _of(floors, "room_leaving")[:, which]
        self.m_s = self.heat_w_m2k / (1.2 * 1006 * 0.9) * local[:, None]
        self.lack_kg_m3 = np.maximum(_vapour_kg_m3(self.slab_c) - damp, 0.0)
        film_c = self.slab_c
        for _ in range(3):  # the film cools until slab and air bring what leaves
            gone = self.m_s * np.maximum(_vapour_kg_m3(film_c) - damp, 0.0)
            cooler = self.slab_c - gone * 2.45e6 / (self.heat_w_m2k + 17.0)
            film_c = 0.5 * (film_c + cooler)
        self.kg_m2_s = self.m_s * np.maximum(_vapour_kg_m3(film_c) - damp, 0.0)

    def _film(self, coat: int) -> Array:
        return np.array([one.true.film_mm[self.which][coat] for one in self.floors])

    def open_time(self) -> Array:
        """Minutes until a fiftieth of a millimetre is left on the slab."""
        film = self._film(0) - 0.02
        suction = _of(self.floors, "suction_mm_min05")[:, self.which]
        warm = self.slab_c[:, 0]
        suction = suction * np.exp(0.011 * (warm - 21.0))
        minutes = np.arange(0.05, 180.0, 0.05)
        gone = self.kg_m2_s[:, 0] * 60
        left = film[:, None] - suction[:, None] * (np.sqrt(minutes + 0.3) - 0.3**0.5)
        left -= gone[:, None] * minutes
        return _first(left <= 0, 0.05)

    def dry(self, coat: int, held: float) -> Array:
        """Minutes until the coat looks evenly dry."""
        water = self._film(coat) * (1 - held * _of(self.floors, "held_share"))
        turns = 1 - _of(self.floors, "first_share")
        power, until = _of(self.floors, "fall_power"), _of(self.floors, "dry_share")
        left = np.ones(len(water))
        found = np.full(len(water), _NEVER)
        for n in range(self.kg_m2_s.shape[1]):
            share = np.where(left > turns, 1.0, (np.maximum(left, 1e-9) / turns) ** power)
            before = left
            left = left - self.kg_m2_s[:, n] * STEP_S * share / water
            ended = (left <= until) & ~np.isfinite(found)
            into = (before - until) / np.maximum(before - left, 1e-12)
            found = np.where(ended, (n + into) * STEP_S / 60, found)
            if np.all(np.isfinite(found)):
                break
        return found

    def dry_down(self) -> Array:
        """Minutes until the water of the rinses is out of the skin of the slab."""
        water, skin = _of(self.floors, "rewet_kg_m2"), _of(self.floors, "skin_m2_s")
        gone = np.zeros(len(water))
        found = np.full(len(water), _NEVER)
        for n in range(self.kg_m2_s.shape[1]):
            depth_m = gone / 100.0  # a tenth of the slab holds water
            rate = self.lack_kg_m3[:, n] / (1 / self.m_s[:, n] + depth_m / skin)
            gone = gone + rate * STEP_S
            ended = (gone >= water) & ~np.isfinite(found)
            found = np.where(ended, (n + 1) * STEP_S / 60, found)
            if np.all(np.isfinite(found)):
                break
        return found

    def sealer(self) -> Array:
        """Minutes until a coat of water-based sealer bears the next."""
        water = 0.102 * _of(self.floors, "sealer_water")
        gone = np.cumsum(self.kg_m2_s * STEP_S * 0.6, axis=1)
        out = _first(gone >= water[:, None], STEP_S / 60)
        knit = 40.0 * 2 ** ((21.0 - self.slab_c[:, 0]) / 10)
        return (out + knit) * _of(self.floors, "sealer_factor")


def _first(reached: npt.NDArray[np.bool_], step_min: float) -> Array:
    """Minutes of the first step at which it is so, infinite where it never is."""
    found = (reached.argmax(axis=1) + 1) * step_min
    return np.where(reached.any(axis=1), found, _NEVER)


def tiles_of(floors: Sequence[Floor]) -> tuple[Array, Array]:
    """What a wetted tile loses in the half hour from the closet's and the room's stroke. [kg/m²h]

    It lies on the slab in the floor's air, and has nothing of how the stained floor gives off.
    """
    slab_c, told = _slab(floors), []
    for which in (0, 1):
        place = _Place(floors, slab_c, which)
        local = _of(floors, "leaving") * _of(floors, "room_leaving")[:, which]
        told.append(place.kg_m2_s[:, :6].mean(axis=1) / local * 3600)
    return told[0], told[1]
