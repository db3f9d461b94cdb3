"""Where a fact lies in a job: its type, its bounds, its value, and putting another there."""

from __future__ import annotations

import types
from collections.abc import Callable, Sequence
from dataclasses import is_dataclass
from functools import cache
from itertools import pairwise
from typing import Annotated, Any, Literal, Union, get_args, get_origin

from farwall.facts.job import Job
from farwall.nouns import dataclass
from farwall.readers.job_limits import LIMITS
from farwall.readers.shape import bare, keys_of
from farwall.readers.twins import TWINS
from farwall.web.pages.forms.nouns import Path

MOMENTS = frozenset({"starts_at", "not_before"})
"""Keys whose text is a moment with its offset."""
Kind = Literal["number", "whole", "choice", "yes-no", "text", "list", "several", "moment"]


@dataclass(frozen=True)
class Hint:
    """What a place holds: its kind, choices, ends (the SI unit), whether it may be empty."""

    kind: Kind
    choices: tuple[Any, ...] = ()
    low: float | None = None
    high: float | None = None
    above: bool = False
    may_be_empty: bool = True


@cache
def hint_at(path: Path) -> Hint:
    """What the place holds. Raises KeyError for a way that leads nowhere."""
    hint: Any = Job
    noun: type | None = None
    for step in path:
        inner = bare(hint)
        if is_dataclass(inner) and isinstance(inner, type):
            noun, hint = inner, keys_of(inner)[str(step)]
        elif get_origin(inner) is dict:
            hint = get_args(inner)[1]
        else:
            hint = get_args(inner)[0]
    inner = bare(hint)
    empty = _may_be_none(hint)
    if get_origin(inner) is Literal:
        choices = get_args(inner)
        return Hint("choice", choices, may_be_empty=empty)
    if inner is bool:
        return Hint("yes-no", (True, False), may_be_empty=empty)
    if inner is str and path[-1] in MOMENTS:
        return Hint("moment")
    if inner is str:
        return Hint("text", may_be_empty=not _longer_than_nothing(hint))
    if get_origin(inner) is tuple:
        one = bare(get_args(inner)[0])
        known = get_args(one) if get_origin(one) is Literal else ()
        return Hint("several", known) if known else Hint("list")
    low, high, above = _ends(hint, noun, str(path[-1]))
    kind: Kind = "whole" if inner is int else "number"
    return Hint(kind, (), low, high, above, empty)


def _may_be_none(hint: Any) -> bool:
    while get_origin(hint) is Annotated:
        hint = get_args(hint)[0]
    return get_origin(hint) in {Union, types.UnionType} and type(None) in get_args(hint)


def _longer_than_nothing(hint: Any) -> bool:
    return any(getattr(one, "min_length", 0) for one in _notes(hint))


def _notes(hint: Any) -> list[Any]:
    """Bounds written on a type, also inside `X | None`."""
    found: list[Any] = []
    if get_origin(hint) is Annotated:
        found += hint.__metadata__
        found += _notes(get_args(hint)[0])
    elif get_origin(hint) in {Union, types.UnionType}:
        for part in get_args(hint):
            found += _notes(part)
    return found


def _ends(hint: Any, noun: type | None, key: str) -> tuple[float | None, float | None, bool]:
    lows: list[float] = []
    highs: list[float] = []
    above = False
    for note in _notes(hint):
        for name, into in (("ge", lows), ("gt", lows), ("le", highs), ("lt", highs)):
            if (bound := getattr(note, name, None)) is not None:
                into.append(bound)
                above = above or name == "gt"
    limit = LIMITS.get((noun, key)) if noun is not None else None
    if limit is not None:
        lows.append(limit.low)
        highs.append(limit.high)
        above = above and limit.low <= 0
    return max(lows, default=None), min(highs, default=None), above


def value_at(plain: Any, path: Sequence[str | int]) -> Any:
    """The value at a place of plain facts, None where nothing is there."""
    for step in path:
        if isinstance(plain, dict):
            plain = plain.get(step)
        elif isinstance(plain, list) and isinstance(step, int) and step < len(plain):
            plain = plain[step]
        else:
            return None
    return plain


_OTHERS: dict[str, set[str]] = {}
for _twins in TWINS.values():
    for _twin in _twins:
        _OTHERS.setdefault(_twin.key, set()).add(_twin.other)


def put(raw: dict[str, Any], path: Path, value: Any) -> None:
    """Put a value in its place of plain facts, or take it away with None. `raw` is changed.

    Rows and objects on the way are made; a spelling of the same value in other units goes.
    """
    node: Any = raw
    for step, after in pairwise(path):
        node = _entered(node, step, list if isinstance(after, int) else dict)
    last = path[-1]
    if isinstance(node, dict):
        for other in _OTHERS.get(str(last), ()):
            node.pop(other, None)
        if value is None:
            node.pop(last, None)
        else:
            node[last] = value


def _entered(node: Any, step: str | int, empty: Callable[[], Any]) -> Any:
    if isinstance(node, list):
        assert isinstance(step, int)
        while len(node) <= step:
            node.append(empty())
        return node[step]
    if node.get(step) is None:
        node[step] = empty()
    return node[step]
