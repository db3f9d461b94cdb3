"""The bibliography as data: what stands behind the keys of a source, and what a rank means."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from functools import cache
from importlib.resources import files

from farwall.evidence import Rank
from farwall.nouns import dataclass
from farwall.web.words import said

_WORD = re.compile(r"[a-z0-9][a-z0-9-]*")
RANKS = tuple(Rank)


@dataclass(frozen=True)
class Source:
    """A line of docs/sources.md: what it is, what it is used for, how its text was seen."""

    key: str
    source: str
    used: str
    seen: str


@cache
def sources() -> dict[str, Source]:
    """Every line by its key, as `tools/sources.py` wrote them down."""
    text = files("farwall.web").joinpath("sources.json").read_text(encoding="utf-8")
    return {key: Source(key, *line) for key, line in json.loads(text).items()}


def sources_in(told: str) -> tuple[Source, ...]:
    """The lines behind the keys that a source names, each once, in their order."""
    found = dict.fromkeys(word for word in _WORD.findall(told) if word in sources())
    return tuple(sources()[key] for key in found)


def rank_told(rank: str) -> str:
    """What a rank means, in a sentence; empty for what is none."""
    known = next((one for one in RANKS if one.value == rank), None)
    return "" if known is None else said(f"rank-{known.name.lower()}")


def ranks_told() -> Iterator[str]:
    """What every rank means, the strongest first."""
    for rank in RANKS:
        yield rank_told(rank.value)
