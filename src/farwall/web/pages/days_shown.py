"""What is drawn and said of a calendar, and of a question put to it."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date, datetime, timedelta
from typing import Any

from farwall.evidence import rank_words
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.phrasebook import told
from farwall.web.calendar_work import asked_from, moves
from farwall.web.pages.days_tape import Drawn, Span, days_tape, span_of
from farwall.web.pages.days_words import (
    hours_told,
    house_told,
    moves_told,
    next_steps,
    proof_told,
    reasons_told,
    steps_told,
)
from farwall.web.pages.when import date_told, day_told, stamp_told
from farwall.web.words import said

Json = dict[str, Any]
_WIDE, _NARROW = 860.0, 358.0
_SCALES = (("1", "days-week"), ("4", "days-four-weeks"), ("all", "days-all"))


@dataclass(frozen=True)
class Look:
    """Which stretch is looked at: from a day, so many weeks or all; and when now is."""

    first: str
    weeks: str
    now: datetime


def shown_of(stands: Json, case: Json | None, units: Units, look: Look) -> Json:
    """All that is said and drawn of a calendar."""
    document = stands["document"]
    scale = look.weeks if look.weeks in dict(_SCALES) else "all"
    count = None if scale == "all" else int(scale)
    begin = _day(look.first)
    drawn = case["document"] if case is not None else document
    now = look.now
    rain = tuple(map(date.fromisoformat, (case or stands)["asked"]["rain"]))
    moved = moves(document, drawn) if case is not None else []
    was = {one["house"]: _of(document, one["house"]) for one in moved}
    spans = [span_of(drawn, first=begin, weeks=count, width=width) for width in (_WIDE, _NARROW)]
    tapes = [days_tape(Drawn(drawn, span, now, was, rain)) for span in spans]
    houses = [
        {"id": one["id"], "name": one["name"],
         "steps": hours_told(one, units) if len(drawn["houses"]) == 1 else steps_told(one),
         "told": house_told(one, units), "late": bool(one["late_days"]),
         "before": [f"{day_told(date.fromisoformat(each['date']))}: {each['what']}"
                    for each in one["milestones"]]}
        for one in drawn["houses"]
    ]  # fmt: skip
    made = case if case is not None else stands
    return {
        "tapes": tapes, "scale": scale, "scales": _SCALES, "case": case is not None,
        "steps": _windows(spans[0], scale), "houses": houses,
        "next": next_steps(document, now, units), "proof": proof_told(drawn),
        "faults": [f"{one['code']} {one['house']}: {one['what']}" for one in made["faults"]],
        "rests": _rests(drawn["rests_on"]),
        "notes": [_note(one, {each["name"] for each in drawn["houses"]})
                  for one in drawn.get("notes", [])],
        "cautions": drawn["cautions"],
        "made": stamp_told(made["made_at"], units),
        "moves": moves_told(moved, drawn) if case is not None else [],
        "reasons": reasons_told(document) if case is None else [],
        "if_told": _if_told(case, document),
        "names": {one["id"]: one["name"] for one in document["houses"]},
    }  # fmt: skip


def _rests(on: Json) -> str:
    """What the hours of the calendar come from, and how far to trust them."""
    return told(f"Weather: {rank_words(on['rank'], on['source'])}.")


def _note(text: str, names: Collection[str]) -> str:
    """A note in the language that is spoken; the houses that it holds for keep their names."""
    head, mark, rest = text.partition(": ")
    if mark and all(one in names for one in head.split(", ")):
        return f"{head}: {told(rest)}"
    return told(text)


def _of(document: Json, house: str) -> Json:
    return next(one for one in document["houses"] if one["id"] == house)


def _day(text: str) -> date | None:
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


def _windows(span: Span, scale: str) -> Json:
    """The stretches before and after the one that is shown."""
    weeks = span.weeks if scale == "all" else int(scale)
    earlier, later = span.monday - timedelta(weeks=weeks), span.monday + timedelta(weeks=weeks)
    return {
        "scale": scale, "earlier": earlier.date().isoformat(), "later": later.date().isoformat(),
        "first": span.monday.date().isoformat(),
        "told": said("days-shown", first=date_told(span.monday),
                     last=date_told(span.ends - timedelta(days=1))),
    }  # fmt: skip


def _if_told(case: Json | None, document: Json) -> str:
    """The question in words."""
    if case is None:
        return ""
    asked = asked_from(case["asked"])
    names = {one["id"]: one["name"] for one in document["houses"]}
    parts = [said("days-if-told-rain", day=day_told(date.fromisoformat(one)))
             for one in asked.rain]  # fmt: skip
    parts += [
        said("days-if-told-away", trade=trade, house=names.get(house, house),
             day=day_told(date.fromisoformat(day)))
        for house, trade, day in asked.away
    ]  # fmt: skip
    return said("days-if-told", what="; ".join(parts))
