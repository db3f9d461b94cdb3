"""Who does a server's slow work: a process of its own, which ends when the server does."""

from __future__ import annotations

from concurrent.futures import Executor, ProcessPoolExecutor
from multiprocessing import get_context

from farwall.orphans import end_with_parent


def one_process() -> Executor:
    """One process; begun with the first piece of work.

    Spawned, not forked: a server holds threads, and they do not fork.
    """
    return ProcessPoolExecutor(1, mp_context=get_context("spawn"), initializer=end_with_parent)
