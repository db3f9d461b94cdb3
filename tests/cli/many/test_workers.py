"""Workers: one, several or machines give the same outcomes; a dead one takes nothing along."""

from __future__ import annotations

import json
import multiprocessing
import os
import signal

import pytest
from tests.killed import left_behind
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import HALL_OF_THREE, job

from farwall.cli.many.nouns import How, OneJob
from farwall.cli.many.workers import here, pool
from farwall.facts.plain import plain

NO_PAGES = How(pages=False)


def texts(*, count=3):
    """Small jobs that plan in a moment, one after another of two kinds."""
    places = [TWO_ROOMS, HALL_OF_THREE]
    return [
        OneJob(f"house-{n}", json.dumps(plain(job(places[n % 2]))).encode(), f"house-{n}.json")
        for n in range(count)
    ]


def told(outcomes):
    """What came of them, without how long it took, by id."""
    return {
        one.id: (one.state, one.made_from, one.why, one.fields, one.area_m2, dict(one.files))
        for one in outcomes
    }


def test_two_processes_give_the_same_files_as_none_to_the_byte():
    jobs = texts()
    alone = told(here(jobs, NO_PAGES))
    assert {state for state, *_ in alone.values()} == {"planned"}
    assert told(pool(jobs, NO_PAGES, workers=2)) == alone


def test_one_bad_job_never_stops_the_rest():
    good = texts(count=2)
    bad = [
        OneJob("torn", b'{"version": 1, "floor": ', "torn.json"),
        OneJob("not-text", b"\xff\xfe\x00", "not-text.json"),
        OneJob("a-list", b"[1, 2]", "a-list.json"),
    ]
    found = {one.id: one for one in here([bad[0], good[0], bad[1], good[1], bad[2]], NO_PAGES)}
    assert [found[one.id].state for one in bad] == ["refused"] * 3
    assert all(found[one.id].why for one in bad)
    assert [found[one.id].state for one in good] == ["planned"] * 2


def test_a_defect_of_ours_is_told_and_the_rest_go_on(monkeypatch):
    from farwall.cli.many import one as module

    jobs = texts(count=2)
    true = module._planned

    def broken(job, how, began):
        if job.id == "house-0":
            raise ZeroDivisionError("by nothing")
        return true(job, how, began)

    monkeypatch.setattr(module, "_planned", broken)
    first, second = here(jobs, NO_PAGES)
    assert (first.state, first.why) == ("failed", ("ZeroDivisionError: by nothing",))
    assert second.state == "planned"


def test_a_job_over_its_time_is_given_up():
    found = next(iter(here(texts(count=1), How(pages=False, most_s=0.001))))
    assert found.state == "lost"
    assert "longer than 0.001 s" in found.why[0]
    assert signal.getitimer(signal.ITIMER_REAL) == (0.0, 0.0)


@pytest.mark.slow
def test_a_worker_killed_in_mid_work_costs_no_job():
    jobs = texts(count=8)
    coming = pool(jobs, NO_PAGES, workers=2)
    found = [next(coming)]
    os.kill(multiprocessing.active_children()[0].pid, signal.SIGKILL)
    found += coming
    assert sorted(one.id for one in found) == [one.id for one in jobs]
    assert {one.state for one in found} == {"planned"}


@pytest.mark.slow
@pytest.mark.filterwarnings("ignore")  # what distributed warns of while it starts is not ours
def test_machines_give_the_same_files_to_the_byte():
    distributed = pytest.importorskip("distributed")
    from farwall.cli.many.workers import machines

    jobs = texts(count=2)
    with distributed.LocalCluster(
        n_workers=1, threads_per_worker=1, processes=False, dashboard_address=None
    ) as cluster:
        found = told(machines(jobs, NO_PAGES, address=cluster.scheduler_address))
    assert found == told(here(jobs, NO_PAGES))


_KILLED = """
import os, time
from farwall.cli.many.workers import _pool

if __name__ == "__main__":
    with _pool(2) as processes:
        list(processes.map(os.path.basename, ["a", "b", "c"]))
        print("works", flush=True)
        time.sleep(600)
"""


def test_a_killed_run_leaves_no_worker_behind(tmp_path):
    assert left_behind(_KILLED, tmp_path) == ""
