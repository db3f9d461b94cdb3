"""The form of a word of the log: a field for each thing that it carries, and what was typed."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from datetime import datetime

from farwall.errors import Mistake, Refused
from farwall.facts.log import Kept
from farwall.facts.log_words import SET_ASIDE, WORDS, Carried
from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import listed, room_names
from farwall.phrasebook import told
from farwall.readers.log_units import BOUNDS, TWINS
from farwall.web.pages.forms.measures import NoNumber, plain_number
from farwall.web.pages.log_words import choice_told, coats_told, field_told
from farwall.web.pages.typed_units import without
from farwall.web.words import said

GROUPS: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("day", ("day-started", "reading", "room-closed", "room-free")),
    ("mix", ("mixed", "filled", "tank-weighed", "tank-empty")),
    ("spraying", (
        "field-started", "band-done", "field-done", "coat-done", "feathered", "stopped", "drip",
        "fizz",
    )),
    ("judging", (
        "sheen-lost", "still-damp", "dry", "drop-tested", "coat-judged", "colour-seen",
        "photo-placed", "mark-judged", "mark-mended",
    )),
    ("samples", (
        "sample-laid", "sample-sheen-lost", "sample-dry", "sample-washed", "sample-sealed",
        "sample-seen", "sample-judged", "sample-approved",
    )),
    ("after", (
        "neutralised", "scrubbed", "vacuumed", "rinsed", "strip-read", "dry-swiped", "waste",
        "sealed",
    )),
    ("people", (
        "respirator-on", "respirator-off", "cartridge-changed", "looked-in", "eyewash-tried",
        "kept-out", "let-in", "hours", "hurt", "near-miss",
    )),
    ("money", ("accepted", "change", "standby", "invoiced", "paid")),
    ("book", ("note", "photo", "struck", "handed-over", SET_ASIDE, "called-back")),
)  # fmt: skip
"""The words as the form offers them."""
_MISSING = re.compile(r"`(\w+)` is missing")
_ID = re.compile(r"[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")
_UNITS = {
    "litres": ("gal", "L"), "celsius": ("°F", "°C"), "m_s": ("mph", "m/s"), "minutes": ("min",) * 2,
    "hours": ("h",) * 2, "percent": ("%",) * 2, "metres": ("ft", "m"), "kg": ("lb", "kg"),
    "kg_m2_h": ("kg/m²h",) * 2,
    "m2": ("ft²", "m²"), "seconds": ("s",) * 2, "l_min": ("gal/min", "L/min"),
    "ml": ("mL",) * 2, "spot_m2": ("ft²", "m²"), "place_m": ("m",) * 2,
}  # fmt: skip


@dataclass(frozen=True)
class Field:
    """A field of the form: its name there, what it asks, how, from what, and what stands in it."""

    name: str
    label: str
    kind: str
    must: bool
    choices: tuple[tuple[str, str], ...]
    value: str


@dataclass(frozen=True)
class There:
    """What a form may name: the plan, where there is one, and the entries so far."""

    plan: Plan | None
    kept: Sequence[Kept]
    units: Units


def fields_of(word: str, there: There, told: Mapping[str, str]) -> list[Field]:
    """The fields of a word, with what was typed or asked for in them."""
    known = WORDS[word]
    return [
        Field(
            _spelt(one, there.units), _label(word, one, there.units), _kind(one),
            one in known.must, _choices(one, there), told.get(_spelt(one, there.units), ""),
        )
        for one in known.carried
    ]  # fmt: skip


def told_of(word: str, there: There, form: Mapping[str, str]) -> list[str]:
    """What the form says as the words of `farwall log`: `key=value`, without what was left out."""
    named = [(_spelt(one, there.units), one) for one in WORDS[word].carried]
    return [
        f"{name}={_plainly(one, form[name], there.units)}" for name, one in named if form.get(name)
    ]


def slips_of(error: Refused, word: str, there: There) -> list[str]:
    """What is wrong with a form, a line each, told where the form has it: by the words of its
    blank."""
    called = {_spelt(one, there.units): _label(word, one, there.units)
              for one in WORDS[word].carried}  # fmt: skip
    by_key = {one.key: _label(word, one, there.units) for one in WORDS[word].carried}

    def slip(one: Mistake) -> str:
        missing = _MISSING.match(one.what)
        if missing is not None and missing[1] in by_key:
            return str(Mistake(by_key[missing[1]], said("log-missing"), ""))
        return str(Mistake(called.get(one.where, one.where), told(one.what), told(one.remedy)))

    return [slip(one) for one in error.mistakes]


def _plainly(one: Carried, text: str, units: Units) -> str:
    """A number in plain digits, without the unit that the form names; else the text as typed."""
    if one.kind not in BOUNDS:
        return text
    bare = without(text, [_unit(one, units)])
    try:
        return f"{plain_number(bare, units):.12g}"
    except NoNumber:
        return text


def moment_of(form: Mapping[str, str], now: datetime, starts_at: str) -> datetime:
    """When it was: the day and time told, at the offset of the plan, else now. Raises Refused."""
    day, time = form.get("day", ""), form.get("time", "")
    if not day and not time:
        return now
    zone = datetime.fromisoformat(starts_at).tzinfo if starts_at else now.tzinfo
    try:
        if not day or not time:
            raise ValueError
        return datetime.fromisoformat(f"{day}T{time}").replace(tzinfo=zone)
    except ValueError:
        text = f"{day} {time}".strip()[:60]
        raise Refused(Mistake(said("log-when-day"), said("log-when-wrong", text=text))) from None


def is_id(text: str) -> bool:
    """Whether this is an id of the form that entries bear."""
    return _ID.fullmatch(text) is not None


def _spelt(one: Carried, units: Units) -> str:
    """The key as the reader of the log understands it in these units."""
    if units != "us":
        return one.key
    for twin in TWINS.get(one.kind, ()):
        if one.key.endswith(twin.ending):
            return one.key.removesuffix(twin.ending) + twin.other
    return one.key


def _label(word: str, one: Carried, units: Units) -> str:
    unit = _unit(one, units)
    asked = field_told(word, one)
    asked = asked[:1].upper() + asked[1:]
    return f"{asked}, {unit}" if unit else asked


def _unit(one: Carried, units: Units) -> str:
    us, metric = _UNITS.get(one.kind, ("", ""))
    return us if units == "us" else metric


def _kind(one: Carried) -> str:
    if one.kind in {"field", "band", "coat", "room", "entry", "choice", "yes"}:
        return "choice"
    if one.kind == "hash":
        return "file"
    return one.kind if one.kind in {"text", "amount"} else "number"


def _choices(one: Carried, there: There) -> tuple[tuple[str, str], ...]:
    plan = there.plan
    if one.kind == "yes":
        return (("yes", said("log-yes")), ("no", said("log-no")))
    if one.kind == "choice":
        return tuple((each, choice_told(each, one.key)) for each in one.choices)
    if one.kind == "entry":
        from farwall.job.story.say import short_id
        from farwall.web.pages.log_words import word_name

        return tuple(
            (kept.entry.id, f"[{short_id(kept.entry.id)}] {word_name(kept.entry.word)}")
            for kept in reversed(there.kept)
        )
    if plan is None:
        return ()
    if one.kind == "room":
        return tuple((room.id, room.label) for room in plan.inputs.floor.rooms)
    if one.kind == "coat":
        return coats_told(plan)
    if one.kind == "field":
        return tuple(
            (f.id, f"{numbered(plan, f.id)} {listed(room_names(plan, f.rooms))}")
            for f in plan.fields
        )
    if one.kind == "band":
        return tuple(
            (band.id, f"{numbered(plan, band.id)} {listed(room_names(plan, f.rooms))}")
            for f in plan.fields for band in sorted(f.bands, key=lambda b: b.order)
        )  # fmt: skip
    return ()
