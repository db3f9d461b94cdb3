"""Opens the XML of an SVG: screened, bounded, and nothing outside of it ever fetched."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import field
from typing import Any
from xml.etree.ElementTree import ParseError

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass

LARGEST_BYTES = 60_000_000
MOST_ELEMENTS = 200_000
DEEPEST = 200
_ALONE = "Save the floor plan alone, as a plain SVG, into a file of its own."


@dataclass
class Node:
    """An element: its name without a namespace, its attributes, what it holds.

    `tail` is the text that follows it inside its parent.
    """

    tag: str
    attrs: Mapping[str, str]
    children: list[Node] = field(default_factory=list)
    text: str = ""
    tail: str = ""

    def get(self, name: str, default: str = "") -> str:
        """An attribute, or what stands for a missing one."""
        return self.attrs.get(name, default)


def open_tree(data: bytes) -> Node:
    """The root element. Raises Refused for broken, hostile or over-large XML, and for no SVG."""
    from defusedxml import DefusedXmlException
    from defusedxml.ElementTree import DefusedXMLParser

    if len(data) > LARGEST_BYTES:
        raise _refused(f"The drawing has {len(data):,} bytes, more than is read here.")
    grower = _Grower()
    parser = DefusedXMLParser(target=grower, forbid_dtd=False, forbid_entities=True,
                              forbid_external=True)  # fmt: skip
    try:
        parser.feed(data)
        parser.close()
    except DefusedXmlException as error:
        raise _refused("This SVG defines entities of its own, which may hide a trap.") from error
    except (ParseError, ValueError, LookupError) as error:
        raise _refused("This looks like an SVG, but its XML is broken.", _line_of(error)) from error
    if grower.root is None or grower.root.tag != "svg":
        raise _refused("This XML is no SVG drawing.")
    return grower.root


def local_name(name: str) -> str:
    """`{namespace}path` as `path`; link and label attributes too."""
    return name.rpartition("}")[2]


class _Grower:
    """Grows the tree while the XML is read, and stops it when it gets too deep or too large."""

    def __init__(self) -> None:
        self.root: Node | None = None
        self._open: list[Node] = []
        self._seen = 0

    def start(self, tag: str, attrs: Mapping[str, str]) -> None:
        self._seen += 1
        if self._seen > MOST_ELEMENTS:
            raise _refused(f"The drawing holds more than {MOST_ELEMENTS:,} elements.")
        if len(self._open) >= DEEPEST:
            raise _refused(f"Its groups are nested more than {DEEPEST} deep.")
        node = Node(local_name(tag), {local_name(key): value for key, value in attrs.items()})
        if self._open:
            self._open[-1].children.append(node)
        elif self.root is None:
            self.root = node
        self._open.append(node)

    def end(self, tag: str) -> None:
        del tag
        self._open.pop()

    def data(self, text: str) -> None:
        if not self._open:
            return
        node = self._open[-1]
        if node.tag not in _LETTERED:
            return
        if node.children:
            node.children[-1].tail += text
        else:
            node.text += text

    def close(self) -> None:
        """All is kept in `root`."""


_LETTERED = {"text", "tspan", "style", "title", "textPath", "a"}


def _line_of(error: Any) -> str:
    line = re.search(r"line (\d+)", str(error))
    return f"line {line[1]}" if line else ""


def _refused(what: str, where: str = "") -> Refused:
    return Refused(Mistake(where, what, _ALONE))
