"""A story told minute by minute in plain words, the units of the job first. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from farwall.facts.log_words import WORDS, Carried
from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.job.story.figures import coverage, figure, litres_told, volume
from farwall.job.story.noun import CoatStory, FieldStory, Happened, Story
from farwall.job.story.wearing import Wearing, wearing
from farwall.units import clock_words

SHORT_ID = 6
"""Letters of an id that are shown: its last ones, which are random."""


def _bands(count: int) -> str:
    return f"{count} band{'s' * (count != 1)}"


def short_id(name: str) -> str:
    """The end of an id, enough to strike it by."""
    return name.replace("-", "")[-SHORT_ID:]


def told(plan: Plan, story: Story, *, us: bool) -> str:
    """The whole story: each thing at its minute, then what it came to, then what cannot be so.

    us: hours by am and pm, US units first.
    """
    lines = [f"{plan.job or 'The job'}: {_entries(len(story.happened))}."]
    lines += [f"  {line_of(plan, one, us=us)}" for one in story.happened]
    lines += [f"  struck: {_at(plan, one, us=us)}  [{short_id(one.id)}]" for one in story.struck]
    lines += [
        f"  told by two phones: {_at(plan, one, us=us)}  [{short_id(one.id)}]"
        for one in story.doubled
    ]
    for coat in story.coats:
        lines += _coat(plan, coat, us=us)
    lines += [worn_line(one) for one in wearing(story)[0]]
    if story.hours_h:
        hours = ", ".join(f"{task} {value:g}" for task, value in story.hours_h.items())
        lines.append(f"Hours of work: {hours}; {sum(story.hours_h.values()):g} in all.")
    if story.contradictions:
        lines.append("What does not fit:")
        lines += [f"  {litres_told(one, us=us)}" for one in story.contradictions]
    return "\n".join(lines)


def worn_line(one: Wearing) -> str:
    """How long a person wore a respirator, by day, and the pair on now."""
    days = ", ".join(f"{minutes:.0f} min on {day}" for day, minutes in one.minutes_by_day)
    return f"Respirator, {one.person}: {days or 'not on yet'}; pair on now {one.pair_min:.0f} min."


def _entries(count: int) -> str:
    return f"{count} {'entry' if count == 1 else 'entries'}"


def line_of(plan: Plan, one: Happened, *, us: bool) -> str:
    """One thing that happened, with its minute and the end of its id; `us`: by am and pm."""
    who = f" ({one.who})" if one.who else ""
    off = "" if abs(one.off_min) < 1 else f" (its clock was put right by {-one.off_min:+.0f} min)"
    return f"{_at(plan, one, us=us)}{who}{off}  [{short_id(one.id)}]"


def _at(plan: Plan, one: Happened, *, us: bool) -> str:
    return f"{clock(plan, one.at_min, us=us)} {what_of(plan, one, us=us)}"


def what_of(plan: Plan, one: Happened, *, us: bool) -> str:
    """What it says: the word, then all that it carries; `us`: US units first."""
    word = WORDS.get(one.word)
    carried = {each.key: each for each in word.carried} if word else {}
    parts = [_part(plan, carried.get(key), key, value, us=us) for key, value in one.about.items()]
    return f"{one.word.replace('-', ' ')}: {', '.join(parts)}" if parts else (
        one.word.replace("-", " ")
    )  # fmt: skip


def clock(plan: Plan, minute: float, *, us: bool = False) -> str:
    """A minute of the plan by the clock on the wall; `us`: by am and pm."""
    start = datetime.fromisoformat(plan.starts_at)
    moment = start + timedelta(minutes=minute)
    days = (moment.date() - start.date()).days
    before = "the day" if days == -1 else f"{-days} days"
    day = f" (day {days + 1})" if days > 0 else f" ({before} before)" if days < 0 else ""
    return f"{clock_words(moment, us=us)}{day}"


LEAST_USED_L = 0.05
"""Less is told as 0.0, and is what rounding leaves."""
_PLAIN = frozenset({"text", "choice"})
_NAMES = {"tub_l": "tub", "tank_l": "tank", "slab_c": "slab", "air_c": "air",
          "rh_percent": "humidity", "air_speed_m_s": "air moving", "left_over_l": "left over",
          "after_min": "after", "ph": "pH", "change_after_min": "to change after",
          "ran_min": "ran", "reached_s": "reached in", "flow_l_min": "gives",
          "aired_min": "aired", "ph_before": "pH before", "way": "where to",
          "who": "said yes", "area_m2": "area", "before_kg": "sprayer before",
          "after_kg": "sprayer after", "laid_ml": "laid", "drop_s": "drop", "dwell_h": "dwell",
          "held": "colour", "lightness": "L", "lab_a": "a", "lab_b": "b",
          "error_de": "target off by", "spots": "places", "spread_lightness": "spread of L",
          "light": "by", "approved_by": "signed by", "x_m": "x", "y_m": "y",
          "length_m": "long", "width_m": "wide"}  # fmt: skip
_BARE = frozenset({"litres", "field", "band", "room", "what", "text", "because", "look", "hours"})


def _part(plan: Plan, carried: Carried | None, key: str, value: object, *, us: bool) -> str:
    kind = carried.kind if carried else ""
    if isinstance(value, bool):
        text = "yes" if value else "no"
    elif isinstance(value, int | float):
        text = figure(kind, value, us=us)
    elif kind == "room" and isinstance(value, str):
        labels = {room.id: room.label for room in plan.inputs.floor.rooms}
        text = labels.get(value, value)
    elif kind == "entry" and isinstance(value, str):
        return f"[{short_id(value)}]"
    elif isinstance(value, list | tuple):
        text = " and ".join(map(str, value))
    elif kind in {"coat", "field", "band"}:
        text = numbered(plan, str(value))
    else:
        text = str(value)
    return text if key in _BARE else f"{_NAMES.get(key, key.replace('_', ' '))} {text}"


def _coat(plan: Plan, coat: CoatStory, *, us: bool) -> Iterator[str]:
    done = sum(one.end_min is not None for one in coat.fields)
    own = sum(one.coat == coat.coat for one in plan.fields)
    head = f"Coat {numbered(plan, coat.coat)}: {done} of {own} fields done"
    if coat.mixed_l is not None:
        head += f", {volume(coat.mixed_l, us=us)} mixed"
    if coat.used_l is not None and coat.used_l >= LEAST_USED_L:
        head += (
            f", {volume(coat.used_l, us=us)} used by {clock(plan, coat.levels[-1].at_min, us=us)}"
        )
    if coat.l_per_m2 is not None and coat.l_per_m2 > 0:
        planned = coat.levels[-1].planned_l / coat.levels[-1].area_m2  # overlaps counted
        found, wanted = (coverage(one, us=us) for one in (coat.l_per_m2, planned))
        head += f": {found} with all overlaps, planned {wanted}"
    yield f"{head}."
    for one in coat.fields:
        yield f"  {_field(plan, one, us=us)}"


def _field(plan: Plan, one: FieldStory, *, us: bool) -> str:
    rooms = {room.id: room.label for room in plan.inputs.floor.rooms}
    field = next((each for each in (*plan.fields, *plan.left) if each.id == one.field), None)
    where = ", ".join(rooms.get(room, room) for room in field.rooms) if field else ""
    ends = "not done" if one.end_min is None else f"to {clock(plan, one.end_min, us=us)}"
    used = ""
    if one.used_l is not None:
        used = f", took {volume(one.used_l, us=us)}, planned {volume(one.planned_l, us=us)}"
    at = f"{clock(plan, one.start_min, us=us)} {ends}"
    return f"{numbered(plan, one.field)} {where}: {at}, {_bands(len(one.bands))}{used}"
