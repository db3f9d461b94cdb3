"""Whether what a job says of firm, prices, offers and supplies agrees with itself."""

from __future__ import annotations

import re
from collections.abc import Iterator
from decimal import Decimal, InvalidOperation

from farwall.errors import Mistake
from farwall.readers.json_text import Place, place_text
from farwall.readers.wording import shown

_AMOUNTS = {
    "rates": ("labour_per_h", "visit", "least", "standby_per_h", "change_per_h", "mock_up"),
    "call_backs": ("cost_low", "cost", "cost_high"),
    "terms": ("rounded_to",),
}
_MOST = Decimal(10) ** 12


def office_mistakes(raw: dict[str, object]) -> Iterator[Mistake]:
    """Amounts that are none, shares of what is due above the whole, codes of countries, names of
    rooms and coats that the job does not have."""
    prices = raw.get("prices")
    if isinstance(prices, dict):
        for noun, keys in _AMOUNTS.items():
            yield from _amounts(prices.get(noun), ("prices", noun), keys)
        yield from _due(prices.get("terms"))
        yield from _turned(prices.get("call_backs"))
        yield from _offers(prices.get("offers"), raw)
    for who in ("firm", "customer", "builder"):
        yield from _country(raw.get(who), who)
    yield from _rooms(raw)


def is_amount(text: str) -> bool:
    """Whether it is a decimal number, 0 or more, in plain digits."""
    try:
        return bool(re.fullmatch(r"\d+(\.\d+)?", text)) and Decimal(text) < _MOST
    except InvalidOperation:
        return False


def _amounts(found: object, place: Place, keys: tuple[str, ...]) -> Iterator[Mistake]:
    if not isinstance(found, dict):
        return
    for key in keys:
        text = found.get(key)
        if isinstance(text, str) and not is_amount(text):
            where = place_text((*place, key))
            yield Mistake(where, f"{shown(text)} is not an amount.", 'Write it as text: "62.50".')


def _due(terms: object) -> Iterator[Mistake]:
    if not isinstance(terms, dict):
        return
    shares = [terms.get(key) for key in ("deposit_percent", "progress_percent")]
    known = [one for one in shares if isinstance(one, int | float)]
    if sum(known) > 100:
        yield Mistake(
            "prices.terms", f"deposit and progress make {sum(known):g} % of the price.",
            "Together they are at most 100.",
        )  # fmt: skip
    step = terms.get("rounded_to")
    if isinstance(step, str) and is_amount(step) and Decimal(step) == 0:
        yield Mistake("prices.terms.rounded_to", "0 is no step.", "Write 0.01, 1 or 10.")


def _turned(found: object) -> Iterator[Mistake]:
    if not isinstance(found, dict):
        return
    told = [found.get(key) for key in ("cost_low", "cost", "cost_high")]
    known = [Decimal(one) for one in told if isinstance(one, str) and is_amount(one)]
    if known != sorted(known):
        yield Mistake(
            "prices.call_backs", "the costs are not in the order low, usual, high.", "Turn them."
        )


def _offers(found: object, raw: dict[str, object]) -> Iterator[Mistake]:
    rows = found if isinstance(found, list) else []
    floor = raw.get("floor")
    known = {
        "coats": ("coat", _ids(raw.get("coats"))),
        "rooms": ("room", _ids(floor.get("rooms")) if isinstance(floor, dict) else set()),
    }
    seen: set[object] = set()
    for n, row in enumerate(rows):
        if not isinstance(row, dict):
            continue
        place: Place = ("prices", "offers", n)
        if row.get("id") in seen:
            yield Mistake(place_text((*place, "id")), "is there twice.", "Name each once.")
        seen.add(row.get("id"))
        yield from _amounts(row, place, ("added",))
        for key, (word, ids) in known.items():
            where, there = place_text((*place, key)), f"There are {', '.join(sorted(ids))}."
            for id_ in _texts(row.get(key)):
                if ids and id_ not in ids:
                    yield Mistake(where, f"there is no {word} {shown(id_)}.", there)


def _country(found: object, who: str) -> Iterator[Mistake]:
    address = found.get("address") if isinstance(found, dict) else None
    code = address.get("country") if isinstance(address, dict) else None
    if isinstance(code, str) and code and not re.fullmatch("[A-Z]{2}", code):
        said = f"{shown(code)} is no code of a country."
        yield Mistake(f"{who}.address.country", said, "Write two capital letters, such as US.")


def _rooms(raw: dict[str, object]) -> Iterator[Mistake]:
    floor, supplies = raw.get("floor"), raw.get("supplies")
    rooms = _ids(floor.get("rooms")) if isinstance(floor, dict) else set()
    masking = supplies.get("masking") if isinstance(supplies, dict) else None
    if not rooms or not isinstance(masking, dict):
        return
    named: list[tuple[Place, str]] = []
    for n, room in enumerate(_texts(masking.get("not_masked"))):
        named.append((("not_masked", n), room))
    heights = masking.get("room_film_m")
    named += [(("room_film_m", key), key) for key in (heights if isinstance(heights, dict) else ())]
    items = masking.get("items")
    for n, item in enumerate(items if isinstance(items, list) else []):
        inside = item.get("room") if isinstance(item, dict) else None
        if isinstance(inside, str) and inside:
            named.append((("items", n, "room"), inside))
    for place, room in named:
        if room not in rooms:
            where = place_text(("supplies", "masking", *place))
            yield Mistake(where, f"there is no room {shown(room)}.", "Name one of the floor.")


def _ids(rows: object) -> set[str]:
    found = rows if isinstance(rows, list) else []
    return {str(row["id"]) for row in found if isinstance(row, dict) and "id" in row}


def _texts(found: object) -> list[str]:
    return [one for one in found if isinstance(one, str)] if isinstance(found, list) else []
