"""The office screens of a door, put onto its app."""

from __future__ import annotations

import time

from fastapi import FastAPI

from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.book import book
from farwall.web.pages.days import days
from farwall.web.pages.entering import entering
from farwall.web.pages.headers import SafeHeaders
from farwall.web.pages.house import house
from farwall.web.pages.houses import houses
from farwall.web.pages.lessons import lessons
from farwall.web.pages.log import log
from farwall.web.pages.van import van
from farwall.web.session import Sessions


def add_office(app: FastAPI, door: Door, held: Live) -> Sessions:
    """Put the pages onto the app; back come the sessions, for whoever else shows pages there."""
    sessions = Sessions(time.monotonic)
    app.add_middleware(SafeHeaders)
    app.include_router(entering(door, sessions))
    app.include_router(houses(door, held, sessions))
    app.include_router(days(door, held, sessions))
    app.include_router(log(door, held, sessions))
    app.include_router(van(door, held, sessions))
    app.include_router(lessons(door, held, sessions))
    app.include_router(book(door, held, sessions))
    app.include_router(house(door, held, sessions))
    return sessions
