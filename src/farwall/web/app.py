"""The door over HTTP: JSON below `/api`, pages beside it; a refusal says what to do next.

Writing goes through one thread, so that fifty phones that come back into signal at once stand in
one line, and a screen's question in between is answered at once.
"""

from __future__ import annotations

from collections.abc import Collection

from fastapi import FastAPI

from farwall.web.calmly import Unbroken, add_calm
from farwall.web.colour_api import colour_api
from farwall.web.described import describe
from farwall.web.door import Door
from farwall.web.health import health
from farwall.web.hosts import KnownHosts
from farwall.web.live import Live, letting_go, live
from farwall.web.live_jobs import LiveJobs
from farwall.web.logs import Told
from farwall.web.looking import looking
from farwall.web.pages.office import add_office
from farwall.web.people.deeds import Deeds
from farwall.web.slab.routes import slab
from farwall.web.sync import sync


def app_for(
    door: Door, *, jobs: LiveJobs | None = None, names: Collection[str] | None = None
) -> FastAPI:
    """The app that answers for a door's book.

    jobs: with other hands for the slow work · names: by which it may be asked beside loopback and
    its own address; None: by any, where somebody else looks at that.
    """
    app = FastAPI(
        title="Farwall", docs_url=None, redoc_url=None, openapi_url="/api/openapi.json",
        lifespan=letting_go,
    )  # fmt: skip
    held = Live(door, jobs or LiveJobs(door.book))
    app.state.live = held
    add_calm(app)
    app.include_router(health(door))
    app.include_router(looking(door))
    app.include_router(sync(door))
    app.include_router(live(door, held))
    app.include_router(colour_api(door, held))
    app.include_router(slab(door, held))
    # The one that is added last is asked first.
    app.add_middleware(Unbroken)
    app.add_middleware(Deeds, door=door)
    app.add_middleware(KnownHosts, names=names)
    add_office(app, door, held)
    app.add_middleware(Told)
    describe(app)
    return app
