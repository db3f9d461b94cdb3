"""What of the materials in hand may be poured together, and what never."""

from __future__ import annotations

from farwall.acid.pouring.acts import ACTS, may_do
from farwall.acid.pouring.nouns import Fired, Word
from farwall.facts.job import Job
from farwall.job.acid_day.ground import Ground
from farwall.job.pouring.listed import materials_of
from farwall.job.pouring.table import Group, Line, brought_of, groups_of, lines_of
from farwall.nouns import dataclass

UNKNOWN = (
    "Unknown means refused: what has no name, no sheet or no rule here is not poured together."
)
ASK = "Ask before pouring: farwall pour JOB.json MATERIAL into MATERIAL."


@dataclass(frozen=True)
class InHand:
    """A material of the job, as the gate knows it."""

    id: str
    name: str
    kind: str
    implied: bool
    sheet_read: bool


@dataclass(frozen=True)
class Deed:
    """What is done with the stain besides pouring it: allowed or not, why, what instead."""

    act: str
    word: Word
    what: str
    instead: str
    source: str
    rank: str


@dataclass(frozen=True)
class Pours:
    """What of the materials in hand may be poured together, and what never.

    `groups`: every two of them. `brought`: what is not on the list, against the stains.
    """

    materials: tuple[InHand, ...] = ()
    groups: tuple[Group, ...] = ()
    brought: tuple[Group, ...] = ()
    deeds: tuple[Deed, ...] = ()
    warnings: tuple[str, ...] = ()


def pours_of(ground: Ground) -> Pours:
    """Every two of the job's materials before the gate, what else may be brought, and the deeds."""
    return pours_of_job(ground.job)


def pours_of_job(job: Job) -> Pours:
    """The same for a job that has no plan."""
    listed = materials_of(job)
    in_hand = tuple(
        InHand(one.material.id, one.name, one.material.kind, one.implied,
               "sheet not read" not in one.thing().traits)
        for one in listed
    )  # fmt: skip
    dried = [one.thing() for one in listed if one.material.kind == "dried stain"]
    deeds = []
    for act in ACTS:
        verdict = may_do(act, dried if act != "close a vented lid" else [
            one.thing() for one in listed if one.material.kind == "rinse water"
        ])  # fmt: skip
        chief: Fired = verdict.fired[0]
        deeds.append(Deed(act, verdict.word, chief.what, chief.instead, chief.source, chief.rank))
    return Pours(in_hand, groups_of(job), brought_of(job), tuple(deeds), (UNKNOWN,))


def pours_said(part: Pours) -> tuple[str, ...]:
    """The part in lines for a terminal: what is refused and why, what is warned of, the rest."""
    lines: list[str] = []
    for group in (*part.groups, *part.brought):
        told = "; ".join(_line(line) for line in lines_of(group))
        lines.append(f"{group.word.capitalize()}: {told}.")
        if group.word != "allowed":
            lines.append(f"  {group.what} {group.instead}".rstrip())
    return (*lines, *part.warnings, ASK)


def _line(line: Line) -> str:
    others = ", ".join(line.others)
    told = f"{others} into {line.one}" if line.into else f"{line.one} with {others}"
    return told if line.vessel == "open tub" else f"{told} ({line.vessel})"
