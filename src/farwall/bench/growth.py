"""How seconds and memory grow with the rooms of a house: each size in a process of its own."""

from __future__ import annotations

import json
import subprocess
import sys

from farwall.nouns import dataclass

SIZES = (5, 10, 20, 50, 100, 200)
SEED = 7
PATIENCE_S = 300.0
MOST_MB = 3000
"""What a planner may take before it is stopped: a laptop has other things to hold."""


@dataclass(frozen=True)
class Growth:
    """A house of so many rooms: processor seconds to plan and replay, most memory while planning.

    `came_to` says why there is no plan, empty when there is one; `faults` what must not be.
    """

    rooms: int
    fields: int = 0
    plan_s: float | None = None
    check_s: float | None = None
    peak_mb: float | None = None
    faults: tuple[str, ...] = ()
    came_to: str = ""


def grow(rooms: int, *, patience_s: float = PATIENCE_S, seed: int = SEED) -> Growth:
    """Plan the house of this many rooms in a fresh process; give up after `patience_s`.

    A planner that wants more than `MOST_MB` is stopped and counts as broken off.
    """
    command = [sys.executable, "-m", "farwall.bench.grow_one", str(rooms), str(seed), str(MOST_MB)]
    try:
        done = subprocess.run(
            command, check=False, capture_output=True, text=True, timeout=patience_s
        )
    except subprocess.TimeoutExpired:
        return Growth(rooms, came_to=f"not done in {patience_s:g} s")
    if done.returncode:  # no answer at all: the score has a planner's own errors in its JSON
        last = (done.stderr.strip().splitlines() or [f"exit {done.returncode}"])[-1]
        return Growth(rooms, faults=(f"house of {rooms}: the planner broke off: {last}",))
    told = json.loads(done.stdout)
    told["faults"] = tuple(told["faults"])
    return Growth(rooms, **told)
