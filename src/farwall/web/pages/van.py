"""The van: what is in it, what a house needs of it, what a closed job took off it."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Request, Response
from starlette.datastructures import FormData, UploadFile

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.facts.plain import plain
from farwall.facts.van import Van
from farwall.job.van.sprayers import condition
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.store.nouns import JobLine
from farwall.web.door import Door
from farwall.web.firm import FIRM
from farwall.web.live import Live
from farwall.web.pages.firm_units import firm_units
from farwall.web.pages.forms.flat import flat_merged, lines_told
from farwall.web.pages.guard import form_of, text_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import page, seen_elsewhere
from farwall.web.pages.shown import Kept as KeptPlans
from farwall.web.pages.van_form import (
    SPRAYER_KINDS,
    STOCK_KINDS,
    UNITS,
    seen_of,
    used_more,
    with_sprayer,
    with_stock,
    without,
)
from farwall.web.pages.van_shown import (
    TAKEN_OFF,
    form_shown,
    needs_shown,
    took_shown,
    used_of,
)
from farwall.web.pages.van_words import (
    age_told,
    by_kind,
    is_past,
    sprayer_told,
    stock_told,
    thing_name,
)
from farwall.web.pages.where_stands import plainly
from farwall.web.session import Sessions
from farwall.web.words import said

Json = dict[str, Any]
VAN = "van"
"""Kind of document: what is in the van."""
_MOST_BYTES = 2_000_000
_HOUSES = 12


def van_of(book: Any) -> Van:
    """The van as the book keeps it; empty where it keeps none. Raises Refused."""
    from farwall.readers.van_json import van_from

    told = book.document(VAN, FIRM)
    return Van() if told is None else van_from(told, "The van")


@dataclass(frozen=True)
class Offered:
    """Houses that are offered, id and name each: the newest that bear the words sought.

    count: how many bear them · all: how many there are without words.
    """

    houses: tuple[tuple[str, str], ...]
    sought: str
    count: int
    all: int

    @classmethod
    def of(cls, lines: Sequence[JobLine], sought: str) -> Offered:
        """The first dozen of these lines that bear the words."""
        parts = plainly(sought).split()
        mine = [
            (one.id, one.name or one.id) for one in lines
            if all(part in plainly(f"{one.name} {one.id}") for part in parts)
        ]  # fmt: skip
        return cls(tuple(mine[:_HOUSES]), sought.strip()[:80], len(mine), len(lines))

    @property
    def is_part(self) -> bool:
        """Whether there are more than these."""
        return self.all > len(self.houses)


def van(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the van."""
    router = guarded(sessions)
    pages = _Van(door, held)
    router.get("/van")(pages.show)
    router.get("/van/van.json")(pages.document)
    router.post("/van/sprayer")(pages.sprayer)
    router.post("/van/stock")(pages.stock)
    router.post("/van/remove")(pages.remove)
    router.post("/van/bring")(pages.bring)
    router.post("/van/after")(pages.after)
    return router


class _Van:
    """The van of the book, and what is asked of it."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.plans = KeptPlans(door.book, door.clock)

    def show(self, request: Request) -> Response:
        """The page; `edit`, `new`: a form · `for`: what a house needs · `after`: what it took."""
        asked = {key: value[:200] for key, value in request.query_params.items()}
        return self._page(asked)

    def document(self) -> Response:
        """The van as `van.json`, as the command line reads it."""
        from farwall.readers.van_json import van_to_text

        headers = {"content-disposition": 'attachment; filename="van.json"'}
        text = van_to_text(van_of(self.book))
        return Response(text.encode(), media_type="application/json", headers=headers)

    async def sprayer(self, request: Request) -> Response:
        """Put a sprayer in, or change one."""
        today, units = self.door.clock().date(), await asyncio.to_thread(firm_units, self.book)
        return await self._change(
            request, lambda now, form: with_sprayer(now, form, units, today), new="sprayer"
        )

    async def stock(self, request: Request) -> Response:
        """Put a thing on the shelf, or change one."""
        return await self._change(request, with_stock, new="stock")

    async def remove(self, request: Request) -> Response:
        """Take something out of the van's list."""
        return await self._change(request, lambda now, form: without(now, form.get("id", "")))

    async def bring(self, request: Request) -> Response:
        """A `van.json` in the place of what is there."""
        import json

        from farwall.readers.van_json import van_from

        form = await form_of(request, _MOST_BYTES)
        try:
            file = form.get("file")
            content = await file.read() if isinstance(file, UploadFile) else b""
        finally:
            await form.close()
        try:
            try:
                told = json.loads(content)
            except ValueError:
                raise Refused(Mistake("", said("van-bring-not"))) from None
            found = van_from(told, said("van-title"))
        except Refused as error:
            return await asyncio.to_thread(self._page, {}, mistakes=mistakes_of(error), code=422)
        await self.door.written(lambda: self._put(found))
        return seen_elsewhere("/van")

    async def after(self, request: Request) -> Response:
        """Take off what a closed job used; asked first, and once for a job."""
        from farwall.job.van.after import after

        form = _plain(await form_of(request))
        job = form.get("job", "")

        def take() -> None:
            now = self._now(form)
            if self.book.document(TAKEN_OFF, job) is not None:
                raise Refused(Mistake(job, said("van-after-done")))
            then, odd = after(now, used_more(now, form, used_of(self.plans, job, now)))
            version = self._put(then)
            self.book.put_document(TAKEN_OFF, job, {"van": version, "odd": list(odd)})

        try:
            await self.door.written(take)
        except Refused as error:
            asked = {"after": job}
            wrong = mistakes_of(error)
            return await asyncio.to_thread(self._page, asked, mistakes=wrong, code=422)
        return seen_elsewhere("/van")

    async def _change(
        self, request: Request, change: Callable[[Van, Mapping[str, str]], Van], *, new: str = ""
    ) -> Response:
        """The van changed by a form; refused, the form comes back as it was."""
        form = _plain(await form_of(request))

        def put() -> None:
            self._put(change(self._now(form), form))

        try:
            await self.door.written(put)
        except Refused as error:
            asked = {"edit": form.get("was", ""), "new": "" if form.get("was") else new}
            typed, wrong = await asyncio.to_thread(self._over_newest, asked, form, error)
            return await asyncio.to_thread(self._page, asked, mistakes=wrong, typed=typed, code=422)
        return seen_elsewhere("/van")

    def _now(self, form: Mapping[str, str]) -> Van:
        """The van, where the form was made of it. Raises Refused."""
        found = van_of(self.book)
        if form.get("seen") != seen_of(found):
            raise Refused(Mistake("", said("van-other")))
        return found

    def _over_newest(
        self, asked: Mapping[str, str], form: dict[str, str], error: Refused
    ) -> tuple[Mapping[str, str], list[str]]:
        """What was typed, and what is wrong; typed into an older van, laid over the newest."""
        now, units = van_of(self.book), firm_units(self.book)
        before = None if form.get("seen") == seen_of(now) else older_van(self.book, form)
        if before is None:
            return form, mistakes_of(error)
        was, stands = (_texts(form_shown(one, asked, None, units)) for one in (before, now))
        if not stands or not was:  # the thing is gone, or was not there: it is put in anew
            return form, mistakes_of(error)
        found = flat_merged(was, stands, form)
        return found.told, list(lines_told(found, _blank_names(units), said("van-other-merged")))

    def _put(self, found: Van) -> int:
        told: Any = plain(found, omit_empty=True)
        return self.book.put_document(VAN, FIRM, told)

    def _page(
        self,
        asked: Mapping[str, str],
        *,
        mistakes: Sequence[str] = (),
        typed: Mapping[str, str] | None = None,
        code: int = 200,
    ) -> Response:
        found, today = van_of(self.book), self.door.clock().date()
        units = firm_units(self.book)
        lines, taken = self.book.in_hand(), self.book.documents(TAKEN_OFF)
        open_ = Offered.of([one for one in lines if not one.closed], asked.get("house", ""))
        over = Offered.of(
            [one for one in lines if one.closed and one.id not in taken], asked.get("over", "")
        )
        sprayers = [
            {
                "id": one.id,
                "told": sprayer_told(one, state, units),
                "why": state.why,
                "word": state.word,
            }
            for one, state in zip(found.sprayers, map(condition, found.sprayers), strict=True)
        ]
        shelf = [
            (name, [{"id": one.id, "told": stock_told(one, units), "age": age_told(one, today),
                     "past": is_past(one, today)} for one in mine])
            for name, mine in by_kind(found)
        ]  # fmt: skip
        names = {one.id: one.name or one.id for one in lines}
        return page(
            "van.html", code=code, sprayers=sprayers, shelf=shelf, seen=seen_of(found),
            open=open_, over=over, mistakes=mistakes, names=names, units=units,
            form=form_shown(found, asked, typed, units), unit_names=UNITS[units],
            kinds=[(one, thing_name(one)) for one in STOCK_KINDS], sprayer_kinds=SPRAYER_KINDS,
            needs=needs_shown(self.plans, found, asked.get("for", ""), names, units),
            took=took_shown(self.plans, found, asked.get("after", ""), names, units),
        )  # fmt: skip


def older_van(book: Any, form: Mapping[str, str]) -> Van | None:
    """The van of which a form was made, by its `seen`; None where the book has none such."""
    from farwall.readers.van_json import van_from

    told: list[Json] = []
    while (one := book.document(VAN, FIRM, len(told) + 1)) is not None:
        told.append(one)
    vans = (van_from(one, "The van") for one in reversed(told))
    return next((one for one in (*vans, Van()) if seen_of(one) == form.get("seen")), None)


def _texts(shown: Json) -> dict[str, str]:
    """The blanks of a form by name, as a browser has them; empty where no form is open."""
    return {key: str(value) for key, value in shown.get("told", {}).items()}


def _blank_names(units: Units) -> dict[str, str]:
    """What the blanks of a sprayer and of a thing are called."""
    keys = {"id": "id", "tip": "tip", "uses": "uses", "seals_at": "seals", "unsound": "unsound",
            "kind": "kind", "amount": "amount", "unit": "unit", "of": "of", "lot": "lot",
            "good_until": "good", "opened": "opened", "tank": f"tank-{units}"}  # fmt: skip
    return {key: said(f"van-f-{word}") for key, word in keys.items()}


def _plain(form: FormData) -> dict[str, str]:
    return {key: text_of(form, key) for key in form}
