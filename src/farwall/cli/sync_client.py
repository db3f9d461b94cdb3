"""A book behind a door, asked over HTTP as a phone does."""

from __future__ import annotations

import hashlib
import http.client
import json
import urllib.error
import urllib.request
from typing import Any

from farwall.errors import Mistake, Refused, Unanswerable

TIMEOUT_S = 120.0
_REFUSED, _NO_SUCH, _SHUT = (401, 413, 422), 404, 401


class NoSignal(Unanswerable):
    """Nobody answers: all that waits goes on waiting."""


class Closed(Refused):
    """The key is not the book's."""


class Door:
    """The door at an address. Raises NoSignal when nobody answers, Refused when it will not."""

    def __init__(self, address: str, key: str) -> None:
        self.address, self._key = address.rstrip("/"), key
        if not self.address.startswith(("http://", "https://")):
            remedy = "Such as http://192.0.2.7:8750."
            raise Refused(Mistake("--to", f"{address} is no address of a book.", remedy))

    def get(self, path: str) -> Any | None:
        """The JSON at a path; None when there is no such thing."""
        return self._asked("GET", path, None)

    def send(self, path: str, body: Any, *, method: str = "POST") -> Any:
        """The JSON that comes back for what was sent."""
        return self._asked(method, path, json.dumps(body).encode())

    def put_file(self, sha: str, content: bytes) -> None:
        """Have a photo kept under its SHA-256."""
        self._raw("PUT", f"/api/files/{sha}", content, "application/octet-stream")

    def file(self, sha: str) -> bytes | None:
        """The photo of this SHA-256; None where the book does not have it whole."""
        try:
            content = self._raw("GET", f"/api/files/{sha}", None)
        except Closed:
            raise
        except Refused:
            return None
        return content if content and hashlib.sha256(content).hexdigest() == sha else None

    def _asked(self, method: str, path: str, body: bytes | None) -> Any | None:
        content = self._raw(method, path, body)
        try:
            return None if content is None else json.loads(content)
        except ValueError as error:
            raise self._silent(error) from error

    def _raw(
        self, method: str, path: str, body: bytes | None, kind: str = "application/json"
    ) -> bytes | None:
        headers = {"Authorization": f"Bearer {self._key}", "Content-Type": kind}
        request = urllib.request.Request(
            self.address + path, data=body, headers=headers, method=method
        )
        try:
            with urllib.request.urlopen(request, timeout=TIMEOUT_S) as answer:
                return bytes(answer.read())
        except urllib.error.HTTPError as error:
            with error:
                if error.code == _NO_SUCH:
                    return None
                raise _as_ours(error) from error
        except (OSError, ValueError, http.client.HTTPException) as error:
            raise self._silent(error) from error

    def _silent(self, error: Exception) -> NoSignal:
        return NoSignal(
            f"Nobody answers at {self.address} ({getattr(error, 'reason', error)}).",
            remedies=["Nothing is lost: run the same again when there is signal."],
        )


def _as_ours(error: urllib.error.HTTPError) -> Exception:
    try:
        told = json.load(error)
        about, mistakes = str(told["error"]), [Mistake("", str(one)) for one in told["mistakes"]]
    except (ValueError, KeyError, TypeError):
        about, mistakes = f"The book answers {error.code}.", []
    if error.code in _REFUSED:
        kind = Closed if error.code == _SHUT else Refused
        return kind(*mistakes or [Mistake("--key", about)], about=about if mistakes else "")
    return NoSignal(about, remedies=["Nothing is lost: run the same again later."])
