"""How often a client calls back: beta-binomial, in closed form.

Before any job: one in nine, as three causes of 4 % each come to (common practice says 1, 4 and 10 %
each, and calls it a guess), worth twenty jobs; four times in five between 4 and 21 %.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence

from farwall.evidence import Rank
from farwall.facts.closed import ClosedJob
from farwall.facts.lessons import JobShare, Lesson
from farwall.learn.kinds import CALL_BACKS
from farwall.learn.quantiles import beta

USUAL = 1 - (1 - 0.04) ** 3
WORTH_JOBS = 20.0


def call_backs(jobs: Sequence[ClosedJob], counts: Mapping[str, float]) -> Lesson:
    """The rate of jobs that were called back at least once, in per cent. `jobs`: one at least.

    A single job has no range here; low and high are those of the rate.
    """
    called = {job.id: float(bool(job.called_back)) for job in jobs}
    yes = USUAL * WORTH_JOBS + math.fsum(counts[job] * one for job, one in called.items())
    no = (1 - USUAL) * WORTH_JOBS + math.fsum(counts[job] * (1 - x) for job, x in called.items())
    low, high = (100 * beta(share, yes, no) for share in (0.1, 0.9))
    weight = math.fsum(counts.values())
    return Lesson(
        name=CALL_BACKS,
        what=CALL_BACKS,
        unit="% of jobs",
        low=low,
        likely=100 * yes / (yes + no),
        high=high,
        own_low=low,
        own_high=high,
        spread=math.sqrt(yes * no / (yes + no) ** 2 / (yes + no + 1)) * 100,
        practice=100 * USUAL,
        jobs=len(jobs),
        weight=weight,
        rank=Rank.LEARNED.value,
        source=f"learned from {len(jobs)} {'job' if len(jobs) == 1 else 'jobs'}",
        shares=tuple(
            JobShare(job, counts[job] / (yes + no), 100 * counts[job] * (one - USUAL) / (yes + no))
            for job, one in called.items()
        ),
    )
