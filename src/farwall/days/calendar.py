"""A question in, every house placed by the quarter of an hour out."""

from __future__ import annotations

from farwall.days.chain import End, Walked, links, walk
from farwall.days.clock import PER_DAY, SLOT_MIN, SiteClock, site_clock
from farwall.days.columns import held, lock_slots, lost_chance
from farwall.days.nouns import Calendar, House, HouseDays, Placed, Question
from farwall.days.practice import chain_of
from farwall.days.search import Choice
from farwall.days.solve import settle


def calendar(question: Question, *, exact_s: float = 20.0) -> Calendar:
    """The calendar of these houses and crews, with its proof. Raises as `solve.settle`."""
    settled = settle(question, exact_s=exact_s)
    houses = [
        house_days(question, question.houses[n], choice)
        for n, choice in sorted(settled.choices.items())
    ]
    houses.sort(key=lambda one: (one.steps[0].start_min, one.house.id))
    return Calendar(question, tuple(houses), settled.proof)


def house_days(question: Question, house: House, choice: Choice) -> HouseDays:
    """One house as chosen: its likely steps, and where their ends fall if all goes well or ill."""
    shut = {away.day for away in question.away if away.house == house.id}
    clock = site_clock(question.ahead_of(house), shut)
    crew = question.crews[choice.van]
    likely = _walked(house, crew.people, choice, clock, "likely")
    assert likely is not None, "a column was walked before it was chosen"
    low = _walked(house, crew.people, choice, clock, "low")
    high = _walked(house, crew.people, choice, clock, "high")
    first, last = lock_slots(likely)
    late = 0
    if house.due_day is not None:
        late = max(0, (likely[-1].end - 1) // PER_DAY - house.due_day)
    return HouseDays(
        house=house,
        crew=crew,
        steps=tuple(
            _placed(one, low[n] if low else one, high[n] if high else None)
            for n, one in enumerate(likely)
        ),
        lock_start_min=float(first * SLOT_MIN),
        lock_end_min=float(last * SLOT_MIN),
        lock_end_high_min=float(max(last, lock_slots(high)[1]) * SLOT_MIN) if high else None,
        lost_chance=lost_chance(question.ahead_of(house), likely),
        late_days=late,
    )


def _walked(
    house: House, people: int, choice: Choice, clock: SiteClock, end: End
) -> list[Walked] | None:
    steps = links(chain_of(house), clock, area_m2=house.area_m2, people=people, end=end)
    column = choice.way.column
    return walk(steps, column.start, hold=held(column.hold))


def _placed(likely: Walked, low: Walked, high: Walked | None) -> Placed:
    return Placed(
        id=likely.step.id,
        name=likely.step.name,
        start_min=float(likely.start * SLOT_MIN),
        end_min=float(likely.end * SLOT_MIN),
        minutes=float(likely.slots * SLOT_MIN),
        place=likely.step.place,
        split=likely.step.split,
        end_low_min=float(min(low.end, likely.end) * SLOT_MIN),
        end_high_min=None if high is None else float(max(high.end, likely.end) * SLOT_MIN),
        wait=likely.wait,
        ready_min=float(likely.ready * SLOT_MIN) if likely.wait else None,
    )
