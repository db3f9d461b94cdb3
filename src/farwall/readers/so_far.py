"""The day so far, from a file or from a few words: every mistake at once.

Words are for a hand in a wet glove: `now=9:12 done=first.6 tank_l=6 closed=bath:9:40`.
Gallons and litres are both understood.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Sequence
from datetime import datetime
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.facts.so_far import SO_FAR_VERSION, SoFar
from farwall.readers import json_text
from farwall.readers.clock_words import clock_of
from farwall.readers.shape import did_you_mean
from farwall.readers.small_file import judged
from farwall.readers.wording import shown
from farwall.units import clock_words

if TYPE_CHECKING:
    from pydantic import TypeAdapter

Json = dict[str, Any]
_ABOUT = "The day so far cannot be read:"
WORDS = (
    "now", "at_min", "done", "band", "at", "tank_l", "tank_gal", "tub_l", "tub_gal", "mixed_l",
    "mixed_gal", "closed", "at_2", "tank_2_l", "tank_2_gal", "sprayers",
)  # fmt: skip


@cache
def adapter() -> TypeAdapter[SoFar]:
    """Pydantic's checker of a day so far, made once and only when one is read."""
    from pydantic import TypeAdapter

    return TypeAdapter(SoFar)


def read_so_far_values(path: Path) -> Json:
    """The plain values in a file. Raises Refused when it is no JSON object."""
    about = f"{path.name} is not a day so far."
    parsed = json_text.parse(json_text.read_text(path), about=about)
    if not isinstance(parsed.data, dict):
        what = f"It is an object, not {shown(parsed.data)}."
        remedy = "`farwall schema so-far` shows what it holds."
        raise Refused(*parsed.mistakes, Mistake("", what, remedy), about=about)
    if parsed.mistakes:
        raise Refused(*parsed.mistakes, about=about)
    return dict(parsed.data)


def so_far_from(raw: Json) -> SoFar:
    """The day so far in plain values. Raises Refused with every mistake in them."""
    read = judged(raw, SoFar, adapter(), newest=SO_FAR_VERSION)
    found, mistakes = read
    if mistakes or found is None:
        raise Refused(*mistakes, about=_ABOUT)
    return found


def with_words(raw: Json, words: Sequence[str], starts_at: str, *, us: bool = False) -> Json:
    """The values with each `key=value` put in; clock times count from `starts_at`.

    us: a refusal tells hours by am and pm.

    Raises Refused with every word that cannot be used.
    """
    mistakes: list[Mistake] = []
    told: dict[str, str] = {}
    for word in words:
        key, equals, text = word.partition("=")
        if not equals:
            remedy = "Write key=value, such as now=9:12 or closed=bath."
            mistakes.append(Mistake(word[:40], "this is no key=value.", remedy))
        elif key not in WORDS:
            mistakes.append(
                Mistake(key[:40], "this word is not known.", did_you_mean(key, [*WORDS]))
            )
        elif key in told:
            mistakes.append(Mistake(key, "it is told twice.", "Keep one of the two."))
        else:
            told[key] = text
    minutes = _minutes_from(starts_at, us=us)
    for key, text in told.items():
        try:
            raw = {**raw, **_value(key, text.strip(), minutes)}
        except ValueError as error:
            mistakes.append(Mistake(key, f"{error!s}.", _SUCH[key]))
    if {"now", "at_min"} <= set(told):
        mistakes.append(Mistake("now", "at_min is told as well.", "Keep one of the two."))
    if mistakes:
        raise Refused(*mistakes, about=_ABOUT)
    return raw


_LITRES = "Such as tank_l=6 or tank_gal=1.5."
_SUCH = {
    "now": "Such as now=9:12 or now=1:30pm, the clock on the wall; on a later day "
    "now=2026-05-15T09:12.",
    "at_min": "Such as at_min=42, minutes from the start of the plan.",
    "done": "Such as done=1.6.4, the last band done, done=1.6, the last field, or done=none.",
    "band": "Such as band=first.6.5, the band that is being sprayed.",
    "at": "Such as at=3.2,1.5, metres.",
    "closed": "Such as closed=bath or closed=bath:9:40 or closed=bath:65, rooms parted by commas.",
    "at_2": "Such as at_2=3.2,1.5, metres: where the second sprayer stands.",
    "sprayers": "Such as sprayers=1: the second leaves, the first goes on.",
    **dict.fromkeys(("tank_l", "tank_gal", "tub_l", "tub_gal", "mixed_l", "mixed_gal"), _LITRES),
    **dict.fromkeys(("tank_2_l", "tank_2_gal"), "Such as tank_2_l=6: the second's tank."),
}

Minutes = Callable[[str], float]
_MOMENT = re.compile(r"\d{4}-\d")


def _minutes_from(starts_at: str, *, us: bool) -> Minutes:
    start = datetime.fromisoformat(starts_at)

    def minutes(text: str) -> float:
        clock = clock_of(text)
        if clock is None:
            return _of_another_day(text, start) if _MOMENT.match(text) else _number(text)
        passed = (clock.hour - start.hour) * 60 + clock.minute - start.minute - start.second / 60
        if passed < 0 and 1 <= clock.hour <= 6 and not clock.half_told:
            passed += 12 * 60  # twelve-hour clocks: 1:30 is in the afternoon
        if passed < 0:
            begins = clock_words(start, us=us)
            raise ValueError(f"{text} is before the start of the plan, {begins}")
        return passed

    return minutes


def _of_another_day(text: str, start: datetime) -> float:
    """Minutes to a moment with its date; without an offset in that of the plan."""
    try:
        moment = datetime.fromisoformat(text)
    except ValueError:
        raise ValueError(f"{text[:40]} is no date and time") from None
    moment = moment if moment.tzinfo is not None else moment.replace(tzinfo=start.tzinfo)
    passed = (moment - start).total_seconds() / 60
    if passed < 0:
        raise ValueError(f"{text[:40]} is before the start of the plan")
    return passed


def _value(key: str, text: str, minutes: Minutes) -> Json:
    if key in {"now", "at_min"}:
        return {"at_min": minutes(text) if key == "now" else _number(text)}
    if key == "done" and text == "none":
        return {"nothing_done": True}
    if key == "done":
        return {"done_up_to": _named(text)}
    if key == "band":
        return {"in_hand": {"id": _named(text)}}
    if key == "closed":
        return {"closed": [_closed(part.strip(), minutes) for part in text.split(",")]}
    if key == "sprayers":
        if text not in {"1", "2"}:
            raise ValueError(f"{text[:40] or 'nothing'} is neither 1 nor 2")
        return {"sprayers": int(text)}
    if key in {"at", "at_2"}:
        parts = text.split(",")
        if len(parts) != 2:
            raise ValueError(f"{text or 'nothing'} is not two numbers")
        return {key: [_number(part) for part in parts]}
    return {key: _number(text)}


def _closed(text: str, minutes: Minutes) -> Json:
    room, colon, until = text.partition(":")
    return {"room": _named(room), **({"until_min": minutes(until)} if colon else {})}


def _named(text: str) -> str:
    if not text:
        raise ValueError("nothing is named")
    return text


def _number(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        raise ValueError(f"{text[:40] or 'nothing'} is not a number") from None
    if not math.isfinite(value) or abs(value) > 1e6:
        raise ValueError(f"{text[:40]} is out of range")
    return value
