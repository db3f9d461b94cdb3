"""Rules on people: nobody works alone, and nobody mixes or sprays who is not fitted for it.

Silent where nobody told of people, but for one question; what is told to be missing is a stop.
"""

from __future__ import annotations

from datetime import date, datetime

from farwall.acid.may import NOBODY_TOLD, NOT_YET, VERBS, Word, called, needs_of, word_of
from farwall.acid.worn import checked
from farwall.facts.job import Job
from farwall.facts.workers import Duty
from farwall.job.go.noun import Rule, Says

_STOPS: tuple[Duty, ...] = ("mixes", "sprays")
_REMEDY = (
    "Put right what is missing, or somebody else who may. Medical word and fit test take days; "
    "doctor and fit tester have the word."
)


def _alone(job: Job) -> Says | None:
    if job.crew.second_adult or job.crew.helper:
        return None
    return Says(
        "no",
        "Nobody works alone with acid: no second adult is told to be on site.",
        "A second adult within call, outside the vapour, who looks in and can call for help.",
    )


def _fitted(job: Job) -> Says | None:
    """Each person and duty; None where nobody was told of, or no day is set to judge dates by."""
    if not job.workers or job.starts_at is None:
        return None
    day = datetime.fromisoformat(job.starts_at).date()
    told = [*_told(job, day)]
    stops = [text for duty, word, text in told if word == NOT_YET and duty in _STOPS]
    later = [text for duty, word, text in told if word == NOT_YET and duty not in _STOPS]
    if stops:
        return Says("no", " ".join([*stops, *later]), _REMEDY)
    if later:
        return Says("go with", " ".join(later), _REMEDY)
    return _untold(job, told)


def _told(job: Job, day: date) -> list[tuple[Duty, Word, str]]:
    needs = needs_of(job)
    found: list[tuple[Duty, Word, str]] = []
    for worker in job.workers:
        for duty in worker.duties:
            word, why = word_of(checked(worker, duty, day, needs))
            text = f"{called(worker)} may not {VERBS[duty]} yet: {'; '.join(why)}."
            if word == NOBODY_TOLD:
                text = f"Not told of {called(worker)}, to {VERBS[duty]}: {'; '.join(why)}."
            found.append((duty, word, text))
    return found


def _untold(job: Job, told: list[tuple[Duty, Word, str]]) -> Says | None:
    sprayers = sum("sprays" in one.duties for one in job.workers)
    if sprayers < job.crew.sprayers:
        return Says("ask", f"{job.crew.sprayers} spray; of the people told, {sprayers} do. Who?")
    open_ = dict.fromkeys(text for _, word, text in told if word == NOBODY_TOLD)
    if open_:
        return Says("ask", " ".join(open_), "Ask, look, and tell it on the page of people.")
    return Says("go", "Everybody told may do what they are told to do.")


RULES = (
    Rule("second adult", "day before", 99, "", _alone),
    Rule(
        "people",
        "day before",
        94,
        "Who mixes and sprays, and is each fitted, cleared and clean-shaven for it?",
        _fitted,
        source="osha-respirators",
    ),
)
