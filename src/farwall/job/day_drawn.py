"""The chances of a planned day: its fields as laid, its open times as believed."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from farwall.evidence import Rank, Span
from farwall.facts.plan import Chances, RoomOpenTime
from farwall.job.chances import Stretch, chances_of
from farwall.job.ground import JobGround
from farwall.spray.plan_coat import LaidField


def day_drawn(ground: JobGround, laid: Sequence[LaidField], seed: int) -> Chances:
    """The day drawn many times, by a generator made from `seed`; of one sprayer or of two."""
    coats = {coat.id: coat for coat in ground.settled.coats}

    def life_of(coat: str, entry: RoomOpenTime) -> Span:
        if entry.low <= 0:
            return Span(0.0, 0.0, 0.0, Rank.PRACTICE, "common-practice")
        span = ground.lasting.believed(entry.room, coats[coat], entry.from_min)
        own = ground.lasting.open_time((entry.room,), coats[coat], entry.from_min)
        part = entry.likely / own.likely if entry.polygon is not None and own.likely else 1.0
        likely, high = (None if end is None else part * end for end in (span.likely, span.high))
        return Span(part * span.low, likely, high, span.rank, span.source)

    x, y, _ = next(walk.path[-1] for one in reversed(laid) for walk in reversed(one.field.walks))
    return chances_of(
        [Stretch(one.field, one.moments, one.lives) for one in laid],
        ground.settled,
        life_of,
        np.random.default_rng(seed),
        seed=seed,
        tub=(x, y),
    )
