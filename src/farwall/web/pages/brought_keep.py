"""What a reader found is kept with the house: its notes, its file, the drawing to be corrected."""

from __future__ import annotations

from farwall.store.book import Book
from farwall.store.nouns import DRAWING, NoSuchJob
from farwall.web.pages.brought import Brought
from farwall.web.pages.drafts import DRAFT, draft_document
from farwall.web.pages.repairs import READING, reading_document


def keep_reading(book: Book, found: Brought, content: bytes, name: str) -> None:
    """Keep the drawing's file and what was mended, left, asked; a draft where there is no job."""
    version = 0
    if found.facts is None:
        draft = draft_document(_newest(book, found.id), found.name, found.drawn or {})
        book.put_document(DRAFT, found.id, draft)
    else:
        version = _newest(book, found.id)
    sha = book.put_file(content)
    reading = reading_document(found.notes, unit=found.unit, facts=version)
    files = {"file": sha, "name": name, "storey": found.storey}
    book.put_document(READING, found.id, {**reading, **files, "stated": list(found.stated)})
    if version:
        book.put_document(DRAWING, found.id, {**files, "facts": version})


def is_known(book: Book, job: str) -> bool:
    """Whether the book has a house of this id, or a drawing that is to become one."""
    return bool(_newest(book, job)) or book.document(DRAFT, job) is not None


def _newest(book: Book, job: str) -> int:
    try:
        return book.versions(job)[-1].version
    except NoSuchJob:
        return 0
