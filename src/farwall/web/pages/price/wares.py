"""The firm's price list, kept as a document of its book: versions, and the file it came in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.web.firm import FIRM
from farwall.web.words import said

if TYPE_CHECKING:
    from starlette.datastructures import FormData

    from farwall.facts.wares import PriceList
    from farwall.readers.price_list import ListRead

WARES = "wares"
"""Kind of the document."""
MOST_MB = 8


def wares_in(document: dict[str, Any] | None) -> PriceList | None:
    """The price list in such a document; None for none. Raises Refused."""
    from farwall.readers.wares_json import wares_from

    return None if document is None else wares_from(document["list"], "The book's price list")


def wares_of(book: Any) -> PriceList | None:
    """The price list that a book keeps; None where it keeps none. Raises Refused."""
    return wares_in(book.document(WARES, FIRM))


async def sent(form: FormData) -> tuple[str, bytes]:
    """Name and content of the file that came. Raises Refused where none did."""
    from starlette.datastructures import UploadFile

    try:
        file = form.get("file")
        if not isinstance(file, UploadFile) or not file.filename:
            raise Refused(Mistake("", said("price-buying-none")))
        return file.filename[:120], await file.read()
    finally:
        await form.close()


def document_of(read: ListRead, *, name: str, sha: str, kept_at: str) -> dict[str, Any]:
    """What the book keeps of a list: the wares, what was left out, and where it came from."""
    from farwall.facts.plain import plain

    return {
        "list": plain(read.prices), "told": list(read.told), "name": name, "file": sha,
        "kept_at": kept_at,
    }  # fmt: skip
