"""Who does a server's slow work: a process of its own, which ends when the server does."""

from __future__ import annotations

import os
from concurrent.futures import Executor, ProcessPoolExecutor
from multiprocessing import get_context, parent_process
from threading import Thread


def one_process() -> Executor:
    """One process; begun with the first piece of work.

    Spawned, not forked: a server holds threads, and they do not fork.
    """
    return ProcessPoolExecutor(1, mp_context=get_context("spawn"), initializer=end_with_parent)


def end_with_parent() -> None:
    """Have this process end when the one that began it does.

    A program that is killed tells nobody: without this its hands wait for work for ever.
    """
    parent = parent_process()
    if parent is None:
        return

    def wait() -> None:
        parent.join()
        os._exit(1)  # nobody is left to whom a result could go

    Thread(target=wait, daemon=True, name="end-with-parent").start()
