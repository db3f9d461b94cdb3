"""Three thousand invented floors that dry, by seed: what is so, what a person would know of it.

Frozen: a digest in the tests holds them, made before any clock was tuned to
them. One thousand seeds are for tuning, two thousand for the report. Nothing here or
in `floors_true` comes from `farwall.air`: a model cannot vouch for itself.
All spreads are house guesses, set once.
"""

from __future__ import annotations

import math
from random import Random
from statistics import NormalDist

from farwall.nouns import dataclass

BEFORE_H, AFTER_H = 240, 144
TUNING, TEST = range(1, 1001), range(1001, 3001)

_NORMAL = NormalDist()
_USUAL_L_PER_M2 = (0.2037, 0.1358)  # 200 and 300 ft² a gallon


class Chance:
    """Throws by a seed; only `Random.random` is drawn from, whose sequence Python promises."""

    def __init__(self, seed: int) -> None:
        self._next = Random(f"floor that dries {seed}").random

    def even(self, low: float, high: float) -> float:
        """A number between the two, each as likely."""
        return low + (high - low) * self._next()

    def normal(self, sd: float = 1.0) -> float:
        """A normal number about zero."""
        return sd * _NORMAL.inv_cdf(min(max(self._next(), 1e-12), 1 - 1e-12))

    def factor(self, sd: float) -> float:
        """A log-normal factor with median 1."""
        return math.exp(self.normal(sd))

    def uneven(self, cv: float) -> float:
        """A factor with mean 1 and this spread, skewed otherwise than a log-normal one.

        The cube of a normal number, after Wilson and Hilferty: nearly gamma.
        """
        share = cv * cv / 9
        return float(max(1 - share + self.normal(cv / 3), 0.2) ** 3)


@dataclass(frozen=True)
class FloorKnown:
    """What a person has in hand. Hours run from `BEFORE_H` before the first stroke."""

    air_c: tuple[float, ...]
    rh_percent: tuple[float, ...]
    air_speed_m_s: float
    slab_c: float
    """Infrared reading at the first stroke, filled in from the truth with its error."""
    l_per_m2: tuple[float, float]
    drop_closet_s: float
    drop_room_s: float


@dataclass(frozen=True)
class FloorTrue:
    """What is so, hour by hour and for the floor; rooms are (closet, room)."""

    seed: int
    air_c: tuple[float, ...]
    rh_percent: tuple[float, ...]
    air_speed_m_s: tuple[float, ...]
    ground_c: float
    concrete_m: float
    concrete_w_mk: float
    bed_w_mk: float
    surface_w_m2k: float
    leaving: float
    """Factor on evaporation, of the whole floor."""
    room_leaving: tuple[float, float]
    film_mm: tuple[tuple[float, float], tuple[float, float]]
    """By room, then by coat."""
    suction_mm_min05: tuple[float, float]
    held_share: float
    first_share: float
    fall_power: float
    dry_share: float
    salt_factor: float
    rewet_kg_m2: float
    skin_m2_s: float
    sealer_factor: float
    sealer_water: float
    reading_error_c: float


@dataclass(frozen=True)
class Floor:
    """One invented floor: its truth, what is known, and the hours at which things begin."""

    true: FloorTrue
    known: FloorKnown
    closet_at_h: float
    """When the closet was stained, hours from the first stroke (before it)."""
    room_at_h: float
    look_min: float
    """How often somebody looks at the closet."""


def drawn(seed: int) -> Floor:
    """The floor of this seed."""
    dice = Chance(seed)
    air_c, rh_percent, speed, mean_c = _hours(dice)
    coats = tuple(usual * dice.uneven(0.18) for usual in _USUAL_L_PER_M2)
    sampled = dice.even(0, 1) < 0.5
    suction = 0.07 * dice.factor(0.35)
    rooms = suction * dice.factor(0.15), suction * dice.factor(0.15)
    true = FloorTrue(
        seed=seed,
        air_c=air_c,
        rh_percent=rh_percent,
        air_speed_m_s=speed,
        ground_c=mean_c - dice.even(-1.0, 5.0),
        concrete_m=dice.even(0.09, 0.16),
        concrete_w_mk=dice.even(1.2, 2.1),
        bed_w_mk=dice.even(0.5, 1.6),
        surface_w_m2k=dice.even(5.5, 9.0),
        leaving=dice.factor(0.30),
        room_leaving=(dice.factor(0.10), dice.factor(0.10)),
        film_mm=(
            (coats[0] * dice.uneven(0.08), coats[1] * dice.uneven(0.08)),
            (coats[0] * dice.uneven(0.08), coats[1] * dice.uneven(0.08)),
        ),
        suction_mm_min05=rooms,
        held_share=dice.even(0.4, 0.65),
        first_share=dice.even(0.4, 0.8),
        fall_power=dice.even(0.5, 1.0),
        dry_share=dice.even(0.03, 0.12),
        salt_factor=1.1 * dice.factor(0.15),
        rewet_kg_m2=0.55 * dice.uneven(0.35),
        skin_m2_s=4e-6 * dice.factor(0.3),
        sealer_factor=dice.factor(0.22),
        sealer_water=dice.even(0.58, 0.70),
        reading_error_c=dice.normal(0.6),
    )
    error_c, error_rh = dice.normal(0.4), dice.normal(3.0)
    known = FloorKnown(
        air_c=tuple(one + error_c for one in air_c),
        rh_percent=tuple(min(max(one + error_rh, 5.0), 99.0) for one in rh_percent),
        air_speed_m_s=math.fsum(speed) / len(speed) * dice.factor(0.3),
        slab_c=float("nan"),
        l_per_m2=(
            coats[0] * dice.factor(0.08) if sampled else _USUAL_L_PER_M2[0],
            coats[1] * dice.factor(0.08) if sampled else _USUAL_L_PER_M2[1],
        ),
        drop_closet_s=_drop_s(dice, rooms[0]),
        drop_room_s=_drop_s(dice, rooms[1]),
    )
    closet_at_h = -float(round(dice.even(3, 24)))
    return Floor(true, known, closet_at_h, round(dice.even(0, 6), 1), dice.even(10, 25))


def _drop_s(dice: Chance, suction: float) -> float:
    """Seconds a drop took: goes with suction less steeply than theory, and is read badly."""
    seconds = 12.0 * math.pow(0.07 / suction, 1.5) * dice.factor(0.35)
    return min(seconds, 59.0)


def _hours(
    dice: Chance,
) -> tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...], float]:
    """Air over the floor: warmth, damp and moving, from ten days before to six days after."""
    mean_c = dice.even(13.0, 26.0)
    swing_k, drift_k = dice.even(0.5, 4.0), dice.normal(1.5)
    mean_rh, swing_rh = dice.even(30.0, 68.0), dice.even(0.0, 10.0)
    typical = math.exp(dice.even(math.log(0.06), math.log(0.5)))
    restless = dice.even(0.2, 0.6)
    begun_at = dice.even(7.0, 11.0)  # hour of the day at the first stroke
    air, damp, moving = [], [], []
    wander = gust = 0.0
    for n in range(BEFORE_H + AFTER_H):
        hour = n - BEFORE_H
        day = math.sin(2 * math.pi * (begun_at + hour - 9.0) / 24)
        wander = 0.97 * wander + dice.normal(0.25)
        gust = 0.6 * gust + dice.normal(restless * 0.8)
        air.append(mean_c + swing_k * day + drift_k * hour / 96 + wander)
        damp.append(min(max(mean_rh - swing_rh * day + 2 * wander, 12.0), 92.0))
        moving.append(typical * math.exp(gust))
    return tuple(air), tuple(damp), tuple(moving), mean_c
