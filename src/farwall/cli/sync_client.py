"""A book behind a door, asked over HTTP as a phone does."""

from __future__ import annotations

import json
import urllib.error
import urllib.request
from typing import Any

from farwall.errors import Mistake, Refused, Unanswerable

TIMEOUT_S = 120.0
_REFUSED, _NO_SUCH = (401, 413, 422), 404


class NoSignal(Unanswerable):
    """Nobody answers: all that waits goes on waiting."""


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

    def _asked(self, method: str, path: str, body: bytes | None) -> Any | None:
        headers = {"Authorization": f"Bearer {self._key}", "Content-Type": "application/json"}
        request = urllib.request.Request(
            self.address + path, data=body, headers=headers, method=method
        )
        try:
            with urllib.request.urlopen(request, timeout=TIMEOUT_S) as answer:
                return json.load(answer)
        except urllib.error.HTTPError as error:
            with error:
                if error.code == _NO_SUCH:
                    return None
                raise _as_ours(error) from error
        except (OSError, ValueError) as error:
            reason = getattr(error, "reason", error)
            raise NoSignal(
                f"Nobody answers at {self.address} ({reason}).",
                remedies=["Nothing is lost: run the same again when there is signal."],
            ) from error


def _as_ours(error: urllib.error.HTTPError) -> Exception:
    try:
        told = json.load(error)
        about, mistakes = str(told["error"]), [Mistake("", str(one)) for one in told["mistakes"]]
    except (ValueError, KeyError, TypeError):
        about, mistakes = f"The book answers {error.code}.", []
    if error.code in _REFUSED:
        return Refused(*mistakes or [Mistake("--key", about)], about=about if mistakes else "")
    return NoSignal(about, remedies=["Nothing is lost: run the same again later."])
