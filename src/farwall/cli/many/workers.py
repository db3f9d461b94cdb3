"""Who plans the many: this process, a pool of processes, or other machines; the same results.

A worker that dies takes only its own job with it: what was under way is tried once more, each
job alone, so that the one that kills is found and the rest go on.
"""

from __future__ import annotations

import gc
import importlib
import multiprocessing
import os
import signal
import threading
from collections import deque
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager
from typing import Any

from farwall.cli.many.nouns import How, OneJob, Outcome
from farwall.cli.many.one import made_from, plan_one
from farwall.errors import Mistake, Refused
from farwall.orphans import end_with_parent

_AHEAD = 3
"""Jobs handed out for each worker at once: enough that none waits, few enough to be held."""
_THREADS = ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS")
"""One worker, one thread: workers that each take all processors only stand in each other's way."""


def here(jobs: Sequence[OneJob], how: How) -> Iterator[Outcome]:
    """One after the other, in this process."""
    for job in jobs:
        yield plan_one(job, how)


def pool(jobs: Sequence[OneJob], how: How, *, workers: int) -> Iterator[Outcome]:
    """By so many processes; outcomes as they come."""
    waiting = deque(jobs)
    again: list[OneJob] = []
    while waiting:
        held: dict[Future[Outcome], OneJob] = {}
        with _pool(workers) as processes:
            try:
                yield from _shared_out(processes, waiting, held, how, most=_AHEAD * workers)
            except BrokenProcessPool:
                again += held.values()
            except KeyboardInterrupt:
                for process in multiprocessing.active_children():
                    process.terminate()
                raise
    for job in again:
        yield _alone(job, how)


def _shared_out(
    processes: ProcessPoolExecutor,
    waiting: deque[OneJob],
    held: dict[Future[Outcome], OneJob],
    how: How,
    *,
    most: int,
) -> Iterator[Outcome]:
    while waiting or held:
        while waiting and len(held) < most:
            job = waiting.popleft()
            try:
                with _unheard_in_workers():
                    held[processes.submit(plan_one, job, how)] = job
            except BrokenProcessPool:
                waiting.appendleft(job)
                raise
        done, _ = wait(held, return_when=FIRST_COMPLETED)
        for one in done:
            outcome = one.result()
            del held[one]
            yield outcome


def _alone(job: OneJob, how: How) -> Outcome:
    with _pool(1) as process:
        try:
            return process.submit(plan_one, job, how).result()
        except BrokenProcessPool:
            why = "Its worker died twice: out of memory, or stopped from outside."
            return Outcome(job.id, "lost", made_from(job, how), why=(why,))


def _pool(workers: int) -> ProcessPoolExecutor:
    for name in _THREADS:
        os.environ.setdefault(name, "1")
    # Spawned, not forked: libraries that hold threads do not fork well.
    context = multiprocessing.get_context("spawn")
    return ProcessPoolExecutor(workers, mp_context=context, initializer=_begin)


@contextmanager
def _unheard_in_workers() -> Iterator[None]:
    """Processes that are begun in here do not hear Ctrl-C: this one stops them, and says so."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    before = signal.signal(signal.SIGINT, signal.SIG_IGN)
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)


def _begin() -> None:
    end_with_parent()
    gc.set_threshold(100_000)


def machines(jobs: Sequence[OneJob], how: How, *, address: str) -> Iterator[Outcome]:
    """By the machines of a dask scheduler at `address`; `local` starts one here.

    Raises Refused when dask is not installed or nobody answers there.
    """
    client, as_completed = _client(address)
    with client:
        weather = client.scatter(how, broadcast=True, hash=False)
        futures = {}
        for job in jobs:
            futures[client.submit(plan_one, job, weather, pure=False, retries=1)] = job
        for future in as_completed(futures):
            job = futures.pop(future)
            if future.status == "finished":
                yield future.result()
            else:
                why = f"No machine could do it: {future.exception()}"
                yield Outcome(job.id, "lost", made_from(job, how), why=(why,))
            future.release()


def _client(address: str) -> tuple[Any, Callable[[Any], Iterator[Any]]]:
    """A client of the scheduler there, and what gives its results as they come."""
    try:
        distributed: Any = importlib.import_module("distributed")
    except ImportError:
        what = "several machines need the extra `batch` (dask.distributed)."
        remedy = "Install it, or leave --machines out: a pool of processes here does the same."
        raise Refused(Mistake("--machines", what, remedy)) from None
    try:
        if address == "local":
            client = distributed.Client(
                dashboard_address=None, n_workers=processors(), threads_per_worker=1
            )
        else:
            client = distributed.Client(address, timeout="10s")
    except OSError as error:
        what = f"nobody answers at {address} ({error})."
        raise Refused(Mistake("--machines", what, "Start a dask scheduler there.")) from error
    return client, distributed.as_completed


def processors() -> int:
    """How many processors this process may use."""
    if hasattr(os, "sched_getaffinity"):
        return len(os.sched_getaffinity(0))
    return os.cpu_count() or 1
