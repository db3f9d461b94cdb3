"""The acid day as one noun: what acid.json holds."""

from __future__ import annotations

from farwall.job.acid_day.fumes import Fumes
from farwall.job.acid_day.neutralising import Neutralising
from farwall.job.acid_day.people import People
from farwall.job.acid_day.pours import Pours
from farwall.job.acid_day.strength import Strength
from farwall.job.acid_day.washing import WashDay
from farwall.job.acid_day.waste import Waste
from farwall.nouns import dataclass

ACID_VERSION = 1


@dataclass(frozen=True)
class AcidDay:
    """All parts, each reckoned from the same facts and plan. `inputs_hash`: that of the plan."""

    job: str
    inputs_hash: str
    starts_at: str
    strength: Strength
    fumes: Fumes
    neutralising: Neutralising
    washing: WashDay
    waste: Waste
    people: People
    pours: Pours
    version: int = ACID_VERSION
