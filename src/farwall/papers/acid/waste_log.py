"""The lines of the log of waste water: what was entered, and blank ones after it."""

from __future__ import annotations

from datetime import datetime

from farwall.facts.log import Kept
from farwall.facts.plain import Plain
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.waste.noun import Waste
from farwall.job.story.order import in_order
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units
from farwall.units import gal_from_l

KEYS = ("date", "drum", "litres", "ph_before", "ph", "who", "way", "manifest")
"""Columns of the page, in order."""


def log_rows(ground: Ground, part: Waste, *, rows: int) -> list[list[str]]:
    """A line for each entry about waste water that stands, by time, then blank ones.

    Without an entry the drums that are expected are numbered. `rows`: how many lines there are at
    least.
    """
    units = ground.job.wishes.units
    entered = waste_entries(ground.kept, ground.plan.starts_at)
    told = [_row(one, units) for one in entered]
    if not told:
        count = min(rows, part.drums_full + part.drums_spare)
        told = [["", str(n + 1), *[""] * (len(KEYS) - 2)] for n in range(count)]
    return [*told, *[[""] * len(KEYS) for _ in range(rows - len(told))]]


def waste_entries(kept: tuple[Kept, ...], starts_at: str) -> list[Kept]:
    """Entries of the word `waste` that were not struck, in the order in which they happened."""
    by_id = {one.entry.id: one for one in reversed(kept)}
    happened = in_order(kept, starts_at=starts_at).happened
    return [by_id[one.id] for one in happened if one.word == "waste"]


def _row(one: Kept, units: Units) -> list[str]:
    about = one.entry.about
    litres = about.get("litres")
    amount = ""
    if isinstance(litres, int | float):
        amount = f"{gal_from_l(litres):.0f}" if units == "us" else f"{litres:.0f}"
    told = {
        "date": datetime.fromisoformat(one.entry.at).date().isoformat(),
        "litres": amount,
        **{key: _text(about.get(key)) for key in KEYS if key not in {"date", "litres"}},
    }
    return [told[key] for key in KEYS]


def _text(value: Plain) -> str:
    if isinstance(value, int | float) and not isinstance(value, bool):
        return f"{value:g}"
    return plain(value) if isinstance(value, str) else ""
