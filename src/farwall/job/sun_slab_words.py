"""What is said of a slab that the sun through windows warms, beside a plan and its sealing."""

from __future__ import annotations

from datetime import timedelta

from farwall.job.lasting import Lasting
from farwall.job.sun_slab import TOLD_K
from farwall.units import clock_words

_FIRST_DAY_H = 24


def sun_slab_warnings(lasting: Lasting) -> tuple[str, ...]:
    """By how much and when the sun warms the slab of rooms on the first day; nothing, no sun."""
    warmest = []
    for room in lasting.sun.by_room:
        moments = [lasting.starts_at + timedelta(hours=n) for n in range(_FIRST_DAY_H)]
        by_k, at = max((lasting.sun.k(room, at), at) for at in moments)
        if by_k >= TOLD_K:
            warmest.append((by_k, room, at))
    if not warmest:
        return ()
    names = {room.id: room.name or room.id for room in lasting.job.job.floor.rooms}
    us = lasting.job.job.wishes.units == "us"
    told = ", ".join(
        f"{names[room]} by up to {_apart(by_k, us=us)} at {clock_words(at, us=us)}"
        for by_k, room, at in sorted(warmest, key=lambda one: (-one[0], one[1]))
    )
    said = (
        f"Sun through the windows warms slabs above what shade and readings tell: {told} (reckoned "
        "for a clear sky, the mean of the room; a guess). Open time, the limits of stain and those "
        "of sealer are held there to the warmer slab, waits to the shaded one. Read the slab in "
        "the sun as well."
    )
    return (said,)


def _apart(by_k: float, *, us: bool) -> str:
    fahrenheit, celsius = f"{by_k * 1.8:.0f} °F", f"{by_k:.1f} °C"
    return f"{fahrenheit} ({celsius})" if us else f"{celsius} ({fahrenheit})"
