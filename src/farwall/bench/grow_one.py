"""Plans one generated house and prints what it took.

Called as `python -m farwall.bench.grow_one ROOMS SEED MOST_MB`.
"""

from __future__ import annotations

import json
import resource
import sys
from contextlib import suppress
from dataclasses import field
from pathlib import Path
from time import process_time

from farwall.bench.generator import house_of
from farwall.bench.score import score
from farwall.facts.job import Job
from farwall.facts.plan import Plan
from farwall.job.plan_job import plan_job
from farwall.nouns import dataclass

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


def limit_memory(most_mb: int) -> None:
    """Let this process have no more than this, so that the machine is not taken down with it.

    What it asks for beyond that is a MemoryError; a system that cannot limit it goes on without.
    """
    with suppress(OSError, ValueError):
        most = most_mb * 1024 * 1024
        resource.setrlimit(resource.RLIMIT_AS, (most, most))


def main(rooms: int, seed: int) -> None:
    """Print one JSON object with the keys of `growth.Growth` but its rooms."""
    watched = _Watched()
    start = process_time()
    found = score(house_of(rooms, seed), planner=watched.plan)
    told = {
        "fields": len(found.fields),
        "plan_s": round(found.seconds, 3) if found.fields else None,
        "check_s": round(process_time() - start - found.seconds, 3) if found.fields else None,
        "peak_mb": watched.peak_mb and round(watched.peak_mb, 1),
        "faults": found.failures,
        "came_to": found.unplanned,
    }
    print(json.dumps(told))


if __name__ == "__main__":
    limit_memory(int(sys.argv[3]))
    main(int(sys.argv[1]), int(sys.argv[2]))
