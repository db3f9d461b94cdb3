"""The office side of a job as one noun."""

from __future__ import annotations

from farwall.facts.quantities import Quantities
from farwall.job.office.billing.owed import Owed
from farwall.job.office.buying import Buying
from farwall.job.office.hours import Hours
from farwall.job.office.masking import Masked
from farwall.job.office.priced import Priced
from farwall.nouns import dataclass

OFFICE_VERSION = 1


@dataclass(frozen=True)
class Office:
    """All parts, each reckoned from the same facts and plan. `inputs_hash`: that of the plan."""

    job: str
    inputs_hash: str
    day: str
    masked: Masked
    quantities: Quantities
    buying: Buying
    hours: Hours
    priced: Priced
    owed: Owed
    version: int = OFFICE_VERSION
