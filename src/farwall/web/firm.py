"""What a firm's closed jobs taught, kept as a document of its book."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from farwall.facts.lessons import Lessons
    from farwall.store.book import Book

LESSONS, FIRM = "lessons", "firm"
"""Kind and id of the document."""


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
