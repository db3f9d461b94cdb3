"""In which units the firm's own screens speak: as its newest house wishes."""

from __future__ import annotations

from farwall.papers.wall_clock import Units
from farwall.store.book import Book


def firm_units(book: Book) -> Units:
    """`us` until the newest house wishes for metric."""
    newest = book.jobs(limit=1)
    wishes = book.facts(newest[0].id).get("wishes") if newest else None
    return "metric" if isinstance(wishes, dict) and wishes.get("units") == "metric" else "us"
