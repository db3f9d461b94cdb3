"""From the bytes of a PDF to a reading: choose the page, take it apart, and read the sheet."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.readers.lines.page import read_page
from farwall.readers.pdf.opening import opened, points_per_unit
from farwall.readers.pdf.pages import Taken, take_page

MOST_PAGES = 30
"""So many pages are looked at for the one with the floor on it."""
_ENOUGH = 0.5  # of the most walls: pages with as many are named beside the one that is read


def read_pdf(
    data: bytes, *, scale_m_per_unit: float | None = None, page: int | None = None
) -> Reading:
    """The floor in a vector PDF.

    `scale_m_per_unit` [m] is that of a point of the page and overrules what the page tells;
    `page` counts from 1, without it the page with the most walls is read. Raises Refused for a
    document that will not open, and for one that holds a scan instead of lines.
    """
    with opened(data) as document:
        taken, notes = _chosen(document, points_per_unit(data), page)
    if taken.is_scan:
        raise _scan()
    reading = read_page(taken.page, scale_m_per_unit=scale_m_per_unit)
    return replace(reading, left=(*notes, *reading.left)) if notes else reading


def is_scan(data: bytes) -> bool:
    """Whether the page that would be read is a picture of a plan and not lines.

    Raises Refused for a document that will not open.
    """
    with opened(data) as document:
        return _chosen(document, 1.0, None)[0].is_scan


def _scan() -> Refused:
    what = "The plan in this PDF is a scan: a picture, not lines."
    remedy = "Save the page as a picture (PNG or JPEG) and hand that over, or ask for the drawing."
    return Refused(Mistake("", what, remedy))


def _chosen(document: Any, unit: float | None, wanted: int | None) -> tuple[Taken, list[Note]]:
    """The page with the most walls, or the one that is wanted, and what to say of the others."""
    count = len(document)
    if wanted is not None:
        if not 1 <= wanted <= count:
            what = f"There is no page {wanted}: the PDF has {count}."
            raise Refused(Mistake("page", what, f"Say a page from 1 to {count}."))
        return _take(document, wanted - 1, unit), []
    looked = [_measured(document, index, unit) for index in range(min(count, MOST_PAGES))]
    best = max(range(len(looked)), key=lambda index: (looked[index][0], -index))
    return _take(document, best, unit), _others([one[0] for one in looked], best, count)


def _measured(document: Any, index: int, unit: float | None) -> tuple[float, float]:
    try:
        taken = _take(document, index, unit)
    except Refused:
        if len(document) == 1:
            raise
        return -1.0, 0.0
    return taken.wall_length, taken.picture_share


def _take(document: Any, index: int, unit: float | None) -> Taken:
    import pypdfium2

    try:
        page = document[index]
    except pypdfium2.PdfiumError as error:
        what = "This page of the PDF is too damaged to open."
        remedy = "Print it to a new PDF and send that."
        raise Refused(Mistake(f"page {index + 1}", what, remedy)) from error
    try:
        return take_page(page, unit)
    finally:
        page.close()


def _others(walls: list[float], best: int, count: int) -> list[Note]:
    notes = []
    rivals = [
        str(index + 1)
        for index, length in enumerate(walls)
        if index != best and length > _ENOUGH * walls[best] > 0
    ]
    if count > 1:
        what = f"Of {count} pages, page {best + 1} was read: most walls are drawn there."
        if rivals:
            what += f" Walls are also drawn on page {', '.join(rivals)}."
        notes.append(Note("pages-left", what))
    if count > MOST_PAGES:
        what = f"Pages after {MOST_PAGES} were not looked at. Save the one with the floor alone."
        notes.append(Note("pages-not-looked-at", what))
    return notes
