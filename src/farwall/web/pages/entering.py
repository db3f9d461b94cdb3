"""Entering with the key, leaving with one button, and the two files that pages are made up with."""

from __future__ import annotations

from fastapi import APIRouter, Request, Response

from farwall.web.door import Door
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.paper import (
    PageRoute,
    page,
    seen_elsewhere,
    static_file,
    static_files,
    static_version,
)
from farwall.web.session import COOKIE, Sessions, TooManyTries, WrongKey


def entering(door: Door, sessions: Sessions) -> APIRouter:
    """The routes that need no session."""
    router = APIRouter(route_class=PageRoute, include_in_schema=False)

    @router.get("/enter")
    def asked(to: str = "/") -> Response:
        return page("enter.html", to=_here(to), wrong="")

    @router.post("/enter")
    async def entered(request: Request) -> Response:
        form = await form_of(request)
        to = _here(text_of(form, "to"))
        address = request.client.host if request.client else ""
        try:
            token = sessions.enter(text_of(form, "key"), door.key, address=address)
        except WrongKey:
            return page("enter.html", code=403, to=to, wrong="wrong-key")
        except TooManyTries:
            answer = page("enter.html", code=429, to=to, wrong="too-many-tries")
            answer.headers["retry-after"] = "60"
            return answer
        answer_on = seen_elsewhere(to)
        answer_on.set_cookie(
            COOKIE, token, httponly=True, samesite="strict", secure=request.url.scheme == "https",
            path="/",
        )  # fmt: skip
        return answer_on

    @router.post("/leave")
    async def left(request: Request) -> Response:
        await form_of(request)
        sessions.leave(request.cookies.get(COOKIE, ""))
        answer = seen_elsewhere("/enter")
        answer.delete_cookie(COOKIE, path="/", httponly=True, samesite="strict")
        return answer

    @router.get("/static/{name}")
    def static(name: str, request: Request) -> Response:
        kind = static_files().get(name)
        if kind is None:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        tag = f'"{static_version(name)}"'
        headers = {"etag": tag, "cache-control": "public, max-age=86400"}
        if request.headers.get("if-none-match") == tag:
            return Response(status_code=304, headers=headers)
        return Response(static_file(name), media_type=kind, headers=headers)

    return router


def _here(path: str) -> str:
    """The path when it is one of this site, else the list of houses."""
    plain = path.startswith("/") and not path.startswith("//") and "\\" not in path
    return path if plain and path.isprintable() else "/"
