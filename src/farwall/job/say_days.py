"""The calendar in calm lines: what, when, until when it may run, what moved."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from farwall.days.changes import Change
from farwall.days.document import CAUTIONS, day_date, milestone_date, moment
from farwall.days.moved_why import why_moved
from farwall.days.nouns import Calendar, HouseDays, Placed
from farwall.days.practice import MILESTONES
from farwall.days.words import at_words, date_words
from farwall.evidence import source_words
from farwall.job.plan_days import Answer
from farwall.job.say_moved import said_why
from farwall.units import clock_words, counted, ft2_from_m2

_HOLDS = (
    "Read again by the checker: nobody in two places, every fresh floor guarded, no coat on a wet "
    "floor, sealer in its window, no trade inside a lock."
)


def said_days(answer: Answer, *, us: bool, folder: str = "") -> str:
    """The calendar as lines of text: one house by the hour, more of them by the day.

    us: hours by am and pm.
    """
    told = answer.calendar
    lines = list(_one(told, told.houses[0], us=us) if len(told.houses) == 1 else _many(told, us=us))
    lines += _grounds(told)
    lines += answer.notes
    if answer.first is not None:
        lines += ["", *said_changes(answer.changes, answer.calendar, answer.first, us=us)]
    lines += ["", *_checked(answer)]
    if folder:
        lines.append(f"Open {folder}: a page for each house, the tape, days.json beside them.")
    return "\n".join([*lines, *CAUTIONS])


def _one(told: Calendar, house: HouseDays, *, us: bool) -> Iterator[str]:
    ahead = told.question.ahead
    yield _heading(house)
    first = moment(ahead, house.steps[0].start_min).date()
    for days, what in MILESTONES:
        yield f"  {date_words(milestone_date(first, days)):<11} {what}"
    yield ""
    for step in house.steps:
        yield from _step(told, step, us=us)
    yield ""
    yield _lock(told, house, us=us)
    yield from _dues(told, house)


def _step(told: Calendar, step: Placed, *, us: bool) -> Iterator[str]:
    ahead = told.question.ahead
    start, end = moment(ahead, step.start_min), moment(ahead, step.end_min)
    if step.wait and step.ready_min is not None:
        over = moment(ahead, step.ready_min)
        yield f"  {'':<11} {step.wait}: over by {at_words(over, us=us)}"
    until = clock_words(end, us=us) if end.date() == start.date() else at_words(end, us=us)
    low = moment(ahead, step.end_low_min)
    if step.end_high_min is None:
        span = f"done {at_words(low, us=us)} at best, open end at worst"
    else:
        span = f"done {at_words(low, us=us)} to {at_words(moment(ahead, step.end_high_min), us=us)}"
    hours = f"{clock_words(start, us=us)} to {until}"
    yield f"  {date_words(start):<11} {hours:<{21 if us else 15}} {step.name}; {span}"


def _heading(house: HouseDays) -> str:
    area = house.house.area_m2
    return (
        f"{house.house.name}: {ft2_from_m2(area):,.0f} ft² ({area:.0f} m²), "
        f"{house.house.coats} coat{'s' * (house.house.coats != 1)} of stain, "
        f"{house.crew.id} ({house.crew.people} people)."
    )


def _lock(told: Calendar, house: HouseDays, *, us: bool) -> str:
    ahead, high = told.question.ahead, house.lock_end_high_min
    start, end = moment(ahead, house.lock_start_min), moment(ahead, house.lock_end_min)
    late = "no end that can be told" if high is None else at_words(moment(ahead, high), us=us)
    return (
        f"Locked to all other trades from {at_words(start, us=us)} to {at_words(end, us=us)} "
        f"(where drying is slow: {late})."
    )


def _dues(told: Calendar, house: HouseDays) -> Iterator[str]:
    due = house.house.due_day
    if due is not None:
        day = date_words(day_date(told.question.ahead, due))
        late = f": LATE by {counted(house.late_days, 'day')}" if house.late_days else ""
        yield f"Due {day}{late}."
    if house.lost_chance is not None:
        yield (
            f"Chance that a day for stain or sealer is lost to the weather: "
            f"{house.lost_chance * 100:.0f} % (guess, from the days of the file near each date)."
        )


def _many(told: Calendar, *, us: bool) -> Iterator[str]:
    ahead = told.question.ahead
    for crew in told.question.crews:
        mine = [one for one in told.houses if one.crew.id == crew.id]
        yield f"{crew.id}, {crew.people} people, {counted(len(mine), 'house')}"
        for house in mine:
            steps = " · ".join(_by_day(told, house))
            late = f"  LATE by {counted(house.late_days, 'day')}" if house.late_days else ""
            yield f"  {house.house.name}: {steps}{late}"
            end = moment(ahead, house.lock_end_min)
            risk = (
                ""
                if house.lost_chance is None
                else (
                    f"; {house.lost_chance * 100:.0f} % chance to lose a day to the weather (guess)"
                )
            )
            yield f"    other trades out until {at_words(end, us=us)}{risk}"
        yield ""


def _by_day(told: Calendar, house: HouseDays) -> list[str]:
    ahead = told.question.ahead
    by_day: dict[date, list[str]] = {}
    for step in house.steps:
        by_day.setdefault(moment(ahead, step.start_min).date(), []).append(
            step.id.replace("-", " ")
        )
    return [f"{date_words(day)} {', '.join(names)}" for day, names in by_day.items()]


def _grounds(told: Calendar) -> list[str]:
    ahead, proof = told.question.ahead, told.proof
    lines = [f"It rests on {source_words(ahead.source)} ({ahead.rank.value})."]
    if len(told.houses) > 1:
        lines.append(
            f"Cost in days (to hand-over, ten for a day late, chances and moves): "
            f"{proof.cost_days:.1f}; no calendar of the {proof.columns} ways offered comes below "
            f"{proof.bound_days:.1f} (gap {proof.gap_percent:.1f} %; {proof.method})."
        )
    return lines


def said_changes(
    moved: Sequence[Change], told: Calendar, first: Calendar, *, us: bool
) -> list[str]:
    """What moves against the first answer, a line for each house, each move of a day and why."""
    lines = []
    still = [one for one in moved if one.stays]
    for one in moved:
        if one.stays:
            continue
        lines.append(f"{one.house.house.name}: {_hand_over(one)}")
        if one.crew_was != one.house.crew.id:
            lines.append(f"  goes from {one.crew_was} to {one.house.crew.id}")
        ahead = told.question.ahead
        for each in one.moved:
            if each.days:
                was, now = moment(ahead, each.was_min), moment(ahead, each.step.start_min)
                lines.append(
                    f"  {each.step.name}: {at_words(now, us=us)} instead of {at_words(was, us=us)}"
                )
        lines += [f"  {why}" for why in said_why(why_moved(first, told, one), ahead)]
    if not lines:
        return ["Against the first answer no step moves to another day."]
    if still:
        names = ", ".join(one.house.house.name for one in still)
        lines.append(f"No day moves at {names}.")
    return ["Against the first answer:", *lines]


def _hand_over(one: Change) -> str:
    days = one.hand_over_days
    if not days:
        return "handed over on the same day."
    return f"handed over {counted(abs(days), 'day')} {'later' if days > 0 else 'earlier'}."


def _checked(answer: Answer) -> list[str]:
    if not answer.faults:
        return [_HOLDS]
    told = [f"  {one.code} {one.house}: {one.what}" for one in answer.faults[:12]]
    return ["The checker found:", *told]
