"""The door over HTTP: JSON below `/api`, pages beside it; a refusal says what to do next.

Writing goes through one thread, so that fifty phones that come back into signal at once stand in
one line, and a screen's question in between is answered at once.
"""

from __future__ import annotations

from collections.abc import Awaitable, Callable

from fastapi import FastAPI, Request
from fastapi.responses import JSONResponse

from farwall.errors import FarwallError, Refused, Unanswerable
from farwall.store.nouns import BookTrouble, NoSuchJob
from farwall.web.door import Closed, Door, TooLarge
from farwall.web.health import health
from farwall.web.live import Live, letting_go, live
from farwall.web.live_jobs import LiveJobs
from farwall.web.looking import looking
from farwall.web.pages.office import add_office
from farwall.web.people.roles import NotAllowed
from farwall.web.slab.routes import slab
from farwall.web.sync import sync

_CODES: tuple[tuple[type[FarwallError], int], ...] = (
    (Closed, 401),
    (NotAllowed, 403),
    (TooLarge, 413),
    (NoSuchJob, 404),
    (BookTrouble, 503),
    (Refused, 422),
    (Unanswerable, 409),
    (FarwallError, 400),
)
"""The first that fits, as HTTP's own codes have it [rfc9110]."""


def app_for(door: Door, *, jobs: LiveJobs | None = None) -> FastAPI:
    """The app that answers for a door's book. jobs: with other hands for the slow work."""
    app = FastAPI(
        title="Farwall", docs_url=None, redoc_url=None, openapi_url="/api/openapi.json",
        lifespan=letting_go,
    )  # fmt: skip
    held = Live(door, jobs or LiveJobs(door.book))
    app.state.live = held
    answer: Callable[[Request, Exception], Awaitable[JSONResponse]] = _calmly
    app.add_exception_handler(FarwallError, answer)
    app.include_router(health(door))
    app.include_router(looking(door))
    app.include_router(sync(door))
    app.include_router(live(door, held))
    app.include_router(slab(door, held))
    add_office(app, door, held)
    return app


async def _calmly(_request: Request, error: Exception) -> JSONResponse:
    """What happened, all mistakes, and what next; never a traceback."""
    code = next(code for kind, code in _CODES if isinstance(error, kind))
    about, mistakes = str(error), list[str]()
    if isinstance(error, Refused):
        about = error.about or "This cannot be done."
        mistakes = [str(one) for one in error.mistakes]
    elif isinstance(error, Unanswerable):
        about, mistakes = error.reason, list(error.remedies)
    return JSONResponse({"error": about, "mistakes": mistakes}, code)
