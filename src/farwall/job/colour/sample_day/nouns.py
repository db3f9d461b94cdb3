"""What a sample day is made of. Minutes count from the course's `starts_at`."""

from __future__ import annotations

from typing import Literal

from farwall.nouns import dataclass

Rung = Literal["weaker", "planned", "stronger"]
Step = Literal["lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge"]
STEPS: tuple[Step, ...] = (
    "lay", "sheen", "dry", "wash", "wet", "seal", "day", "lamp", "judge",
)  # fmt: skip
"""What is done at one sample, in this order."""
WaitName = Literal["sheen", "dry", "dwell", "dry-down"]


@dataclass(frozen=True)
class JugMix:
    """What is measured out for one sample, mL; both a whole number of marks of the jug."""

    stain_ml: int
    water_ml: int


@dataclass(frozen=True)
class Planned:
    """A sample to be made: one coat on one square.

    square: letter of the square · rung: weaker, planned or stronger; empty where the facts or the
    log tell of it and the day did not plan it · over: the sample beneath, empty for a first coat ·
    why: what sets this square apart (finish, pour), in words.
    """

    id: str
    square: str
    coat: str
    stain: str
    cut: str
    rung: Rung | Literal[""]
    over: str
    room: str
    why: str
    area_m2: float
    m2_per_l: float
    mix: JugMix | None


@dataclass(frozen=True)
class Wait:
    """A wait after a coat: minutes, None where nothing is foretold; why in its source."""

    coat: str
    name: WaitName
    low_min: float | None
    likely_min: float | None
    high_min: float | None
    rank: str
    source: str


@dataclass(frozen=True)
class Course:
    """The day as it is planned. told: by sample the marks that the facts of the job tell."""

    starts_at: str
    samples: tuple[Planned, ...]
    waits: tuple[Wait, ...]
    told: dict[str, tuple[str, ...]]

    def wait(self, coat: str, name: str) -> Wait | None:
        """The wait of a coat; None where there is none."""
        return next((one for one in self.waits if (one.coat, one.name) == (coat, name)), None)


@dataclass(frozen=True)
class Running:
    """A stopwatch that runs at a sample: since when, and when it is due."""

    name: WaitName
    from_min: float
    low_min: float | None
    likely_min: float | None
    high_min: float | None


@dataclass(frozen=True)
class Stand:
    """Where a sample stands.

    step: what comes next at it; `done`, or `out` where its square was washed before it was laid ·
    from_min: from when on that step is to be done, None: now; `waits_for`: the sample that comes
    first · missing: figures of steps that are past, by their codes.
    """

    sample: str
    step: str
    from_min: float | None
    waits_for: str
    running: tuple[Running, ...]
    missing: tuple[str, ...]


@dataclass(frozen=True)
class Task:
    """What is to be done: `sign` stands for the whole day and names the sample judged right."""

    sample: str
    step: str
    from_min: float | None


@dataclass(frozen=True)
class Day:
    """The day as it stands: now the first of `tasks`, then the others in their order.

    begun: whether the log tells of a sample laid · signed: the sample that is the standard.
    """

    stands: tuple[Stand, ...]
    tasks: tuple[Task, ...]
    begun: bool
    signed: str
