"""What looks at a wait found: over, or not, by its slowest room. Pure."""

from __future__ import annotations

import math

from farwall.facts.plan import Plan
from farwall.job.story.noun import Story


def found_over(
    plan: Plan,
    story: Story,
    *,
    clock: str,
    coat: str | None = None,
    since_min: float = -math.inf,
    until_min: float = math.inf,
) -> bool | None:
    """Whether the wait `clock` was found over; None where nobody looked in these minutes.

    coat: looks at this coat of stain alone; any, where it is left out.
    The last look into a room counts for that room, one that names no room for the whole floor: it
    is over only when no room was last found damp, however dry another is.
    """
    last: dict[str, bool] = {}
    for one in story.sightings:
        seen = one.sighting
        if seen.clock != clock or coat not in {None, seen.coat}:
            continue
        if not since_min <= one.at_min <= until_min:
            continue
        if not seen.room:
            last.clear()
        last[seen.room or ""] = seen.ended
        if _own_rooms(plan, coat) <= last.keys():
            last.pop("", None)  # every room was looked into after it
    return all(last.values()) if last else None


def _own_rooms(plan: Plan, coat: str | None) -> set[str]:
    return {room for field in plan.fields if coat in {None, field.coat} for room in field.rooms}
