"""Opens the bytes of a DXF: the strict way first, then the recovering one, with what it mended."""

from __future__ import annotations

import io
import logging
import re
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused
from farwall.readers.dxf.bulk import Bulk, taken_out

if TYPE_CHECKING:
    from ezdxf.audit import Auditor
    from ezdxf.document import Drawing

LARGEST_BYTES = 200_000_000
MOST_TAGS = 12_000_000
BINARY = b"AutoCAD Binary DXF"
"""How the format's binary form begins."""


def load(data: bytes) -> tuple[Drawing, Bulk, tuple[str, ...]]:
    """The drawing, the plain lines taken out of it, and one sentence for each kind of repair.

    Raises Refused when it will not open.
    """
    if len(data) > LARGEST_BYTES or data.count(b"\n") > 2 * MOST_TAGS:
        raise Refused(
            Mistake(
                "",
                f"The drawing has {len(data):,} bytes, more than is read here.",
                "Save the floor plan alone into a file of its own.",
            )
        )
    with _quiet():  # what the library says on starting is about this machine, not about the file
        import ezdxf  # noqa: F401
    with _quiet() as said:
        return _recovered(data, said)


def _recovered(data: bytes, said: list[str]) -> tuple[Drawing, Bulk, tuple[str, ...]]:
    bulk = Bulk(data) if data.startswith(BINARY) else taken_out(data)
    try:
        document, auditor = _opened(bulk.rest)
        document.modelspace()
    except MemoryError:  # its limit is told by whoever set it
        raise
    except Exception as error:  # whatever broken bytes do inside the library is the file's fault
        line = re.search(r"line:? (\d+)", str(error))
        what = f"{'t' if line else 'T'}his looks like a DXF, but it is too damaged to open."
        remedy = "Open it in a drawing program, audit it, and save it as DXF again."
        # Lines are counted in what is left of the file once plain lines are taken out.
        where = f"near line {line[1]}" if line and not bulk.lines else ""
        raise Refused(Mistake(where, what, remedy)) from error
    repairs = []
    if auditor.fixes:
        repairs.append(f"{len(auditor.fixes)} faults inside the file were repaired on opening.")
    if auditor.errors:
        repairs.append(f"{len(auditor.errors)} faults inside the file could not be repaired.")
    if said:
        repairs.append(f"{len(said)} spoilt values were passed over on opening.")
    return document, bulk, tuple(repairs)


def _opened(data: bytes) -> tuple[Drawing, Auditor]:
    from ezdxf.document import Drawing

    if data.startswith(BINARY):
        from ezdxf.lldxf.tagger import binary_tags_loader

        document = Drawing.load(binary_tags_loader(data))
        return document, document.audit()
    try:
        document = Drawing.read(io.StringIO(_decoded(data)))
        return document, document.audit()
    except Exception:  # what the strict way will not have, the recovering one may
        from ezdxf import recover

        return recover.read(io.BytesIO(data))


def _decoded(data: bytes) -> str:
    """The text in the encoding that its header names; from 2007 on that is always UTF-8."""
    from ezdxf.filemanagement import dxf_stream_info

    head = data[:200_000].decode("utf-8", "ignore")
    encoding = dxf_stream_info(io.StringIO(head)).encoding
    return data.decode(encoding, "surrogateescape")


@contextmanager
def _quiet() -> Iterator[list[str]]:
    """The library's remarks, kept off the screen."""
    said: list[str] = []

    class Keeper(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            said.append(record.getMessage())

    logger = logging.getLogger("ezdxf")
    keeper, before = Keeper(logging.WARNING), logger.propagate
    logger.addHandler(keeper)
    logger.propagate = False
    try:
        yield said
    finally:
        logger.removeHandler(keeper)
        logger.propagate = before
