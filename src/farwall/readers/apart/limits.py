"""What one file may cost, and the system's own limits on the process that reads it."""

from __future__ import annotations

import sys

CPU_S = 10
"""Processor time for one file (guess: the largest plans here take a fifth)."""
WALL_S = 30 if sys.platform != "win32" else 10
"""From start to answer, by the clock of who waits (guess): for what sleeps, or has to share the
processor with others; the only limit of time where the system counts no processor time."""
MEMORY_BYTES = 1_000_000_000
"""Address space, the libraries included."""
MOST_FILE_BYTES = 200_000_000
"""Of a file that is opened at all (guess)."""
MOST_ANSWER_BYTES = 48_000_000
"""Of an answer (guess): a reading of two hundred thousand corners has about a tenth."""
OPEN_FILES = 64
"""Files and libraries open at once (guess: twice what was seen)."""


def limit_process(answer_bytes: int) -> bool:
    """Set the limits on this process for good; False where the system knows none.

    answer_bytes: the longest file it may write, which is its answer.
    """
    if sys.platform == "win32":
        return False
    import resource

    wanted = {
        "RLIMIT_CPU": (CPU_S, CPU_S + 1),
        "RLIMIT_AS": (MEMORY_BYTES, MEMORY_BYTES),
        "RLIMIT_FSIZE": (answer_bytes, answer_bytes),
        "RLIMIT_NOFILE": (OPEN_FILES, OPEN_FILES),
        "RLIMIT_CORE": (0, 0),
    }
    for name, limit in wanted.items():
        which = getattr(resource, name, None)
        if which is None:
            return False
        _, most = resource.getrlimit(which)
        bounded = limit if most == resource.RLIM_INFINITY else tuple(min(n, most) for n in limit)
        try:
            resource.setrlimit(which, (bounded[0], bounded[1]))
        except (OSError, ValueError):  # a system that knows the limit and will not set it
            return False
    return True
