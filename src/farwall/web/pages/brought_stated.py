"""What a file states of its rooms' sizes, beside their outlines, as sentences of the screens."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, Any

from farwall.units import ft2_from_m2
from farwall.web.words import said

if TYPE_CHECKING:
    from farwall.facts.reading import Reading

Json = dict[str, Any]


def stated_rows(reading: Reading) -> list[Json]:
    """A row for each class of stated areas, as plain values to be kept with the house."""
    from farwall.job.stated import compared

    return [
        {
            "kind": row.kind, "rooms": row.rooms, "agree": row.agree,
            "stated_m2": round(row.stated_m2, 2), "drawn_m2": round(row.drawn_m2, 2),
        }
        for row in compared(reading)
    ]  # fmt: skip


def stated_told(rows: Sequence[Json]) -> list[str]:
    """A sentence or two for each row, in the language of the request."""
    return [_told(row) for row in rows]


def _told(row: Json) -> str:
    figures = {
        name: f"{row[f'{name}_m2']:.1f} m² ({ft2_from_m2(row[f'{name}_m2']):,.0f} ft²)"
        for name in ("stated", "drawn")
    }
    first = said(f"stated-{row['kind']}", agree=row["agree"], rooms=row["rooms"], **figures)
    why = said(f"stated-why-{row['kind']}") if row["agree"] < row["rooms"] else ""
    return f"{first} {why}".strip()
