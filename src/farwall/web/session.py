"""Who has shown the key in a browser: random sessions kept in memory, and few tries a minute.

A session ends twelve hours after it began, when it is left, or when the server stops.
"""

from __future__ import annotations

import secrets
from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass, field

from farwall.errors import FarwallError
from farwall.web.key import fits

COOKIE = "farwall"
LASTS_S = 12 * 3600.0
MOST_TRIES = 5
"""Wrong keys that one address may show in a minute. Rank: guess."""
_MOST_TRIES_OF_ALL = 60
_WINDOW_S = 60.0
_MOST_SESSIONS = 1000
_MOST_ADDRESSES = 1000


class TooManyTries(FarwallError):
    """Too many wrong keys in the last minute."""


class WrongKey(FarwallError):
    """What was shown is not the key."""


@dataclass
class Sessions:
    """The open sessions of one door. now_s: a clock that only goes forward, in seconds."""

    now_s: Callable[[], float]
    _ends_s: OrderedDict[str, float] = field(default_factory=OrderedDict)
    _tries_s: OrderedDict[str, list[float]] = field(default_factory=OrderedDict)

    def enter(self, shown: str, key: str, *, address: str) -> str:
        """A new session for who shows the key. Raises WrongKey, TooManyTries.

        address: where the try comes from; once it has tried too often, the right key too waits.
        """
        now = self.now_s()
        if len(self._tries_of(address, now)) >= MOST_TRIES or self._all(now) >= _MOST_TRIES_OF_ALL:
            raise TooManyTries("Too many wrong keys: wait a minute.")
        if not fits(shown.strip(), key):
            self._tries_s.setdefault(address, []).append(now)
            while len(self._tries_s) > _MOST_ADDRESSES:
                self._tries_s.popitem(last=False)
            raise WrongKey("This is not the key of this book.")
        token = secrets.token_urlsafe(32)
        self._ends_s[token] = now + LASTS_S
        while len(self._ends_s) > _MOST_SESSIONS:
            self._ends_s.popitem(last=False)
        return token

    def open(self, token: str) -> bool:
        """Whether a session of this token is open."""
        ends = self._ends_s.get(token)
        if ends is not None and ends <= self.now_s():
            del self._ends_s[token]
            return False
        return ends is not None

    def leave(self, token: str) -> None:
        """End a session."""
        self._ends_s.pop(token, None)

    def _tries_of(self, address: str, now: float) -> list[float]:
        kept = [at for at in self._tries_s.get(address, []) if at > now - _WINDOW_S]
        if kept:
            self._tries_s[address] = kept
        else:
            self._tries_s.pop(address, None)
        return kept

    def _all(self, now: float) -> int:
        return sum(at > now - _WINDOW_S for tries in self._tries_s.values() for at in tries)
