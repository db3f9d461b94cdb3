"""A tested water beside the limits that somebody named: what may be said of it, and what not.

It never says that a water may go: that is said by whoever named the limits.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Literal

from farwall.acid.waste_limits import FEDERAL, corrosive_by_ph, toxic_by_chromium
from farwall.acid.worn import day_told
from farwall.facts.discharge import OfficialWord, WasteWay, WaterTest
from farwall.nouns import dataclass

VerdictWord = Literal["not allowed to say", "below every limit that was named", "above"]
BELOW: VerdictWord = "below every limit that was named"
SILENT: VerdictWord = "not allowed to say"
REFUSED: WasteWay = "not allowed"
LAPSES_AFTER_DAYS = 365
"""A word without a last day is asked for again after a year: a guess of the house."""
_TESTED = {
    "copper_mg_l": "copper", "chromium_mg_l": "chromium", "chromium_vi_mg_l": "chromium(VI)",
    "manganese_mg_l": "manganese", "iron_mg_l": "iron", "zinc_mg_l": "zinc",
    "solids_mg_l": "solids",
}  # fmt: skip


@dataclass(frozen=True)
class Compared:
    """What a test comes to against one word: `word`, and why in short sentences."""

    word: VerdictWord
    why: tuple[str, ...]


def faults_of(word: OfficialWord, day: date | None = None) -> tuple[str, ...]:
    """What keeps a word from being leaned on: no name, office or day, not in writing, run out.

    day: of the work; None where nobody told it, then no word has run out. Days that cannot be
    read count as not told.
    """
    found = []
    if not word.who.strip():
        found.append("Nobody is named who said it.")
    if not word.office.strip():
        found.append("No office is named.")
    said, until = day_told(word.on), day_told(word.until)
    if said is None:
        found.append("No day is named on which it was said.")
    if word.way == "sewer" and not word.in_writing:
        found.append("It is not in writing.")
    if day is not None and until is not None and until < day:
        found.append(f"It ran out on {until.isoformat()}.")
    elif (
        day is not None
        and said is not None
        and until is None
        and (day - said > timedelta(days=LAPSES_AFTER_DAYS))
    ):
        found.append(f"It is of {said.isoformat()}, more than a year old: ask again.")
    return tuple(found)


def compared(test: WaterTest, word: OfficialWord, day: date | None = None) -> Compared:
    """A test against the limits of a word. A figure at its limit is not below it.

    `above` wins over everything: one limit that is not kept is enough. `not allowed to say` where
    the word cannot be leaned on, names no limit, or names one that was not tested.
    """
    if word.way == REFUSED:
        return Compared(SILENT, ("It was not allowed.",))
    above = tuple(_above(test, word))
    if above:
        return Compared("above", above)
    silent = (*faults_of(word, day), *_untested(test, word))
    if silent:
        return Compared(SILENT, silent)
    return Compared(BELOW, ())


def hazards_of(test: WaterTest) -> tuple[str, ...]:
    """What of a test speaks for hazardous waste by the federal rules; the agency decides."""
    found = []
    if test.found_ph is not None and corrosive_by_ph(test.found_ph):
        found.append(
            f"Its pH is {test.found_ph:g}: at or below 2, or at or above 12.5, is hazardous "
            "waste, D002."
        )
    tested = [one for one in (test.chromium_mg_l, test.chromium_vi_mg_l) if one is not None]
    if tested and toxic_by_chromium(max(tested)):
        found.append(f"Chromium {max(tested):g} mg/L: 5.0 or more is hazardous waste, D007.")
    return tuple(found)


def _above(test: WaterTest, word: OfficialWord) -> Iterator[str]:
    least, most, found = _least_ph(word), word.limits.most_ph, test.found_ph
    if found is not None and least is not None and found <= least:
        yield f"Its pH is {found:g}, and at least {least:g} is asked."
    if found is not None and most is not None and found >= most:
        yield f"Its pH is {found:g}, and at most {most:g} is asked."
    for key, name in _TESTED.items():
        limit, has = getattr(word.limits, key), getattr(test, key)
        if limit is not None and has is not None and has >= limit:
            yield f"{_large(name)} {has:g} against {limit:g}."


def _untested(test: WaterTest, word: OfficialWord) -> Iterator[str]:
    limits = word.limits
    named = [(key, name) for key, name in _TESTED.items() if getattr(limits, key) is not None]
    if not named and limits.least_ph is None and limits.most_ph is None:
        yield "No limit was named."
    if test.found_ph is None and (_least_ph(word) is not None or limits.most_ph is not None):
        yield "Its pH was not tested."
    yield from (
        f"{_large(name)} was not tested." for key, name in named if getattr(test, key) is None
    )


def _large(name: str) -> str:
    return name[0].upper() + name[1:]


def _least_ph(word: OfficialWord) -> float | None:
    """The lowest pH that holds: for a sewer never below the federal 5.0."""
    if word.way != "sewer":
        return word.limits.least_ph
    return max(word.limits.least_ph or 0.0, FEDERAL["sewer-ph"].value)
