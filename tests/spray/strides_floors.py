"""Floors and fronts that strides are held against."""

from __future__ import annotations

from tests.shapes import Place, outside, place, poly

from farwall.floor.nouns import Room
from farwall.spray.front import Front, Ground
from farwall.spray.fronts import levelled_front, plain_fronts, smoothed_front


def shortest(here: Ground) -> Front:
    plain = plain_fronts(here)
    made = [*plain, levelled_front(here, plain), smoothed_front(here, plain)]
    return min(made, key=lambda front: front.equivalent_m)


def kitchen(
    high: float, east: float, north: float, west: float, gap: float, at: str, long: float = 8.0
) -> Place:
    """A hall along x and a kitchen beside it, joined by an opening in a wall of a millimetre."""
    top = high + 0.001
    shape = poly(
        (0, 0), (long, 0), (long, high), (gap, high), (gap, top), (east, top), (east, top + north),
        (0, top + north), (0, top), (west, top), (west, high), (0, high),
    )  # fmt: skip
    way = {
        "hall": ((long, 0.1), (long, high - 0.1)),
        "kitchen": ((0.1, top + north), (min(2.4, east), top + north)),
        "whole kitchen": ((0.1, top + north), (east - 0.1, top + north)),
    }[at]
    return place([Room("k", shape)], [outside("out", way, "k")])
