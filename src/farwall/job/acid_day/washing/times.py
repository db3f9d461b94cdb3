"""When washing may begin, how long a film stays wet, how fast people are. Pure."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta

from farwall.air.conditions import Conditions
from farwall.air.film import film_drying
from farwall.days.work_hours import DAY_MIN, EVENING_MIN, WORK_FROM_MIN
from farwall.facts.plan import Plan
from farwall.job.acid_day.washing.noun import Ends
from farwall.nouns import dataclass
from farwall.units import M2_PER_FT2

_WAITS = ("dry to neutralise", "dwell")
MAN_HOUR_M2 = tuple(one * M2_PER_FT2 for one in (50, 90, 150))
"""Neutralised, scrubbed and rinsed in an hour of one man, all passes: common practice."""
SCRUB_M2_MIN = tuple(one * M2_PER_FT2 / 60 for one in (375, 560, 750))
"""One pass of a slow machine: 375 to 750 ft²/h of scrubbing [issa-times]; the middle is ours."""
VACUUM_M2_MIN = (2.0, 3.0, 4.5)
"""A wet vacuum with a floor tool: a guess until it is told."""
WET_M2_MIN = 12.0
"""Floor wetted by hose or can in a minute: a guess."""
EDGE_M_H = (25.0, 45.0, 80.0)
"""Edge scrubbed by hand with a brush in an hour, 80 to 260 ft, all passes: a guess."""
DWELL_MIN = 10.0
"""Neutraliser stands 5 to 10 minutes, till the fizz stops: common practice."""
THIN_MM = 0.15
"""Film on the high spots of a wetted floor, which dry first: a guess."""
IN_HAND = 0.5
"""Share of the time to dry that may pass before it is taken up: as with bands of stain."""


def free_min(plan: Plan) -> Ends:
    """When dwell and drying are over, in minutes of the plan. The later of the two at each end."""
    last = plan.inputs.coats[-1].id if plan.inputs.coats else ""
    ends = max((one.end_min for one in plan.fields if one.coat == last), default=0.0)
    waits = [one for one in plan.clocks if one.coat == last and one.name in _WAITS]

    def at(key: str) -> float | None:
        told = [
            None if getattr(one, key) is None
            else getattr(one, key) + (ends if one.begins_min is None else one.begins_min)
            for one in waits
        ]  # fmt: skip
        return None if None in told else max([one for one in told if one is not None], default=ends)

    return Ends(at("low_min"), at("likely_min"), at("high_min"))


def in_working_day(free: float | None, starts_at: datetime, lasts_min: float) -> float | None:
    """The first minute from `free` on at which work may begin and be done by the evening.

    Between 7:30 and 18:30; what is longer than a day begins in a morning. As the calendar has it.
    """
    if free is None:
        return None
    moment = starts_at + timedelta(minutes=free)
    of_day = moment.hour * 60.0 + moment.minute + moment.second / 60
    lasts = min(lasts_min, EVENING_MIN - WORK_FROM_MIN)
    late = of_day + lasts > EVENING_MIN and of_day > WORK_FROM_MIN
    return free + max(WORK_FROM_MIN + (DAY_MIN if late else 0.0) - of_day, 0.0)


@dataclass(frozen=True)
class Pace:
    """Floor scrubbed and taken up in a minute [m²/min], as told, else what is usual."""

    scrub: Ends
    vacuum: Ends

    @classmethod
    def of(cls, scrub_m2_min: float | None, vacuum_m2_min: float | None) -> Pace:
        """The paces of a job."""
        return cls(_pace(scrub_m2_min, SCRUB_M2_MIN), _pace(vacuum_m2_min, VACUUM_M2_MIN))


def _pace(told: float | None, usual: tuple[float, ...]) -> Ends:
    return Ends(*usual) if told is None else Ends(told, told, told)


def minutes(area_m2: float, pace: Ends) -> Ends:
    """Minutes for an area, quick to slow."""
    assert pace.low is not None
    assert pace.likely is not None
    assert pace.high is not None
    return Ends(area_m2 / pace.high, area_m2 / pace.likely, area_m2 / pace.low)


def dries_min(conditions: Conditions) -> float | None:
    """Minutes in which high spots of a wet floor may be dry, evaporation at its quickest.

    What the slab drinks is left out: it is wet through by then.
    """
    return film_drying(conditions, film_mm=THIN_MM).low_min


def wet_at_once(dries: float | None, pace: Pace, area_m2: float) -> tuple[float, float]:
    """Floor to wet at once for a scrub and for a rinse [m²]: its first spot is dry to the touch no
    sooner than the vacuum has come by, half of the time kept in hand. At most the room, at least
    one square metre.

    A scrub: wetted, left 10 minutes, scrubbed, taken up. A rinse: wetted, taken up.
    """
    if dries is None:
        return area_m2, area_m2
    budget = dries * IN_HAND
    assert pace.scrub.likely is not None
    assert pace.vacuum.likely is not None
    up = 1 / pace.vacuum.likely
    scrub = max(budget - DWELL_MIN, 0.0) / (1 / WET_M2_MIN + 1 / pace.scrub.likely + up)
    rinse = budget / (1 / WET_M2_MIN + up)
    least = min(1.0, area_m2)
    return max(min(scrub, area_m2), least), max(min(rinse, area_m2), least)


def scaled(area_m2: float, per: tuple[float, ...]) -> Ends:
    """Hours for an area or length at three paces, quick to slow."""
    low, likely, high = per
    return Ends(area_m2 / high, area_m2 / likely, area_m2 / low)


def summed(parts: list[Ends]) -> Ends:
    """End by end; None where one has none."""

    def add(key: Callable[[Ends], float | None]) -> float | None:
        told = [key(one) for one in parts]
        return None if None in told else sum(one for one in told if one is not None)

    return Ends(add(lambda e: e.low), add(lambda e: e.likely), add(lambda e: e.high))
