"""What is told stands written; what nobody told gets a line to write on."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

from farwall.papers.office.blocks import Blanks, Block, Facts, Own, Text

EMPTY = Own("")
"""A cell of a table that is left to the pen."""


def told_or_blank(
    pairs: Sequence[tuple[str, Text]], *, columns: Literal[1, 2] = 2, blanks: Literal[1, 2, 3] = 3
) -> tuple[Block, ...]:
    """Names with their values, then the names that have none, each with its line."""
    told = tuple(pair for pair in pairs if _has(pair[1]))
    rest = tuple(name for name, value in pairs if not _has(value))
    return (
        *([Facts(told, columns)] if told else []),
        *([Blanks(rest, blanks)] if rest else []),
    )


def own(text: str) -> Text:
    """A text of the user's own, empty where there is none."""
    return Own(text) if text else EMPTY


def _has(value: Text) -> bool:
    return bool(value.text if isinstance(value, Own) else value)
