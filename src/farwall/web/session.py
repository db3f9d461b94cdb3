"""Who is in: sessions kept in the book, begun by a name and password, a link, or the book's key.

The key opens pages only as long as the book has no lead who can sign in. A token is shown once
and kept by its seal; what a session is worth is asked of the book at every question, so that
ended access ends at once.
"""

from __future__ import annotations

import secrets

from fastapi import Request, Response

from farwall.errors import FarwallError, Mistake
from farwall.store.comings import Comings, seal_of
from farwall.store.people import People
from farwall.store.people_nouns import JOIN, NoSuchPerson, Person
from farwall.web.door import Door
from farwall.web.key import fits
from farwall.web.people import passwords
from farwall.web.people.lasting import IDLE_S, LASTS_S
from farwall.web.people.tries import try_once, vessels_of, went_well
from farwall.web.people.who import BROWSER, DEVICE, KEY, KNOWN, Who, who_in

COOKIE, KNOWN_COOKIE = "farwall", "farwall-known"
"""Names of the cookies; over https they begin with `__Host-`."""


class WrongKey(FarwallError):
    """What was shown is not the key."""


class NotTheKey(FarwallError):
    """The book has people by now: its pages are opened by name and password."""


class WrongPassword(FarwallError):
    """No such name, or another password: which of both is not told."""


class Sessions:
    """Coming in and leaving at a door. Every call may write into the book; call from a thread."""

    def __init__(self, door: Door) -> None:
        self.door = door
        self.people, self.comings = People(door.book), Comings(door.book)

    def now_s(self) -> float:
        """Seconds since 1970 by the book's clock."""
        return self.door.clock().timestamp()

    def who(self, request: Request) -> Who | None:
        """Who the browser's cookie is of; None for nobody."""
        token = request.cookies.get(cookie_name(request, COOKIE), "")
        return self._who(token, BROWSER, KEY, DEVICE)

    def enter(self, shown: str, *, address: str) -> str:
        """The token of who shows the key. Raises WrongKey, TooManyTries, NotTheKey."""
        now_s, vessels = self.now_s(), vessels_of(address)
        try_once(self.comings, vessels, now_s)
        if not fits(shown.strip(), self.door.key):
            raise WrongKey("This is not the key of this book.")
        went_well(self.comings, vessels)
        if self.people.has_lead():
            raise NotTheKey("This book has people: sign in by name.")
        self.note("office", "came-by-key")
        return self.begin(None, KEY)

    def sign_in(self, name: str, password: str, *, address: str, known: str = "") -> Person:
        """Who signs in. Raises WrongPassword, TooManyTries; a name unknown takes as long.

        known: what the browser's cookie of an earlier sign-in says.
        """
        person, hashed = self.insist_password(name, password, address=address, known=known)
        if passwords.is_old(hashed):
            self.people.set_hash(person.id, hashed, passwords.kept(password))
        self.note(person.name, "signed-in")
        return person

    def insist_password(
        self, name: str, password: str, *, address: str, known: str = ""
    ) -> tuple[Person, str]:
        """Whose name and password these are, with its hash. Raises as `sign_in`."""
        now_s, found = self.now_s(), self.people.named(name)
        vessels = vessels_of(address, name=name, known=self._known(known, found, now_s))
        try_once(self.comings, vessels, now_s)
        hashed = found[1] if found is not None and not found[0].ended_at else ""
        if not passwords.fits(password, hashed) or found is None:
            # What was typed as a name may be a password, and strangers could fill the book by it:
            # a refusal is kept only where it is the name of a person.
            if found is not None:
                self.note(found[0].name, "refused")
            raise WrongPassword("The name or the password is not right.")
        went_well(self.comings, vessels)
        return found

    def person(self, id: str) -> Person:  # noqa: A002
        """A person of the book who may come in. Raises NoSuchPerson."""
        for one in self.people.all():
            if one.id == id and not one.ended_at:
                return one
        raise NoSuchPerson(Mistake("person", "The book has no such person."))

    def join(self, token: str, name: str, password: str) -> Person:
        """Who comes by a link; "" for a password: by a device alone. Raises as `People.join`."""
        hashed = passwords.kept(password) if password else ""
        person = self.people.join(
            seal_of(token), now_s=self.now_s(), name=name, password=hashed, at=self.door.now()
        )
        self.came(person, JOIN)
        return person

    def came(self, person: Person, how: str) -> None:
        """Note that a person came; from the first lead on, the key opens no page any more."""
        if self.people.has_lead():
            self.comings.leave_key()
        self.note(person.name, "joined", how=how)

    def begin(self, person: Person | None, kind: str) -> str:
        """The token of a new session."""
        token, now_s = secrets.token_urlsafe(32), self.now_s()
        owner = person.id if person is not None else None
        self.comings.begin(token, owner, kind=kind, now_s=now_s, ends_s=now_s + LASTS_S[kind])
        return token

    def put_in(self, request: Request, answer: Response, person: Person | None, token: str) -> None:
        """Set the cookies of a session just begun; the session that was there ends."""
        if was := request.cookies.get(cookie_name(request, COOKIE)):
            self.comings.leave(was)
        set_cookie(request, answer, COOKIE, token)
        if person is not None:
            known = self.begin(person, KNOWN)
            if was := request.cookies.get(cookie_name(request, KNOWN_COOKIE)):
                self.comings.leave(was)
            set_cookie(request, answer, KNOWN_COOKIE, known, age_s=LASTS_S[KNOWN])

    def put_device(self, request: Request, answer: Response, person: Person) -> str:
        """Have the browser of a phone come in by the token of its device; the token."""
        token = self.begin(person, DEVICE)
        set_cookie(request, answer, COOKIE, token, age_s=LASTS_S[DEVICE])
        return token

    def leave(self, request: Request) -> None:
        """End the session of the browser."""
        self.comings.leave(request.cookies.get(cookie_name(request, COOKIE), ""))

    def leave_all(self, who: Who) -> None:
        """End every session of a person."""
        self.comings.leave_all(who.id)
        self.note(who.name, "left-all")

    def _who(self, token: str, *kinds: str) -> Who | None:
        found = self.comings.session(token, now_s=self.now_s(), idle_s=IDLE_S) if token else None
        return who_in(found) if found is not None and found.kind in kinds else None

    def _known(self, token: str, found: tuple[Person, str] | None, now_s: float) -> str:
        if not token or found is None:
            return ""
        known = self.comings.session(token, now_s=now_s, idle_s=IDLE_S)
        if known is None or known.kind != KNOWN or known.person is None:
            return ""
        return known.seal if known.person.id == found[0].id else ""

    def note(self, who: str, word: str, **about: str) -> None:
        """Note what was done."""
        self.comings.note(self.door.now(), who, word, about)


def cookie_name(request: Request, name: str) -> str:
    """The name of a cookie as it is called here: over https no other site can set it."""
    return f"__Host-{name}" if request.url.scheme == "https" else name


def set_cookie(
    request: Request, answer: Response, name: str, value: str, *, age_s: float | None = None
) -> None:
    """Set a cookie that no script and no other site gets."""
    answer.set_cookie(
        cookie_name(request, name), value, httponly=True, samesite="strict", path="/",
        secure=request.url.scheme == "https", max_age=int(age_s) if age_s is not None else None,
    )  # fmt: skip
