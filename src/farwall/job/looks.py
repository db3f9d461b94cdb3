"""Looks at a floor that waits, gathered into watchings."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from farwall.facts.job import Sighting


def paired(seen: Sequence[Sighting]) -> Iterator[tuple[Sighting, float]]:
    """Each sighting, and for an end the minute of the last look that found it unended (0: none).

    Looks of one clock, room and coat are one watching; a look that found it
    unended and was followed by the end is told with the end alone.
    """
    same: dict[tuple[str, str, str], list[Sighting]] = {}
    for one in seen:
        same.setdefault((one.clock, one.room or "", one.coat or ""), []).append(one)
    for looks in same.values():
        ends = [one for one in looks if one.ended]
        open_still = [one for one in looks if not one.ended]
        for one in ends:
            since = [other.after_min for other in open_still if other.after_min < one.after_min]
            yield one, max(since, default=0.0)
        last_end = max((one.after_min for one in ends), default=0.0)
        late = [one for one in open_still if one.after_min >= last_end]
        if late:
            yield max(late, key=lambda one: one.after_min), 0.0
