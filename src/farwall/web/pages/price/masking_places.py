"""Where a thing to be masked stands: told by a click on the plan, without any script.

A picture that sends a form says where it was clicked; it is shown in its own size, so that the
place can be read back from the drawing that was made the same way.
"""

from __future__ import annotations

import asyncio
import copy
from dataclasses import replace
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.floor.geometry import Point
from farwall.job.office import OfficeGround
from farwall.job.office.masking import ItemMasked, masked_of
from farwall.job.office.masking.items import items_of
from farwall.nouns import dataclass
from farwall.papers.masking.drawing import masking_svg, place_on_floor
from farwall.papers.masking.names import item_words
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking, told
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.forms.keep import changed_by_other, keep_facts
from farwall.web.pages.forms.told import Slip, Wrong
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.headers import PICTURE_CSP
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.price.ground import office_ground_of
from farwall.web.pages.price.masking import DRAWN
from farwall.web.pages.shown import Kept, State
from farwall.web.session import Sessions
from farwall.web.words import said


def masking_places(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the plan and of a click on it."""
    router = guarded(sessions)
    pages = _Places(door, held)
    router.get("/houses/{job}/masking/plan.svg")(pages.plan)
    router.get("/houses/{job}/masking/place/{number}")(pages.ask)
    router.post("/houses/{job}/masking/place/{number}")(pages.tell)
    return router


@dataclass(frozen=True)
class _Placing:
    """A house with its plan and its newest list, and the thing that is asked for."""

    state: State
    ground: OfficeGround
    number: int

    @property
    def item(self) -> ItemMasked:
        """The thing."""
        return items_of(self.ground.job)[self.number]

    @property
    def what(self) -> str:
        """The thing, in the page's language."""
        with speaking(LANGUAGE.get(), names_in(self.ground.plan)):
            item = self.item
            return told(item_words(replace(item, take_out=False)))


class _Places:
    """The pages."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.kept = Kept(door.book, door.clock)

    async def plan(self, job: str) -> Response:
        """The plan with its film as a picture of its own."""
        return await asyncio.to_thread(self._plan, job)

    def _plan(self, job: str) -> Response:
        ground = office_ground_of(self.door.book, self.kept.state(job))
        if ground is None:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        with speaking(LANGUAGE.get(), names_in(ground.plan)):
            units = ground.job.wishes.units
            drawn = masking_svg(ground.plan, masked_of(ground), units=units, **DRAWN)
        headers = {"cache-control": "private, no-cache", "content-security-policy": PICTURE_CSP}
        return Response(drawn, media_type="image/svg+xml", headers=headers)

    async def ask(self, job: str, number: str) -> Response:
        """The plan to click on."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._ask, job, number)

    def _ask(self, job: str, number: str, slips: tuple[Slip, ...] = ()) -> Response:
        placing = self._placing(job, number)
        if isinstance(placing, Response):
            return placing
        return page(
            "masking_place.html", code=422 if slips else 200, shown=placing.state.shown,
            state=placing.state, house=placing.state.name or job, house_id=job, here="way-price",
            what=placing.what, number=placing.number, slips=slips,
            placed=placing.item.at is not None,
        )  # fmt: skip

    async def tell(self, job: str, number: str, request: Request) -> Response:
        """Keep the place that was clicked, or take it away."""
        form = await form_of(request)
        placing = await asyncio.to_thread(self._placing, job, number)
        if isinstance(placing, Response):
            return placing
        try:
            if text_of(form, "version") != str(placing.state.version):
                raise changed_by_other()
            away = text_of(form, "away") != ""
            found = None if away else await asyncio.to_thread(_clicked, placing, form)
            facts = await asyncio.to_thread(self.door.book.facts, job, placing.state.version)
            await keep_facts(self.door, placing.state, _placed(facts, placing.number, found))
        except Wrong as error:
            return await asyncio.to_thread(self._ask, job, number, error.slips)
        await self.held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/price/masking")

    def _placing(self, job: str, number: str) -> _Placing | Response:
        state = self.kept.state(job)
        ground = office_ground_of(self.door.book, state)
        if ground is None:
            return seen_elsewhere(f"{house_path(job)}/price/masking")
        count = len(ground.job.supplies.masking.items)
        if not number.isascii() or not number.isdigit() or int(number) >= count:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        return _Placing(state, ground, int(number))


def _clicked(placing: _Placing, form: Any) -> tuple[Point, str]:
    """The place and room of a click. Raises Wrong where no floor lies there."""
    try:
        at = (float(text_of(form, "at.x")), float(text_of(form, "at.y")))
    except ValueError:
        at = (-1.0, -1.0)
    of = placing.ground
    with speaking(LANGUAGE.get(), names_in(of.plan)):  # the drawing has the words it had there
        found = place_on_floor(of.plan, masked_of(of), at, units=of.job.wishes.units, **DRAWN)
    if found is None:
        raise Wrong([Slip("", "", said("price-masking-no-floor"))])
    return found


def _placed(facts: dict[str, Any], number: int, found: tuple[Point, str] | None) -> dict[str, Any]:
    """The facts with a thing at its place, or without one."""
    changed = copy.deepcopy(dict(facts))
    item = changed["supplies"]["masking"]["items"][number]
    item.pop("at", None)
    if found is not None:
        item |= {"at": list(found[0]), "room": found[1]}
    return changed
