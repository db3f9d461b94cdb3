"""Oneself: another password, where one is in, leaving everywhere."""

from __future__ import annotations

import asyncio
from collections.abc import Sequence
from datetime import UTC, datetime

from fastapi import APIRouter, Depends, Request, Response

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.papers.wall_clock import Units
from farwall.store.people_nouns import NoSuchPerson
from farwall.web.door import Door
from farwall.web.pages.entering import secret_of
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.guard import asks_for_session, form_of
from farwall.web.pages.joining import Chosen
from farwall.web.pages.lines import Lines, Sought
from farwall.web.pages.paper import PageRoute, page, seen_elsewhere
from farwall.web.pages.when import zoned_told
from farwall.web.people import passwords
from farwall.web.people.tries import TooManyTries
from farwall.web.people.who import BROWSER, DEVICE, KNOWN, Who, who_asks
from farwall.web.session import COOKIE, Sessions, WrongPassword, cookie_name
from farwall.web.words import said

_HOUSES = 100


def me(door: Door, sessions: Sessions) -> APIRouter:
    """The routes of oneself."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    pages = _Me(door, sessions)
    router.get("/me")(pages.shown)
    router.get("/me/phone")(pages.phone)
    router.post("/me/password")(pages.password)
    router.post("/me/leave-all")(pages.leave_all)
    return router


class _Me:
    def __init__(self, door: Door, sessions: Sessions) -> None:
        self.sessions = sessions
        self.book = door.book
        self.lines = Lines(door.book, door.clock)

    def shown(self, request: Request) -> Response:
        """Who one is here, and where one is in."""
        return self._page(_person(request))

    def phone(self, request: Request) -> Response:
        """The houses on a phone that came in as a device: each opens its run sheet."""
        who = _person(request)
        if who.kind != DEVICE:
            return seen_elsewhere("/")
        token = request.cookies.get(cookie_name(request, COOKIE), "")
        found = self.lines.page(Sought(most=_HOUSES)).lines
        return page("my_phone.html", token=token, lines=found, name=who.name)

    async def password(self, request: Request) -> Response:
        """Another password, by the one so far; every other session ends."""
        form, who = await form_of(request), _person(request)
        told = [secret_of(form, name) for name in ("was", "password", "again")]

        def changed() -> Response:
            address = request.client.host if request.client else ""
            try:
                self.sessions.insist_password(who.name, told[0], address=address)
                Chosen(who.name, *told[1:]).insist()
            except WrongPassword:
                return self._page(who, [said("me-was-wrong")], code=403)
            except TooManyTries:
                return self._page(who, [said("too-many-tries")], code=429)
            except Refused as error:
                return self._page(who, mistakes_of(error), code=422)
            self.sessions.people.set_password(who.id, passwords.kept(told[1]))
            self.sessions.note(who.name, "password-changed")
            person = self.sessions.person(who.id)
            answer = seen_elsewhere("/me")
            self.sessions.put_in(request, answer, person, self.sessions.begin(person, BROWSER))
            return answer

        return await asyncio.to_thread(changed)

    async def leave_all(self, request: Request) -> Response:
        """Leave every device, this one too."""
        await form_of(request)
        who = _person(request)
        await asyncio.to_thread(self.sessions.leave_all, who)
        return seen_elsewhere("/enter")

    def _page(self, who: Who, mistakes: Sequence[str] = (), *, code: int = 200) -> Response:
        now_s = self.sessions.now_s()
        found = self.sessions.comings.sessions(who.id, now_s=now_s)
        units = firm_units(self.book)
        there = [
            {"kind": one.kind, "seen": when_of(one.seen_s, units), "here": one.seal == who.seal}
            for one in found if one.kind != KNOWN
        ]  # fmt: skip
        return page(
            "me.html", code=code, me=who, there=there, mistakes=mistakes, least=passwords.LEAST
        )


def when_of(seen_s: float, units: Units) -> str:
    """A moment to its minute in the reader's manner, in UTC; "" for never."""
    moment = datetime.fromtimestamp(seen_s, UTC).isoformat(timespec="minutes")
    return zoned_told(moment, units) if seen_s else ""


def _person(request: Request) -> Who:
    """Who asks; raises NoSuchPerson for who came by the key, and is nobody of the book."""
    who = who_asks(request)
    if who is None or not who.id:
        raise NoSuchPerson(Mistake("", said("me-nobody")))
    return who
