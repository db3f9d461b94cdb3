"""A photo of a plan in the book: as it was brought, as a page shows it, and what was told of it."""

from __future__ import annotations

import base64
from typing import Any

from farwall.readers.hints import Hints
from farwall.readers.photo.nouns import Shown
from farwall.store.book import Book
from farwall.web.pages.drafts import DRAFT, UNDERLAY, draft_document, floor_of
from farwall.web.pages.draw_new import free_id
from farwall.web.pages.drawn import drawn_floor, drawn_of, empty_drawn
from farwall.web.pages.repairs import READING, reading_document

PHOTO = "plan-photo"
"""Kind of document: a photo of a plan that a house is drawn from, and where its sheet lies."""
Json = dict[str, Any]
_WIDE_M, _OPACITY = 12.0, 0.5
"""As wide a flattened picture is laid while nobody has told its scale. Rank: guess."""


def keep_photo(book: Book, content: bytes, shown: Shown, wish: str, name: str) -> str:
    """Begin a house with the photo; its id."""
    from farwall.readers.room_names import slug

    job = free_id(book, slug(wish)[:50] or "house")
    book.put_document(DRAFT, job, draft_document(0, wish or job, empty_drawn()))
    preview = base64.b64decode(shown.picture_base64)
    wide, high = (round(side * shown.file_px) for side in (shown.width_px, shown.height_px))
    book.put_document(PHOTO, job, {
        "file": book.put_file(content), "preview": book.put_file(preview), "name": name,
        "width_px": wide, "height_px": high, "corners": [list(p) for p in shown.corners],
        "seen": bool(shown.corners), "told": {},
    })  # fmt: skip
    return job


def keep_flat(book: Book, job: str, told: Json, shown: Shown) -> None:
    """Lay the flattened sheet under the floor, with what was found on it as a drawing to judge."""
    floor = floor_of(book, job)
    kept = book.document(PHOTO, job) or {}
    book.put_document(PHOTO, job, {**kept, "told": told})
    known = shown.m_per_px is not None
    m_per_px = shown.m_per_px or _WIDE_M / shown.width_px
    at = list(shown.at_m) if known else [0.0, shown.height_px * m_per_px]
    book.put_document(UNDERLAY, job, {
        "file": book.put_file(base64.b64decode(shown.picture_base64)), "kind": "image/jpeg",
        "width_px": shown.width_px, "height_px": shown.height_px, "name": str(kept.get("name", "")),
        "at": at, "m_per_px": m_per_px, "opacity": _OPACITY,
    })  # fmt: skip
    reading = shown.reading
    if reading is None:
        return
    # What the drawing screen cannot answer: it reads no photo again, and scales the picture itself.
    asks = [one for one in reading.asks if one.code != "scale"]
    mended = [one for one in reading.mended if one.code != "scale-told"]
    notes = {"mended": mended, "left": list(reading.left), "asks": asks}
    if not known:  # places in metres that nobody knows
        notes = {"asks": asks}
    book.put_document(READING, job, reading_document(notes, unit="", facts=floor.version))
    if known and reading.floor.rooms:
        draft = draft_document(floor.version, floor.name, _drawn(shown, job))
        book.put_document(DRAFT, job, draft)


def _drawn(shown: Shown, job_id: str) -> Json:
    from farwall.job.from_reading import job_from_reading

    assert shown.reading is not None
    job = job_from_reading(shown.reading, job_id=job_id, exits_told=True)
    return drawn_of(job) if job.exits else drawn_floor(job.floor)


def flattened(content: bytes, name: str, hints: Hints) -> Shown:
    """The sheet laid flat and read, in a process of its own. Raises Refused."""
    from farwall.readers.apart.start import photo_of

    return photo_of(content, name=name, hints=hints, flat=True)


def looked_at(content: bytes, name: str) -> Shown:
    """The photo as a page shows it, in a process of its own. Raises Refused."""
    from farwall.readers.apart.start import photo_of

    return photo_of(content, name=name)
