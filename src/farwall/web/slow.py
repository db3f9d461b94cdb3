"""Slow work of the firm's screens: one piece for each key at a time, with hands of its own.

A calendar takes half a minute; the plans of houses must not stand in line behind it.
"""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from concurrent.futures import BrokenExecutor, Executor
from dataclasses import field

from farwall.errors import FarwallError
from farwall.nouns import dataclass

Work = Callable[[Executor], None]
"""What is to be done with the hands; it keeps its result itself."""


@dataclass
class Slow:
    """What is being done, and why the last piece of a key failed. make_hands: who does it."""

    make_hands: Callable[[], Executor]
    trouble: dict[str, str] = field(default_factory=dict)
    _hands: Executor | None = None
    _tasks: dict[str, asyncio.Task[None]] = field(default_factory=dict)

    def begin(self, key: str, work: Work) -> bool:
        """Begin a piece of work; False where one of this key runs. Called on the door's loop."""
        if key in self._tasks:
            return False
        self.trouble.pop(key, None)
        self._tasks[key] = asyncio.get_running_loop().create_task(self._do(key, work))
        return True

    def busy(self, key: str) -> bool:
        """Whether a piece of this key runs."""
        return key in self._tasks

    async def settled(self) -> None:
        """Wait until nothing runs."""
        while self._tasks:
            await asyncio.gather(*self._tasks.values(), return_exceptions=True)

    def close(self) -> None:
        """Let the hands go."""
        if self._hands is not None:
            self._hands.shutdown(wait=False, cancel_futures=True)

    async def _do(self, key: str, work: Work) -> None:
        if self._hands is None:
            self._hands = self.make_hands()
        hands = self._hands
        try:
            await asyncio.to_thread(work, hands)
        except FarwallError as error:
            self.trouble[key] = str(error)
        except BrokenExecutor as error:  # the process died: the next piece gets another one
            self.trouble[key] = str(error)
            self._hands = None
        finally:
            del self._tasks[key]
