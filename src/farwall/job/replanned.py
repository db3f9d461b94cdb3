"""What the morning's check changed of the plan, in words."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace

from farwall.facts.checks import Morning
from farwall.facts.job import Job
from farwall.facts.morning import by_morning
from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, Plan
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
        name = f"Coat {numbered(after, coat.id)}"
        if Counter(one.rooms for one in was) != Counter(one.rooms for one in now):
            said.append(f"{name}: {len(now)} fields, cut otherwise than the {len(was)} before.")
        later = max(one.end_min for one in now) - max(one.end_min for one in was)
        if abs(later) >= 1:
            said.append(f"{name} ends {abs(later):.0f} min {'later' if later > 0 else 'earlier'}.")
        said += [*_verdicts(was, now, name), *_oldest(was, now, name)]
    if not said:
        said.append("The plan stays as it was.")
    return tuple(said)


def _verdicts(was: Sequence[Field], now: Sequence[Field], coat: str) -> list[str]:
    """Fields of the same rooms whose verdict is another one."""
    old = dict(_by_rooms(was))
    return [
        f"{coat}, {', '.join(one.rooms)}: {WORDS[one.verdict]}, before {WORDS[old[key].verdict]}."
        for key, one in _by_rooms(now)
        if key in old and old[key].verdict != one.verdict
    ]


def _oldest(was: Sequence[Field], now: Sequence[Field], coat: str) -> list[str]:
    """The edge that takes most of its open time, when that share moved by a fiftieth or more."""
    old, new = (max(fields, key=_share) for fields in (was, now))
    if abs(_share(old) - _share(new)) < 0.02:
        return []
    told = f"{coat}'s tightest edge: {new.peak_age_min:.1f} of {new.open_time_min.low:.1f} min"
    before = f"before {old.peak_age_min:.1f} of {old.open_time_min.low:.1f}"
    return [f"{told} ({', '.join(new.rooms)}), {before}."]


def _share(field: Field) -> float:
    return field.peak_age_min / max(field.open_time_min.low, 0.01)


def _by_rooms(fields: Sequence[Field]) -> Iterator[tuple[tuple[tuple[str, ...], int], Field]]:
    """Each field with its rooms and which of the fields of these rooms it is."""
    seen: Counter[tuple[str, ...]] = Counter()
    for field in fields:
        yield (field.rooms, seen[field.rooms]), field
        seen[field.rooms] += 1
