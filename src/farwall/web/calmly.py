"""What is said when it goes wrong: JSON below `/api`, a page elsewhere; never a traceback."""

from __future__ import annotations

from collections.abc import Awaitable, Callable

from fastapi import FastAPI, Request, Response
from fastapi.exceptions import RequestValidationError
from fastapi.responses import JSONResponse
from starlette.exceptions import HTTPException
from starlette.types import ASGIApp, Message, Receive, Scope, Send

from farwall.errors import FarwallError, Refused, Unanswerable
from farwall.store.nouns import BookTrouble, NoSuchJob
from farwall.web.door import Closed, TooLarge
from farwall.web.logs import LOG
from farwall.web.pages.paper import page
from farwall.web.pages.tongue import language_of
from farwall.web.people.roles import NotAllowed, route_of
from farwall.web.people.tries import WAIT_S, TooManyTries
from farwall.web.words import LANGUAGE, said

_CODES: tuple[tuple[type[FarwallError], int], ...] = (
    (Closed, 401),
    (NotAllowed, 403),
    (TooManyTries, 429),
    (TooLarge, 413),
    (NoSuchJob, 404),
    (BookTrouble, 503),
    (Refused, 422),
    (Unanswerable, 409),
    (FarwallError, 400),
)
"""The first that fits, as HTTP's own codes have it [rfc9110]."""
_MORE = {401: {"www-authenticate": "Bearer"}, 429: {"retry-after": str(WAIT_S)}}
_FOR_PROGRAMS = ("/api/", "/healthz", "/readyz")
Handler = Callable[[Request, Exception], Awaitable[Response]]


def add_calm(app: FastAPI) -> None:
    """Put the answers for what goes wrong onto the app."""
    answers: dict[type[Exception], Handler] = {
        FarwallError: _refused, RequestValidationError: _invalid, HTTPException: _no_such,
    }  # fmt: skip
    for kind, answer in answers.items():
        app.add_exception_handler(kind, answer)


def told(error: str, *mistakes: str, code: int) -> JSONResponse:
    """What happened and all mistakes, as the API says it."""
    answer = {"error": error, "mistakes": list(mistakes)}
    return JSONResponse(answer, code, _MORE.get(code))


async def _refused(_request: Request, error: Exception) -> Response:
    code = next(code for kind, code in _CODES if isinstance(error, kind))
    if isinstance(error, Refused):
        about = error.about or "This cannot be done."
        return told(about, *map(str, error.mistakes), code=code)
    if isinstance(error, Unanswerable):
        return told(error.reason, *error.remedies, code=code)
    return told(str(error), code=code)


async def _invalid(_request: Request, error: Exception) -> Response:
    assert isinstance(error, RequestValidationError)
    wrong = [f"{one['loc'][-1]}: {one['msg']}" for one in error.errors()]
    return told("This cannot be done.", *wrong, code=422)


async def _no_such(request: Request, error: Exception) -> Response:
    """No such address, or not by this method."""
    assert isinstance(error, HTTPException)
    if request.url.path.startswith(_FOR_PROGRAMS):
        answer: Response = told(str(error.detail), code=error.status_code)
    else:
        LANGUAGE.set(language_of(request))
        what = "no-page" if error.status_code in {404, 405} else "refused"
        answer = page("trouble.html", code=error.status_code, what=what, mistakes=[])
    answer.headers.update(error.headers or {})
    return answer


class Unbroken:
    """Middleware: what breaks is told in the log and answered calmly, with the safe headers."""

    def __init__(self, app: ASGIApp) -> None:
        self.app = app

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        """Answer in any case; once an answer has begun, it can only be cut off."""
        begun = False

        async def noted(message: Message) -> None:
            nonlocal begun
            begun = True
            await send(message)

        try:
            await self.app(scope, receive, noted)
        except Exception:
            if begun or scope["type"] != "http":
                raise
            request = Request(scope)
            number = getattr(request.state, "id", "")
            LOG.exception("broke", extra={"told": {"id": number, "route": route_of(request)}})
            await _broke(request, number)(scope, receive, send)


def _broke(request: Request, number: str) -> Response:
    """Something of ours is broken; the number leads to it in the log."""
    if request.url.path.startswith(_FOR_PROGRAMS):
        return told("Something is broken here.", f"It is in the log as {number}.", code=500)
    LANGUAGE.set(language_of(request))
    wrong = [said("broke-told", number=number)]
    return page("trouble.html", code=500, what="broke", mistakes=wrong)
