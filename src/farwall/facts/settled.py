"""A job with no value left open: what a planner reads, and what each value rests on."""

from __future__ import annotations

from dataclasses import field

from farwall.facts.job import Coat, Container, Finish, Job, Stain
from farwall.facts.plan import Ground, PlanTools
from farwall.facts.samples import Sample
from farwall.nouns import dataclass


@dataclass(frozen=True)
class SettledCoat:
    """A coat with its stain, its coverage of mix and the samples that bear on it."""

    coat: Coat
    stain: Stain
    cut: str
    m2_per_l: float
    l_per_m2: float
    rank: str
    spread_percent: float
    samples: tuple[Sample, ...] = ()
    field_share: float | None = None
    """Of the spread's variance, a field's own part where closed jobs taught it."""

    @property
    def id(self) -> str:
        """The coat's id."""
        return self.coat.id

    @property
    def sample(self) -> Sample | None:
        """The sample that lost its sheen soonest (the safe end), else the first, else None."""
        timed = [one for one in self.samples if one.sheen_loss_min is not None]
        if timed:
            return min(timed, key=lambda one: one.sheen_loss_min or 0.0)
        return self.samples[0] if self.samples else None


@dataclass(frozen=True)
class SettledRoom:
    """One room as the clocks need it; `drop_told` is False when the seconds are a default."""

    drop_s: float
    finish: Finish
    sun: bool = False
    draught: bool = False
    drop_told: bool = False


@dataclass(frozen=True)
class SettledSurvey:
    """Slab and air: degrees Celsius, percent, metres a second; rooms by id."""

    slab_c: float
    air_c: float
    rh_percent: float
    air_speed_m_s: float
    drop_s: float
    finish: Finish
    slab_age_days: float | None = None
    rooms: dict[str, SettledRoom] = field(default_factory=dict)


@dataclass(frozen=True)
class FirmWait:
    """What closed jobs taught of a clock: the firm's factor on the usual wait and its spreads.

    usual: likely factor · sure: the end of its own range that is nearer to 1, 1 when that holds 1.
    floor, room: standard deviations of the logarithm, as `air.learned.Spread` · jobs: how many.
    """

    usual: float
    sure: float
    floor: float
    room: float
    jobs: int


@dataclass(frozen=True)
class SettledJob:
    """The job's facts with every gap filled; `grounds` says what each figure rests on."""

    job: Job
    tools: PlanTools
    stains: tuple[Stain, ...]
    coats: tuple[SettledCoat, ...]
    survey: SettledSurvey
    certainty_percent: float
    spread_percent: float
    containers: tuple[Container, ...]
    starts_at: str
    grounds: tuple[Ground, ...]
    warnings: tuple[str, ...] = ()
    spray_rate_spread: float | None = None
    """Where closed jobs taught the spray rate: its deviation of the logarithm from job to job."""
    firm_waits: dict[str, FirmWait] = field(default_factory=dict)

    def room(self, room_id: str) -> SettledRoom:
        """Drop seconds, finish, sun and draught of a room."""
        return self.survey.rooms[room_id]

    def coat(self, coat_id: str) -> SettledCoat:
        """A coat by its id; KeyError when the job has none of that id."""
        for coat in self.coats:
            if coat.id == coat_id:
                return coat
        raise KeyError(coat_id)

    @property
    def l_per_m2(self) -> dict[str, float]:
        """Litres of mix a square metre takes, by coat id."""
        return {coat.id: coat.l_per_m2 for coat in self.coats}

    @property
    def stain_names(self) -> dict[str, str]:
        """What the job calls its stains, by id; without those that have no name."""
        return {stain.id: stain.name for stain in self.stains if stain.name}

    def containers_for(self, stain_id: str) -> tuple[Container, ...]:
        """What this stain is sold in."""
        return tuple(one for one in self.containers if one.stain in {"", stain_id})
