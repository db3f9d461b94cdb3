"""Ids of entries: UUIDv7, in the order in which they were made."""

import uuid

from farwall.store.new_id import NewIds, new_id


def test_the_bits_are_those_of_version_7():
    made = uuid.UUID(new_id())
    assert made.version == 7
    assert made.variant == uuid.RFC_4122


def test_the_milliseconds_stand_in_front():
    """The example of RFC 9562, appendix A.6: 2022-02-22 14:22:22 at -5 h is 0x017F22E279B0."""
    ids = NewIds(lambda: 0x017F22E279B0, lambda count: b"\xff" * count)
    assert ids() == "017f22e2-79b0-7000-bfff-ffffffffffff"


def test_ids_sort_in_the_order_in_which_they_were_made_within_a_millisecond_and_beyond():
    ids = NewIds(lambda: 1_000, lambda count: b"\x80" + b"\x00" * (count - 1))
    made = [ids() for _ in range(9_000)]
    assert made == sorted(made)
    assert len(set(made)) == len(made)


def test_they_do_so_when_the_clock_steps_back():
    ticks = iter([5_000, 4_000, 4_001, 6_000])
    ids = NewIds(lambda: next(ticks))
    made = [ids() for _ in range(4)]
    assert made == sorted(made)
    assert all(uuid.UUID(one).version == 7 for one in made)
