"""What a job counts for as others follow it: by choice halved every so many jobs or months."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from farwall.facts.closed import ClosedJob
from farwall.nouns import dataclass

DAYS_A_MONTH = 30.4375


@dataclass(frozen=True)
class Forgetting:
    """Half-lives, in jobs that came later and in months before the last one; None: no end."""

    jobs: float | None = None
    months: float | None = None

    def counts(self, ordered: Sequence[ClosedJob]) -> dict[str, float]:
        """What each job counts for, 0 to 1, by id. `ordered`: the oldest first."""
        if not ordered:
            return {}
        last = date.fromisoformat(ordered[-1].closed_on)
        found = {}
        for number, job in enumerate(ordered, 1):
            count = 1.0
            if self.jobs is not None:
                count *= 0.5 ** ((len(ordered) - number) / self.jobs)
            if self.months is not None:
                days = (last - date.fromisoformat(job.closed_on)).days
                count *= 0.5 ** (days / DAYS_A_MONTH / self.months)
            found[job.id] = count
        return found
