"""Why a house moved, in sentences."""

from __future__ import annotations

from farwall.days.document import day_date
from farwall.days.moved_why import Against, Late, Why
from farwall.days.nouns import Ahead
from farwall.days.words import date_words

_HOURS = {
    "any": "working hours",
    "coat": "hours in which stain may go down",
    "rinse": "working hours",
    "seal": "hours in which sealer may go down",
}


def said_why(why: Why, ahead: Ahead) -> list[str]:
    """What drove it off its days first, then what stands against the days between."""
    told = [
        f"The {one.trade} has the house on {_day(ahead, one.day)}, and it is shut to all others "
        "from its cleaning to a day after its sealing."
        for one in why.trades
    ]
    told += [
        f"Rain on {_day(ahead, day)}: no stain and no sealer, and all dries slower."
        for day in why.rain
    ]
    if not told:
        told = ["Other houses moved, and their crews with them."]
    if [one.kind for one, _ in why.against] != ["trade"]:  # that was said
        told += [_against(one, count, why.days) for one, count in why.against]
    return told + [_late(ahead, one) for one in why.late]


def _late(ahead: Ahead, one: Late) -> str:
    ready, start = _day(ahead, one.ready), _day(ahead, one.start)
    could = f"“{one.step.name}” could begin on {ready} by its waits; "
    if one.kind == "crew":
        return could + f"it is held back until {start} for the crew."
    if one.kind == "rest":
        return could + f"until {start} what follows it would find no hours that suffice."
    return could + f"until {start} it finds no {_HOURS[one.step.place]} that suffice."


def _against(one: Against, count: int, days: int) -> str:
    begun = f"Begun on {count} of the {days} working days between, "
    if one.kind == "trade":
        return begun + "it would still be shut when the trade comes."
    if one.kind == "crew":
        return begun + "it would want a crew that is at another house."
    if one.step is None:
        return begun + "it would be ready no sooner, or be shut longer."
    if one.kind == "window":
        return begun + f"“{one.step.name}” would come later than the step before lets it."
    if one.kind == "waits":
        return begun + f"“{one.step.name}” would wait days for {_HOURS[one.step.place]}."
    return begun + f"“{one.step.name}” would find no {_HOURS[one.step.place]} that suffice."


def _day(ahead: Ahead, day: int) -> str:
    return date_words(day_date(ahead, day))
