"""Work that may be done beside other work: whoever calls says how, the core only says what."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

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
