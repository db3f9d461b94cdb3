"""Work in a forked process: its result, its errors, and a process that comes to nothing."""

from __future__ import annotations

import os
import sys
import time

import pytest

from farwall.cli import forked as forking
from farwall.cli.forked import forked

forks = pytest.mark.skipif(
    sys.platform != "linux" or len(os.sched_getaffinity(0)) < 2,
    reason="work is done here where no process is forked",
)


@pytest.fixture(autouse=True)
def no_page_set_yet(monkeypatch):
    """Whatever other tests have set in this process."""
    monkeypatch.delitem(sys.modules, "typst", raising=False)


def test_the_result_comes_back():
    later = forked(lambda: {"pages": ["one", "two"]})
    assert later() == {"pages": ["one", "two"]}


def test_more_than_a_pipe_holds_comes_back():
    assert forked(lambda: "x" * 1_000_000)() == "x" * 1_000_000


@forks
def test_it_is_done_by_another_process():
    assert forked(os.getpid)() != os.getpid()


@forks
def test_several_are_at_work_at_once():
    later = [forked(os.getpid) for _ in range(3)]
    assert len({each() for each in later}) == 3


def test_an_error_is_raised_where_the_result_is_asked_for():
    def work():
        raise ValueError("no such plan")

    later = forked(work)
    with pytest.raises(ValueError, match="no such plan"):
        later()


@forks
def test_work_whose_process_dies_is_done_here():
    mine = os.getpid()

    def work():
        if os.getpid() != mine:
            os._exit(3)
        return "done here"

    assert forked(work)() == "done here"


def test_without_a_second_processor_nothing_is_forked(monkeypatch):
    monkeypatch.setattr(os, "sched_getaffinity", lambda _: {0}, raising=False)
    assert forked(os.getpid)() == os.getpid()


@forks
def test_a_result_asked_for_in_another_fork_is_worked_out_there_and_left_for_its_owner():
    later = forked(os.getpid)
    other = forked(lambda: (later(), os.getpid()))
    there, pid = other()
    assert there == pid
    assert later() not in {pid, os.getpid()}


def test_once_a_page_was_set_here_nothing_is_forked(monkeypatch):
    """Typst's threads are not there in a fork, and it would wait for them for ever."""
    monkeypatch.setitem(sys.modules, "typst", sys)
    assert forked(os.getpid)() == os.getpid()


@forks
def test_processes_whose_result_was_read_are_taken_leave_of():
    ended = [forked(os.getpid)() for _ in range(3)]
    until = time.monotonic() + 30
    while forking._ENDING and time.monotonic() < until:
        time.sleep(0.01)
        forking._reap()
    for child in ended:
        with pytest.raises(ChildProcessError):
            os.waitpid(child, 0)
