"""Whether what a job says of its waste water is dated by days, and its figures agree."""

from __future__ import annotations

import datetime
from collections.abc import Iterator

from farwall.errors import Mistake
from farwall.facts.contents import CHROMATES
from farwall.readers.json_text import Place, place_text
from farwall.readers.wording import shown

_DAY = "Write year, month and day, such as 2027-05-04, or leave it out."


def discharge_mistakes(raw: dict[str, object]) -> Iterator[Mistake]:
    """Days that are none, limits and shares the wrong way round, more hexavalent than all chromium,
    a sheet that lists dichromate and is said to name no chromate."""
    discharge = raw.get("discharge")
    if isinstance(discharge, dict):
        for place, word in _rows(discharge, "discharge", "words"):
            yield from _days(word, place, "on", "until")
            limits = word.get("limits")
            if isinstance(limits, dict):
                yield from _turned(limits, (*place, "limits"), "least_ph", "most_ph")
        for place, test in _rows(discharge, "discharge", "tests"):
            yield from _days(test, place, "on")
            yield from _hexavalent(test, place)
    for place, stain in _rows(raw, "stains"):
        yield from _days(stain, place, "sheet_read")
        yield from _contents(stain, place)


def _rows(raw: dict[str, object], *path: str) -> list[tuple[Place, dict[str, object]]]:
    found = raw.get(path[-1])
    if not isinstance(found, list):
        return []
    return [((*path, n), row) for n, row in enumerate(found) if isinstance(row, dict)]


def _days(row: dict[str, object], place: Place, *keys: str) -> Iterator[Mistake]:
    days: list[datetime.date] = []
    for key in keys:
        text = row.get(key)
        if not isinstance(text, str) or not text:
            continue
        try:
            days.append(datetime.date.fromisoformat(text))
        except ValueError:
            yield Mistake(place_text((*place, key)), f"{shown(text)} is not a day.", _DAY)
    if len(days) == 2 and days[1] < days[0]:
        said = "It ends before the day on which it was said."
        yield Mistake(place_text((*place, keys[1])), said, "Mend one of the two days.")


def _turned(row: dict[str, object], place: Place, low: str, high: str) -> Iterator[Mistake]:
    least, most = row.get(low), row.get(high)
    if _number(least) and _number(most) and least > most:  # type: ignore[operator]
        said = f"{low} is above {high}."
        yield Mistake(place_text((*place, low)), said, "Mend one of the two.")


def _hexavalent(row: dict[str, object], place: Place) -> Iterator[Mistake]:
    six, every = row.get("chromium_vi_mg_l"), row.get("chromium_mg_l")
    if _number(six) and _number(every) and six > every:  # type: ignore[operator]
        said = "There is more hexavalent chromium than chromium of every kind."
        remedy = "Look at the paper again: chromium_mg_l counts every kind."
        yield Mistake(place_text((*place, "chromium_vi_mg_l")), said, remedy)


def _contents(stain: dict[str, object], place: Place) -> Iterator[Mistake]:
    for at, row in _rows(stain, *map(str, place), "contents"):
        where = (*place, "contents", at[-1])
        yield from _turned(row, where, "mass_percent_low", "mass_percent_high")
        if str(row.get("substance")) in CHROMATES and stain.get("chromate") is False:
            said = "The list names a dichromate, and chromate is said not to be on the sheet."
            remedy = "Read the sheet again; a dichromate is hexavalent chromium."
            yield Mistake(place_text((*place, "chromate")), said, remedy)


def _number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)
