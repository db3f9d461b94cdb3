"""What the log of the waste water asks for: a word for a sewer, a pH, a receipt. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from farwall.acid.waste_limits import FEDERAL, corrosive_by_ph
from farwall.acid.waste_verdict import faults_of
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.job.live.noun import Advice
from farwall.job.story.noun import Happened, Story

RULE = "waste water"
_PUBLISHED = Rank.PUBLISHED.value
_PRACTICE = Rank.PRACTICE.value
NO_WORD = (
    "Drum {drum} went to the sewer, and no written word that can be leaned on is entered.",
    "Send no more. Ask the utility today, and enter name, office and day.",
)
SOUR = (
    "Drum {drum} went to the sewer at pH {ph}, and nothing below 5 may.",
    "Send no more. Tell the utility.",
)
LYE = (
    "Drum {drum} went to the sewer at pH {ph}: at or above 12.5 it is hazardous waste, D002.",
    "Send no more. Tell the utility and the state agency.",
)
CORROSIVE = (
    "Drum {drum} reads pH {ph}: at or below 2, or at or above 12.5, it is hazardous waste, D002.",
    "It stays shut and labelled until the state agency says who may take it.",
)
NO_RECEIPT = (
    "Drum {drum} was hauled, and no manifest or receipt is entered.",
    "Enter its number while the paper is at hand.",
)


def waste_advice(job: Job, story: Story, day: date | None) -> Iterator[Advice]:
    """An advice for each fault of the newest entry of each drum. None of them stops the spraying.

    day: of the work, by which words run out; None where it is not told.
    """
    newest = {one.text("drum"): one for one in story.of("waste")}
    may_sewer = any(one.way == "sewer" and not faults_of(one, day) for one in job.discharge.words)
    for drum, one in newest.items():
        ph = one.number("ph") if one.number("ph") is not None else one.number("ph_before")
        if one.text("way") == "sewer":
            yield from _to_sewer(drum, ph, may=may_sewer)
        elif ph is not None and 0 <= ph <= 14 and corrosive_by_ph(ph):  # else a slip of entry
            yield _advice(CORROSIVE, 80, _PUBLISHED, "epa-corrosive", drum=drum, ph=f"{ph:g}")
        if _hauled_without_paper(one):
            yield _advice(NO_RECEIPT, 40, _PRACTICE, "common-practice", drum=drum)


def _to_sewer(drum: str, ph: float | None, *, may: bool) -> Iterator[Advice]:
    if not may:
        yield _advice(NO_WORD, 90, _PUBLISHED, "epa-sewer", drum=drum)
    if ph is not None and ph < FEDERAL["sewer-ph"].value:
        yield _advice(SOUR, 91, _PUBLISHED, "epa-sewer", drum=drum, ph=f"{ph:g}")
    elif ph is not None and ph <= 14 and corrosive_by_ph(ph):
        yield _advice(LYE, 91, _PUBLISHED, "epa-corrosive", drum=drum, ph=f"{ph:g}")


def _hauled_without_paper(one: Happened) -> bool:
    return one.text("way") == "hauled" and not one.text("manifest")


def _advice(told: tuple[str, str], weight: int, rank: str, source: str, **figures: str) -> Advice:
    reason, do = told
    return Advice(RULE, False, reason.format(**figures), do, weight, rank, source)  # noqa: FBT003
