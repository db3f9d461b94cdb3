"""The button that changes the light of the screens."""

from __future__ import annotations

from urllib.parse import urlsplit

from fastapi import APIRouter, Request, Response

from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.light import COOKIE, LIGHTS
from farwall.web.pages.paper import PageRoute, seen_elsewhere

_YEAR_S = 365 * 86400


def lighting() -> APIRouter:
    """The route that keeps the light in a cookie and goes back to where it was asked for."""
    router = APIRouter(route_class=PageRoute, include_in_schema=False)

    @router.post("/light")
    async def light(request: Request) -> Response:
        form = await form_of(request)
        came = urlsplit(request.headers.get("referer", ""))
        back = f"{came.path}?{came.query}" if came.query else came.path
        ours = came.netloc == request.headers.get("host", "") and back.startswith("/")
        answer = seen_elsewhere(back if ours and not back.startswith("//") else "/")
        chosen = text_of(form, "light")
        if chosen in LIGHTS:
            secure = request.url.scheme == "https"
            answer.set_cookie(
                COOKIE, chosen, max_age=_YEAR_S, httponly=True, samesite="lax", secure=secure
            )
        return answer

    return router
