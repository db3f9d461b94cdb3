"""Words of a page that says no."""

from __future__ import annotations

WORDS = {
    "no-page": "There is no such page",
    "no-house": "The book has no such house",
    "book-trouble": "The book cannot be used now",
    "too-large": "Too much at once",
    "from-elsewhere": "This form did not come from here",
    "refused": "This cannot be done",
    "unanswerable": "Not yet",
    "broke": "Something is broken here",
    "broke-told": "Do it again; if it stays so, it is in the log of the server as {number}.",
    "back-house": "Back to this house",
    "back": "Back to the houses",
}
