"""Writing UBL: elements in order, amounts with their currency, the same bytes each time."""

from __future__ import annotations

from decimal import Decimal

from farwall.papers.svg import plain
from farwall.papers.xml_text import escape, quoteattr
from farwall.price.money import written

_UBL = "urn:oasis:names:specification:ubl:schema:xsd:"
BASIC, GROUP = "cbc", "cac"


class Element:
    """An element with what is in it, written when it is asked for."""

    def __init__(self, name: str) -> None:
        self.name = name
        self._inside: list[str | Element] = []

    def put(self, tag: str, text: str, /, **given: str) -> Element:
        """One more basic element; none where the text is empty."""
        bare = " ".join(plain(text).split())
        if bare:
            told = "".join(f" {key}={quoteattr(value)}" for key, value in given.items())
            self._inside.append(f"<{BASIC}:{tag}{told}>{escape(bare)}</{BASIC}:{tag}>")
        return self

    def group(self, name: str) -> Element:
        """One more group, to be filled; it is left out where nothing is put into it."""
        found = Element(f"{GROUP}:{name}")
        self._inside.append(found)
        return found

    def amount(self, name: str, value: Decimal, currency: str) -> Element:
        """One more amount with two decimals."""
        return self.put(name, written(value), currencyID=currency)

    @property
    def empty(self) -> bool:
        """Whether nothing is in it."""
        return all(isinstance(one, Element) and one.empty for one in self._inside)

    def lines(self, depth: int = 0) -> list[str]:
        """As text, a line an element."""
        pad, found = "  " * depth, []
        for one in self._inside:
            if isinstance(one, str):
                found.append(f"{pad}  {one}")
            elif not one.empty:
                found += one.lines(depth + 1)
        return [f"{pad}<{self.name}>", *found, f"{pad}</{self.name.split()[0]}>"]


def document(root: Element, kind: str) -> bytes:
    """The whole as UTF-8. kind: `Invoice` or `CreditNote`, the schema that it follows."""
    root.name = (
        f'{kind} xmlns="{_UBL}{kind}-2" xmlns:{GROUP}="{_UBL}CommonAggregateComponents-2" '
        f'xmlns:{BASIC}="{_UBL}CommonBasicComponents-2"'
    )
    return ("\n".join(['<?xml version="1.0" encoding="UTF-8"?>', *root.lines()]) + "\n").encode()


def figure(value: Decimal) -> str:
    """A quantity, a rate or a price in plain digits, without needless noughts."""
    text = f"{value:f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text in {"", "-0"} else text
