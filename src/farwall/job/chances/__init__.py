"""Chances: the plan's own day drawn many times, to see how often an edge dies or the mix is short.

- `spreads`: what is uncertain, how far, on whose word; a learned spread can replace any.
- `drawn_days`: one factor for each day and field, from a generator that the caller gives.
- `replay`: every field's bands, walks and fillings on those days, and its edges' ages.
- `mix_days`: the gate's policy on the same days.
- `matters`: which input moves the outcome most, and what measuring it would do.

Pure: the generator is an argument. Docs: docs/chance.md.
"""

from __future__ import annotations

from farwall.job.chances.chances import Stretch, chances_of
from farwall.job.chances.spreads import Spread, spreads_of

__all__ = ["Spread", "Stretch", "chances_of", "spreads_of"]
