"""The ladder of samples: cuts by coats, each rung with what it drank and how it looked.

Dry, clean and wet, sealed are three ladders that share their rungs: a difference is told between
looks of one state and never across states. Pure.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Literal

from farwall.colour.difference import de2000
from farwall.facts.defaults import stains_and_coats
from farwall.facts.drank import Drank, Made, drank, made_with
from farwall.facts.job import Job
from farwall.facts.samples import STATES, Look, Sample, State
from farwall.job.colour.told import beneath
from farwall.nouns import dataclass

By = Literal["coat", "cut"]


@dataclass(frozen=True)
class Rung:
    """A sample on the ladder with the coats beneath it.

    coats: what was laid, from the lowest up, its own last; None where what lies beneath is not
    told · drank: its own coat, None where it cannot be known.
    """

    sample: Sample
    coats: tuple[Made, ...] | None
    beneath: tuple[str, ...]
    drank: Drank | None
    stain_l_per_m2: float | None
    """Litres of stain, not of mix, on a square metre in all its coats together."""

    @property
    def name(self) -> str:
        """What it is called."""
        return self.sample.id

    @property
    def cuts(self) -> tuple[str, ...]:
        """Cuts from the lowest coat up; empty text where one was not told."""
        return tuple(one.cut for one in self.coats or ())

    def look(self, state: State) -> Look | None:
        """Its look in a state: the last with a target in the photo, else the last of all."""
        seen = [one for one in self.sample.looks if one.state == state]
        chosen = [one for one in seen if one.error_de is not None] or seen
        return chosen[-1] if chosen else None


@dataclass(frozen=True)
class Row:
    """A square of the slab: its rungs from the first coat up."""

    rungs: tuple[Rung, ...]


@dataclass(frozen=True)
class Apart:
    """How far two rungs lie apart in one state.

    by: "coat", `other` lies over `one`; "cut", the same number of coats beside each other, `other`
    the stronger · darker: L of `one` less that of `other` · blur_de: what both photos' own errors
    come to; None where one of them is a guess.
    """

    state: State
    by: By
    one: str
    other: str
    de: float
    darker: float
    blur_de: float | None

    @property
    def clear(self) -> bool | None:
        """Whether they lie further apart than the photos err; None where nobody knows that."""
        return None if self.blur_de is None else self.de > self.blur_de


@dataclass(frozen=True)
class Step:
    """A step of the scale of one state: L of a rung, and how much darker it is than the last."""

    name: str
    lightness: float
    darker: float | None


@dataclass(frozen=True)
class Ladder:
    """The samples of a job as a ladder.

    rows: from the weakest square to the strongest · loose: samples over one that is not told ·
    scales: by state, from light to dark · signed: who was signed, in the order of the days ·
    standard: the sample that was signed last, None where none is.
    """

    rows: tuple[Row, ...]
    loose: tuple[Rung, ...]
    apart: tuple[Apart, ...]
    scales: dict[State, tuple[Step, ...]]
    signed: tuple[str, ...]

    @property
    def standard(self) -> str | None:
        """The sample that the floor is held against."""
        return self.signed[-1] if self.signed else None

    @property
    def rungs(self) -> tuple[Rung, ...]:
        """Every rung once, in the order of the rows; those that stand beside the ladder last."""
        found = [rung for row in self.rows for rung in row.rungs]
        return tuple({one.name: one for one in (*found, *self.loose)}.values())

    @property
    def most_coats(self) -> int:
        """How many coats its highest rung has."""
        return max((len(row.rungs) for row in self.rows), default=0)

    def rung(self, name: str) -> Rung | None:
        """A rung by its name."""
        return next((one for one in self.rungs if one.name == name), None)


def ladder_of(job: Job, samples: Sequence[Sample]) -> Ladder:
    """The ladder of these samples (`told.samples_of`), their stains and coats as the job has them.

    Differences are CIEDE2000 [ciede2000].
    """
    rungs = {one.id: _rung(job, samples, one) for one in samples}
    rows = sorted(_rows(samples, rungs), key=_strength)
    loose = tuple(one for one in rungs.values() if one.coats is None)
    signed = [one for one in samples if one.approved_by]
    return Ladder(
        rows=tuple(rows),
        loose=loose,
        apart=tuple(_neighbours(rows)),
        scales={state: _scale(state, list(rungs.values())) for state in STATES},
        signed=tuple(one.id for one in sorted(signed, key=lambda one: one.approved_on)),
    )


def _rung(job: Job, samples: Sequence[Sample], one: Sample) -> Rung:
    stains, coats = stains_and_coats(job)
    chain = beneath(samples, one.id)
    mine = made_with(one, coats, stains)
    own = drank(one, mine)
    if chain is None:
        return Rung(one, None, (), own, None)
    made = [made_with(each, coats, stains) for each in chain]
    drunk = [drank(each, by) for each, by in zip(chain, made, strict=True)]
    doses = [
        None if by is None or mix.share is None else mix.share * by.l_per_m2
        for mix, by in zip(made, drunk, strict=True)
    ]
    known = [each for each in doses if each is not None]
    whole = sum(known) if len(known) == len(doses) else None
    return Rung(one, tuple(made), tuple(each.id for each in chain[:-1]), own, whole)


def _rows(samples: Sequence[Sample], rungs: dict[str, Rung]) -> Iterator[Row]:
    """A row for each square: each sample that no other lies over, with those beneath it."""
    covered = {one.over for one in samples}
    for one in samples:
        rung = rungs[one.id]
        if one.id not in covered and rung.coats is not None:
            yield Row(tuple(rungs[name] for name in (*rung.beneath, one.id)))


def _strength(row: Row) -> tuple[object, ...]:
    """Weak before strong: by the share of stain, coat by coat; what is not told comes last."""
    top = row.rungs[-1].coats or ()
    shares = tuple(one.share if one.share is not None else 2.0 for one in top)
    return top[0].stain, shares, row.rungs[-1].name


def _neighbours(rows: Sequence[Row]) -> Iterator[Apart]:
    """Differences up each square, then across the squares coat by coat; each pair once."""
    told: set[tuple[str, str]] = set()
    pairs: list[tuple[By, Rung, Rung]] = [
        ("coat", one, other) for row in rows for one, other in pairwise(row.rungs)
    ]
    for coat in range(max((len(row.rungs) for row in rows), default=0)):
        there = [row.rungs[coat] for row in rows if len(row.rungs) > coat]
        pairs += [("cut", one, other) for one, other in pairwise(there) if _alike(one, other)]
    for by, one, other in pairs:
        if (one.name, other.name) in told:
            continue
        told.add((one.name, other.name))
        for state in STATES:
            yield from _apart(state, by, one, other)


def _alike(one: Rung, other: Rung) -> bool:
    """Of the same stains, so that cuts are all that parts them."""
    return one.name != other.name and [each.stain for each in one.coats or ()] == [
        each.stain for each in other.coats or ()
    ]


def _apart(state: State, by: By, one: Rung, other: Rung) -> Iterator[Apart]:
    first, second = one.look(state), other.look(state)
    if first is None or second is None:
        return
    errors = (first.error_de, second.error_de)
    blur = None if None in errors else sum((each or 0.0) ** 2 for each in errors) ** 0.5
    yield Apart(
        state, by, one.name, other.name, de=float(de2000(first.lab, second.lab)),
        darker=first.lab[0] - second.lab[0], blur_de=blur,
    )  # fmt: skip


def _scale(state: State, rungs: Sequence[Rung]) -> tuple[Step, ...]:
    seen = [(one.name, look.lab[0]) for one in rungs if (look := one.look(state)) is not None]
    seen.sort(key=lambda each: (-each[1], each[0]))
    steps: list[Step] = []
    for name, lightness in seen:
        steps.append(Step(name, lightness, steps[-1].lightness - lightness if steps else None))
    return tuple(steps)
