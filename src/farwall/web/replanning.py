"""Many quick taps, one re-plan: each job's taps wait for a moment of quiet, then one work answers.

While it runs more may be tapped: then one more follows, never a queue of them.
"""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable
from dataclasses import field

from farwall.job.live.again import Waiting
from farwall.nouns import dataclass

Work = Callable[[str], Awaitable[None]]


@dataclass
class Replanning:
    """Jobs whose taps no re-plan has answered yet. work: lays the rest of one job's day anew."""

    work: Work
    now_s: Callable[[], float]
    waiting: dict[str, Waiting] = field(default_factory=dict)
    done: dict[str, int] = field(default_factory=dict)
    _tasks: dict[str, asyncio.Task[None]] = field(default_factory=dict)

    def tapped(self, job: str) -> None:
        """Something was entered for a job; called on the loop of the door."""
        self.waiting[job] = self.waiting.get(job, Waiting()).tapped(self.now_s())
        if job not in self._tasks:
            self._tasks[job] = asyncio.get_running_loop().create_task(self._answer(job))

    def busy(self, job: str) -> bool:
        """Whether a re-plan of this job waits or runs."""
        return job in self._tasks

    async def settled(self) -> None:
        """Wait until nothing waits or runs."""
        while self._tasks:
            await asyncio.gather(*self._tasks.values(), return_exceptions=True)

    async def _answer(self, job: str) -> None:
        try:
            while job in self.waiting:
                due_s = self.waiting[job].due_in_s(self.now_s())
                if due_s:
                    await asyncio.sleep(due_s)
                    continue
                del self.waiting[job]
                await self.work(job)
                self.done[job] = self.done.get(job, 0) + 1
        finally:
            del self._tasks[job]
