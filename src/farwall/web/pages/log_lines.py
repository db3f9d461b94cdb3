"""The lines of a log: each entry in its place, who and when by both clocks, what was struck."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime, timedelta, tzinfo

from farwall.facts.log import Kept
from farwall.facts.plan import Plan
from farwall.job.story.noun import Happened, Story
from farwall.job.story.order import in_order
from farwall.job.story.say import short_id
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.web.pages.log_words import Names, entry_told
from farwall.web.pages.when import clock_told, day_told, stamp_told
from farwall.web.words import said


@dataclass(frozen=True)
class Line:
    """An entry as it is shown. day: told where another day begins; photo: SHA-256 of its file."""

    id: str
    short: str
    day: str
    time: str
    told: str
    made: str
    struck: str
    strikes: bool
    photo: str


@dataclass(frozen=True)
class Told:
    """The entries in order, happened and struck; of which start their minutes count."""

    happened: Sequence[Happened]
    struck: Sequence[Happened]
    starts_at: str

    @classmethod
    def of(cls, story: Story) -> Told:
        """Those of a story."""
        return cls((*story.happened, *story.doubled), story.struck, story.starts_at)

    @classmethod
    def bare(cls, kept: Sequence[Kept]) -> Told:
        """Those of a log without a plan."""
        starts_at = kept[0].entry.at if kept else "2001-01-01T00:00:00+00:00"
        ordered = in_order(kept, starts_at=starts_at)
        return cls(ordered.happened, ordered.struck, starts_at)


def lines_of(told: Told, kept: Sequence[Kept], plan: Plan | None, units: Units) -> list[Line]:
    """A line for each entry, in the order in which they happened."""
    names = Names.of(plan)
    by_id = {one.entry.id: one for one in reversed(kept)}
    start = datetime.fromisoformat(told.starts_at)
    struck = {one.id for one in told.struck}
    strikes = _strikes(told)
    every = sorted((*told.happened, *told.struck), key=lambda one: _place(one, by_id))
    lines, day = [], ""
    for one in every:
        at = start + timedelta(minutes=one.at_min)
        here = f"{day_told(at)} {at.year}"
        lines.append(Line(
            id=one.id, short=short_id(one.id), day="" if here == day else here,
            time=clock_told(at, units), told=entry_told(one, names, units),
            made=_made(one, by_id[one.id], units, start.tzinfo),
            struck=_struck_by(strikes.get(one.id), start, units) if one.id in struck else "",
            strikes=one.word == "struck", photo=one.text("file"),
        ))  # fmt: skip
        day = here
    return lines


def _place(one: Happened, by_id: dict[str, Kept]) -> tuple[float, str, int, str]:
    entry = by_id[one.id].entry
    return one.at_min, entry.device, entry.number, one.id


def _strikes(told: Told) -> dict[str, Happened]:
    """The entry that struck each, by the id of what it struck; the last that holds."""
    return {one.text("entry"): one for one in told.happened if one.word == "struck"}


def _struck_by(by: Happened | None, start: datetime, units: Units) -> str:
    if by is None:
        return said("log-struck-by", at="", who=said("log-somebody"), why="")
    at = start + timedelta(minutes=by.at_min)
    why = said("log-struck-why", why=by.text("why")) if by.text("why") else ""
    who = by.who or said("log-somebody")
    return said("log-struck-by", at=clock_told(at, units), who=who, why=why)


def _made(one: Happened, kept: Kept, units: Units, here: tzinfo | None) -> str:
    """Who entered it, when by the device's own clock, when it came into the book, both in the zone
    of the floor: the same minute is told once."""
    at, received = (
        stamp_told(datetime.fromisoformat(each).astimezone(here).isoformat(), units)
        for each in (kept.entry.at, kept.received_at)
    )
    told = said(
        "log-made-at-once" if at == received else "log-made", who=one.who or said("log-somebody"),
        device=one.device or said("log-no-device"), at=at, received=received,
    )  # fmt: skip
    if abs(one.off_min) < 1:
        return told
    return f"{told}; {said('log-clock-off', off=f'{-one.off_min:+.0f}')}"
