"""Lab values of a target's squares that somebody measured: a small table as CSV or JSON."""

from __future__ import annotations

import csv
import json
import math

from farwall.colour.targets.common24 import SETS, common_24
from farwall.colour.targets.nouns import Lab
from farwall.colour.targets.own import own_target
from farwall.errors import Mistake, Refused
from farwall.readers.colour_photo.found import PAPER, Values

_MOST_BYTES = 100_000
_RANGES = ((0.0, 100.0), (-150.0, 150.0), (-150.0, 150.0))
_HOW = "Write patch,L,a,b in the first line and a square in each line after it: B3,66.1,6.2,17.0."


def published(name: str) -> Values | None:
    """A published set of the 24 patches; None for a name that is none."""
    if name not in SETS:
        return None
    return {one.name: one.lab for one in common_24(name).patches if one.lab is not None}


def values_in(content: bytes) -> Values:
    """Lab under D50 by name of square, of the bytes of a CSV or JSON file.

    JSON: `{"B3": [66.1, 6.2, 17.0], …}`. `paper` is the bare paper. Raises Refused with every
    mistake.
    """
    if len(content) > _MOST_BYTES:
        raise Refused(Mistake("values", "The file is too large for 44 squares.", _HOW))
    try:
        text = content.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise Refused(Mistake("values", "The file is no text.", _HOW)) from error
    rows = _of_json(text) if text.lstrip().startswith("{") else _of_csv(text)
    known = {PAPER, *(one.name for one in (*own_target().patches, *common_24().patches))}
    mistakes, found = [], {}
    for name, numbers in rows:
        lab = _lab(numbers)
        if name not in known:
            mistakes.append(Mistake(name, "No target has a square of this name.", _HOW))
        elif lab is None:
            what = "This is no L from 0 to 100 with a and b from -150 to 150."
            mistakes.append(Mistake(name, what, _HOW))
        else:
            found[name] = lab
    if not rows:
        mistakes.append(Mistake("values", "There is no square in it.", _HOW))
    if mistakes:
        raise Refused(*mistakes, about="The values of the target were not read.")
    return found


def _of_json(text: str) -> list[tuple[str, list[object]]]:
    try:
        found = json.loads(text)
    except (ValueError, RecursionError) as error:
        raise Refused(Mistake("values", "The file is no JSON.", _HOW)) from error
    return [(str(k), list(v) if isinstance(v, list) else [v]) for k, v in found.items()]


def _of_csv(text: str) -> list[tuple[str, list[object]]]:
    # Lines are parted here, for a lone carriage return ends one too, which the reader takes ill.
    try:
        read = list(csv.reader(text.splitlines()))
    except csv.Error as error:
        raise Refused(Mistake("values", "The file is no CSV.", _HOW)) from error
    rows = [row for row in read if any(one.strip() for one in row)]
    first = [one.strip().lower() for one in rows[0]] if rows else []
    if first != ["patch", "l", "a", "b"]:
        raise Refused(Mistake("line 1", "The heads are not patch,L,a,b.", _HOW))
    return [(row[0].strip(), list(row[1:])) for row in rows[1:]]


def _lab(numbers: list[object]) -> Lab | None:
    try:
        found = [float(str(one)) for one in numbers]
    except ValueError:
        return None
    if len(found) != 3 or not all(
        math.isfinite(v) and low <= v <= high for v, (low, high) in zip(found, _RANGES, strict=True)
    ):
        return None
    return found[0], found[1], found[2]
