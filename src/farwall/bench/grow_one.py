"""Plans one generated house and prints what it took.

Called as `python -m farwall.bench.grow_one ROOMS SEED`.
"""

from __future__ import annotations

import json
import resource
import sys
from dataclasses import dataclass, field
from pathlib import Path
from time import perf_counter

from farwall.bench.generator import house_of
from farwall.bench.score import score
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.plan_job import plan_job

_STATUS = Path("/proc/self/status")


@dataclass
class _Watched:
    """The planner with a look at memory when it is done, before the checker takes its own."""

    peak_mb: float | None = field(default=None)

    def plan(self, job: Job) -> Plan:
        plan = plan_job(job)
        self.peak_mb = peak_mb()
        return plan


def peak_mb() -> float:
    """The most memory that this process has had, in MB.

    Linux hands the peak of the process that started us on to `ru_maxrss`, so
    that its own status is asked first.
    """
    if _STATUS.exists():
        for line in _STATUS.read_text().splitlines():
            if line.startswith("VmHWM:"):
                return int(line.split()[1]) / 1024
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return most / (1024 * 1024 if sys.platform == "darwin" else 1024)


def main(rooms: int, seed: int) -> None:
    """Print one JSON object with the keys of `growth.Growth` but its rooms."""
    watched = _Watched()
    start = perf_counter()
    found = score(house_of(rooms, seed), planner=watched.plan)
    told = {
        "fields": len(found.fields),
        "plan_s": round(found.seconds, 3),
        "check_s": round(perf_counter() - start - found.seconds, 3),
        "peak_mb": watched.peak_mb and round(watched.peak_mb, 1),
        "faults": found.failures,
        "came_to": found.unplanned or found.broke,
        "broke": bool(found.broke),
    }
    print(json.dumps(told))


if __name__ == "__main__":
    main(int(sys.argv[1]), int(sys.argv[2]))
