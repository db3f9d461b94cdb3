"""What would change a plan: remedies that were reckoned, and facts that can be tried."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta

from farwall.facts.defaults import settle
from farwall.facts.job import Job
from farwall.facts.plan import Field, Plan, Remedy
from farwall.nouns import dataclass
from farwall.papers.words import length, room_names
from farwall.phrasebook import told
from farwall.units import M_PER_IN
from farwall.web.pages.figures import fits
from farwall.web.pages.moment_words import named
from farwall.web.pages.shown import Shown
from farwall.web.words import said

_MOST_REMEDIES = 6
_WEIGHTY = 0.05
"""Share of what edges have to spare from which on measuring an input is worth a line. Guess."""
_NARROWER, _LEAST_BAND_M = 0.8, 0.3
_EARLIER_MIN = 60
_METRES = re.compile(r"\b(\d+\.\d+) m\b")
_AT_HOUR = re.compile(r"at (\d{1,2}):00( [ap]m)?")
_NOON_H = 12


@dataclass(frozen=True)
class Change:
    """Something that would change it: where and what, its gain and price, its caution.

    settings: what it puts into the facts; empty where it is no fact. needed: of a field that cannot
    be sprayed as it stands. works: whether it then can.
    """

    what: str
    gain: str
    caution: str
    settings: tuple[str, ...] = ()
    needed: bool = False
    works: bool | None = None

    @property
    def key(self) -> str:
        """What the form sends to have it tried; empty where there is nothing to try."""
        return "; ".join(self.settings)


def what_ifs(shown: Shown) -> tuple[Change, ...]:
    """All of them: what is needed first, then what was reckoned, then what may be tried."""
    plan = shown.plan
    found = list(_remedies(shown))
    if not found and all(fits(field) for field in plan.fields):
        found.append(Change(said("change-none"), "", ""))
    known = {one.key for one in found}
    found += [one for one in _facts(shown.job, shown) if one.key not in known]
    for input_ in plan.chances.matters_most[:3] if plan.chances is not None else ():
        if input_.what_to_do and input_.share >= _WEIGHTY:
            found.append(Change(told(input_.what_to_do), "", ""))
    return tuple(found)


def _remedies(shown: Shown) -> Iterator[Change]:
    plan = shown.plan
    every = [(field, one) for field in plan.fields for one in field.remedies]
    # What is needed comes before what is merely possible, what works before what helps.
    every.sort(key=lambda pair: (fits(pair[0]), not pair[1].works))
    seen: set[tuple[str, str]] = set()
    for field, one in every:
        rooms = named(room_names(plan, field.rooms))
        if (rooms, one.what) in seen or len(seen) >= _MOST_REMEDIES:
            continue
        seen.add((rooms, one.what))
        gain = said("rests-sep").join(_gain(one))
        settings = tuple(_settings(shown.job, plan, field, one))
        what = f"{rooms}: {told(one.what)}"
        yield Change(what, gain, told(one.caution), settings, not fits(field), one.works)


def _settings(job: Job, plan: Plan, field: Field, one: Remedy) -> Iterator[str]:
    """What a remedy is as facts."""
    if one.code == "helper" and not job.crew.helper:
        yield "crew.helper=true"
    elif one.code == "two" and job.crew.sprayers < 2:
        yield "crew.sprayers=2"
    elif one.code == "bands" and (width := _METRES.search(one.what)):
        yield f"tools.band_m={width[1]}"
    elif one.code == "window":
        yield from _filmed(job, field.rooms)
    elif one.code == "stop-line" and one.line:
        yield from _cut(job, one.line)
    elif one.code == "hour" and (hour := _AT_HOUR.search(one.what)):
        begins = datetime.fromisoformat(plan.starts_at) + timedelta(minutes=field.start_min)
        moved = timedelta(minutes=60 * _full_hour(hour) - 60 * begins.hour - begins.minute)
        yield f"starts_at={(datetime.fromisoformat(plan.starts_at) + moved).isoformat()}"


def _filmed(job: Job, rooms: Sequence[str] = ()) -> Iterator[str]:
    for n, window in enumerate(job.floor.windows):
        if not window.covered and (not rooms or not window.room or window.room in rooms):
            yield f"floor.windows.{n}.covered=true"


def _cut(job: Job, line: Sequence[tuple[float, float]]) -> Iterator[str]:
    place = len(job.floor.saw_cuts)
    ids = {cut.id for cut in job.floor.saw_cuts}
    name = next(f"cut-{n}" for n in range(1, len(ids) + 2) if f"cut-{n}" not in ids)
    yield f"floor.saw_cuts.{place}.line={json.dumps([list(point) for point in line])}"
    yield f"floor.saw_cuts.{place}.id={name}"


def _full_hour(told: re.Match[str]) -> int:
    """The hour of the day of `at 6:00`, `at 6:00 pm`."""
    hour, half = int(told[1]), told[2]
    return hour if half is None else hour % _NOON_H + _NOON_H * (half == " pm")


def _facts(job: Job, shown: Shown) -> Iterator[Change]:
    """Facts that may be tried on any house; what they gain nobody has reckoned yet."""

    def untried(words: str, *settings: str) -> Change:
        return Change(words, said("change-untried"), "", settings)

    crew = job.crew
    if crew.sprayers == 1:
        helper = "false" if crew.helper else "true"
        key = "what-alone" if crew.helper else "what-helper"
        yield untried(said(key), f"crew.helper={helper}")
        yield untried(said("what-two"), "crew.sprayers=2")
    else:
        yield untried(said("what-one"), "crew.sprayers=1")
    wide_m = settle(job).tools.band_m
    thin_m = round(_NARROWER * wide_m / M_PER_IN) * M_PER_IN
    if thin_m > _LEAST_BAND_M:
        width = length(thin_m, shown.units, both=False)
        yield untried(said("what-band", width=width), f"tools.band_m={thin_m:.4g}")
    if shown.clock.day_told:
        start = shown.clock.starts_at - timedelta(minutes=_EARLIER_MIN)
        clock = shown.clock
        at = clock.bare(-_EARLIER_MIN) + clock.half_word(clock.at(-_EARLIER_MIN))
        yield untried(said("what-earlier", at=at), f"starts_at={start.isoformat()}")
    films = tuple(_filmed(job))
    if films:
        yield untried(said("what-window"), *films)


def _gain(one: Remedy) -> Iterator[str]:
    if one.works is not None:
        yield said("change-works" if one.works else "change-not-enough")
    if one.peak_age_min is not None:
        yield said("change-edge", age=f"{one.peak_age_min:.1f}")
    if one.margin_min is not None and one.margin_min >= 0:
        yield said("change-spare", spare=f"{one.margin_min:.1f}")
    if one.more_min is not None and abs(one.more_min) >= 0.05:
        key = "change-more" if one.more_min > 0 else "change-fewer"
        yield said(key, more=f"{abs(one.more_min):.1f}")
    if one.price:
        yield told(one.price)
    if one.cost:
        yield one.cost
