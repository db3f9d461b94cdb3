"""Coming in by name or key, leaving with one button, and the files that pages are made up with."""

from __future__ import annotations

import asyncio

from fastapi import APIRouter, Depends, Request, Response
from starlette.datastructures import FormData

from farwall.errors import FarwallError
from farwall.web.door import Door
from farwall.web.pages.guard import asks_for_session, form_of, text_of
from farwall.web.pages.paper import (
    PageRoute,
    page,
    seen_elsewhere,
    static_file,
    static_files,
    static_version,
)
from farwall.web.people.tries import WAIT_S, TooManyTries
from farwall.web.people.who import BROWSER
from farwall.web.session import (
    COOKIE,
    KNOWN_COOKIE,
    NotTheKey,
    Sessions,
    WrongKey,
    WrongPassword,
    cookie_name,
)

_WRONG: tuple[tuple[type[FarwallError], int, str], ...] = (
    (WrongKey, 403, "wrong-key"),
    (NotTheKey, 403, "not-the-key"),
    (WrongPassword, 403, "wrong-password"),
    (TooManyTries, 429, "too-many-tries"),
)


def entering(_door: Door, sessions: Sessions) -> APIRouter:
    """The routes by which one comes and goes."""
    router = APIRouter(route_class=PageRoute, include_in_schema=False)

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    def asked(to: str, *, code: int = 200, wrong: str = "", name: str = "") -> Response:
        by_name = sessions.people.has_lead()
        return page("enter.html", code=code, to=to, wrong=wrong, name=name, by_name=by_name)

    @router.get("/enter")
    def ask(to: str = "/") -> Response:
        return asked(_here(to))

    @router.post("/enter")
    async def enter(request: Request) -> Response:
        form = await form_of(request)
        to = _here(text_of(form, "to"))
        try:
            return await asyncio.to_thread(_entered, sessions, request, form, to)
        except tuple(kind for kind, _, _ in _WRONG) as error:
            code, wrong = next((c, w) for kind, c, w in _WRONG if isinstance(error, kind))
            name = text_of(form, "name")[:200]
            answer = await asyncio.to_thread(asked, to, code=code, wrong=wrong, name=name)
            if code == 429:
                answer.headers["retry-after"] = str(WAIT_S)
            return answer

    @router.post("/leave", dependencies=[Depends(entered)])
    async def left(request: Request) -> Response:
        await form_of(request)
        await asyncio.to_thread(sessions.leave, request)
        answer = seen_elsewhere("/enter")
        name = cookie_name(request, COOKIE)
        secure = request.url.scheme == "https"
        answer.delete_cookie(name, path="/", httponly=True, samesite="strict", secure=secure)
        return answer

    router.get("/static/{name}")(_static)
    return router


def _static(name: str, request: Request) -> Response:
    kind = static_files().get(name)
    if kind is None:
        return page("trouble.html", code=404, what="no-page", mistakes=[])
    tag = f'"{static_version(name)}"'
    headers = {"etag": tag, "cache-control": "public, max-age=86400"}
    if request.headers.get("if-none-match") == tag:
        return Response(status_code=304, headers=headers)
    return Response(static_file(name), media_type=kind, headers=headers)


def _entered(sessions: Sessions, request: Request, form: FormData, to: str) -> Response:
    """Whoever shows the key or signs in, led on."""
    address = request.client.host if request.client else ""
    answer = seen_elsewhere(to)
    if text_of(form, "key"):
        token = sessions.enter(text_of(form, "key"), address=address)
        sessions.put_in(request, answer, None, token)
        return answer
    known = request.cookies.get(cookie_name(request, KNOWN_COOKIE), "")
    person = sessions.sign_in(
        text_of(form, "name"), secret_of(form, "password"), address=address, known=known
    )
    sessions.put_in(request, answer, person, sessions.begin(person, BROWSER))
    return answer


def secret_of(form: FormData, name: str) -> str:
    """A password as it was typed, its spaces too."""
    value = form.get(name)
    return value if isinstance(value, str) else ""


def _here(path: str) -> str:
    """The path when it is one of this site, else the list of houses."""
    plain = path.startswith("/") and not path.startswith("//") and "\\" not in path
    return path if plain and path.isprintable() else "/"
