"""In which units the firm's own screens speak: as its settings tell, else its newest house."""

from __future__ import annotations

from farwall.papers.wall_clock import Units
from farwall.store.book import Book
from farwall.web.firm import FIRM
from farwall.web.pages.new_houses import NEW_HOUSES


def firm_units(book: Book) -> Units:
    """`us` where nobody wished for metric."""
    told = (book.document(NEW_HOUSES, FIRM) or {}).get("wishes")
    if not told:
        newest = book.jobs(limit=1)
        told = book.facts(newest[0].id).get("wishes") if newest else None
    return "metric" if isinstance(told, dict) and told.get("units") == "metric" else "us"
