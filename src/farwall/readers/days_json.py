"""A calendar in a file, for the papers and the price of one of its houses; refused with faults."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date, datetime
from pathlib import Path
from typing import Any

from farwall.days.check import check_days
from farwall.errors import Mistake, Refused
from farwall.readers import json_text
from farwall.readers.shape import did_you_mean

MOST_TOLD = 12
"""Faults that are told; a calendar that was spoilt has hundreds."""


def read_days(path: Path, house: str) -> dict[str, Any]:
    """The calendar document of a days.json in which `house` stands.

    Raises Refused, with all that is wrong: no calendar, a fault that the checker finds in it, no
    such house, or a part missing that a paper of the house is written from.
    """
    about = f"{path.name} is no calendar to go by:"
    parsed = json_text.parse(json_text.read_text(path), about=about)
    if parsed.mistakes or not isinstance(parsed.data, dict):
        none = Mistake("", "it is no JSON object.", "Name the days.json of `farwall days --out`.")
        raise Refused(*(parsed.mistakes or (none,)), about=about)
    told: dict[str, Any] = parsed.data
    mistakes = [
        Mistake(f"{one.house} {one.at}".strip(), one.what, "Make it anew with `farwall days`.")
        for one in check_days(told)
    ]
    mistakes = mistakes or list(_lacking(told, house))
    if mistakes:
        raise Refused(*mistakes[:MOST_TOLD], about=about)
    return told


def _lacking(told: Mapping[str, Any], house: str) -> Iterator[Mistake]:
    """What a calendar that holds still lacks for the papers of the house."""
    ids = [str(one["id"]) for one in told["houses"]]
    if house not in ids:
        near = did_you_mean(house, ids) or f"There are: {', '.join(ids[:8])}."
        yield Mistake("houses", f"{house} does not stand in it.", near)
        return
    found = told["houses"][ids.index(house)]
    try:
        _said(found)
    except (KeyError, TypeError, ValueError, AttributeError) as trouble:
        what = f"the house cannot be written out: {type(trouble).__name__} {trouble}."
        yield Mistake(house, what, "Make it anew with `farwall days`.")


def _said(house: Mapping[str, Any]) -> None:
    """Read what the schedule says of a house beside what the checker reads."""
    for step in house["steps"]:
        _words(step["name"], step["wait"])
        if step["ends_high_at"] is not None:
            datetime.fromisoformat(step["ends_high_at"])
    if house["lock"]["ends_high_at"] is not None:
        datetime.fromisoformat(house["lock"]["ends_high_at"])
    for one in house["milestones"]:
        date.fromisoformat(one["date"])
        _words(one["what"])


def _words(*texts: object) -> None:
    for one in texts:
        if not isinstance(one, str):
            raise TypeError(f"{one!r:.40} is no text")
