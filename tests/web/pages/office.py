"""An office for tests: a book with a house or none, its app, and a browser that keeps cookies."""

from __future__ import annotations

import asyncio
import json
from concurrent.futures import ThreadPoolExecutor
from copy import deepcopy
from datetime import UTC, datetime
from functools import cache, lru_cache
from html.parser import HTMLParser
from pathlib import Path
from tempfile import TemporaryDirectory

import httpx
from argon2 import PasswordHasher
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.plain import plain
from farwall.store.book import Book
from farwall.store.comings import seal_of
from farwall.store.people import People
from farwall.web.app import app_for
from farwall.web.door import Door
from farwall.web.live_jobs import OF, PLAN, LiveJobs
from farwall.web.session import Sessions
from farwall.web.work import plan_of

KEY = "a key of our own, invented"
PASSWORD = "nine blue trowels lean here"
LIGHT = PasswordHasher(time_cost=1, memory_cost=8, parallelism=1)
"""Quick; the parameters stand in the hash, which signing in makes anew with the server's."""
HERE = "http://farwall"
START = datetime(2026, 6, 8, 8, tzinfo=UTC)


def two_rooms(**more):
    """Facts of a house of two rooms that is planned in a moment."""
    facts = plain(job(TWO_ROOMS, id="two", starts_at=START.isoformat()), omit_empty=True)
    return json.loads(json.dumps(facts)) | more


@cache
def two_rooms_planned():
    """The plan of `two_rooms` as plain values, made once for all tests."""
    return plan_of(two_rooms(), "two").document


@cache
def empty_book():
    """The bytes of a new book with its tables, made once for all tests."""
    with TemporaryDirectory() as folder:
        Book.open(folder).close()
        (only,) = Path(folder).iterdir()
        return only.name, only.read_bytes()


def new_book(folder):
    """A new book in a folder, or the one that is there. Its tables come with it: moving them
    there one by one takes longer than most questions that are asked of it."""
    if not folder.exists():
        folder.mkdir(parents=True)
        name, content = empty_book()
        (folder / name).write_bytes(content)
    return Book.open(folder)


def with_plain_spaces(answer):
    """A page with a plain space between each number and its unit, for tests that read its words;
    that no line ends there, `test_told.py` holds."""
    if answer.headers.get("content-type", "").startswith("text/html"):
        answer._content = answer.content.replace("\u00a0".encode(), b" ")
    return answer


class Hands(ThreadPoolExecutor):
    """Who does the slow work of an office, in a thread. The same facts and lessons are planned once
    for all tests, for a plan hangs on nothing else; each time a plan of its own comes back."""

    def __init__(self):
        super().__init__(1)

    def submit(self, work, /, *told):
        if work is plan_of:
            return super().submit(planned_before, json.dumps(told))
        return super().submit(work, *told)


def planned_before(told):
    return deepcopy(planned_once(told))


@lru_cache(maxsize=64)
def planned_once(told):
    return plan_of(*json.loads(told))


class Office:
    """The app over a book of its own; every question is one call."""

    def __init__(self, folder, *, scheme="http"):
        self.book = new_book(folder / "book")
        self.clock = START
        door = self.door = Door(self.book, KEY, lambda: self.clock)
        self.sessions = Sessions(door)
        jobs = LiveJobs(self.book, make_hands=Hands)
        self.app = app_for(door, jobs=jobs)
        self.here = HERE.replace("http", scheme)
        self.cookies = httpx.Cookies()

    def put(self, facts, name=""):
        self.book.put_facts(facts["id"], facts, who="Ann", at=START.isoformat(), name=name)

    def put_planned(self, name=""):
        """The house of two rooms, its plan there already."""
        self.put(two_rooms(), name=name)
        self.book.put_document(PLAN, "two", two_rooms_planned())
        self.book.put_document(OF, "two", {"facts": 1, "faults": [], "no": []})

    def ask(self, method, path, **more):
        """One question; plans begun by it are waited for."""

        async def run():
            transport = httpx.ASGITransport(app=self.app)
            async with httpx.AsyncClient(
                transport=transport, base_url=self.here, cookies=self.cookies
            ) as client:
                answer = await client.request(method, path, **more)
                self.cookies = client.cookies
                await self.app.state.live.settled()
                # What was begun beside the answer would be dropped with this loop, begun or not.
                beside = asyncio.all_tasks() - {asyncio.current_task()}
                if beside:
                    await asyncio.wait(beside, timeout=120)
                return with_plain_spaces(answer)

        return asyncio.run(run())

    def get(self, path, **more):
        return self.ask("GET", path, **more)

    def post(self, path, **more):
        """A form of this site."""
        headers = {"origin": self.here} | more.pop("headers", {})
        return self.ask("POST", path, headers=headers, **more)

    def bring(self, facts):
        """Bring a house in by the form, as whoever is in."""
        file = ("house.json", json.dumps(facts).encode())
        return self.post("/houses/bring", files={"file": file})

    def enter(self):
        """Come in by the key, which opens the pages of a book that has no people yet."""
        return self.post("/enter", data={"key": KEY, "to": "/"})

    def name(self, name="Ann Field", role="lead", password=PASSWORD):
        """Put a person into the book, and nobody comes in by it; back comes who."""
        people, hashed, at = People(self.book), LIGHT.hash(password), START.isoformat()
        if not people.has_lead():
            assert role == "lead"
            return people.name_first(name, hashed, at)
        seal = seal_of(name)
        people.invite(seal, kind="join", role=role, person=None, ends_s=1e12)
        return people.join(seal, now_s=0, name=name, password=hashed, at=at)

    def sign_in(self, name="Ann Field", password=PASSWORD, **more):
        return self.post("/enter", data={"name": name, "password": password, "to": "/"}, **more)

    def enter_as(self, role):
        """Come in as a person of a role, in a book with a lead."""
        if not People(self.book).has_lead():
            self.name()
        name = "Ann Field" if role == "lead" else f"Bo the {role}"
        if People(self.book).named(name) is None:
            self.name(name, role)
        self.cookies = httpx.Cookies()
        return self.sign_in(name)

    def close(self):
        self.app.state.live.jobs.close()
        self.app.state.live.door.writing.shutdown()
        self.book.close()


class WellFormed(HTMLParser):
    """Every element that is opened is closed in its turn; ids once; nothing inline that acts."""

    VOID = frozenset({"meta", "link", "input", "br", "img"})

    def __init__(self, text):
        super().__init__(convert_charrefs=True)
        self.open, self.faults, self.ids = [], [], set()
        self.feed(text)
        self.close()
        self.faults += [f"{one} stays open" for one in self.open]

    def handle_starttag(self, tag, attrs):
        self._look(tag, attrs)
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self._look(tag, attrs)

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.faults.append(f"{tag} closed out of turn")

    def _look(self, tag, attrs):
        told = dict(attrs)
        if len(told) != len(attrs):
            self.faults.append(f"{tag} has an attribute twice")
        if told.get("id") in self.ids:
            self.faults.append(f"id {told['id']} twice")
        self.ids |= {told["id"]} if "id" in told else set()
        inline = [name for name in told if name == "style" or name.startswith("on")]
        if inline or tag == "style" or (tag == "script" and "src" not in told):
            self.faults.append(f"inline: {tag} {inline}")


def faults_of_html(text):
    return WellFormed(text).faults
