"""Floors rich in one kind, and recall by lightness step."""

from itertools import islice

import pytest

from farwall.bench.mopped_floors import mopped
from farwall.bench.mopped_match import Sought
from farwall.bench.mopped_rich import first_kind, seeds_from, steps_of, wilson


def test_the_first_kind_is_that_of_the_floor_that_is_drawn():
    found = {seed: first_kind(seed) for seed in range(4)}
    for seed, kind in found.items():
        marks = mopped(seed).marks
        assert (not marks) if kind is None else (not marks or kind in {m.kind for m in marks})
    assert len({first_kind(seed) for seed in range(60)}) > 6


def test_seeds_are_all_or_those_of_one_kind():
    assert list(islice(seeds_from(7, None), 3)) == [7, 8, 9]
    own = list(islice(seeds_from(7, "missed crescent"), 3))
    assert [first_kind(seed) for seed in own] == ["missed crescent"] * 3
    skipped = set(range(7, own[-1])) - set(own)
    assert "missed crescent" not in {first_kind(seed) for seed in skipped}


def came(lighter, *, found, seen=True, kind="missed crescent"):
    return Sought(kind, lighter, seen, found, ())


def test_steps_count_what_is_shown_and_found():
    every = [
        came(1.2, found=False), came(2.0, found=True), came(-2.9, found=False),
        came(4.0, found=True), came(9.0, found=True), came(5.0, found=True, seen=False),
        came(5.0, found=True, kind="ring"),
    ]  # fmt: skip
    told = {one.words: (one.marks, one.found) for one in steps_of("missed crescent", every)}
    assert told == {
        "below 1.5 L": (1, 0), "from 1.5 L to 2": (0, 0), "from 2 L to 3": (2, 1),
        "from 3 L to 4": (0, 0), "from 4 L": (2, 2), "all": (5, 3),
    }  # fmt: skip


def test_wilsons_interval_by_hand():
    """Eq. of the score interval for 61 of 89 and for none of ten, reckoned by hand."""
    assert wilson(61, 89) == pytest.approx((0.583, 0.773), abs=1e-3)
    assert wilson(0, 10) == pytest.approx((0.0, 0.278), abs=1e-3)
    assert wilson(0, 0) == (0, 1)
