"""What the firm's closed jobs taught of its stains, as the belief takes it. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.prior import Prior
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons


def prior_of(job: Job, stains: Sequence[str], lessons: Lessons | None) -> tuple[Prior, int]:
    """Beliefs before the samples, and how many closed jobs are behind them."""
    del job, stains, lessons
    return Prior(), 0
