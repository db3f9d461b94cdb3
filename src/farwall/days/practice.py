"""The chain of a house with its hours and waits: common practice, no source.

Hours of work are those of a typical floor of 1,500 ft² done by two people:
protect and mask 8-14 h, clean and dry 8-16, stain coats 3-6, judging 1-2,
neutralise, scrub and rinse 10-18, seal and finish 6-10, unmask, punch and
hand over 3-5. How they part within a line is a guess. The label and the
maker's sheet win over every wait here.
"""

from __future__ import annotations

import math
from dataclasses import replace

from farwall.days.nouns import House, Pace, Step, Wait
from farwall.evidence import Rank, Span
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.units import M2_PER_FT2

TYPICAL_M2 = 1500 * M2_PER_FT2
FIXED_SHARE = 0.2
"""Part of a task that does not shrink with the floor (set-up, hoses, washing up): a guess."""
HOUR_MIN, DAY_MIN = 60.0, 1440.0
LOCK_AFTER_SEAL_MIN = DAY_MIN
WORK_FROM_MIN, WORK_UNTIL_MIN = 7.5 * 60, 17 * 60.0
EVENING_MIN = 18.5 * 60
"""Stain and rinsing may run on into the evening, no further: light to judge by. A guess."""
NOON_MIN = 12 * 60.0

MILESTONES = (
    (-30, "builder sheet: what must not touch the slab"),
    (-7, "survey: rooms, drops, moisture"),
    (-6, "samples on this slab"),
    (-3, "sample sealed, looked at and signed"),
)
"""Days before the first one on site, and what is done then. Common practice, no source."""


def _practice(low: float, likely: float, high: float) -> Span:
    return Span(low, likely, high, Rank.PRACTICE, PRACTICE)


def _guess(low: float, likely: float, high: float) -> Span:
    return Span(low, likely, high, Rank.GUESS, f"{PRACTICE}, {OUR_GUESS}")


def _wait(name: str, hours: Span, pace: Pace, longest_h: float | None = None) -> Wait:
    likely, high = hours.likely, hours.high
    minutes = Span(
        hours.low * HOUR_MIN,
        None if likely is None else likely * HOUR_MIN,
        None if high is None else high * HOUR_MIN,
        hours.rank,
        hours.source,
    )
    return Wait(name, minutes, pace, None if longest_h is None else longest_h * HOUR_MIN)


CLEANED = _wait("dry after cleaning, overnight", _guess(3, 6, 14), "film")
RECOAT = _wait("dry to recoat", _practice(1, 2, 4), "film", 24)
DWELL = _wait("dwell", _practice(4, 8, 24), "clock", 24)
NEUTRALISE = _wait("dry to neutralise", _practice(1, 2.5, 4), "film")
DRY_DOWN = _wait("dry-down before sealing", _practice(12, 24, 72), "slab")
SEALER = _wait("next coat of sealer", _practice(2, 3, 4), "sealer", 24)
FINISHED = _wait("finish dry", _practice(0.5, 0.75, 1), "sealer")


def chain(coats: int) -> tuple[Step, ...]:
    """The steps of a house with so many coats of stain, in order."""
    stain = tuple(
        Step(
            f"coat-{n}",
            f"coat {n}",
            _guess(1.5, 2.25, 3),
            "coat",
            split=False,
            waits=(RECOAT,) if n > 1 else (),
        )
        for n in range(1, coats + 1)
    )
    return (
        Step("clean", "protect and clean", _guess(11.2, 16.4, 21.6), "any", split=True),
        Step(
            "mask", "mask, last drop map", _guess(4.8, 6.6, 8.4), "any", split=True,
            waits=(CLEANED,),
        ),
        *stain,
        Step(
            "neutralise", "judge, neutralise, scrub, rinse", _practice(11, 15.5, 20), "rinse",
            split=False, waits=(DWELL, NEUTRALISE),
        ),
        Step("seal-1", "sealer, coat 1", _guess(2.25, 3, 3.75), "seal", split=False,
             waits=(DRY_DOWN,)),
        Step("seal-2", "sealer, coat 2", _guess(2.25, 3, 3.75), "seal", split=False,
             waits=(SEALER,)),
        Step("finish", "finish", _guess(1.5, 2, 2.5), "seal", split=False, waits=(SEALER,)),
        Step("hand-over", "unmask, punch list, hand over", _practice(3, 4, 5), "any", split=True,
             waits=(FINISHED,)),
    )  # fmt: skip


def chain_of(house: House) -> tuple[Step, ...]:
    """The chain of a house, with the hours that closed jobs taught where there are any."""
    taught = dict(house.labour_h)

    def paced(step: Step) -> Step:
        kind = step.id.rsplit("-", 1)[0] if step.place in {"coat", "seal"} else step.id
        return replace(step, labour_h=taught[kind]) if kind in taught else step

    return tuple(map(paced, chain(house.coats)))


def work_min(labour_h: float, *, area_m2: float, people: int, most: int | None = None) -> float:
    """Minutes on the clock for so many hours of work at 1,500 ft², by floor and people.

    A share stays whatever the floor; the rest goes with the area. `most`: more
    people than this do not speed it. A guess.
    """
    hands = min(people, most) if most is not None else people
    scale = FIXED_SHARE + (1 - FIXED_SHARE) * area_m2 / TYPICAL_M2
    return labour_h * HOUR_MIN * scale / hands


def step_min(step: Step, end: str, *, area_m2: float, people: int) -> float:
    """Minutes of `step` at one end of its range: `low`, `likely` or `high`."""
    hours = getattr(step.labour_h, end)
    most = 2 if step.place in {"coat", "seal"} else None
    return work_min(float(hours), area_m2=area_m2, people=people, most=most)


def whole_slots(minutes: float, slot_min: int) -> int:
    """Minutes in slots, rounded up, one at least."""
    return max(1, math.ceil(minutes / slot_min - 1e-9))
