"""Text inside XML: what would be read as a mark is written as a reference.

The same as `xml.sax.saxutils`, which brings half of the network with it: importing that takes
longer than drawing a floor.
"""

from __future__ import annotations

_IN_TEXT = str.maketrans({"&": "&amp;", "<": "&lt;", ">": "&gt;"})
_IN_ATTRIBUTE = _IN_TEXT | str.maketrans({"\n": "&#10;", "\r": "&#13;", "\t": "&#9;"})


def escape(text: str) -> str:
    """The text between two tags."""
    return text.translate(_IN_TEXT)


def quoteattr(text: str) -> str:
    """The text as the value of an attribute, quotes around it."""
    value = text.translate(_IN_ATTRIBUTE)
    if '"' not in value:
        return f'"{value}"'
    return f"'{value}'" if "'" not in value else '"' + value.replace('"', "&quot;") + '"'
