"""Whether what a job says of its people agrees with itself: days that are days, names told once."""

from __future__ import annotations

import re
from collections.abc import Iterator
from datetime import date

from farwall.errors import Mistake
from farwall.readers.json_text import Place, place_text
from farwall.readers.wording import shown

_DAYS = ("fit_tested", "cleared", "trained", "exposure_settled")
_SHAPE = re.compile(r"\d{4}-\d{2}-\d{2}")


def people_mistakes(raw: dict[str, object]) -> Iterator[Mistake]:
    """Days that are none, and two people with one id or one name."""
    listed = raw.get("workers")
    seen: dict[str, int] = {}
    for number, worker in enumerate(listed if isinstance(listed, list) else []):
        if not isinstance(worker, dict):
            continue
        at = ("workers", number)
        yield from _days(worker, _DAYS, at)
        pair = worker.get("cartridge")
        if isinstance(pair, dict):
            yield from _days(pair, ("opened",), (*at, "cartridge"))
        yield from _twice(worker, number, seen)


def _days(row: dict[str, object], keys: tuple[str, ...], at: Place) -> Iterator[Mistake]:
    for key in keys:
        told = row.get(key)
        if isinstance(told, str) and told and not _is_day(told):
            what = f"{shown(told)} is no day."
            yield Mistake(place_text((*at, key)), what, "Write it such as 2027-05-04.")


def _is_day(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return _SHAPE.fullmatch(text) is not None


def _twice(worker: dict[str, object], number: int, seen: dict[str, int]) -> Iterator[Mistake]:
    """The log names people by id or name: each may mean one person only."""
    names = {
        told.strip().casefold()
        for key in ("id", "name")
        if isinstance(told := worker.get(key), str) and told.strip()
    }
    for name in sorted(names):
        if name in seen:
            what = f"workers[{seen[name]}] is called so already."
            remedy = "Tell them apart: the log names people so."
            yield Mistake(place_text(("workers", number)), what, remedy)
            return
    seen.update(dict.fromkeys(names, number))
