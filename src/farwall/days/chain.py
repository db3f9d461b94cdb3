"""One house by the quarter of an hour: the earliest chain that keeps every wait and window.

Waits never get shorter by beginning later, and a later start never ends
earlier. So the first start from which the rest of the chain can be done is
the best one, and going back from the last step to the first finds it for
every start at once: an exact answer on the grid, not a search.
"""

from __future__ import annotations

from typing import Literal

import numpy as np
from numpy.typing import NDArray

from farwall.days.clock import PER_DAY, SLOT_MIN, SiteClock, Slots
from farwall.days.nouns import Step
from farwall.days.practice import step_min, whole_slots
from farwall.nouns import dataclass

End = Literal["low", "likely", "high"]
_FITS_A_DAY = 36
"""Slots of a working day: a rinse that is longer is parted. Stain and sealer never are: a stop
in mid-floor leaves a seam."""


_WORTH_BEGINNING = 8
"""Slots that must be left of a day for a parted rinse to be begun: two hours, a guess."""


@dataclass(frozen=True)
class Link:
    """One step on the grid. For each slot: where it ends when begun there, what may follow.

    `first[t]` is the first slot from `t` on at which it may begin; `count` + 1 says never.
    `ready` and `latest` are asked with the end of the step before.
    """

    step: Step
    slots: int
    ends: Slots
    first: Slots
    ready: Slots
    latest: Slots
    waits: tuple[tuple[str, Slots], ...]


@dataclass(frozen=True)
class Walked:
    """A step as it falls: its slots, when it could have begun, and what it waited for."""

    step: Step
    start: int
    end: int
    slots: int
    ready: int
    wait: str


def links(
    steps: tuple[Step, ...], clock: SiteClock, *, area_m2: float, people: int, end: End = "likely"
) -> tuple[Link, ...]:
    """The chain on the grid, each start kept only where all that follows can be done."""
    chain: list[Link] = []
    after: Link | None = None
    for step in reversed(steps):
        slots = whole_slots(step_min(step, end, area_m2=area_m2, people=people), SLOT_MIN)
        ends = _ends(step, slots, clock)
        fine = ends <= clock.count
        if step.not_before_min is not None:
            fine[: max(int(step.not_before_min // SLOT_MIN), 0)] = False
        if after is not None:
            at = np.minimum(ends, clock.count)
            fine &= after.first[after.ready[at]] <= after.latest[at]
        link = Link(step, slots, ends, _first(fine), *_waited(step, clock, end))
        chain.append(link)
        after = link
    return tuple(reversed(chain))


def walk(chain: tuple[Link, ...], start: int, *, hold: dict[str, int]) -> list[Walked] | None:
    """The chain begun at exactly `start`; None when that cannot be done.

    hold: slots to wait longer than need be before a step, by its id.
    """
    never = len(chain[0].first)
    if start >= never - 1 or chain[0].first[start] != start:
        return None
    walked = [Walked(chain[0].step, start, int(chain[0].ends[start]), chain[0].slots, start, "")]
    for link in chain[1:]:
        before = walked[-1].end
        ready = int(link.ready[before])
        held = min(ready + hold.get(link.step.id, 0), never - 1)
        begin = int(link.first[held])
        if begin > min(int(link.latest[before]), never - 2):
            return None
        wait = max(link.waits, key=lambda one: int(one[1][before]))[0] if link.waits else ""
        walked.append(Walked(link.step, begin, int(link.ends[begin]), link.slots, ready, wait))
    return walked


def _ends(step: Step, slots: int, clock: SiteClock) -> Slots:
    """For each slot the end of the step when it begins there; count + 1 when it cannot."""
    allowed = clock.open[step.place]
    never = clock.count + 1
    before = np.concatenate([[0], np.cumsum(allowed)])
    ends = np.full(clock.count, never, dtype=np.int64)
    if step.split or (step.place == "rinse" and slots > _FITS_A_DAY):
        where = np.flatnonzero(allowed)
        last = before[:-1] + slots - 1
        done = allowed & (last < len(where))
        if step.place == "rinse" and clock.count >= _WORTH_BEGINNING:
            # Rooms are rinsed one by one, but nobody wets a floor for the last hour of a day.
            begun = before[_WORTH_BEGINNING:] - before[:-_WORTH_BEGINNING] == _WORTH_BEGINNING
            done[: len(begun)] &= begun
            done[len(begun) :] = False
        ends[done] = where[last[done]] + 1
        return ends
    if clock.count >= slots:
        whole = before[slots:] - before[:-slots] == slots
        ends[: len(whole)][whole] = np.flatnonzero(whole) + slots
    return ends


def _first(fine: NDArray[np.bool_]) -> Slots:
    """For each slot, and one past the last, the next one that is fine."""
    never = len(fine) + 1
    first = np.full(len(fine) + 1, never, dtype=np.int64)
    first[:-1][fine] = np.flatnonzero(fine)
    return np.minimum.accumulate(first[::-1])[::-1]


def _waited(
    step: Step, clock: SiteClock, end: End
) -> tuple[Slots, Slots, tuple[tuple[str, Slots], ...]]:
    """By the end of the step before: ready, latest, and each wait alone."""
    ends = np.arange(clock.count + 1)
    ready, latest = ends, np.full(clock.count + 1, clock.count, dtype=np.int64)
    waits = []
    for wait in step.waits:
        worth = getattr(wait.minutes, end)
        if wait.longest_min is not None:
            # The high end of a wait may be as long as it may be: then it is just reached.
            worth = min(worth, wait.longest_min)
            latest = np.minimum(latest, ends + int(wait.longest_min) // SLOT_MIN)
        over = clock.until(wait.pace, ends, float(worth))
        waits.append((wait.name, over))
        ready = np.maximum(ready, over)
    return ready, latest, tuple(waits)


def day_of(slot: int) -> int:
    """The day of a slot, from 0; an end at midnight still belongs to the day before."""
    return slot // PER_DAY
