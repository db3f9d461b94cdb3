"""A file of the book for a page: pictures to be looked at, all else to be fetched, nothing run."""

from __future__ import annotations

from fastapi import Request, Response

from farwall.store.book import Book

_PICTURES = ((b"\xff\xd8\xff", "image/jpeg"), (b"\x89PNG\r\n\x1a\n", "image/png"))
_SHUT = "default-src 'none'; sandbox"


def picture_kind(content: bytes) -> str:
    """The kind of a picture by what it begins with; empty for what no page is to show."""
    if content[:4] == b"RIFF" and content[8:12] == b"WEBP":
        return "image/webp"
    return next((kind for begins, kind in _PICTURES if content.startswith(begins)), "")


def photo_answer(book: Book, sha: str, request: Request) -> Response:
    """The file under a hash. A browser keeps it: under this name it is never another."""
    headers = {
        "etag": f'"{sha}"', "cache-control": "private, max-age=31536000, immutable",
        "content-security-policy": _SHUT, "x-content-type-options": "nosniff",
    }  # fmt: skip
    if request.headers.get("if-none-match") == f'"{sha}"':
        return Response(status_code=304, headers=headers)
    content = book.file(sha)
    kind = picture_kind(content)
    if not kind:
        headers["content-disposition"] = f'attachment; filename="{sha[:12]}"'
        kind = "application/octet-stream"
    return Response(content, media_type=kind, headers=headers)
