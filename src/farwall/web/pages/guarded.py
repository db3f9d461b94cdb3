"""Routes that only who has shown the key gets to, their refusals pages."""

from __future__ import annotations

from fastapi import APIRouter, Depends, Request

from farwall.web.pages.guard import asks_for_session
from farwall.web.pages.paper import PageRoute
from farwall.web.session import Sessions


def guarded(sessions: Sessions) -> APIRouter:
    """A router of pages behind an open session."""

    def entered(request: Request) -> None:
        asks_for_session(sessions, request)

    return APIRouter(
        route_class=PageRoute, include_in_schema=False, dependencies=[Depends(entered)]
    )
