"""What moves between two answers, house by house and step by step."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.days.nouns import Before, Calendar, HouseDays, Placed, Question
from farwall.nouns import dataclass


@dataclass(frozen=True)
class Moved:
    """A step that begins at another time; `days` later (earlier below 0)."""

    step: Placed
    was_min: float
    days: int


@dataclass(frozen=True)
class Change:
    """What moves in one house: its steps, its hand-over, its crew before and now."""

    house: HouseDays
    moved: tuple[Moved, ...]
    hand_over_days: int
    crew_was: str

    @property
    def stays(self) -> bool:
        """Nothing begins on another day, and the crew is the same."""
        return not any(one.days for one in self.moved) and self.crew_was == self.house.crew.id


def held_to(question: Question, first: Calendar) -> Question:
    """`question` with a wish to change as few days as may be of an answer given before."""
    before = {
        one.house.id: Before(one.crew.id, {step.id: step.start_min for step in one.steps})
        for one in first.houses
    }
    return replace(question, before=before)


def changes(first: Calendar, then: Calendar) -> Sequence[Change]:
    """What of `first` is otherwise in `then`, for every house that is in both."""
    was = {one.house.id: one for one in first.houses}
    return [_change(was[one.house.id], one) for one in then.houses if one.house.id in was]


def _change(was: HouseDays, now: HouseDays) -> Change:
    before = {step.id: step for step in was.steps}
    moved = []
    for step in now.steps:
        old = before.get(step.id)
        if old is not None and old.start_min != step.start_min:
            days = int(step.start_min // 1440) - int(old.start_min // 1440)
            moved.append(Moved(step, old.start_min, days))
    return Change(now, tuple(moved), now.last_day - was.last_day, was.crew.id)
