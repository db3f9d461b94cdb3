"""The lines of the log of waste water: what was entered, and blank ones after it."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from farwall.facts.plain import Plain
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.waste.noun import Waste
from farwall.job.story import story
from farwall.job.story.noun import Happened
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
    starts_at = datetime.fromisoformat(ground.plan.starts_at)
    entered = waste_entries(ground)
    told = [_row(one, (starts_at + timedelta(minutes=one.at_min)).date(), units) for one in entered]
    if not told:
        count = min(rows, part.drums_full + part.drums_spare)
        told = [["", str(n + 1), *[""] * (len(KEYS) - 2)] for n in range(count)]
    return [*told, *[[""] * len(KEYS) for _ in range(rows - len(told))]]


def waste_entries(ground: Ground) -> tuple[Happened, ...]:
    """Entries of the word `waste` that were not struck, in the order in which they happened; what
    two phones told of one drum once."""
    return story(ground.plan, ground.kept).of("waste")


def _row(one: Happened, day: date, units: Units) -> list[str]:
    """`day`: by the clock of the house, whatever the phone's."""
    about = one.about
    litres = about.get("litres")
    amount = ""
    if isinstance(litres, int | float):
        amount = f"{gal_from_l(litres):.0f}" if units == "us" else f"{litres:.0f}"
    told = {
        "date": day.isoformat(),
        "litres": amount,
        **{key: _text(about.get(key)) for key in KEYS if key not in {"date", "litres"}},
    }
    return [told[key] for key in KEYS]


def _text(value: Plain) -> str:
    if isinstance(value, int | float) and not isinstance(value, bool):
        return f"{value:g}"
    return plain(value) if isinstance(value, str) else ""
