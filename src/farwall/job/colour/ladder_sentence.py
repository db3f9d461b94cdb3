"""A sentence about a ladder of samples, and whom it is about."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from farwall.facts.samples import State
from farwall.job.colour.ladder import Rung
from farwall.nouns import dataclass

STATE_WORDS: dict[State, str] = {"dry": "dry", "clean wet": "clean and wet", "sealed": "sealed"}


@dataclass(frozen=True)
class Said:
    """A sentence about the ladder. code: a word that stays · samples: whom it is about."""

    code: str
    text: str
    samples: tuple[str, ...] = ()


def named(names: Iterable[str]) -> str:
    """Names in a row."""
    return ", ".join(names)


def about(code: str, text: str, rungs: Iterable[Rung]) -> Iterator[Said]:
    """The sentence with the names in its place; nothing where there are none."""
    names = tuple(one.name for one in rungs)
    if names:
        yield Said(code, text.format(named(names)), names)
