"""What a paper is written from: facts, plan, and every part of the job that is reckoned once."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from farwall.facts.go import Go
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.acid_day.noun import AcidDay
from farwall.job.office import Office, OfficeGround, office_of
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.phrasebook import Language

if TYPE_CHECKING:
    from collections.abc import Callable

    from farwall.facts.photo_shown import PhotoShown
    from farwall.job.seal_day import SealDay


@dataclass(frozen=True)
class PaperGround:
    """Facts and plan of a job; what is made of them is reckoned once for all papers.

    calendar: the firm's calendar with this house in it, as days.json has it · screens: address of
    the house in the firm's book, such as `https://book.example/houses/7`, empty where it has none ·
    photo: a photo of the log by its hash, None for what cannot be shown · pair: two photos that
    were given beside the log, before and after · chosen: ids of two entries of the log whose photos
    are to be the pair.
    """

    ground: OfficeGround
    language: Language = "en"
    calendar: dict[str, object] | None = None
    screens: str = ""
    photo: Callable[[str], PhotoShown | None] | None = None
    pair: tuple[PhotoShown, PhotoShown] | None = None
    chosen: tuple[str, str] | None = None

    @property
    def job(self) -> Job:
        """The job's facts."""
        return self.ground.job

    @property
    def plan(self) -> Plan:
        """The job's plan."""
        return self.ground.plan

    @property
    def units(self) -> Units:
        """Feet and gallons, or metres and litres."""
        return self.job.wishes.units

    @cached_property
    def clock(self) -> WallClock:
        """Minutes of the plan as times on the wall."""
        return plan_clock(self.plan, self.units)

    @cached_property
    def office(self) -> Office:
        """Quantities, masking, buying, hours, price."""
        return office_of(self.ground)

    @property
    def acid(self) -> AcidDay:
        """Strength, fumes, washing, waste and the rest."""
        return self.ground.acid

    @cached_property
    def go(self) -> Go:
        """What speaks for and against this floor."""
        from farwall.job.colour.told import survey_told
        from farwall.job.go import go_or_no_go

        return go_or_no_go(survey_told(self.job, self.ground.kept))

    @cached_property
    def seal(self) -> SealDay:
        """The day of the sealer."""
        from farwall.job.seal_day import seal_day

        return seal_day(self.job)
