"""A thousand spoilt files (by `--full` two) of all formats, each read by a process that is shut in.

What may come of them, and what is held of it: `tests/README.md`. A hundred thousand more, read in
one process and by hand: `tests/hostile/long.py`.
"""

import sys
from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from tests.counts import count
from tests.hostile.long import read_here, seed_of
from tests.hostile.mutators import WOUNDS, mutated
from tests.hostile.nursery import nursery
from tests.hostile.oracle import Wrong, judged
from tests.hostile.seeds import Seed, seeds
from tests.hostile.soundness import keeps_grammar

from farwall.errors import Refused
from farwall.readers.any_plan import read_content

NAMES = [seed.name for seed in seeds()]
EACH = count(1000, full=2000) // len(NAMES) + 1
ALONE = 1
linux = pytest.mark.skipif(sys.platform != "linux", reason="the quick way is Linux's")


def by_name(name: str) -> Seed:
    return next(seed for seed in seeds() if seed.name == name)


@pytest.mark.parametrize("name", NAMES)
def test_the_sound_file_keeps_its_grammar(name: str) -> None:
    assert keeps_grammar(by_name(name).data)


@linux
@pytest.mark.slow
@pytest.mark.parametrize("name", NAMES)
def test_spoilt_files_are_read_or_refused_by_processes_shut_in(name: str) -> None:
    seed, ends = by_name(name), Counter[str]()
    with nursery(seed) as here:
        for number in range(EACH):
            data = mutated(seed, number)
            found = here.read(data, seed.scale_m_per_unit)
            try:
                ends[judged(seed, data, found).kind] += 1
            except Wrong as error:
                pytest.fail(f"{name}, number {number}: {error}")
    assert ends.total() == EACH
    assert ends["refused"]  # or the spoiling spoils nothing


@pytest.mark.parametrize("name", NAMES)
def test_some_of_them_are_read_by_a_process_started_for_each(name: str) -> None:
    seed = by_name(name)
    for number in range(EACH, EACH + ALONE):
        data = mutated(seed, number)
        try:
            found = read_content(data, scale_m_per_unit=seed.scale_m_per_unit)
        except Refused as refusal:
            broken = "broke off" in str(refusal)
            judged(seed, data, str(refusal) if broken else refusal)
        else:
            judged(seed, data, found)


@settings(max_examples=50)
@given(st.integers(0, 10**9))
def test_any_number_is_a_file_that_is_read_or_refused(number: int) -> None:
    seed = seed_of(number)
    data = mutated(seed, number // len(NAMES))
    judged(seed, data, read_here(seed, data))


@given(st.binary(max_size=400), st.sampled_from(seeds()))
def test_noise_behind_a_true_beginning_is_read_or_refused(noise: bytes, seed: Seed) -> None:
    for head in (64, 600):
        data = seed.data[:head] + noise
        judged(seed, data, read_here(seed, data))


def test_every_kind_of_wound_changes_something() -> None:
    """Else a number would stand for a file that was never spoilt."""
    for way, wound in enumerate(WOUNDS):
        changed = [mutated(seed, way) != seed.data for seed in seeds()]
        assert any(changed), wound.__name__


def test_the_same_number_is_the_same_file() -> None:
    assert [mutated(seed, 7) for seed in seeds()] == [mutated(seed, 7) for seed in seeds()]
