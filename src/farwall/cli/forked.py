"""Work done beside other work in a forked process, for the last steps of a plan.

The replay and the pages lean on nothing but the plan.

Python's threads take turns; a forked process does not, and needs nothing sent to it, for it begins
as a copy. Only what it found comes back.
"""

from __future__ import annotations

import os
import pickle
import sys
import warnings
from collections.abc import Callable
from contextlib import suppress
from typing import NoReturn, TypeVar

from farwall.beside import AtLeisure

T = TypeVar("T")
_AT_LEISURE = 10
"""By so much `AtLeisure` gives way: with two processors it then fills what others leave idle."""
_SETTER = "typst"
"""Imported where the first page is set; from then on it holds threads."""
_ENDING: list[int] = []
"""Processes whose result was read and that end by themselves."""


def forked(work: Callable[[], T]) -> Callable[[], T]:
    """Begin `work` in a process of its own; what comes back waits for its result.

    Where a process cannot be forked safely (not on Linux, or once typst has set a page here, whose
    threads a fork would wait for and never see), or there is one processor only, or the process
    comes to nothing, the work is done here when its result is asked for, so that
    its errors are raised here too. The result has to be one that can be pickled.
    """
    if sys.platform != "linux" or _SETTER in sys.modules or len(os.sched_getaffinity(0)) < 2:
        return work
    _reap()
    reading, writing = os.pipe()
    try:
        child = _fork()
    except OSError:
        os.close(reading)
        os.close(writing)
        return work
    if not child:
        _ENDING.clear()
        os.close(reading)
        _do(work, writing)
    os.close(writing)
    owner = os.getpid()

    def result() -> T:
        if os.getpid() != owner:
            return work()  # asked for in another fork: what comes is for the one who began it
        with os.fdopen(reading, "rb") as pipe:
            told = pipe.read()
        _ENDING.append(child)
        _reap()
        found: T = pickle.loads(told) if told else work()
        return found

    return result


def _reap() -> None:
    """Take leave of processes that have ended. Nobody waits for one to end: that takes some
    milliseconds after its result is here, for all its memory is given back first."""
    for child in tuple(_ENDING):
        with suppress(ChildProcessError):
            if os.waitpid(child, os.WNOHANG) == (0, 0):
                continue
        _ENDING.remove(child)


def _fork() -> int:
    with warnings.catch_warnings():
        # Numpy may hold threads for products of matrices; it makes them anew after a fork.
        warnings.simplefilter("ignore", DeprecationWarning)
        return os.fork()


def _do(work: Callable[[], T], writing: int) -> NoReturn:
    """In the new process: tell the result, nothing when there is none, and end at once."""
    with suppress(BaseException):
        if isinstance(work, AtLeisure):
            os.nice(_AT_LEISURE)
        told = pickle.dumps(work())
        with os.fdopen(writing, "wb") as pipe:
            pipe.write(told)
    os._exit(0)
