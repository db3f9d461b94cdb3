"""What the morning's check changed of the plan, in words."""

from __future__ import annotations

from dataclasses import replace

from farwall.facts.checks import Morning
from farwall.facts.job import Job
from farwall.facts.morning import by_morning
from farwall.facts.plan import Plan
from farwall.job.say import WORDS


def before_morning(job: Job) -> Job | None:
    """The job as it stood before the check, or None when the check changes nothing of a plan."""
    changed, _ = by_morning(job)
    bare = replace(job, morning=Morning())
    return bare if (changed.tools, changed.survey) != (job.tools, job.survey) else None


def what_changed(before: Plan, after: Plan) -> tuple[str, ...]:
    """What differs between two plans of one floor: rate, fields, verdicts, ends, litres."""
    said = []
    slow, fast = after.inputs.tools.spray_m2_min, before.inputs.tools.spray_m2_min
    if abs(slow - fast) > 0.005:
        said.append(f"Spray rate {slow:.2f} m²/min, before {fast:.2f}.")
    for coat in before.inputs.coats:
        was = [one for one in before.fields if one.coat == coat.id]
        now = [one for one in after.fields if one.coat == coat.id]
        if not was or not now:
            continue
        if {one.rooms for one in was} != {one.rooms for one in now}:
            said.append(f"{coat.id}: {len(now)} fields, cut otherwise than the {len(was)} before.")
        later = max(one.end_min for one in now) - max(one.end_min for one in was)
        if abs(later) >= 1:
            said.append(
                f"{coat.id} ends {abs(later):.0f} min {'later' if later > 0 else 'earlier'}."
            )
        said += _verdicts(before, after, coat.id)
    if not said:
        said.append("The plan stays as it was.")
    return tuple(said)


def _verdicts(before: Plan, after: Plan, coat: str) -> list[str]:
    was = {one.rooms: one for one in before.fields if one.coat == coat}
    said = []
    for now in (one for one in after.fields if one.coat == coat):
        old = was.get(now.rooms)
        if old is not None and old.verdict != now.verdict:
            said.append(
                f"{coat}, {', '.join(now.rooms)}: {WORDS[now.verdict]}, before "
                f"{WORDS[old.verdict]}."
            )
        elif old is not None and abs(old.peak_age_min - now.peak_age_min) >= 0.1:
            said.append(
                f"{coat}, {', '.join(now.rooms)}: oldest edge {now.peak_age_min:.1f} min, before "
                f"{old.peak_age_min:.1f}, of {now.open_time_min.low:.1f}."
            )
    return said
