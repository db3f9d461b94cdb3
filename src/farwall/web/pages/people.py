"""The people of the book: who, as what, seen when; links for new ones; what was done."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence
from datetime import datetime
from typing import Any

from fastapi import APIRouter, Depends, Request, Response

from farwall.errors import FarwallError, Refused, mistakes_of
from farwall.store.people_nouns import (
    ROLES,
    LastLead,
    NameTaken,
    NoSuchPerson,
    Person,
)
from farwall.web.door import Door
from farwall.web.pages.deeds import told_deed
from farwall.web.pages.entering import secret_of
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.guard import asks_for_session, form_of, text_of
from farwall.web.pages.joining import Chosen
from farwall.web.pages.me import when_of
from farwall.web.pages.paper import PageRoute, page, seen_elsewhere
from farwall.web.pages.when import date_told
from farwall.web.people import passwords
from farwall.web.people.links import link_to_choose, link_to_join
from farwall.web.people.who import BROWSER, KNOWN, name_of_who
from farwall.web.session import Sessions
from farwall.web.words import said

_DEEDS = 200


def people(door: Door, sessions: Sessions) -> APIRouter:
    """The routes of the people; every one of them asks for a lead."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    router = APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
    pages = _People(door, sessions)
    router.get("/people")(pages.all)
    router.get("/people/done")(pages.done)
    router.post("/people/first")(pages.first)
    router.post("/people/invite")(pages.invite)
    router.post("/people/{person}/role")(pages.role)
    router.post("/people/{person}/link")(pages.link)
    router.post("/people/{person}/end")(pages.end)
    return router


class _People:
    def __init__(self, door: Door, sessions: Sessions) -> None:
        self.door, self.sessions = door, sessions
        self.people = sessions.people

    def all(self) -> Response:
        """Everybody."""
        return self._page()

    def done(self, before: int = 0) -> Response:
        """What was done, the newest first."""
        found = self.sessions.comings.done(limit=_DEEDS + 1, before=max(before, 0))
        units = firm_units(self.door.book)
        told = [told_deed(one, units) for one in found[:_DEEDS]]
        more = found[_DEEDS - 1].number if len(found) > _DEEDS else 0
        return page("done.html", deeds=told, more=more)

    async def first(self, request: Request) -> Response:
        """Name the first lead of a book that has none."""
        form = await form_of(request)
        name, told = text_of(form, "name"), [secret_of(form, one) for one in ("password", "again")]

        def named() -> Response:
            Chosen(name, *told).insist()
            person = self.people.name_first(name, passwords.kept(told[0]), self.door.now())
            self.sessions.came(person, "first")
            answer = seen_elsewhere("/people")
            self.sessions.put_in(request, answer, person, self.sessions.begin(person, BROWSER))
            return answer

        return await self._calmly(named, name=name)

    async def invite(self, request: Request) -> Response:
        """A link for somebody new, shown once."""
        role = text_of(await form_of(request), "role")

        def made() -> Response:
            path = link_to_join(self.door.book, self.sessions.now_s(), role)
            self.sessions.note(name_of_who(), "invited", role=role)
            return self._linked(request, path, said("people-link-new", role=said(f"role-{role}")))

        return await self._calmly(made)

    async def link(self, person: str, request: Request) -> Response:
        """A link by which a person chooses a new password."""
        await form_of(request)

        def made() -> Response:
            found = self.sessions.person(person)
            path = link_to_choose(self.door.book, self.sessions.now_s(), found)
            self.sessions.note(name_of_who(), "link-made", person=found.name)
            return self._linked(request, path, said("people-link-anew", name=found.name))

        return await self._calmly(made)

    async def role(self, person: str, request: Request) -> Response:
        """Another role."""
        role = text_of(await form_of(request), "role")

        def changed() -> Response:
            found = self.people.set_role(person, role)
            self.sessions.note(name_of_who(), "role-changed", person=found.name, role=role)
            return seen_elsewhere("/people")

        return await self._calmly(changed)

    async def end(self, person: str, request: Request) -> Response:
        """End somebody's access."""
        await form_of(request)

        def ended() -> Response:
            found = self.people.end(person, at=self.door.now())
            self.sessions.note(name_of_who(), "access-ended", person=found.name)
            return seen_elsewhere("/people")

        return await self._calmly(ended)

    async def _calmly(self, work: Callable[[], Response], *, name: str = "") -> Response:
        def calmly() -> Response:
            try:
                return work()
            except (LastLead, NameTaken, NoSuchPerson) as error:
                key = next(key for kind, key in _SAID if isinstance(error, kind))
                return self._page(mistakes=[said(key)], name=name)
            except Refused as error:
                unknown = any(one.where == "role" for one in error.mistakes)
                told = [said("people-no-role")] if unknown else mistakes_of(error)
                return self._page(mistakes=told, name=name)

        return await asyncio.to_thread(calmly)

    def _linked(self, request: Request, path: str, told: str) -> Response:
        link = str(request.base_url).rstrip("/") + path
        here = request.url.hostname in {"127.0.0.1", "localhost", "::1"}
        return self._page(link=link, link_told=told, link_here=here)

    def _page(
        self, *, mistakes: Sequence[str] = (), name: str = "", link: str = "",
        link_told: str = "", link_here: bool = False,
    ) -> Response:  # fmt: skip
        return page(
            "people.html", code=422 if mistakes else 200, people=[self._told(one) for one in
            self.people.all()], roles=ROLES, mistakes=mistakes, name=name, link=link,
            link_told=link_told, link_here=link_here, least=passwords.LEAST,
            first=not self.people.has_lead(),
        )  # fmt: skip

    def _told(self, person: Person) -> dict[str, Any]:
        found = self.sessions.comings.sessions(person.id, now_s=self.sessions.now_s())
        devices = len([one for one in found if one.kind != KNOWN])
        return {
            "id": person.id, "name": person.name, "role": person.role,
            "ended": bool(person.ended_at), "told": " ".join(self._about(person, devices)),
        }  # fmt: skip

    def _about(self, person: Person, devices: int) -> list[str]:
        """What is said of a person beside name and role, a sentence each."""
        if person.ended_at:
            on = date_told(datetime.fromisoformat(person.ended_at))
            return [said("people-ended", on=on)]
        seen = when_of(person.seen_s, firm_units(self.door.book))
        told = [said("people-seen", at=seen) if seen else said("people-unseen")]
        told.append(said("people-device") if devices == 1 else said("people-devices", n=devices))
        return told if person.has_password else [*told, said("people-no-password")]


_SAID: tuple[tuple[type[FarwallError], str], ...] = (
    (LastLead, "last-lead"),
    (NameTaken, "name-taken"),
    (NoSuchPerson, "no-person"),
)
