"""The chain of a house with its hours of work: common practice, no source.

Hours of work are those of a typical floor of 1,500 ft² done by two people:
protect and mask 8-14 h, clean and dry 8-16, stain coats 3-6, judging 1-2,
neutralise, scrub and rinse 10-18, seal and finish 6-10, unmask, punch and
hand over 3-5. How they part within a line is a guess. What is waited for
between them stands in `days.waits`.
"""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import replace

from farwall.days.nouns import House, Place, Step, Wait
from farwall.days.waits import usual_waits
from farwall.days.work_hours import DAY_MIN, RINSE_LABOUR_H, work_min
from farwall.evidence import Rank, Span
from farwall.facts.default_table import OUR_GUESS, PRACTICE

LOCK_AFTER_SEAL_MIN = DAY_MIN
LONG_LOCK_DAYS = 21
"""From the first step to the last; a house that is shut for longer might as well begin later."""
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


FIRST_COAT, BEFORE_COATS = "coat-1", "mask"
"""Ids of the first coat of every chain, and of what is done last before it."""


def chain(
    coats: int, *, seal_coats: int = 2, waits: Mapping[str, tuple[Wait, ...]] | None = None
) -> tuple[Step, ...]:
    """The steps of a house with so many coats of stain and sealer, in order.

    waits: by the id of the step that they hold back; the usual ones where they are left out.
    """
    usual = usual_waits(coats, seal_coats)
    told = waits or {}

    def step(name: str, words: str, hours: Span, place: Place, *, split: bool = False) -> Step:
        return Step(name, words, hours, place, split, told.get(name, usual.get(name, ())))

    return (
        step("clean", "protect and clean", _guess(11.2, 16.4, 21.6), "any", split=True),
        step("mask", "mask, last drop map", _guess(4.8, 6.6, 8.4), "any", split=True),
        *(
            step(f"coat-{n}", f"coat {n}", _guess(1.5, 2.25, 3), "coat")
            for n in range(1, coats + 1)
        ),
        step("neutralise", "judge, neutralise, scrub, rinse", RINSE_LABOUR_H, "rinse"),
        *(
            step(f"seal-{n}", f"sealer, coat {n}", _guess(2.25, 3, 3.75), "seal")
            for n in range(1, seal_coats + 1)
        ),
        step("finish", "finish", _guess(1.5, 2, 2.5), "seal"),
        step("hand-over", "unmask, punch list, hand over", _practice(3, 4, 5), "any", split=True),
    )


def chain_of(house: House) -> tuple[Step, ...]:
    """The steps of this house, with its own waits, and the hours that closed jobs taught."""
    taught, held = dict(house.labour_h), dict(house.not_before_min)

    def paced(step: Step) -> Step:
        if step.id in held:
            step = replace(step, not_before_min=held[step.id])
        kind = step.id.rsplit("-", 1)[0] if step.place in {"coat", "seal"} else step.id
        return replace(step, labour_h=taught[kind]) if kind in taught else step

    steps = chain(house.coats, seal_coats=house.seal_coats, waits=house.waits)
    return tuple(map(paced, steps)) if taught or held else steps


def step_min(step: Step, end: str, *, area_m2: float, people: int) -> float:
    """Minutes of `step` at one end of its range: `low`, `likely` or `high`."""
    hours = getattr(step.labour_h, end)
    most = 2 if step.place in {"coat", "seal"} else None
    return work_min(float(hours), area_m2=area_m2, people=people, most=most)


def whole_slots(minutes: float, slot_min: int) -> int:
    """Minutes in slots, rounded up, one at least."""
    return max(1, math.ceil(minutes / slot_min - 1e-9))
