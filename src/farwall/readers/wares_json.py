"""A price list in JSON to a `PriceList`; every mistake at once."""

from __future__ import annotations

from collections import Counter
from decimal import Decimal, InvalidOperation
from functools import cache
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.facts.wares import WARES_VERSION, PriceList
from farwall.readers import json_text
from farwall.readers.small_file import of_object

if TYPE_CHECKING:
    from pydantic import TypeAdapter

_PLACES, _MOST = 4, Decimal(10_000_000)


@cache
def adapter() -> TypeAdapter[PriceList]:
    """Pydantic's checker of a price list, made once and only when one is read."""
    from pydantic import TypeAdapter

    return TypeAdapter(PriceList)


def wares_from_bytes(content: bytes, name: str = "The price list") -> PriceList:
    """The price list in the text of a JSON file. Raises Refused with every mistake."""
    about = f"{name or 'The price list'} is not a price list yet:"
    parsed = json_text.parse(content.decode("utf-8", "replace"), about=about)
    if parsed.mistakes:
        raise Refused(*parsed.mistakes, about=about)
    return wares_from(parsed.data, name)


def wares_from(data: Any, name: str = "The price list") -> PriceList:
    """The price list in plain JSON values. Raises Refused with every mistake in them."""
    return of_object(
        data,
        PriceList,
        adapter(),
        newest=WARES_VERSION,
        about=f"{name or 'The price list'} is not a price list yet:",
        sense=_sense,
    )


def _sense(prices: PriceList) -> list[Mistake]:
    mistakes = [
        Mistake(name, f"{count} have this id.", "Give each its own.")
        for ids in ([one.id for one in prices.wares], [one.id for one in prices.sellers])
        for name, count in Counter(ids).items()
        if count > 1
    ]
    for ware in prices.wares:
        mistakes += _amount(ware.id, "price", ware.price)
        if ware.kind == "stain" and not ware.of:
            mistakes.append(Mistake(ware.id, "which stain is it?", "Say `of`, as the job does."))
    for seller in prices.sellers:
        mistakes += _amount(seller.id, "delivery", seller.delivery)
        if seller.free_from is not None:
            mistakes += _amount(seller.id, "free_from", seller.free_from)
    return mistakes


def _amount(where: str, key: str, text: str) -> list[Mistake]:
    try:
        value = Decimal(text)
    except InvalidOperation:
        value = Decimal("NaN")
    exponent = value.as_tuple().exponent
    if not value.is_finite() or not 0 <= value <= _MOST:
        return [Mistake(f"{where}.{key}", f"{text[:30]} is no amount.", "Such as 60.00.")]
    if isinstance(exponent, int) and exponent < -_PLACES:
        return [Mistake(f"{where}.{key}", f"{text[:30]} has more than four decimals.", "Round it.")]
    return []
