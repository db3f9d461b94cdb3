"""Coming by a link: a name, and a password or this phone alone; or a new password."""

from __future__ import annotations

import asyncio
from urllib.parse import quote

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.nouns import dataclass
from farwall.store.comings import seal_of
from farwall.store.people_nouns import FIRST, PHONE, RESET, Invite, LinkSpent, NameTaken
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.entering import secret_of
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.paper import PageRoute, page, seen_elsewhere
from farwall.web.people.passwords import LEAST, wrong_with
from farwall.web.people.who import BROWSER
from farwall.web.session import Sessions
from farwall.web.words import said


@dataclass(frozen=True)
class Chosen:
    """What somebody who comes has filled in."""

    name: str
    password: str
    again: str

    def insist(self) -> None:
        """Raises Refused with every mistake in it."""
        wrong = [] if self.name else [said("join-no-name")]
        if told := wrong_with(self.password, [self.name]):
            wrong.append(said(told, least=LEAST))
        elif self.password != self.again:
            wrong.append(said("password-differs"))
        if wrong:
            raise Refused(*(Mistake("", one) for one in wrong))


def joining(_door: Door, _held: Live, sessions: Sessions) -> APIRouter:
    """The routes of a link."""
    router = APIRouter(route_class=PageRoute, include_in_schema=False)
    pages = _Joining(sessions)
    router.get("/join/{token}")(pages.asked)
    router.post("/join/{token}")(pages.joined)
    return router


class _Joining:
    def __init__(self, sessions: Sessions) -> None:
        self.sessions = sessions

    def asked(self, token: str, to: str = "") -> Response:
        """What the link is for; looking does not spend it, for messengers look at links too.

        to: the house whose sheet a phone is to show.
        """
        found = self._invite(token)
        return _spent() if found is None else _page(token, found, to=to[:200])

    async def joined(self, token: str, request: Request) -> Response:
        """Spend the link."""
        form = await form_of(request)
        if text_of(form, "way") == "phone":
            return await asyncio.to_thread(self._phone, token, request, text_of(form, "to"))
        return await asyncio.to_thread(self._joined, token, request, text_of(form, "name"), (
            secret_of(form, "password"), secret_of(form, "again"), text_of(form, "way")
        ))  # fmt: skip

    def _joined(
        self, token: str, request: Request, name: str, told: tuple[str, str, str]
    ) -> Response:
        found = self._invite(token)
        if found is None or found.kind == PHONE:
            return _spent()
        alone = told[2] == "device" and may_by_device(found)
        named = found.person.name if found.person is not None else name
        try:
            if not alone:
                Chosen(named, *told[:2]).insist()
            person = self.sessions.join(token, name, "" if alone else told[0])
        except LinkSpent:
            return _spent()
        except NameTaken:
            return _page(token, found, name=name, mistakes=[said("name-taken")])
        except Refused as error:
            return _page(token, found, name=name, mistakes=mistakes_of(error))
        if alone:
            answer = seen_elsewhere("/me/phone")
            self.sessions.put_device(request, answer, person)
            return answer
        answer = seen_elsewhere("/")
        self.sessions.put_in(request, answer, person, self.sessions.begin(person, BROWSER))
        return answer

    def _phone(self, token: str, request: Request, to: str) -> Response:
        """This phone in as the person who showed the link, on to the sheet of a house."""
        found = self._invite(token)
        if found is None or found.kind != PHONE:
            return _spent()
        try:
            person = self.sessions.join(token, "", "")
        except LinkSpent:
            return _spent()
        answer = seen_elsewhere("/me/phone")
        device = self.sessions.put_device(request, answer, person)
        if to:
            answer.headers["location"] = f"/slab/{quote(to, safe='')}#{device}"
        return answer

    def _invite(self, token: str) -> Invite | None:
        return self.sessions.people.invited(seal_of(token), now_s=self.sessions.now_s())


def may_by_device(found: Invite) -> bool:
    """Whether the run sheet on this phone is enough: for a helper who is new."""
    return found.role == "helper" and found.kind not in {FIRST, RESET, PHONE}


def _page(
    token: str, found: Invite, *, name: str = "", to: str = "", mistakes: list[str] | None = None
) -> Response:
    told = found.person.name if found.person is not None else name
    return page(
        "join.html", code=422 if mistakes else 200, token=token, name=told, role=found.role,
        kind=found.kind, to=to, device=may_by_device(found), least=LEAST, mistakes=mistakes or [],
    )  # fmt: skip


def _spent() -> Response:
    return page("trouble.html", code=404, what="link-spent", mistakes=[])
