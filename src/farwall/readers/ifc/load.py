"""Opens the text of an IFC file: its schema, the library that reads it, the model."""

from __future__ import annotations

import re
from typing import Any

from farwall.errors import Mistake, Refused

Model = Any
Entity = Any
"""Instances of ifcopenshell; its attributes depend on the schema, so no static type holds them."""

SCHEMAS = ("IFC2X3", "IFC4")
"""Beginnings of the schema names that are read: 2x3, 4, 4x1 to 4x3."""
_HEADER_BYTES = 65536
_ENTITY = re.compile(rb"[;\r\n]\s*#0*(\d+)\s*=\s*[A-Za-z(]")
_SCHEMA = re.compile(rb"FILE_SCHEMA\s*\(\s*\(\s*'([^']*)'", re.IGNORECASE)
_OTHER_BLANKS = bytes.maketrans(b"\v\f", b"  ")
_EXPORT = "Export the model as IFC 2x3 or IFC 4, or the floor plan as DXF."


def load(data: bytes) -> Model:
    """The model in the bytes of an IFC file.

    Raises Refused when its schema is another one, when the library is missing, and when the text
    breaks off or holds no model.
    """
    _check_schema(data)
    _check_numbers(data)
    library = ifc_library()
    text = _text(data)
    try:
        model = library.file.from_string(text)
        whole = bool(model.by_type("IfcProject"))
    except MemoryError:  # its limit is told by whoever set it
        raise
    except Exception as error:  # the parser raises whatever its C++ side throws
        raise _broken() from error
    if not whole:
        raise _broken()
    return model


def ifc_library() -> Any:
    """The module ifcopenshell; raises Refused with the way to get it when it is not there."""
    try:
        import ifcopenshell
        import ifcopenshell.geom
    except ImportError as error:
        raise Refused(
            Mistake(
                "",
                "This is an IFC building model. Reading it needs ifcopenshell, which is not "
                "installed here: it is large, so it comes only for who is sent such models.",
                "Install it into the same Python: `python -m pip install ifcopenshell` (in a "
                "checkout: `.venv/bin/python -m pip install ifcopenshell`). Or ask for the floor "
                "plan as DXF.",
            )
        ) from error
    return ifcopenshell


def _check_schema(data: bytes) -> None:
    found = _SCHEMA.search(data[:_HEADER_BYTES])
    if found is None:
        what = "The header of this STEP file names no schema, so it cannot be known for a model."
        raise Refused(Mistake("FILE_SCHEMA", what, _EXPORT))
    name = found[1].decode("ascii", "replace").upper()
    if not name.startswith(SCHEMAS):
        shown = re.sub(r"[^A-Z0-9_]", "", name)[:40]
        kind = "an older IFC schema" if name.startswith("IFC") else "no building model"
        what = f"This STEP file has the schema {shown}: {kind}."
        raise Refused(Mistake("FILE_SCHEMA", what, _EXPORT))


def _check_numbers(data: bytes) -> None:
    """The parser goes astray, and the process with it, where one number is written twice."""
    seen: set[bytes] = set()
    for number in _ENTITY.findall(data):
        if number in seen:
            what = "this number is written twice."
            raise Refused(Mistake(f"#{number.decode()}", what, _EXPORT))
        seen.add(number)


def _text(data: bytes) -> str:
    # The parser drops the statement after a vertical tab or a form feed, and a room with it.
    data = data.translate(_OTHER_BLANKS)
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:  # STEP is plain ASCII; some programs write their own code page
        return data.decode("latin-1")


def _broken() -> Refused:
    what = "This IFC file is broken: it holds no project that could be read."
    return Refused(Mistake("DATA", what, "Export it anew, whole. " + _EXPORT))
