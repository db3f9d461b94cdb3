"""What a firm's closed jobs taught, and its own print of our target: documents of its book."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from farwall.facts.lessons import Lessons
    from farwall.readers.colour_photo.found import Values
    from farwall.store.book import Book

LESSONS, FIRM = "lessons", "firm"
"""Kind and id of the document."""
PRINT = "print-values"
"""Kind of the document that holds what an instrument reads of the firm's own print."""


def lessons_of(book: Book) -> Lessons | None:
    """The lessons that a book keeps; None where it keeps none. Raises Refused."""
    return lessons_in(book.document(LESSONS, FIRM))


def lessons_in(document: dict[str, Any] | None) -> Lessons | None:
    """The lessons in such a document; None for None. Raises Refused."""
    from farwall.readers.lessons_json import lessons_from

    return None if document is None else lessons_from(document, "the book")


def keep_lessons(book: Book, lessons: Lessons) -> int:
    """Keep them as the newest version; its number."""
    from farwall.facts.plain import plain

    told = plain(lessons)
    assert isinstance(told, dict)
    return book.put_document(LESSONS, FIRM, told)


def print_values(book: Book) -> Values:
    """Lab by name of square of the firm's own print; nothing where nobody measured it."""
    kept = (book.document(PRINT, FIRM) or {}).get("values", {})
    return {name: (float(lab[0]), float(lab[1]), float(lab[2])) for name, lab in kept.items()}


def keep_print_values(book: Book, values: Values) -> int:
    """Keep them as the newest version, none to forget them; its number."""
    return book.put_document(PRINT, FIRM, {"values": {k: list(v) for k, v in values.items()}})
