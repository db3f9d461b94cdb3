"""The floors and houses that take colour are frozen: a figure from them can be had again."""

import hashlib
from dataclasses import astuple, replace

import numpy as np
import pytest

from farwall.bench.colour_floors import Coat, bare_patches, floor
from farwall.bench.colour_rooms import house

FLOORS_DIGEST = "00812bf68f094936fc3374238efa07ff8492f702990df79796abe9dc9243127a"
HOUSES_DIGEST = "64f31cad3c9ba83579e151797c8fc09d0af2c5ec1e2df91922ce3c10205281fc"
WHY = "a frozen floor has changed: its figures can no longer be laid beside those of before"


def numbers(told):
    """All numbers in a nested tuple, in order."""
    if isinstance(told, (tuple, list)):
        return [one for each in told for one in numbers(each)]
    return list(np.asarray(told, dtype=np.float64).reshape(-1))


def digest(things):
    """SHA-256 of all numbers to nine digits: a processor may differ in the last."""
    text = "\n".join(f"{one:.9e}" for one in numbers([astuple(each) for each in things]))
    return hashlib.sha256(text.encode()).hexdigest()


@pytest.mark.parametrize(
    ("made", "frozen"),
    [
        (lambda: [floor(seed, stains=2) for seed in (0, 7, 1_000_003)], FLOORS_DIGEST),
        (lambda: [house(seed) for seed in (0, 7, 1_000_003)], HOUSES_DIGEST),
    ],
    ids=["floors", "houses"],
)
def test_the_recorded_digest_holds(made, frozen):
    assert digest(made()) == frozen, WHY


def test_the_digest_would_see_a_hair_of_thirst():
    one = house(3)
    assert digest([one]) != digest([house(4)])
    moved = one.rooms[0].thirst.copy()
    moved[0] *= 1 + 1e-6
    assert numbers(moved) != numbers(one.rooms[0].thirst)


def test_rooms_of_a_house_share_their_stain_and_drink_unlike():
    made = house(5)
    assert 3 <= len(made.rooms) == len(made.area_m2) == len(made.thirst) <= 6
    assert len({room.pigments[0].mol_l for room in made.rooms}) == 1
    means = [float(room.thirst.mean()) for room in made.rooms]
    assert means == pytest.approx(made.thirst)
    assert np.ptp(means) > 0


def test_the_same_room_with_more_thirst_comes_out_darker():
    made = house(11)
    calm = made.rooms[0]
    wild = replace(calm, thirst=calm.thirst * 1.3)
    after = [
        bare_patches(room, np.arange(24)).laid(Coat(0, 0.5, 0.1), dice()).wet()[:, 0]
        for room in (calm, wild)
    ]
    assert (after[1] < after[0]).all()


def dice():
    return np.random.Generator(np.random.PCG64(1))
