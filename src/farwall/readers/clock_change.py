"""What a plan has to say of a night on which the clocks are changed, by the job's time zone.

All times of a plan stand by the clock of its start. Who reads them by the wall after such a night
would be an hour off: in spring a coat would be sprayed an hour before the one below is surely dry.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta

from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.readers.zones import zone_of


def with_clock_change(plan: Plan, job: Job) -> Plan:
    """The plan with a warning for each change of the clocks within it; as it is without one.

    Where the job names no time zone, or the machine lacks the list of zones, nothing is known.
    """
    found = _changes(plan, job)
    return replace(plan, warnings=(*found, *plan.warnings)) if found else plan


def _changes(plan: Plan, job: Job) -> tuple[str, ...]:
    zone = zone_of([job])
    if zone is None:
        return ()
    starts_at = datetime.fromisoformat(plan.starts_at)
    found = []
    before = starts_at.utcoffset() or timedelta()
    for hour in range(int(_last_min(plan) // 60) + 2):
        moment = (starts_at.astimezone(UTC) + timedelta(hours=hour)).astimezone(zone)
        offset = moment.utcoffset() or timedelta()
        if offset != before:
            day = (moment.date() - starts_at.date()).days + 1
            when = f"on day {day} of this plan" if hour else "before this plan begins"
            found.append(_words(when, (offset - before).total_seconds() / 60))
            before = offset
    return tuple(found)


def _words(when: str, later_min: float) -> str:
    way, sign = ("back", "less") if later_min < 0 else ("forward", "more")
    return (
        f"The clocks are put {way} by {abs(later_min):.0f} min {when}. All its times stand by the "
        f"clock of the job's start: from then on the clock on the wall shows "
        f"{abs(later_min):.0f} min {sign}."
    )


def _last_min(plan: Plan) -> float:
    """The last minute that the plan tells of: its fields, and the waits after them."""
    ends = {coat.coat: coat.end_min for coat in sorted(plan.fields, key=lambda one: one.end_min)}
    last = max(ends.values(), default=0.0)
    for clock in plan.clocks:
        begins = clock.begins_min if clock.begins_min is not None else ends.get(clock.coat, 0.0)
        waits = clock.high_min or clock.likely_min or clock.low_min
        last = max(last, begins + waits)
    return last
