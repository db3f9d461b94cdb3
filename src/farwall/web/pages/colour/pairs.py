"""Before and after: a person chooses two photos of a place, and brings the print's own values."""

from __future__ import annotations

import asyncio
from collections.abc import Sequence

from fastapi import APIRouter, Request, Response

from farwall.errors import Refused, mistakes_of
from farwall.job.colour.before_after import WORDS, Place, places_of
from farwall.job.story import story
from farwall.job.story.noun import Happened
from farwall.nouns import dataclass
from farwall.papers.wall_clock import plan_clock
from farwall.phrasebook import told as told_in
from farwall.readers.colour_photo.values import values_in
from farwall.web.door import Door
from farwall.web.firm import keep_print_values, print_values
from farwall.web.live import Live
from farwall.web.pages.guarded import guarded
from farwall.web.pages.log_keep import typed_of
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.shown import Kept, Shown
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import said


@dataclass(frozen=True)
class Taken:
    """A photo that may be chosen. about: when, how the floor stood, in what light, the note."""

    id: str
    file: str
    about: str


@dataclass(frozen=True)
class PlaceShown:
    """A place with its photos, the oldest first."""

    name: str
    photos: tuple[Taken, ...]


def pairs(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the page."""
    router = guarded(sessions)
    pages = _Pairs(door, held)
    router.get("/houses/{job}/colour/pairs")(pages.show)
    router.post("/houses/{job}/colour/pairs")(pages.bring)
    return router


class _Pairs:
    """The page, of the newest plan and the log."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.plans = Kept(door.book, door.clock)

    async def show(self, job: str) -> Response:
        """Places with their photos, and what is known of the firm's print."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job)

    async def bring(self, job: str, request: Request) -> Response:
        """Keep the values of the firm's print, or forget them; refused with every mistake."""
        typed = await typed_of(request)
        try:
            values = {} if typed.told.get("forget") else values_in(typed.files.get("file", b""))
        except Refused as error:
            return await asyncio.to_thread(self._page, job, mistakes_of(error), 422)
        await self.door.written(lambda: keep_print_values(self.book, values))
        return seen_elsewhere(f"{house_path(job)}/colour/pairs#print")

    def _page(self, job: str, mistakes: Sequence[str] = (), code: int = 200) -> Response:
        state, who = self.plans.state(job), who_asks()
        places = () if state.shown is None else self._places(job, state.shown)
        return page(
            "colour_pairs.html", code=code, state=state, house=state.name or state.id, house_id=job,
            shown=state.shown, here="way-colour", part="pairs", mistakes=mistakes, places=places,
            paper=f"{house_path(job)}/papers/before-after.pdf",
            target=f"{house_path(job)}/papers/colour-target.pdf",
            measured=len(print_values(self.book)), may_change=who is not None and who.may(CHANGE),
        )  # fmt: skip

    def _places(self, job: str, shown: Shown) -> tuple[PlaceShown, ...]:
        kept = tuple(self.book.entries(job))
        if not kept:
            return ()
        found = places_of(story(shown.plan, kept).of(*WORDS))
        return tuple(_shown(one, shown) for one in found)


def _shown(place: Place, shown: Shown) -> PlaceShown:
    known = shown.job.floor.room_by_id.get(place.room)
    room = place.room if known is None else known.label
    name = said("colour-pairs-sample", id=place.sample) if place.sample else room
    return PlaceShown(name, tuple(_taken(one, shown) for one in place.photos))


def _taken(one: Happened, shown: Shown) -> Taken:
    at = plan_clock(shown.plan, shown.job.wishes.units)
    when = f"{at.at(one.at_min).date().isoformat()} {at.time(one.at_min)}"
    how = (told_in(one.text(key)) for key in ("state", "light") if one.text(key))
    return Taken(one.id, one.text("file"), ", ".join(filter(None, (when, *how, one.text("note")))))
