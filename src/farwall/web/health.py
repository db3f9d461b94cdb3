"""Whether the server lives, and whether it can do its work: for who watches it, without names."""

from __future__ import annotations

import os
import tempfile
from collections.abc import Callable
from typing import Any

from fastapi import APIRouter
from fastapi.responses import JSONResponse
from sqlalchemy import select

from farwall.errors import FarwallError
from farwall.store import moving
from farwall.store.book import Book
from farwall.store.engine import calmly, reading
from farwall.store.tables import COUNTER
from farwall.web.door import Door


def health(door: Door) -> APIRouter:
    """The two routes; they ask for nobody and tell nothing of what is in the book."""
    router = APIRouter()

    @router.get("/healthz")
    async def lives() -> dict[str, bool]:
        """The server answers."""
        return {"lives": True}

    @router.get("/readyz", responses={503: {"description": "Something is wanting: `wants`."}})
    def ready() -> JSONResponse:
        """The book opens, its tables are today's, and the disk takes what is written."""
        wants = wanting(door.book)
        told: dict[str, Any] = {"ready": not wants, "wants": wants}
        return JSONResponse(told, 503 if wants else 200)

    return router


def wanting(book: Book) -> list[str]:
    """What the book lacks to be used: "book", "tables", "disk"; empty when it lacks nothing."""
    return [name for name, look in _LOOKS if not _well(look, book)]


def _opens(book: Book) -> bool:
    with reading(book.engine, book.where) as connection:
        return connection.scalar(select(COUNTER.c.value).limit(1)) is not None


def _is_up_to_date(book: Book) -> bool:
    with calmly(book.where), book.engine.connect() as connection:
        return moving.version(connection) == moving.NEWEST


def _takes(book: Book) -> bool:
    folder = book.where.files if book.where.files.is_dir() else book.where.files.parent
    with tempfile.TemporaryFile(dir=folder) as file:
        file.write(b"farwall")
        file.flush()
        os.fsync(file.fileno())
    return True


def _well(look: Callable[[Book], bool], book: Book) -> bool:
    try:
        return look(book)
    except (FarwallError, OSError):
        return False


_LOOKS: tuple[tuple[str, Callable[[Book], bool]], ...] = (
    ("book", _opens),
    ("tables", _is_up_to_date),
    ("disk", _takes),
)
