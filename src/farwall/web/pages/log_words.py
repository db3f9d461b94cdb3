"""Entries of a log in words, in the request's language; in English as `farwall log` has them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from farwall.facts.log_words import WORDS, Carried
from farwall.facts.numbered import by_number, coats_of, numbered, stain_named
from farwall.facts.plan import Plan
from farwall.job.story.figures import coverage, figure, volume
from farwall.job.story.noun import CoatStory, Happened, Story
from farwall.job.story.say import LEAST_USED_L, clock, short_id
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.web.pages.when import halves_told
from farwall.web.words import said, said_or, words

_BARE = frozenset({"litres", "field", "band", "room", "what", "text", "because", "look", "hours"})


@dataclass(frozen=True)
class Names:
    """What rooms are called, by id, and the coats by whose numbers coats, fields and bands are
    told; empty where there is no plan."""

    rooms: Mapping[str, str]
    coats: tuple[str, ...] = ()

    @classmethod
    def of(cls, plan: Plan | None) -> Names:
        """Those of a plan."""
        rooms = plan.inputs.floor.rooms if plan is not None else ()
        coats = coats_of(plan) if plan is not None else ()
        return cls({room.id: room.label for room in rooms}, coats)


def word_name(name: str) -> str:
    """What a word of the log is called."""
    return said_or(f"log-word-{name}", name.replace("-", " "))


def short_name(name: str) -> str:
    """What it is called where there is little room; its name where it has no shorter one."""
    return said_or(f"word-{name}", word_name(name))


def word_says(name: str) -> str:
    """What a word of the log says."""
    return said(f"log-says-{name}")


def field_told(word: str, one: Carried) -> str:
    """What a value means that a word carries."""
    own = f"log-what-{word}-{one.key}"
    return said(own if own in words("en") else f"log-what-{one.key}")


def coats_told(plan: Plan) -> tuple[tuple[str, str], ...]:
    """Id of each coat, and its number with what the job calls its stain: `1 · light colour`."""
    return tuple(
        (one.id, f"{numbered(plan, one.id)} · {stain_named(plan, one.stain)}")
        for one in plan.inputs.coats
    )


def choice_told(choice: str, key: str = "") -> str:
    """A choice by its name; by that which it has for `key`, where one word means two things."""
    own = f"log-choice-{key}-{choice}"
    return said(own) if own in words("en") else said_or(f"log-choice-{choice}", choice)


def entry_told(one: Happened, names: Names, units: Units) -> str:
    """What an entry says: its word, then all that it carries, the job's own units first."""
    word = WORDS.get(one.word)
    carried = {each.key: each for each in word.carried} if word else {}
    parts = [
        _part(names, carried.get(key), key, value, us=units == "us")
        for key, value in one.about.items()
        if key not in carried or carried[key].kind != "hash"  # the file itself is shown
    ]
    return f"{word_name(one.word)}: {', '.join(parts)}" if parts else word_name(one.word)


def _part(names: Names, carried: Carried | None, key: str, value: object, *, us: bool) -> str:
    kind = carried.kind if carried else ""
    if isinstance(value, bool):
        text = said("log-yes" if value else "log-no")
    elif isinstance(value, int | float):
        text = figure(kind, value, us=us)
    elif kind == "room" and isinstance(value, str):
        text = names.rooms.get(value, value)
    elif kind == "choice" and isinstance(value, str):
        text = choice_told(value, key)
    elif kind == "entry" and isinstance(value, str):
        return f"[{short_id(value)}]"
    elif isinstance(value, list | tuple):
        text = said("firm-and").join(map(str, value))
    elif kind in {"coat", "field", "band"}:
        text = by_number(names.coats, str(value))
    else:
        text = str(value)
    return text if key in _BARE else f"{said_or(f'log-key-{key}', key.replace('_', ' '))} {text}"


def sums_told(plan: Plan, story: Story, units: Units) -> Iterator[str]:
    """What the log comes to: each coat with its litres, the hours."""
    for coat in story.coats:
        yield _coat(plan, coat, units)
    if story.hours_h:
        tasks = ", ".join(f"{choice_told(one)} {h:g}" for one, h in story.hours_h.items())
        yield said("log-hours", tasks=tasks, total=f"{sum(story.hours_h.values()):g}")


def minute_told(plan: Plan, minute: float, units: Units) -> str:
    """A minute of the plan by the clock on the wall, `8:19 am`, with the day if another."""
    return halves_told(clock(plan, minute, us=units == "us"))


def _coat(plan: Plan, coat: CoatStory, units: Units) -> str:
    done = sum(one.end_min is not None for one in coat.fields)
    own = sum(one.coat == coat.coat for one in plan.fields)
    us = units == "us"
    more = ""
    if coat.mixed_l is not None:
        more += said("log-coat-mixed", litres=volume(coat.mixed_l, us=us))
    if coat.used_l is not None and coat.used_l >= LEAST_USED_L:
        at = minute_told(plan, coat.levels[-1].at_min, units)
        more += said("log-coat-used", litres=volume(coat.used_l, us=us), at=at)
    if coat.l_per_m2 is not None and coat.l_per_m2 > 0:
        planned = coat.levels[-1].planned_l / coat.levels[-1].area_m2
        found, wanted = (coverage(one, us=us) for one in (coat.l_per_m2, planned))
        more += said("log-coat-coverage", found=found, planned=wanted)
    return said("log-coat", coat=numbered(plan, coat.coat), done=done, own=own, more=more)
