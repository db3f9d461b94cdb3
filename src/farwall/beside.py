"""Work that may be done beside other work: whoever calls says how, the core only says what."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import field
from functools import cached_property, partial
from typing import Any

from farwall.nouns import dataclass

Beside = Callable[[Callable[[], Any]], Callable[[], Any]]
"""Begins some work beside other work; what it gives waits for the result.

The work changes nothing that others see: only what comes back is told to them.
"""


def at_once(work: Callable[[], Any]) -> Callable[[], Any]:
    """Nothing is done beside anything: the work is done when its result is asked for."""
    return work


@dataclass(frozen=True)
class AtLeisure:
    """Work whose result nobody waits for soon: whoever begins it lets other work go before it."""

    work: Callable[[], Any]

    def __call__(self) -> Any:
        """What the work gives."""
        return self.work()


class Gathered:
    """Small pieces of work, gathered until all of them are begun together beside other work.

    Done in one process they share what each of them finds. What nobody began is done when it is
    asked for.
    """

    def __init__(self, beside: Beside) -> None:
        self._beside = beside
        self._batch = _Batch()

    def later(self, work: Callable[[], Any]) -> Callable[[], Any]:
        """Gathers this; what comes back waits for its result."""
        self._batch.works.append(work)
        return partial(self._batch.result, len(self._batch.works) - 1)

    def begin(self) -> None:
        """Begins what was gathered so far, at leisure; what comes after it is gathered anew."""
        if self._batch.works:
            self._batch.begun = self._beside(AtLeisure(self._batch.done))
            self._batch = _Batch()


@dataclass
class _Batch:
    works: list[Callable[[], Any]] = field(default_factory=list)
    begun: Callable[[], list[Any]] | None = None

    def done(self) -> list[Any]:
        return [work() for work in self.works]

    @cached_property
    def _found(self) -> list[Any]:
        return self.done() if self.begun is None else self.begun()

    def result(self, number: int) -> Any:
        return self._found[number]
