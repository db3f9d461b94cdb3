"""Parts of parts end, or the model is refused before anything follows them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.hostile.models import ifc

from farwall.errors import Refused
from farwall.readers.any_plan import read_bytes
from farwall.readers.ifc.parts import ring_in


@pytest.mark.parametrize(
    ("old", "new", "where"),
    [
        (b"#11,(#12));", b"#12,(#12));", "#12"),
        (b"#10,(#11));", b"#12,(#11));", "#1"),
        (b"#12,(#27,#37)", b"#27,(#27,#37)", "#27"),
        (b"$,$,$,#47,#57);", b"$,$,$,#47,#47);", "#4"),
    ],
)
def test_what_is_part_of_itself_is_refused(old: bytes, new: bytes, where: str) -> None:
    data = ifc()
    assert old in data
    with pytest.raises(Refused, match=r"part of itself|circle|another kind") as refusal:
        read_bytes(data.replace(old, new, 1))
    assert refusal.value.mistakes[0].where.startswith(where)


def test_long_chains_end() -> None:
    assert ring_in({n: {n + 1} for n in range(100_000)}) is None
    assert ring_in({n: {(n + 1) % 100_000} for n in range(100_000)}) is not None


@given(st.dictionaries(st.integers(0, 9), st.frozensets(st.integers(0, 9), max_size=4).map(set)))
def test_a_ring_is_found_where_one_is(parts: dict[int, set[int]]) -> None:
    """By hand: a thing lies on a ring when it is among what can be reached from it."""

    def reached(start: int) -> set[int]:
        found: set[int] = set()
        waiting = set(parts.get(start, ()))
        while waiting:
            one = waiting.pop()
            if one not in found:
                found.add(one)
                waiting |= parts.get(one, set())
        return found

    ring = ring_in(parts)
    if ring is None:
        assert not any(start in reached(start) for start in parts)
    else:
        assert ring in reached(ring)
