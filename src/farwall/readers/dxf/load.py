"""Opens the bytes of a DXF with the recovering reader, and tells what it had to mend."""

from __future__ import annotations

import io
import logging
import re
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from ezdxf.audit import Auditor
    from ezdxf.document import Drawing

LARGEST_BYTES = 200_000_000
BINARY = b"AutoCAD Binary DXF"
"""How the format's binary form begins."""


def load(data: bytes) -> tuple[Drawing, tuple[str, ...]]:
    """The drawing and one sentence for each kind of repair.

    Raises Refused when it will not open.
    """
    if len(data) > LARGEST_BYTES:
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


def _recovered(data: bytes, said: list[str]) -> tuple[Drawing, tuple[str, ...]]:
    try:
        document, auditor = _opened(data)
        document.modelspace()
    except MemoryError:  # its limit is told by whoever set it
        raise
    except Exception as error:  # whatever broken bytes do inside the library is the file's fault
        line = re.search(r"line:? (\d+)", str(error))
        what = f"{'t' if line else 'T'}his looks like a DXF, but it is too damaged to open."
        remedy = "Open it in a drawing program, audit it, and save it as DXF again."
        where = f"near line {line[1]}" if line else ""
        raise Refused(Mistake(where, what, remedy)) from error
    repairs = []
    if auditor.fixes:
        repairs.append(f"{len(auditor.fixes)} faults inside the file were repaired on opening.")
    if auditor.errors:
        repairs.append(f"{len(auditor.errors)} faults inside the file could not be repaired.")
    if said:
        repairs.append(f"{len(said)} spoilt values were passed over on opening.")
    return document, tuple(repairs)


def _opened(data: bytes) -> tuple[Drawing, Auditor]:
    if data.startswith(BINARY):
        from ezdxf.document import Drawing
        from ezdxf.lldxf.tagger import binary_tags_loader

        document = Drawing.load(binary_tags_loader(data))
        return document, document.audit()
    from ezdxf import recover

    return recover.read(io.BytesIO(data))


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
