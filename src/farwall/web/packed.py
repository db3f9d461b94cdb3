"""Smaller on the way: gzip for what a phone fetches, where it says that it takes it.

Only for the built files and for what plan and log say. A body that holds a secret beside words that
somebody else chose is never packed, for its length would tell of the secret; these hold no key, and
nothing of the request comes back in them.
"""

from __future__ import annotations

import gzip
import json
from collections.abc import Mapping
from functools import lru_cache
from typing import Any

from fastapi import Request
from fastapi.responses import Response

_LEAST = 500
"""Below so many bytes the head of a packed file costs more than it saves."""


def takes_gzip(request: Request) -> bool:
    """Whether the browser says that it takes gzip [rfc9110, 12.5.3]."""
    for part in request.headers.get("accept-encoding", "").lower().split(",")[:20]:
        name, _, weight = part.strip().partition(";")
        if name.strip() == "gzip":
            return weight.replace(" ", "") not in {"q=0", "q=0.0", "q=0.00", "q=0.000"}
    return False


def packed(
    request: Request, content: bytes, *, media_type: str, headers: Mapping[str, str] | None = None
) -> Response:
    """The answer with this content, packed where the browser takes it and it is worth it."""
    told = {**(headers or {}), "vary": "accept-encoding"}
    if len(content) >= _LEAST and takes_gzip(request):
        content = _gzip(content)
        told["content-encoding"] = "gzip"
    return Response(content, headers=told, media_type=media_type)


def packed_json(request: Request, told: Any) -> Response:
    """The same for plain values, as JSON."""
    text = json.dumps(told, ensure_ascii=False, separators=(",", ":"), allow_nan=False)
    return packed(request, text.encode(), media_type="application/json")


@lru_cache(maxsize=64)
def _gzip(content: bytes) -> bytes:
    return gzip.compress(content, 9, mtime=0)
