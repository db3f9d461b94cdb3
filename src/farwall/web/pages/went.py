"""The plan as the day went: bands done at their logged minutes, what is left moved behind them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

import numpy as np

from farwall.facts.log import Kept
from farwall.facts.plan import Band, Field, Plan, TimedPoint
from farwall.job.story import Story, story
from farwall.job.story.noun import Sprayed
from farwall.nouns import dataclass

_DAY_WORDS = frozenset(
    {"day-started", "mixed", "filled", "field-started", "band-done", "field-done", "coat-done"}
)


@dataclass(frozen=True)
class Went:
    """A day as logged. plan: as it went up to `now_min`, then as it goes on; laid_anew: by a plan.

    mark: changes with every entry and every new plan of the rest; with `now_min` it says what of
    the day is drawn.
    """

    plan: Plan
    story: Story
    now_min: float
    laid_anew: bool
    mark: str

    @property
    def sprayed_until_min(self) -> float:
        """When the last band that is done was done; before everything where none is."""
        return max((one.end_min for one in self.story.done().values()), default=-np.inf)


def went(
    plan: Plan, kept: Sequence[Kept], *, now_min: float, rest: dict[str, Any] | None
) -> Went | None:
    """The plan as the day went; None where nothing was entered. now_min: minute of the plan.

    rest: the rest of the day as `web.live_jobs` laid it anew, taken in the plan's place where it
    is of these facts; what was entered since moves it on.
    """
    if not kept:
        return None
    told = story(plan, kept)
    place = max(one.place for one in kept)
    base = _rest_plan(plan, rest)
    laid_anew = base is not None
    now = float(round(max(now_min, told.ends_min)))
    moved = moved_on(base or plan, told, now_min=now)
    upto = rest["upto"] if rest is not None else 0
    return Went(moved, told, now, laid_anew, f"{place}-{upto}")


def _rest_plan(plan: Plan, rest: dict[str, Any] | None) -> Plan | None:
    from farwall.readers.plan_json import plan_from

    document = rest.get("plan") if rest is not None else None
    if document is None or document.get("inputs_hash") != plan.inputs_hash:
        return None
    return plan_from(document, "The rest of the day")


def moved_on(plan: Plan, told: Story, *, now_min: float) -> Plan:
    """The plan with every band that is done at its logged minutes, all others after `now_min`."""
    if not any(one.word in _DAY_WORDS for one in told.happened):
        return plan
    done = told.done()
    bands = sorted((b for f in plan.fields for b in f.bands), key=lambda one: one.start_min)
    mine = [band for band in bands if band.id in done]
    left = [band for band in bands if band.id not in done]
    last = max(mine, key=lambda one: done[one.id].end_min, default=None)
    late = done[last.id].end_min - last.end_min if last is not None else 0.0
    if left:
        late = max(late, now_min - left[0].start_min)
    minutes = _Minutes.of(mine, done, late, left)
    return replace(
        plan,
        fields=tuple(_field(field, done, minutes) for field in plan.fields),
        clocks=tuple(
            one if one.begins_min is None
            else replace(one, begins_min=round(minutes.at(one.begins_min), 1))
            for one in plan.clocks
        ),
    )  # fmt: skip


@dataclass(frozen=True)
class _Minutes:
    """When a planned minute really was, or now will be."""

    planned: tuple[float, ...]
    really: tuple[float, ...]
    late: float

    @classmethod
    def of(
        cls, mine: Sequence[Band], done: dict[str, Sprayed], late: float, left: Sequence[Band]
    ) -> _Minutes:
        """From the bands that are done, by their planned minutes; all that is left comes `late`."""
        pairs = [
            pair
            for band in mine
            for pair in (
                (band.start_min, done[band.id].start_min), (band.end_min, done[band.id].end_min)
            )
        ]  # fmt: skip
        pairs.sort()
        if left:
            begins = left[0].start_min
            pairs = [one for one in pairs if one[0] <= begins] + [(begins, begins + late)]
        planned = [one for one, _ in pairs]
        really = np.maximum.accumulate([one for _, one in pairs]).tolist() if pairs else []
        return cls(tuple(planned), tuple(really), late)

    def at(self, minute: float) -> float:
        """The minute that a planned one became."""
        if not self.planned or minute >= self.planned[-1]:
            return minute + self.late
        if minute <= self.planned[0]:
            return minute + self.really[0] - self.planned[0]
        return float(np.interp(minute, self.planned, self.really))


def _field(field: Field, done: dict[str, Sprayed], minutes: _Minutes) -> Field:
    bands = tuple(_band(band, done.get(band.id), minutes) for band in field.bands)
    start, end = minutes.at(field.start_min), minutes.at(field.end_min)
    if bands:
        start = min(start, *(one.start_min for one in bands))
        end = max(one.end_min for one in bands)
    return replace(
        field,
        start_min=start,
        end_min=end,
        bands=bands,
        refills=tuple(replace(one, at_min=minutes.at(one.at_min)) for one in field.refills),
        walks=tuple(replace(one, path=_path(one.path, minutes)) for one in field.walks),
    )


def _band(band: Band, done: Sprayed | None, minutes: _Minutes) -> Band:
    start, end = minutes.at(band.start_min), minutes.at(band.end_min)
    if done is not None:
        start, end = done.start_min, done.end_min
    before = max(band.end_min - band.start_min, 1e-9)
    path = tuple(
        (x, y, start + (t - band.start_min) / before * (end - start)) for x, y, t in band.path
    )
    return replace(band, start_min=start, end_min=end, path=path)


def _path(path: Sequence[TimedPoint], minutes: _Minutes) -> tuple[TimedPoint, ...]:
    return tuple((x, y, minutes.at(t)) for x, y, t in path)
