"""The questions of a call-back: their keys, their answers, and a call read from `key=value`."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from datetime import date

from farwall.errors import Mistake, Refused
from farwall.job.call_back.noun import Call
from farwall.nouns import dataclass

UNKNOWN = "unknown"
_DAYS_A_MONTH = 30.44


@dataclass(frozen=True)
class Question:
    """A question on the telephone: its key, its words, its answers (none: written freely)."""

    key: str
    words: str
    answers: tuple[str, ...] = ()


QUESTIONS: tuple[Question, ...] = (
    Question("look", "What does it look like?", (
        "haze", "footprints", "peeling", "dull", "white salts", "mat marks", "spots", "powder",
        "scratches", "colour", "lines", "crack", "other",
    )),
    Question("when", "Since when? A day, or months since hand-over."),
    Question("room", "In which room?"),
    Question("where", "Where in it?", (
        "door", "window", "lanes", "wet room", "walls", "joints", "under something", "spot",
        "all over",
    )),
    Question("wet", "Was it wet there: a leak, wet shoes, plants, standing water?", ("yes", "no")),
    Question("cleaner", "What is it cleaned with?", (
        "water", "neutral", "ammonia", "bleach", "vinegar", "pine", "solvent", "steam", "other",
    )),
    Question("rug", "Does a rug, mat or rubber foot lie or stand there?", (
        "none", "breathable", "rubber",
    )),
    Question("photo", "Is there a photograph, from standing and low towards the window?", (
        "yes", "no",
    )),
)  # fmt: skip
"""Five questions and a photograph [common practice, no source], and in which room."""
BY_KEY = {one.key: one for one in QUESTIONS}
KEYS = (*BY_KEY, "months", "winter")


def call_from(
    told: Sequence[str], rooms: Mapping[str, str], *, handed_over: date | None = None,
    north: bool | None = None,
) -> Call:  # fmt: skip
    """The call as told in `key=value`; `unknown` or nothing leaves a question open.

    rooms: labels by id, either names a room · handed_over: day that months count from · north:
    whether the house stands north of the equator, None where nobody said. Raises Refused with all
    that cannot be understood.
    """
    pairs, mistakes = _pairs(told)
    values: dict[str, str] = {}
    for key, value in pairs.items():
        try:
            values[key] = _answer(key, value, rooms)
        except Refused as no:
            mistakes += no.mistakes
    months, winter = None, values.get("winter", "")
    try:
        months, winter = _times(values, handed_over, north=north)
    except Refused as no:
        mistakes += no.mistakes
    if mistakes:
        raise Refused(*mistakes)
    kept = {key: one for key, one in values.items() if key not in {"when", "months", "winter"}}
    if kept.get("look") == "other":
        kept["look"] = ""
    return Call(**kept, months=months, winter=winter)


def _pairs(told: Sequence[str]) -> tuple[dict[str, str], list[Mistake]]:
    pairs: dict[str, str] = {}
    mistakes: list[Mistake] = []
    for one in told:
        key, equals, value = one.partition("=")
        if not equals or key not in KEYS:
            mistakes.append(
                Mistake(one, "is no answer to a question.", f"Say key=value: {', '.join(KEYS)}.")
            )
        elif key in pairs:
            mistakes.append(Mistake(key, "is told twice.", "Say it once."))
        else:
            pairs[key] = value.strip()
    return pairs, mistakes


def _answer(key: str, value: str, rooms: Mapping[str, str]) -> str:
    """The word of an answer. Raises Refused."""
    if value in {"", UNKNOWN}:
        return ""
    if key == "room":
        return _room(value, rooms)
    answers = ("yes", "no") if key == "winter" else BY_KEY[key].answers if key in BY_KEY else ()
    if answers and value not in answers:
        raise Refused(
            Mistake(key, f"{value} is no answer.", f"One of {', '.join((*answers, UNKNOWN))}.")
        )
    return value


def _room(value: str, rooms: Mapping[str, str]) -> str:
    by_name = {label: id_ for id_, label in rooms.items()}
    found = value if value in rooms else by_name.get(value)
    if found is None:
        raise Refused(Mistake("room", f"there is no {value}.", f"One of {', '.join(rooms)}."))
    return found


def _times(
    values: Mapping[str, str], handed_over: date | None, *, north: bool | None
) -> tuple[float | None, str]:
    """Months since hand-over, and whether it was winter."""
    winter, months = values.get("winter", ""), values.get("months", "")
    when = values.get("when", "")
    if not months and when and not _is_day(when):
        months = when
    if months:
        try:
            found = float(months)
        except ValueError:
            found = math.nan
        if not 0 <= found <= 1200:
            raise Refused(Mistake("when", f"{months} is neither a day nor months.", _SUCH))
        return found, winter
    if not when:
        return None, winter
    day = date.fromisoformat(when)
    if not winter and north is not None:
        cold = {12, 1, 2} if north else {6, 7, 8}
        winter = "yes" if day.month in cold else "no"
    if handed_over is None:
        return None, winter
    days = (day - handed_over).days
    if days < 0:
        raise Refused(Mistake("when", f"{when} is before hand-over on {handed_over}.", _SUCH))
    return days / _DAYS_A_MONTH, winter


_SUCH = "Such as 2027-02-11, or 4 months."


def _is_day(text: str) -> bool:
    try:
        date.fromisoformat(text)
    except ValueError:
        return False
    return True
