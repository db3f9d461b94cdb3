"""From the bytes of a PDF to a reading: choose the page, take it apart, and read the sheet."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.nouns import dataclass
from farwall.readers.hints import Hints
from farwall.readers.lines.page import read_page
from farwall.readers.pdf.opening import opened, points_per_unit
from farwall.readers.pdf.pages import Taken, take_page

MOST_PAGES = 30
"""So many pages are looked at for the one with the floor on it."""
_ENOUGH = 0.5  # of the most walls: pages with as many are named beside the one that is read


@dataclass(frozen=True)
class _Chosen:
    """The page that is read: from nought, taken apart, and what is said of the others."""

    index: int
    taken: Taken
    notes: tuple[Note, ...] = ()


def read_pdf(data: bytes, *, hints: Hints | None = None) -> Reading:
    """The floor in a PDF: of its lines, or of the picture where the page is a scan.

    The scale told is that of a point of the page, of a scan that of a millimetre of its paper.
    Without a page told the one with the most walls is read. Raises Refused for a document or page
    that will not open.
    """
    told, unit = hints or Hints(), points_per_unit(data)
    with opened(data) as document:
        chosen = _choose(document, unit, told.page)
        if chosen.taken.is_scan:
            from farwall.readers.pdf.scan import read_scan

            with _page(document, chosen.index) as page:
                reading = read_scan(page, told, unit)
        else:
            reading = read_page(chosen.taken.page, scale_m_per_unit=told.scale_m_per_unit)
    return replace(reading, left=(*chosen.notes, *reading.left))


def is_scan(data: bytes) -> bool:
    """Whether the page that would be read is a picture of a plan and not lines.

    Raises Refused for a document that will not open.
    """
    with opened(data) as document:
        return _choose(document, 1.0, 0).taken.is_scan


def _choose(document: Any, unit: float | None, wanted: int) -> _Chosen:
    """The page that is wanted, counted from 1; for nought the one with the most walls."""
    count = len(document)
    if wanted:
        if not 1 <= wanted <= count:
            what = f"There is no page {wanted}: the PDF has {count}."
            raise Refused(Mistake("page", what, f"Say a page from 1 to {count}."))
        return _Chosen(wanted - 1, _take(document, wanted - 1, unit))
    if count == 1:
        return _Chosen(0, _take(document, 0, unit))
    worths = [_worth(document, index, unit) for index in range(min(count, MOST_PAGES))]
    best = max(range(len(worths)), key=lambda index: (worths[index], -index))
    return _Chosen(best, _take(document, best, unit), tuple(_others(worths, best, count)))


def _worth(document: Any, index: int, unit: float | None) -> float:
    """How much of a plan is on a page: the length of its walls, or a picture as a last resort."""
    try:
        taken = _take(document, index, unit)
    except Refused:
        return -1.0
    return 1.0 if taken.is_scan else taken.wall_length


def _take(document: Any, index: int, unit: float | None) -> Taken:
    with _page(document, index) as page:
        return take_page(page, unit)


@contextmanager
def _page(document: Any, index: int) -> Iterator[Any]:
    """A page, closed afterwards. Raises Refused where it is broken."""
    import pypdfium2

    try:
        page = document[index]
    except pypdfium2.PdfiumError as error:
        what = "This page of the PDF is too damaged to open."
        remedy = "Print it to a new PDF and send that."
        raise Refused(Mistake(f"page {index + 1}", what, remedy)) from error
    try:
        yield page
    finally:
        page.close()


def _others(walls: list[float], best: int, count: int) -> list[Note]:
    """What is said of the pages that are not read."""
    rivals = [
        str(index + 1)
        for index, length in enumerate(walls)
        if index != best and length > _ENOUGH * walls[best] > 0
    ]
    what = f"Of {count} pages, page {best + 1} was read: most walls are drawn there."
    if rivals:
        what += f" Walls are also drawn on page {', '.join(rivals)}."
    notes = [Note("pages-left", what)]
    if count > MOST_PAGES:
        what = f"Pages after {MOST_PAGES} were not looked at. Save the one with the floor alone."
        notes.append(Note("pages-not-looked-at", what))
    return notes
