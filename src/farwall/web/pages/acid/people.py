"""The people of an acid day as the page shows them, in the language of the request."""

from __future__ import annotations

from typing import Any

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.people.say import ADVISES, EYEWASH
from farwall.papers.acid.people_words import (
    every_line,
    keep_out_lines,
    look_lines,
    people_clock,
    person_lines,
)
from farwall.phrasebook import told
from farwall.web.pages.speaking import speaking_here


def people_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """Words of the part, stops first."""
    people, plan = day.people, ground.plan
    fumes = day.fumes if day.fumes.sprayer is not None else None
    clock = people_clock(plan, ground.job.wishes.units)
    with speaking_here(ground.job):
        return {
            "stops": [told(one) for one in people.stops],
            "rows": [
                {"name": one.name, "lines": person_lines(one, clock, fumes)}
                for one in people.people
            ],
            "asks": [told(one) for one in people.warnings],
            "every": every_line(people),
            "looks": [
                (head, [*times[:-1], f"{times[-1]} {told('out')}"] if times else [])
                for head, times in look_lines(people, plan, clock)
            ],
            "eyewash": told(EYEWASH),
            "keep_out": keep_out_lines(people, clock, fumes),
            "aid": [(told(one.harm), told(one.do)) for one in people.first_aid],
            "numbers": [(told(one.what), one.value) for one in people.numbers if one.value],
            "advises": told(ADVISES),
        }
