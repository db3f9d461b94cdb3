"""Limits: each bounds a key that is there, and no default or bound of a noun lies outside."""

from __future__ import annotations

import pytest

from farwall.facts import default_table as table
from farwall.facts.job import Coat, Survey, Tools
from farwall.readers.job_limits import LIMITS
from farwall.readers.shape import keys_of

DEFAULTS = [
    *((Tools, name, default) for name, default in table.TOOLS.items()),
    *((Coat, "m2_per_l", table.coverage_default(number)) for number in (1, 2)),
    (Survey, "drop_s", table.DROP_S),
    (Survey, "air_speed_m_s", table.AIR_SPEED_M_S),
]


@pytest.mark.parametrize(("noun", "key"), LIMITS, ids=lambda part: getattr(part, "__name__", part))
def test_a_limit_bounds_a_key_that_is_there(noun, key):
    assert key in keys_of(noun)
    assert LIMITS[noun, key].low < LIMITS[noun, key].high


@pytest.mark.parametrize(("noun", "key", "default"), DEFAULTS, ids=lambda part: str(part)[:20])
def test_every_default_with_its_range_lies_well_within(noun, key, default):
    limit = LIMITS.get((noun, key))
    ends = [end for end in (default.low, default.usual, default.high) if end is not None]
    assert ends == sorted(ends)
    assert limit is None or all(limit.low <= end <= limit.high for end in ends)
