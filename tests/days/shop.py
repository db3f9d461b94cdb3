"""Small shops for the tests of the calendar: a Monday, mild days, a few houses."""

from __future__ import annotations

from datetime import datetime

from hypothesis import strategies as st

from farwall.air.conditions import Conditions
from farwall.days.hours import hour_ahead, mild
from farwall.days.nouns import Ahead, DayCrew, House, Question
from farwall.days.work_hours import TYPICAL_M2
from farwall.evidence import Rank
from farwall.units import c_from_f

MONDAY = datetime.fromisoformat("2001-01-01T00:00:00-06:00")


def steady(surface_f: float, rh_percent: float, *, days: int = 40) -> Ahead:
    """Days on which slab and air never change, night and day."""
    slab_c = c_from_f(surface_f)
    now = Conditions(surface_c=slab_c, air_c=slab_c, rh_percent=rh_percent)
    return Ahead(MONDAY, (hour_ahead(now),) * (24 * days), Rank.GUESS, "a test")


def shop(
    count: int, *, crews: int = 1, people: int = 2, ahead: Ahead | None = None, **rest: object
) -> Question:
    """So many typical houses, of slightly different floors, all free at once."""
    houses = tuple(
        House(f"house-{n}", f"House {n}", TYPICAL_M2 * (0.9 + 0.05 * n))
        for n in range(1, count + 1)
    )
    vans = tuple(DayCrew(f"crew {n}", people) for n in range(1, crews + 1))
    days = ahead or mild(MONDAY, 40 + 8 * count // crews)
    return Question(houses, vans, days, **rest)  # type: ignore[arg-type]


def typical(ahead: Ahead | None = None) -> Question:
    """One house of 1,500 ft² and a crew of two."""
    house = House("house", "House", TYPICAL_M2)
    return Question((house,), (DayCrew("crew 1"),), ahead or mild(MONDAY, 40))


def at_once(sizes: list[tuple[float, int]], crews: int, people: int) -> Question:
    """Houses of these areas and free days, each due nine days after it is free."""
    houses = tuple(
        House(f"h{n}", f"h{n}", area, free_from_day=free, due_day=free + 9)
        for n, (area, free) in enumerate(sizes)
    )
    vans = tuple(DayCrew(f"c{n}", people) for n in range(crews))
    return Question(houses, vans, mild(MONDAY, 42))


small_shops = st.builds(
    at_once,
    st.lists(st.tuples(st.floats(60, 200), st.integers(0, 10)), min_size=2, max_size=3),
    st.integers(1, 2),
    st.integers(2, 3),
)
