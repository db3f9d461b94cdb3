"""JSON for people and version control: a key to a line, a point or a short list to a line."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from json.encoder import encode_basestring
from math import isfinite

_NESTED = (list, tuple, dict)
_on_one_line = json.JSONEncoder(ensure_ascii=False).encode


def json_text(value: object, *, indent: str = "") -> str:
    """Plain JSON values as text, each level one blank further in; `indent` stands before it.

    Lists of numbers stand on one line, so that paths and polygons take a line a
    point; the text is the same JSON as that of the standard library.
    """
    if isinstance(value, Mapping) and value:
        items = [
            f"{encode_basestring(key)}: {json_text(entry, indent=indent + ' ')}"
            for key, entry in value.items()
        ]
        return _in_lines("{", items, "}", indent)
    if isinstance(value, list | tuple) and any(isinstance(entry, _NESTED) for entry in value[:1]):
        if text := _rows(value):
            return _in_lines("[", [text.replace("], [", f"],\n{indent} [")], "]", indent)
        items = [json_text(entry, indent=indent + " ") for entry in value]
        return _in_lines("[", items, "]", indent)
    if isinstance(value, str):
        return encode_basestring(value)
    if isinstance(value, float) and isfinite(value):
        return repr(value)
    return _on_one_line(value)


def _rows(values: Sequence[object]) -> str:
    """Rows of nothing but numbers, all on one line and without the outer brackets; else nothing."""
    if not all(
        isinstance(row, list | tuple) and {*map(type, row)} <= {int, float} for row in values
    ):
        return ""
    return _on_one_line(values)[1:-1]


def _in_lines(start: str, items: list[str], end: str, indent: str) -> str:
    between = f",\n{indent} "
    return f"{start}\n{indent} {between.join(items)}\n{indent}{end}"
