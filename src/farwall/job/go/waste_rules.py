"""Rules on the rinse water: the way it goes, whose word allows it, what its tests say."""

from __future__ import annotations

from datetime import date, datetime

from farwall.acid.waste_verdict import BELOW, REFUSED, Compared, compared, faults_of, hazards_of
from farwall.facts.checks import Readiness
from farwall.facts.discharge import OfficialWord, WaterTest
from farwall.facts.job import Job
from farwall.job.go.noun import WITH, Rule, Says

_NEVER = {
    "septic": "The house is on a septic tank",
    "storm drain": "There is only a storm drain",
    "no way": "There is no way for the rinse water",
}
_SOURCE = "epa-sewer, common-practice"
_ELSE = "Drums and a licensed hauler, or another word in writing."
_WHO_SEWER = "Who of the utility gave it in writing, of which office, on which day?"
_WHO_TAKES = "Who takes the drums, of which office, and who said so on which day?"
_STAYS = "It does not leave. Settle it and test again, or ask the hauler."
_AGENCY = "The state agency says what it is and who may take it."
_OPEN = "Of a tested drum nothing may be said yet: something was not named or not tested."


def _route(job: Job) -> Says | None:
    waste = job.survey.waste
    if waste is None:
        return None
    if waste in _NEVER:
        return Says(
            "no",
            f"{_NEVER[waste]}: rinse water holds acid and metals, and may not go there.",
            "Drums and a licensed hauler, or the sewer with the utility's written word. What the "
            "waste is and where it may go is for the state agency and the utility to say.",
        )
    if waste == "hauled":
        return Says(WITH, "Rinse water is hauled.", "Drums, log and receipts; price them.")
    if waste == "drums":
        return Says("go", "Rinse water goes into drums.", "The agency says what it is.")
    return Says("go", "The sewer takes it, with the utility's written word.", "Keep the paper.")


def _sewer_word(job: Job) -> Says | None:
    """The utility's word, by name and day, where the sewer is the way."""
    if not _to_sewer(job):
        return None
    told = _told_word(job)
    if told is not None:
        return told
    refused = [one for one in job.discharge.words if one.way == REFUSED]
    if refused:
        return Says("no", f"{refused[0].office} did not allow it.", _ELSE)
    return Says("ask", _WHO_SEWER, vital=True)


def _drum_word(job: Job) -> Says | None:
    """Who takes the drums, once somebody has begun to tell of the day before."""
    if job.survey.waste not in {"hauled", "drums"}:
        return None
    told = _told_word(job)
    if told is not None or job.readiness == Readiness():
        return told
    return Says("ask", _WHO_TAKES)


def _told_word(job: Job) -> Says | None:
    words = _words_of_way(job)
    good = [one for one in words if not faults_of(one, _day(job))]
    if good:
        return Says("go", f"{good[0].who}, {good[0].office}, said yes on {good[0].on}.")
    if words:
        faults = " ".join(faults_of(words[0], _day(job)))
        return Says(
            "ask",
            f"The word on the rinse water cannot be leaned on. {faults}",
            vital=_to_sewer(job),
        )
    return None


def _tests(job: Job) -> Says | None:
    tests = job.discharge.tests
    if not tests:
        return None
    found = [_compared(job, one) for one in tests]
    above = [why for each in found for one in each if one.word == "above" for why in one.why]
    if above:
        told = f"The rinse water is above what was named: {' '.join(dict.fromkeys(above))}"
        return Says("no" if _to_sewer(job) else WITH, told, _STAYS)
    if hazards := [each for one in tests for each in hazards_of(one)]:
        told = f"By a test it may be hazardous waste. {' '.join(hazards)}"
        return Says(WITH, told, _AGENCY, source="epa-corrosive, epa-toxic")
    if all(any(one.word == BELOW for one in each) for each in found):
        return Says("go", "Every tested drum is below every limit that was named.")
    return Says("ask", _OPEN, vital=_to_sewer(job))


def _compared(job: Job, test: WaterTest) -> list[Compared]:
    return [compared(test, word, _day(job)) for word in _words_of_way(job)]


def _words_of_way(job: Job) -> list[OfficialWord]:
    """Words that allow the way which the survey names."""
    words = [one for one in job.discharge.words if one.way != REFUSED]
    return [one for one in words if (one.way == "sewer") is _to_sewer(job)]


def _to_sewer(job: Job) -> bool:
    return job.survey.waste == "sewer in writing"


def _day(job: Job) -> date | None:
    try:
        return datetime.fromisoformat(job.starts_at).date() if job.starts_at else None
    except ValueError:
        return None


RULES = (
    Rule(
        "waste route",
        "survey",
        89,
        "Where does the rinse water go? Sewer with written word, drums, septic?",
        _route,
        source=_SOURCE,
        vital=True,
    ),
    Rule("sewer word", "survey", 86, "", _sewer_word, source=_SOURCE),
    Rule("drum word", "day before", 47, "", _drum_word, source=_SOURCE),
    Rule("waste tests", "on the floor", 79, "", _tests, source=_SOURCE),
)
