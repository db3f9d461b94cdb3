"""The awkward shapes: floors of one field each, true in size to houses, invented.

Every passage is at least 0.56 m wide, so that a body of 0.25 m radius gets
everywhere. The set is frozen: `tests/bench/test_frozen.py` holds its digest.
"""

from __future__ import annotations

from farwall.bench.nouns import Shape
from farwall.bench.shapes_dry import DRY
from farwall.bench.shapes_letters import LETTERS
from farwall.bench.shapes_plain import PLAIN
from farwall.bench.shapes_slanted import SLANTED

SHAPES: dict[str, Shape] = {one.name: one for one in (*PLAIN, *LETTERS, *DRY, *SLANTED)}
