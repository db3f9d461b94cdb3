"""Closed jobs: whatever a firm's log may tell."""

import math
from datetime import date, timedelta

from hypothesis import strategies as st

from farwall.facts.closed import (
    CallBack,
    ClosedJob,
    ColourSeen,
    Rinsed,
    Sprayed,
    TaskHours,
    WaitSeen,
)

FINISHES = ["hard trowel", "trowel", "float", "broom"]


def factors(wide):
    return st.floats(-wide, wide).map(math.exp)


@st.composite
def closed_jobs(draw, number, *, by=1.0, hours_by=1.0):
    """A job about common practice, its litres and its hours times `by` and `hours_by`."""
    finish = draw(st.sampled_from([*FINISHES, None]))
    thirst, pace = draw(factors(0.3)), draw(factors(0.3))
    sprayed = []
    for coat in (1, 2):
        for field in range(draw(st.integers(0, 4))):
            area_m2 = draw(st.floats(4, 60))
            usual = area_m2 / (4.91 if coat == 1 else 7.36)
            sprayed.append(
                Sprayed(
                    coat=f"coat-{coat}",
                    field=f"field-{field}",
                    area_m2=area_m2,
                    used_l=usual * thirst * draw(factors(0.1)) * by,
                    planned_l=usual,
                    number=coat,
                    sampled=draw(st.booleans()),
                    finish=finish,
                    drop_s=draw(st.none() | st.floats(3, 60)),
                    person=draw(st.sampled_from(["", "Ada", "Bo"])),
                    spray_min=area_m2 / 2.79 * pace,
                )
            )
    return ClosedJob(
        version=1,
        id=f"job-{number}",
        closed_on=(date(2027, 1, 4) + timedelta(days=9 * number)).isoformat(),
        sprayed=tuple(sprayed),
        waits=tuple(
            WaitSeen("dry to recoat", draw(factors(0.4)), draw(st.booleans()), room=f"room-{n}")
            for n in range(draw(st.integers(0, 3)))
        ),
        hours=(TaskHours("rinse", 8.4 * draw(factors(0.3)) * hours_by, 139.4),),
        rinsed=(Rinsed(draw(st.integers(3, 6)), finish),),
        colour=(ColourSeen(draw(st.sampled_from(["lighter", "right", "darker"])), None, "north"),),
        called_back=(CallBack("residue"),) if draw(st.booleans()) else (),
    )


@st.composite
def firms(draw, least=0, most=8):
    return [draw(closed_jobs(n)) for n in range(draw(st.integers(least, most)))]
