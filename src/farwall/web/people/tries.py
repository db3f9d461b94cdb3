"""How often somebody may try: by account and by address, kept in the book.

Each failed try fills a vessel that runs out with time. Who tries an account from a browser in
which its person has signed in before has a vessel of their own, so that strangers who keep
guessing cannot shut the person out; beside that, `farwall people reset` on the machine always
helps. All figures are guesses, well under the hundred failures in a row that NIST SP 800-63B-4,
3.2.2 allows (from memory).
"""

from __future__ import annotations

from farwall.errors import FarwallError
from farwall.nouns import dataclass
from farwall.store.comings import Comings
from farwall.store.people_nouns import known_as

WAIT_S = 60


class TooManyTries(FarwallError):
    """Too many failed tries: who or what tried has to wait."""


@dataclass(frozen=True)
class Vessel:
    """So many failures at once, and one more in so many seconds."""

    most: int
    every_s: float

    @property
    def per_s(self) -> float:
        """How fast it runs out."""
        return 1 / self.every_s


ADDRESS, ACCOUNT, ALL = Vessel(5, 12.0), Vessel(10, 360.0), Vessel(60, 1.0)
API = Vessel(60, 1.0)
"""Of an address at the API: a phone that keeps asking with an old key stays below it."""


def vessels_of(address: str, *, name: str | None = None, known: str = "") -> dict[str, Vessel]:
    """The vessels of a try. name: of the account, None for the key; known: seal of the browser."""
    found = {f"address {address}": ADDRESS, "all": ALL}
    if name is None:
        return found
    if known:
        return {f"known {known}": ACCOUNT}
    return {**found, f"account {known_as(name)}": ACCOUNT}


def try_once(comings: Comings, vessels: dict[str, Vessel], now_s: float) -> None:
    """Note a try before it is judged. Raises TooManyTries when a vessel is full."""
    told = {about: (one.most, one.per_s) for about, one in vessels.items()}
    if not comings.try_once(told, now_s=now_s):
        raise TooManyTries("Too many tries that failed: wait a minute.")


def insist_may_ask(comings: Comings, address: str, now_s: float) -> None:
    """Raises TooManyTries for an address that showed the API too many keys that are none."""
    if comings.tried(f"api {address}", now_s=now_s, per_s=API.per_s) > API.most - 1:
        raise TooManyTries("Too many keys that are none: wait a minute.")


def no_key(comings: Comings, address: str, now_s: float) -> None:
    """Note that an address showed the API a key that is none."""
    comings.try_once({f"api {address}": (API.most, API.per_s)}, now_s=now_s)


def went_well(comings: Comings, vessels: dict[str, Vessel]) -> None:
    """The try was no failure: the account's vessel is emptied, the others give it back."""
    for about in vessels:
        if about.startswith(("account", "known")):
            comings.forgive(about)
        else:
            comings.take_back(about)
