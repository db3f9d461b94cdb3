"""The schedule with its locks: who stays out until when, what the builder has done before.

From the firm's calendar where the house stands in it, else from the house's own chain of waits; the
same document as the calendar's own page, told for the builder and in the language of the paper.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, timedelta
from typing import Any

from farwall.air.foretold import Foretold
from farwall.air.sealers import limits_of
from farwall.air.weather import Forecast
from farwall.facts.plan import Plan
from farwall.job.house_days import HouseDays, house_days
from farwall.papers.days_words import time_words
from farwall.papers.office.blocks import (
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Rows,
    Sign,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.days_said import short_day
from farwall.papers.office.fill_in import EMPTY
from farwall.papers.office.ground import PaperGround
from farwall.papers.run_sheet.names import coat_ids
from farwall.phrasebook import told

DONE_BEFORE = (
    "Mud, paint and wet work overhead finished.",
    "Slab scraped and swept; nothing stored on it.",
    "Water and two 20 A circuits on, within reach.",
    "Heat on and held steady.",
    "All other trades told these dates, in writing.",
    "Who takes the drums of wash water, named.",
    "Keys, alarm, parking in reach of a hose.",
    "Owner, children and pets have another bed.",
)
GUARD = (
    "Nobody crosses fresh stain. A trade inside the lock stops the floor; waiting is charged as "
    "agreed."
)
RUGS_DAYS = (14, 30)
"""Rugs and mats, breathable ones only [care-sheets]."""
COVER_DAYS = (3, 7)
"""Covers for other trades over a new sealer [common-practice]."""


def schedule(ground: PaperGround) -> Paper:
    """The paper: the lock first, then the days, who comes back when, what is done before."""
    weather = ground.ground.weather
    days = house_days(
        ground.job, calendar=ground.calendar,
        weather=Foretold(weather) if isinstance(weather, Forecast) else weather,
        lessons=ground.ground.lessons, coats_from=_coats_from(ground.plan),
    )  # fmt: skip
    return Paper(
        title="Schedule",
        letterhead=True,
        blocks=_blocks(days, ground) if days.house else _none(days),
    )


def _coats_from(plan: Plan) -> tuple[datetime, ...]:
    """When each coat begins by the run sheet; nothing where one has no field that can be begun."""
    start = datetime.fromisoformat(plan.starts_at)
    begun = [
        min((one.start_min for one in plan.fields if one.coat == coat and one.bands), default=None)
        for coat in coat_ids(plan)
    ]
    known = [start + timedelta(minutes=at) for at in begun if at is not None]
    return (start, *known[1:]) if len(known) == len(begun) else ()


def _none(days: HouseDays) -> tuple[Block, ...]:
    return (
        Words("No days were found in which this floor could be done as it stands.", "strong"),
        *((Words(days.no),) if days.no else ()),
        Rows(("day", "what is done", "who stays out"), (), (1, 2.5, 2), blank=8, pen="ruled"),
        *_before(),
    )


def _blocks(days: HouseDays, ground: PaperGround) -> tuple[Block, ...]:
    said = _Said(days, ground)
    return (
        *said.lock(),
        Head("The days"),
        said.steps(),
        Head("Who comes back when"),
        said.back(),
        *_before(said.milestones()),
        Words(GUARD),
        Words(said.rests(), "soft"),
        Sign(("builder", "finisher", "date"), "These dates are passed on to every trade."),
    )


def _before(milestones: tuple[Block, ...] = ()) -> tuple[Block, ...]:
    return (Head("Done before we come"), Ticks(DONE_BEFORE, 2), *milestones)


class _Said:
    """The words of a calendar's house on this paper."""

    def __init__(self, days: HouseDays, ground: PaperGround) -> None:
        self.days, self.ground, self.house = days, ground, days.house
        self.first = datetime.fromisoformat(self.house["steps"][0]["starts_at"]).date()

    def day(self, at: date) -> str:
        """`Thu 14 May`, or `day 3` where no date is known."""
        if not self.days.told:
            number = (at - self.first).days + 1
            return f"día {number}" if self.ground.language == "es" else f"day {number}"
        return short_day(at, self.ground.language)

    def moment(self, text: str) -> str:
        """Day and hour of a moment in ISO 8601."""
        at = datetime.fromisoformat(text)
        return f"{self.day(at.date())}, {time_words(at, self.ground.units)}"

    def lock(self) -> tuple[Block, ...]:
        """From when until when the house is shut, and what slow drying makes of it."""
        lock = self.house["lock"]
        start, end = self.moment(lock["starts_at"]), self.moment(lock["ends_at"])
        late = lock["ends_high_at"]
        slow = (
            "Where drying is slow there is no end that can be told: ask before you go in."
            if late is None
            else f"Where drying is slow until {self.moment(late)}: ask before you go in."
        )
        return (
            Words(f"All other trades, owner and pets stay out from {start} until {end}.", "strong"),
            Words(slow),
        )

    def steps(self) -> Rows:
        """A row for each step: day, hours, what, what is waited for, when it may end."""
        return Rows(
            ("day", "from, to", "what is done", "after this wait", "at the latest until"),
            tuple(self._step(one) for one in self.house["steps"]),
            widths=(1.15, 1.7, 2.25, 2.2, 1.75),
        )

    def _step(self, one: Mapping[str, Any]) -> tuple[Text, ...]:
        start, end = (datetime.fromisoformat(one[key]) for key in ("starts_at", "ends_at"))
        units = self.ground.units
        to = " a " if self.ground.language == "es" else " to "
        until = time_words(end, units)
        if end.date() != start.date():
            until = self.moment(one["ends_at"])
        high = one["ends_high_at"]
        late = told("open end") if high is None else self.moment(high)
        return (
            Own(self.day(start.date())),
            Own(f"{time_words(start, units)}{to}{until}"),
            one["name"],
            one["wait"] or EMPTY,
            Own(late),
        )

    def back(self) -> Rows:
        """Who comes back when: feet, trades, covers, furniture, rugs."""
        limits = limits_of(self.ground.job.sealer)
        walk, furniture = limits.walk_h, limits.furniture_h / 24
        rows: tuple[tuple[Text, ...], ...] = (
            ("trades, owner, pets", Own(self.moment(self.house["lock"]["ends_at"])),
             "a day after the last coat of sealer"),
            ("socks", f"{walk:g} h after the last coat of sealer", "the label of the sealer wins"),
            ("covers", f"{COVER_DAYS[0]} to {COVER_DAYS[1]} days after it",
             "board or paper that breathes, taped to itself"),
            ("furniture on felt", f"{furniture:g} days after it", "carried, never dragged"),
            ("rugs that breathe", f"{RUGS_DAYS[0]} to {RUGS_DAYS[1]} days after it",
             "no rubber, no plastic backs"),
        )  # fmt: skip
        return Rows(("who, what", "not before", "in what way"), rows, widths=(1.5, 2.2, 2.8))

    def milestones(self) -> tuple[Block, ...]:
        """What is done in the weeks before, by its day."""
        if not self.days.told:
            return ()
        pairs = tuple(
            (Own(self.day(date.fromisoformat(one["date"]))), one["what"])
            for one in self.house["milestones"]
        )
        return (Facts(pairs, 2),)

    def rests(self) -> str:
        """What the days rest on."""
        lines = [
            "From the firm's calendar."
            if self.days.from_calendar
            else "Reckoned for this house alone.",
            "Hours and waits: common practice, no source, or guesses; we call when a day moves.",
        ]
        if not self.days.told:
            lines.append("No day was told: days are counted from the first one on site.")
        elif not self.days.on_the_day:
            lines.append("Its first coat does not fall on the day of the run sheet: ask us.")
        return " ".join(lines)
