"""How seconds and memory grow with the rooms of a house: each size in a process of its own."""

from __future__ import annotations

import json
import subprocess
import sys
from dataclasses import dataclass

SIZES = (5, 10, 20, 50, 100, 200)
SEED = 7
PATIENCE_S = 300.0


@dataclass(frozen=True)
class Growth:
    """A house of so many rooms: seconds to plan and to replay, memory at the end of planning.

    `came_to` says why there is no figure, or what is wrong; empty when all is well.
    """

    rooms: int
    fields: int = 0
    plan_s: float | None = None
    check_s: float | None = None
    peak_mb: float | None = None
    faults: tuple[str, ...] = ()
    came_to: str = ""
    broke: bool = False


def grow(rooms: int, *, patience_s: float = PATIENCE_S, seed: int = SEED) -> Growth:
    """Plan the house of this many rooms in a fresh process; give up after `patience_s`."""
    command = [sys.executable, "-m", "farwall.bench.grow_one", str(rooms), str(seed)]
    try:
        done = subprocess.run(
            command, check=False, capture_output=True, text=True, timeout=patience_s
        )
    except subprocess.TimeoutExpired:
        return Growth(rooms, came_to=f"not done in {patience_s:g} s")
    if done.returncode:
        last = (done.stderr.strip().splitlines() or [f"exit {done.returncode}"])[-1]
        return Growth(rooms, came_to=f"the planner broke off: {last}", broke=True)
    told = json.loads(done.stdout)
    told["faults"] = tuple(told["faults"])
    return Growth(rooms, **told)
