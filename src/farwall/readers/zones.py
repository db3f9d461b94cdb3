"""The time zone of jobs by its name, from the machine's own list of zones."""

from __future__ import annotations

from collections.abc import Iterable
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from farwall.facts.job import Job


def zone_of(jobs: Iterable[Job]) -> ZoneInfo | None:
    """The zone of the first job that names one; None where none does or the list lacks it."""
    name = next((job.place.time_zone for job in jobs if job.place.time_zone), "")
    try:
        return ZoneInfo(name) if name else None
    except ZoneInfoNotFoundError:  # a machine without the list
        return None
