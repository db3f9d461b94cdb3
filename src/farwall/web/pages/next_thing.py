"""The next thing to do at a house, and when, in a sentence for its line of the list."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.web.pages.days_words import step_name
from farwall.web.pages.log_words import word_name
from farwall.web.pages.when import clock_told, day_told, moment_told
from farwall.web.pages.where_stands import Progress, Standing
from farwall.web.words import said

Json = Mapping[str, Any]
_WAITS = {"rinsed": "dry-down before sealing", "sealed": "next coat of sealer"}
_THEN = {"rinsed": "next-then-seal", "sealed": "next-then-sealed"}


@dataclass(frozen=True)
class Known:
    """What the next thing is read from: now, the house's plan and its part of the calendar."""

    now: datetime
    plan: Json | None = None
    days: Json | None = None
    units: Units = "us"


def next_told(one: Standing, known: Known) -> str:
    """The sentence. A house that was handed over or set aside has nothing to do."""
    if one.word == "aside":
        return said("next-aside")
    if one.line.closed:
        return said("next-done")
    if one.progress is not None:
        return _by_log(one.progress, known)
    if one.planned == one.line.versions and one.no:
        return said("next-no")
    if not one.starts_at:
        return said("next-choose-day")
    if one.planned != one.line.versions:
        return said("next-to-plan")
    return _ahead(one, known)


def _ahead(one: Standing, known: Known) -> str:
    """Nothing was entered: the calendar's next step, else the day that its facts tell."""
    for step in known.days["steps"] if known.days is not None else ():
        at = datetime.fromisoformat(step["starts_at"])
        if at > known.now:
            return said("next-step", what=step_name(step["id"]), when=moment_told(at, known.units))
    at = datetime.fromisoformat(one.starts_at)
    if at < known.now - timedelta(days=1):
        return said("next-day-past", day=day_told(at))
    return said("next-step", what=step_name("coat-1"), when=moment_told(at, known.units))


def _by_log(last: Progress, known: Known) -> str:
    """What follows the last step of the log."""
    word = last.after if last.word == "still-damp" else last.word
    if last.word == "dry":
        return said("next-dry", what=_after_wait(last.after, known, last))
    if word in {"coat-done", *_WAITS}:
        return _dries(word, last, known)
    if last.word == "coat-judged" and last.about.get("next") == "another":
        return said("next-another")
    if last.word in {"coat-judged", "neutralised"}:
        return said("next-neutralise" if last.word == "coat-judged" else "next-rinse")
    at = _when(last.at, known)
    return said("next-go-on", word=word_name(last.word), at=at)


def _dries(word: str, last: Progress, known: Known) -> str:
    """A wait that runs: until when, most likely, and what comes then."""
    then = _after_wait(word, known, last)
    wait = _wait(word, last, known.plan)
    if wait is None or wait.get("likely_min") is None:
        return said("next-dries", then=then)
    low, likely = (last.at + timedelta(minutes=wait[key]) for key in ("low_min", "likely_min"))
    if last.word == "still-damp":
        return said("next-damp", then=then, at=_when(last.at, known))
    return said("next-dries-by", then=then, low=_when(low, known), likely=_when(likely, known))


def _after_wait(word: str, known: Known, last: Progress) -> str:
    """What is done once it is dry."""
    if word in _THEN:
        return said(_THEN[word])
    coats = _coats(known.plan)
    coat = str(last.about.get("coat", ""))
    if coat in coats and coats.index(coat) + 1 < len(coats):
        return step_name(f"coat-{coats.index(coat) + 2}")
    return said("next-then-neutralise")


def _wait(word: str, last: Progress, plan: Json | None) -> Json | None:
    if plan is None:
        return None
    clocks: Sequence[Json] = plan["clocks"]
    if word in _WAITS:
        return next((one for one in clocks if one["name"] == _WAITS[word]), None)
    coat = last.about.get("coat")
    return next(
        (one for one in clocks if one["coat"] == coat and one["begins_min"] is None), None
    )  # fmt: skip


def _coats(plan: Json | None) -> list[str]:
    return [] if plan is None else [str(one["id"]) for one in plan["inputs"]["coats"]]


def _when(at: datetime, known: Known) -> str:
    """A time, with its day where that is another than today."""
    here = known.now.astimezone(at.tzinfo)
    same = here.date() == at.date()
    return clock_told(at, known.units) if same else moment_told(at, known.units)
