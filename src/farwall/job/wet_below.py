"""When a coat may be walked on and sprayed over: surely dry, likely dry, or not in this air. Pure.

The checker holds a coat as dry at the late end of its clock, where that has none at its likely
one, and never where it has neither; what is planned here stands by the same rule.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime, timedelta
from itertools import pairwise

from farwall.days.work_hours import DAY_MIN
from farwall.facts.plan import Clock, Field
from farwall.units import clock_words

HEAT = "Warm the slab and dry the air, by heat that gives off no water, and read both again."
"""Common practice, no source."""


def free_from(begins_min: float, ends_min: float, dry: Clock) -> float:
    """From which minute on the next coat may be sprayed over one that took from `begins_min` to
    `ends_min`, by its clock.

    A coat that is not sure to dry within a day is gone over at the same hour tomorrow, and not
    before it is likely dry.
    """
    if dry.high_min is not None:
        return ends_min + dry.high_min
    likely = 0.0 if dry.likely_min is None else dry.likely_min
    return max(begins_min + DAY_MIN, ends_min + likely)


def stays_wet(dry: Clock) -> bool:
    """Whether the coat is not likely to be dry within the longest that its clock looks ahead.

    A slab that may not be stained at all has a clock without a low end, and another reason.
    """
    return dry.likely_min is None and dry.low_min > 0


def refused_over(number: int) -> tuple[str, ...]:
    """Why nothing is sprayed over coat `number`, which stays wet, and what would change it."""
    return (f"In this air coat {number} is not dry within a day, and over it nothing goes.", HEAT)


def wet_warnings(
    fields: Sequence[Field],
    clocks: Sequence[Clock],
    coats: Sequence[str],
    starts_at: datetime,
    *,
    us: bool,
) -> Iterator[str]:
    """Which coats are planned over one that is likely dry by then, but not sure to be.

    clocks: one "dry to …" of each coat first. coats: ids in their order.
    """
    for number, (below, above) in enumerate(pairwise(coats), 1):
        dry = next((one for one in clocks if one.coat == below), None)
        own = [field for field in fields if field.coat == above]
        if dry is None or dry.high_min is not None or dry.likely_min is None or not own:
            continue
        begins = min(field.start_min for field in own)
        ends = max(field.end_min for field in fields if field.coat == below)
        yield (
            f"Coat {number} is not sure to be dry when coat {number + 1} begins, at "
            f"{_moment(begins, starts_at, us=us)}: likely from "
            f"{_moment(ends + dry.likely_min, starts_at, us=us)}, in this air with no late end. "
            "Look and touch in each room first."
        )


def _moment(at_min: float, starts_at: datetime, *, us: bool) -> str:
    moment = starts_at + timedelta(minutes=at_min)
    day = (moment.date() - starts_at.date()).days + 1
    return f"{clock_words(moment, us=us)} of day {day}"
