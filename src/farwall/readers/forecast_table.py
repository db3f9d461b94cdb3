"""The table under a forecast: rows under plain names, from CSV or from JSON, with its faults."""

from __future__ import annotations

import csv
import re
from collections.abc import Iterator, Mapping
from dataclasses import field

from farwall.errors import Mistake
from farwall.nouns import dataclass
from farwall.readers.json_text import parse

_SAID = re.compile(r"#\s*(issued_at|issued|utc_offset)\s*[:=]\s*(.+?)\s*$", re.IGNORECASE)
_SHORT = (
    ("km_per_h|kmh|kph", "km_h"),
    ("knots|kt", "kn"),
    ("ms|mps", "m_s"),
    ("pct", "percent"),
    ("celsius|deg_c", "c"),
    ("fahrenheit|deg_f", "f"),
)
"""Spellings of units, and how they are spelt here."""


@dataclass
class Table:
    """Rows as texts or numbers under names, each with its place in the file, and what is wrong."""

    rows: list[tuple[str, Mapping[str, object]]] = field(default_factory=list)
    names: list[str] = field(default_factory=list)
    said: dict[str, str] = field(default_factory=dict)
    faults: dict[tuple[str, str], list[str]] = field(default_factory=dict)

    def add(self, where: str, what: str, remedy: str = "") -> None:
        """Note a fault; the same fault in many places becomes one sentence."""
        self.faults.setdefault((what, remedy), []).append(where)

    def mistakes(self) -> Iterator[Mistake]:
        """Every fault with its places."""
        for (what, remedy), at in self.faults.items():
            few = ", ".join(one for one in at[:3] if one)
            more = f" and {len(at) - 3} more" if len(at) > 3 else ""
            yield Mistake(few + more, what, remedy)


def from_csv(text: str) -> Table:
    """The rows of a text with a header, parted by commas, semicolons or tabs; # begins a remark."""
    table = Table()
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    kept = []
    for number, line in enumerate(lines, 1):
        if line.lstrip().startswith("#"):
            if told := _SAID.match(line.strip()):
                table.said[told[1].lower()] = told[2]
        elif line.strip(" ,;\t"):
            kept.append((number, line))
    if not kept:
        return table
    marks = {mark: kept[0][1].count(mark) for mark in ",;\t"}
    mark = max(marks, key=lambda one: marks[one])
    try:
        cells = list(csv.reader((line for _, line in kept), delimiter=mark))
    except csv.Error:
        table.add("", "The file cannot be parted into columns.", "Save it anew as CSV.")
        return table
    table.names = [_plain(one) for one in cells[0]]
    for (number, _), row in zip(kept[1:], cells[1:], strict=False):
        while len(row) > len(table.names) and not row[-1].strip():
            row.pop()  # a spreadsheet's empty column
        if len(row) != len(table.names):
            wrong = f"A row has {len(row)} cells, the header {len(table.names)}."
            table.add(f"line {number}", wrong, "Repair the row.")
            continue
        table.rows.append((f"line {number}", dict(zip(table.names, row, strict=True))))
    return table


def from_json(text: str, about: str) -> Table:
    """The rows of a JSON text: a list of objects, or one list a column."""
    parsed = parse(text, about=about)
    table = Table()
    for one in parsed.mistakes:
        table.add(one.where, one.what, one.remedy)
    data: object = parsed.data
    data = {"hours": data} if isinstance(data, list) else data
    if not isinstance(data, dict):
        table.add("", "It is no object and no list.", "Write hours as a list of objects.")
        return table
    known = {_plain(str(key)): value for key, value in data.items()}
    for key in ("issued_at", "issued", "utc_offset"):
        if isinstance(known.get(key), str):
            table.said[key] = str(known.pop(key))
    hours = known.pop("hours", known.pop("hourly", None))
    inner = (
        {_plain(str(key)): value for key, value in hours.items()}
        if isinstance(hours, dict)
        else known
    )
    rows = hours if isinstance(hours, list) else _turned(table, inner)
    if not rows and not table.faults:
        what = "It holds no hours."
        table.add(
            "", what, "Write `hours`, a list of objects, or one list a column under its name."
        )
    for number, row in enumerate(rows):
        if not isinstance(row, dict):
            table.add(f"hours[{number}]", "This is no hour.", "Write an object for each hour.")
            continue
        plain = {_plain(str(key)): value for key, value in row.items()}
        table.names += [key for key in plain if key not in table.names]
        table.rows.append((f"hours[{number}]", plain))
    return table


def _turned(table: Table, columns: Mapping[str, object]) -> list[object]:
    """Rows of a file that holds one list a column."""
    lists = {key: value for key, value in columns.items() if isinstance(value, list)}
    lengths = {len(value) for value in lists.values()}
    if len(lengths) > 1:
        table.add("", "The columns are not equally long.", "Give one value an hour in each.")
        return []
    return [dict(zip(lists, row, strict=True)) for row in zip(*lists.values(), strict=True)]


def _plain(name: str) -> str:
    """A column's name as words with `_` between: `Temperature (°F)` is `temperature_f`."""
    told = name.strip().lower().replace("%", " percent ").replace("/", " ")
    told = re.sub(r"[^a-z0-9]+", "_", told).strip("_")
    for pattern, short in _SHORT:
        told = re.sub(rf"(?<![a-z])(?:{pattern})(?![a-z])", short, told)
    return told
