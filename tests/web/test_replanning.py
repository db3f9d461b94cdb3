"""Many quick taps, one re-plan, on a clock that the test moves."""

from __future__ import annotations

import asyncio

import pytest

from farwall.web.replanning import Replanning


class Clock:
    """Seconds that pass only when somebody sleeps."""

    def __init__(self, monkeypatch):
        self.s = 0.0
        true = asyncio.sleep

        async def sleep(seconds):
            self.s += seconds
            await true(0)

        monkeypatch.setattr("farwall.web.replanning.asyncio.sleep", sleep)


@pytest.fixture
def lived(monkeypatch):
    """Runs a script of taps against re-plans that are noted with their second."""

    def run(script):
        clock, worked = Clock(monkeypatch), []

        async def whole():
            async def work(job):
                worked.append((job, clock.s))

            replanning = Replanning(work, lambda: clock.s)
            await script(replanning, clock)
            await replanning.settled()
            return replanning

        return asyncio.run(whole()), worked

    return run


def test_a_burst_is_answered_once_two_seconds_after_its_last_tap_by_hand(lived):
    """By hand: taps at 0, 0 and 0 s; quiet for 2 s; one re-plan at 2 s."""

    async def script(replanning, _):
        for _ in range(3):
            replanning.tapped("two")

    replanning, worked = lived(script)
    assert worked == [("two", 2.0)]
    assert replanning.done == {"two": 1}
    assert not replanning.busy("two")


def test_jobs_do_not_wait_for_one_another(lived):
    async def script(replanning, _):
        replanning.tapped("two")
        replanning.tapped("three")

    _, worked = lived(script)
    assert sorted(job for job, _ in worked) == ["three", "two"]


def test_what_is_tapped_while_a_re_plan_runs_is_answered_by_one_more(lived):
    async def script(replanning, _):
        true, first = replanning.work, []

        async def work(job):
            if not first:
                first.append(job)
                replanning.tapped(job)
                replanning.tapped(job)
            await true(job)

        replanning.work = work
        replanning.tapped("two")

    replanning, worked = lived(script)
    assert [job for job, _ in worked] == ["two", "two"]
    assert replanning.waiting == {}


def test_a_work_that_fails_leaves_the_next_tap_its_answer(lived):
    async def script(replanning, _):
        true, failed = replanning.work, []

        async def work(job):
            if not failed:
                failed.append(job)
                raise RuntimeError("it broke")
            await true(job)

        replanning.work = work
        replanning.tapped("two")
        await replanning.settled()
        replanning.tapped("two")

    _, worked = lived(script)
    assert len(worked) == 1
