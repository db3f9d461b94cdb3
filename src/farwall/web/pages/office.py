"""The office screens of a door, put onto its app."""

from __future__ import annotations

from fastapi import FastAPI

from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.acid.page import acid
from farwall.web.pages.aside import aside
from farwall.web.pages.book import book
from farwall.web.pages.call_back import call_back
from farwall.web.pages.colour.ladder import ladder
from farwall.web.pages.colour.marks import marks
from farwall.web.pages.colour.next_page import next_coat
from farwall.web.pages.colour.pairs import pairs
from farwall.web.pages.colour.sample_day import sample_day
from farwall.web.pages.corners import corners
from farwall.web.pages.days import days
from farwall.web.pages.draw import draw
from farwall.web.pages.enquiry import enquiry
from farwall.web.pages.entering import entering
from farwall.web.pages.headers import SafeHeaders
from farwall.web.pages.house import house
from farwall.web.pages.house_papers import house_papers
from farwall.web.pages.houses import houses
from farwall.web.pages.joining import joining
from farwall.web.pages.lessons import lessons
from farwall.web.pages.log import log
from farwall.web.pages.me import me
from farwall.web.pages.people import people
from farwall.web.pages.phone_ways import phone_ways
from farwall.web.pages.price.change import change
from farwall.web.pages.price.masking_places import masking_places
from farwall.web.pages.price.page import price
from farwall.web.pages.price.supplies import supplies
from farwall.web.pages.rooms import rooms
from farwall.web.pages.settings import settings
from farwall.web.pages.told_facts import told_facts
from farwall.web.pages.van import van
from farwall.web.pages.walk import walk
from farwall.web.session import Sessions


def add_office(app: FastAPI, door: Door, held: Live) -> Sessions:
    """Put the pages onto the app; back come the sessions, for whoever else shows pages there."""
    sessions = Sessions(door)
    app.add_middleware(SafeHeaders)
    app.include_router(entering(door, sessions))
    app.include_router(joining(door, held, sessions))
    app.include_router(me(door, sessions))
    app.include_router(people(door, sessions))
    app.include_router(houses(door, held, sessions))
    app.include_router(rooms(door, held, sessions))
    app.include_router(walk(door, held, sessions))
    app.include_router(enquiry(door, held, sessions))
    app.include_router(settings(door, sessions))
    app.include_router(told_facts(door, held, sessions))
    app.include_router(days(door, held, sessions))
    app.include_router(log(door, held, sessions))
    app.include_router(sample_day(door, held, sessions))
    app.include_router(acid(door, held, sessions))
    app.include_router(next_coat(door, held, sessions))
    app.include_router(ladder(door, held, sessions))
    app.include_router(marks(door, held, sessions))
    app.include_router(pairs(door, held, sessions))
    app.include_router(price(door, held, sessions))
    app.include_router(change(door, held, sessions))
    app.include_router(supplies(door, held, sessions))
    app.include_router(masking_places(door, held, sessions))
    app.include_router(call_back(door, held, sessions))
    app.include_router(house_papers(door, held, sessions))
    app.include_router(corners(door, sessions))
    app.include_router(draw(door, held, sessions))
    app.include_router(phone_ways(door, held, sessions))  # before `house`, which takes any name
    app.include_router(aside(door, sessions))
    app.include_router(van(door, held, sessions))
    app.include_router(lessons(door, held, sessions))
    app.include_router(book(door, held, sessions))
    app.include_router(house(door, held, sessions))
    return sessions
