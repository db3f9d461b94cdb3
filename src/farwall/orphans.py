"""A process that another began ends when that one does."""

from __future__ import annotations

import os
from multiprocessing import parent_process
from threading import Thread


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
