"""A price list of a stranger, read by a process of its own that is shut in; then judged again."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from farwall.errors import Mistake, Refused
from farwall.readers.price_list.noun import ListRead

MOST_BYTES = 8_000_000
_AGAIN = "Save the list alone as CSV and send that."


def read_price_list(path: Path) -> ListRead:
    """The price list in a file: XLSX, CSV, or our own JSON. Raises Refused, all faults at once."""
    try:
        with path.open("rb") as file:
            content = file.read(MOST_BYTES + 1)
    except OSError as error:
        what = f"it could not be opened: {error.strerror or error}."
        raise Refused(Mistake(path.name, what, "Check the name and the path.")) from error
    return price_list_in(content, name=path.name)


def price_list_in(content: bytes, *, name: str = "") -> ListRead:
    """The price list in the bytes of a file. Raises Refused, all faults at once."""
    from farwall.readers.wares_json import wares_from, wares_from_bytes

    about = f"{name or 'The price list'} was not taken:"
    if len(content) > MOST_BYTES:
        what = f"it has more than {MOST_BYTES // 1_000_000} MB."
        raise Refused(Mistake("", what, _AGAIN), about=about)
    if not content.strip():
        raise Refused(Mistake("", "It is empty.", "Send the file with the prices."), about=about)
    if content.lstrip()[:1] == b"{":
        prices = wares_from_bytes(content, name)
        return ListRead(prices.currency, prices.as_of, prices.sellers, prices.wares)
    from farwall.facts.plain import plain
    from farwall.readers.apart.start import prices_of

    try:
        found = prices_of(content, name=name)
    except Refused as refused:
        mistakes = [
            replace(one, remedy=_AGAIN) if "floor plan" in one.remedy or "drawn" in one.remedy
            else one
            for one in refused.mistakes
        ]  # fmt: skip
        raise Refused(*mistakes, about=about) from None
    # Whoever took the reader over may have answered: nothing it says is believed unjudged.
    wares_from(plain(found.prices), name or "The price list")
    return found
