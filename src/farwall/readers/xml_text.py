"""XML from strangers as a tree of nodes: no entities, nothing fetched, bounded in every measure.

Namespaces are told by their address, never by their prefix. Each node knows its line, so that a
sentence about it can say where to look. Walks are loops, not recursion: depth costs no stack.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from types import MappingProxyType
from typing import Any
from xml.etree.ElementTree import ParseError

from farwall.errors import Mistake, Refused

MOST_BYTES = 64_000_000
MOST_NODES = 600_000
MOST_DEEP = 200
"""Bounds of what is opened (guess: forty times the largest real plan at hand)."""
MOST_LETTERS = 200
"""An id, a name or a number is never longer; what is, is cut."""
_HEAD_BYTES = 65_536
_NOTHING: Mapping[str, str] = MappingProxyType({})
_BEFORE_ROOT = re.compile(r"\s*(?:<\?.*?\?>|<!--.*?-->|<!DOCTYPE[^\[>]*(?:\[[^\]]*\])?\s*>)", re.S)
_FIRST_TAG = re.compile(r"\s*<(?:[\w.-]+:)?([A-Za-z_][\w.-]*)")


class Node:
    """One element: local `name`, `uri` of its namespace, what it was `given`, text, `line`."""

    __slots__ = ("children", "given", "line", "name", "text", "uri")

    def __init__(self, name: str, uri: str, given: Mapping[str, str], line: int) -> None:
        self.name, self.uri, self.given, self.line = name, uri, given, line
        self.text = ""
        self.children: list[Node] = []

    def get(self, name: str, default: str = "") -> str:
        """An attribute by its local name, whatever its prefix."""
        return self.given.get(name, default).strip()[:MOST_LETTERS]

    def first(self, *names: str) -> Node | None:
        """The first child of one of these names."""
        return next((child for child in self.children if child.name in names), None)

    def all(self, *names: str) -> Iterator[Node]:
        """All children of these names, in order."""
        return (child for child in self.children if child.name in names)

    def walk(self, *names: str) -> Iterator[Node]:
        """All nodes below of these names, in the file's order."""
        stack = [iter(self.children)]
        while stack:
            child = next(stack[-1], None)
            if child is None:
                stack.pop()
                continue
            if child.name in names:
                yield child
            stack.append(iter(child.children))

    def word(self, name: str) -> str:
        """The text of the first child of a name, or nothing."""
        child = self.first(name)
        return child.text[:MOST_LETTERS] if child is not None else ""


def root_name(data: bytes) -> str:
    """The local name of the first element of a file; nothing when there is none."""
    head = data[:_HEAD_BYTES]
    if head.startswith((b"\xff\xfe", b"\xfe\xff")):
        text = head.decode("utf-16", "ignore")
    else:
        text = head.decode("utf-8-sig", "ignore")
    start = 0
    while skipped := _BEFORE_ROOT.match(text, start):
        start = skipped.end()
    found = _FIRST_TAG.match(text, start)
    return found[1] if found else ""


def parse_xml(data: bytes) -> Node:
    """The root of an XML text.

    Raises Refused, with the line, for what is no XML, for entities and external addresses of
    every kind, and for more bytes, elements or depth than a plan needs.
    """
    from defusedxml.common import (
        DTDForbidden,
        EntitiesForbidden,
        ExternalReferenceForbidden,
    )
    from defusedxml.ElementTree import DefusedXMLParser

    if len(data) > MOST_BYTES:
        raise _refused("", f"It has {len(data) / 1e6:.0f} MB, more than a plan needs.", _SMALLER)
    tree = _Tree()
    parser: Any = DefusedXMLParser(target=tree, forbid_dtd=False)
    tree.follow(parser.parser)
    try:
        parser.feed(data)
        parser.close()
    except (EntitiesForbidden, ExternalReferenceForbidden, DTDForbidden) as error:
        what = "It defines shorthand of its own (entities) or points to other files."
        remedy = "Such files are not opened. Export the plan again without them."
        raise _refused(tree.here(), what, remedy) from error
    except ParseError as error:
        line = error.position[0] if hasattr(error, "position") else 0
        what = f"this is no XML: {str(error).split(':')[0]}."
        raise _refused(f"line {line}", what, "Mend it there.") from error
    except (LookupError, ValueError) as error:
        raise _refused("", "Its letters cannot be made out.", "Save it as UTF-8.") from error
    if tree.root is None:
        raise _refused("", "There is no element in it.", "Export the plan again.")
    return tree.root


_SMALLER = "Export the building alone, without furniture and surroundings."


def _refused(where: str, what: str, remedy: str) -> Refused:
    return Refused(Mistake(where, what, remedy))


class _Tree:
    """Takes the parser's events and builds nodes, within bounds."""

    def __init__(self) -> None:
        self.root: Node | None = None
        self._open: list[Node] = []
        self._texts: list[list[str]] = []
        self._count = 0
        self._expat: Any = None

    def follow(self, expat: Any) -> None:
        self._expat = expat

    def here(self) -> str:
        return f"line {self._expat.CurrentLineNumber}"

    def start(self, tag: str, given: dict[str, str]) -> None:
        self._count += 1
        if self._count > MOST_NODES:
            raise _refused(self.here(), f"It has more than {MOST_NODES:,} elements.", _SMALLER)
        if len(self._open) >= MOST_DEEP:
            what = f"Its elements are nested more than {MOST_DEEP} deep, which no plan is."
            raise _refused(self.here(), what, "Export the plan again.")
        uri, name = _parted(tag)
        own = {_parted(key)[1]: value for key, value in given.items()} if given else _NOTHING
        node = Node(name, uri, own, self._expat.CurrentLineNumber)
        if self._open:
            self._open[-1].children.append(node)
        else:
            self.root = node
        self._open.append(node)
        self._texts.append([])

    def data(self, text: str) -> None:
        if self._texts:
            self._texts[-1].append(text)

    def end(self, _tag: str) -> None:
        self._open.pop().text = "".join(self._texts.pop()).strip()

    def close(self) -> None:
        """Nothing is left to do."""


def _parted(tag: str) -> tuple[str, str]:
    uri, _, name = tag[1:].rpartition("}") if tag.startswith("{") else ("", "", tag)
    return uri, name
