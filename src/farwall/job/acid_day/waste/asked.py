"""Words and tests of a job, read against each other; what must still be asked."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime

from farwall.acid.metals import Grams, share_washed_off
from farwall.acid.waste_limits import METALS, Metal
from farwall.acid.waste_verdict import REFUSED, compared, faults_of, hazards_of
from farwall.facts.discharge import Discharge, OfficialWord, WaterTest
from farwall.facts.job import Job
from farwall.job.acid_day.waste import sentences
from farwall.job.acid_day.waste.noun import Against, ShareSeen, TestRead, WordSaid

_KEYS: dict[Metal, str] = {
    "copper": "copper_mg_l", "chromium": "chromium_mg_l", "chromium(VI)": "chromium_vi_mg_l",
    "manganese": "manganese_mg_l", "iron": "iron_mg_l",
}  # fmt: skip


def day_of(starts_at: str | None) -> date | None:
    """The day of the work; None where it is not told or is no date."""
    try:
        return datetime.fromisoformat(starts_at).date() if starts_at else None
    except ValueError:
        return None


def words_said(discharge: Discharge, day: date | None) -> tuple[WordSaid, ...]:
    """Each word with what keeps it from being leaned on."""
    return tuple(
        WordSaid(
            one.way, one.who, one.office, one.on, one.until, bool(one.in_writing), one.said,
            faults_of(one, day),
        )
        for one in discharge.words
    )  # fmt: skip


def tests_read(
    discharge: Discharge, laid: Mapping[Metal, Grams], day: date | None
) -> tuple[TestRead, ...]:
    """Each test beside each word, and the shares washed off where it tells all the water."""
    return tuple(
        TestRead(
            one.drum, one.on, one.by, tuple(_against(one, word, day) for word in discharge.words),
            hazards_of(one), _shares(one, laid),
        )
        for one in discharge.tests
    )  # fmt: skip


def _against(test: WaterTest, word: OfficialWord, day: date | None) -> Against:
    found = compared(test, word, day)
    return Against(word.office, found.word, found.why)


def _shares(test: WaterTest, laid: Mapping[Metal, Grams]) -> tuple[ShareSeen, ...]:
    if not test.water_l:
        return ()
    found = []
    for metal in METALS:
        has = getattr(test, _KEYS[metal])
        if has is None or metal not in laid:
            continue
        low, high = share_washed_off(has, test.water_l, laid[metal])
        found.append(
            ShareSeen(
                metal, None if low is None else 100 * low, None if high is None else 100 * high
            )
        )
    return tuple(found)


def asks_of(job: Job, day: date | None, *, share_is_guess: bool) -> tuple[str, ...]:
    """What must be asked or tested before anything leaves the house."""
    words, route = job.discharge.words, job.survey.waste
    found = []
    good = [one for one in words if one.way != REFUSED and not faults_of(one, day)]
    # A no is a no, however it came.
    noes = [] if good else [one.office for one in words if one.way == REFUSED]
    if noes:
        found += [sentences.SAID_NO.format(office=office) for office in dict.fromkeys(noes)]
    elif route == "sewer in writing" and not any(one.way == "sewer" for one in good):
        found.append(sentences.ASK_SEWER)
    elif not words:
        found.append(sentences.ASK_WORD)
    elif route in {"hauled", "drums"} and not any(one.way != "sewer" for one in good):
        found.append(sentences.ASK_HAULER)
    if not job.discharge.tests:
        found.append(sentences.ASK_TESTS)
    if share_is_guess:
        found.append(sentences.ASK_SHARE)
    return tuple(found)
