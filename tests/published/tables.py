"""The copied tables: one CSV each, header first, the source of every row in the row itself."""

from __future__ import annotations

import csv
from pathlib import Path

DATA = Path(__file__).resolve().parent / "data"


def table(name: str) -> list[dict[str, str]]:
    """The rows of `data/<name>.csv` as texts by column."""
    with (DATA / f"{name}.csv").open(newline="") as file:
        rows = list(csv.DictReader(file))
    assert rows, f"{name}.csv holds no rows"
    return rows
