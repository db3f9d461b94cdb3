"""New ids for entries: UUIDv7 [rfc-9562, section 5.7], made where an entry is made.

48 bits of milliseconds, the version, 12 bits that count up within a millisecond, the variant, 62
random bits: ids made one after another sort in that order, also when the clock steps back.
"""

from __future__ import annotations

import os
import time
import uuid
from collections.abc import Callable

_COUNTS = 1 << 12


class NewIds:
    """A maker of ids; the clock [ms since 1970] and the random bytes are arguments, for tests."""

    def __init__(
        self,
        now_ms: Callable[[], int] = lambda: time.time_ns() // 1_000_000,
        some_bytes: Callable[[int], bytes] = os.urandom,
    ) -> None:
        self._now_ms = now_ms
        self._some_bytes = some_bytes
        self._last = (-1, 0)

    def __call__(self) -> str:
        """The next id, greater than each before it."""
        ms, count = self._now_ms(), 0
        if ms <= self._last[0]:
            ms, count = self._last[0], self._last[1] + 1
            if count == _COUNTS:
                ms, count = ms + 1, 0
        self._last = (ms, count)
        tail = int.from_bytes(self._some_bytes(8), "big") & ((1 << 62) - 1)
        value = (ms & ((1 << 48) - 1)) << 80 | 7 << 76 | count << 64 | 0b10 << 62 | tail
        return str(uuid.UUID(int=value))


new_id = NewIds()
"""The next id of this process."""
