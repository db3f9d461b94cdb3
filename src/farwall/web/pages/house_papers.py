"""All papers of a house: a plain list, what each is for, made when it is asked for."""

from __future__ import annotations

import asyncio
import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING, Any

from fastapi import APIRouter, Request, Response

from farwall.errors import Unanswerable
from farwall.papers.acid_files import PAPERS as ACID_PAPERS
from farwall.papers.office.bundles import BY_FILE, MOMENTS, lacking
from farwall.papers.office.bundles import PAPERS as OFFICE_PAPERS
from farwall.phrasebook import speaking
from farwall.readers.kept_json import kept_to_dict
from farwall.web.door import Door
from farwall.web.firm import FIRM
from farwall.web.live import Live
from farwall.web.live_jobs import PLAN, NotPlanned
from farwall.web.pages.guarded import guarded
from farwall.web.pages.lines import CALENDAR
from farwall.web.pages.paper import house_path, page
from farwall.web.pages.papers import language_of_paper
from farwall.web.pages.phone_ways import phone_base
from farwall.web.pages.shown import Kept, Shown, State
from farwall.web.people.roles import NotAllowed
from farwall.web.people.who import may_see_costs
from farwall.web.session import Sessions
from farwall.web.words import LANGUAGE, said

if TYPE_CHECKING:
    from farwall.papers.office.ground import PaperGround

Json = dict[str, Any]
SLAB = ("slab.html", "floor.svg", "moments.svg")
ACID = tuple(one for one in ACID_PAPERS if one not in BY_FILE)
DAYS = ("chain.pdf", "days.ics", "seal-sheet.pdf")
OPEN = (
    "job.json", "plan.json", "floor.geojson", "floor.dxf", "floor-layers.svg", "log.jsonl",
)  # fmt: skip
"""What there is, in the order in which it is needed."""
_BY_MOMENT = tuple(
    (moment, tuple(one.file for one in OFFICE_PAPERS if one.moment == moment)) for moment in MOMENTS
)
_GROUPS = (*_BY_MOMENT, ("slab", SLAB), ("acid", ACID), ("days", DAYS), ("open", OPEN))
_ELSEWHERE = frozenset(SLAB)
"""Papers whose address is that of the house itself."""
_KINDS = {
    "pdf": "application/pdf", "ics": "text/calendar", "json": "application/json",
    "geojson": "application/geo+json", "jsonl": "application/jsonl",
    "dxf": "image/vnd.dxf", "svg": "image/svg+xml", "xml": "application/xml",
    "xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
}  # fmt: skip


FIRM_ALONE = frozenset(
    {"price-sheet.pdf", "post-mortem.pdf", "shopping-list.pdf", "shopping-list.xlsx"}
)
"""Papers with what things cost the firm: for who may change facts, not for helper or owner."""


@dataclass(frozen=True)
class Paper:
    """A paper of the list: its address, empty where it cannot be made, what it is for, why not."""

    name: str
    address: str
    what: str
    lacks: str


def house_papers(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of a house's papers."""
    router = guarded(sessions)
    pages = _Papers(door, held)
    router.get("/houses/{job}/papers")(pages.show)
    router.get("/houses/{job}/papers/{name}")(pages.one)
    return router


class _Papers:
    """What is answered of papers; what was made once for a plan is kept."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held, self.book = door, held, door.book
        self.kept = Kept(door.book, door.clock)
        self.makers: Mapping[str, Callable[[State], bytes]] = {
            "go.pdf": self._go, "chain.pdf": self._chain, "days.ics": self._ics,
            "seal-sheet.pdf": self._seal, "job.json": self._job, "plan.json": self._plan,
            "floor.geojson": self._floor, "floor.dxf": self._dxf, "floor-layers.svg": self._layers,
            "log.jsonl": self._log,
            **{name: partial(self._acid, name) for name in ACID},
            **{
                one.file: partial(self._office, one.file, screens="")
                for one in OFFICE_PAPERS
                if one.file != "go.pdf"
            },
        }  # fmt: skip

    async def show(self, job: str) -> Response:
        """The list."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job)

    async def one(self, job: str, name: str, request: Request) -> Response:
        """A paper, made now. Raises NotPlanned, Unanswerable where it cannot be made yet."""
        if name not in self.makers:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        if name in FIRM_ALONE and not may_see_costs():
            raise NotAllowed(said("price-firm-alone"))
        state = await asyncio.to_thread(self.kept.state, job)
        make = self.makers[name]
        if name in BY_FILE:
            base, _ = phone_base(request)
            make = partial(self._office, name, screens=f"{base}{house_path(job)}" if base else "")
        content = await asyncio.to_thread(make, state)
        ending = name.rpartition(".")[2]
        shown = "inline" if ending == "pdf" else "attachment"
        headers = {
            "cache-control": "private, no-cache",
            "content-disposition": f'{shown}; filename="{name}"',
        }
        return Response(content, media_type=_KINDS[ending], headers=headers)

    def _page(self, job: str) -> Response:
        state = self.kept.state(job)
        lacks = self._lacks(state)
        hidden = frozenset() if may_see_costs() else FIRM_ALONE
        groups = [
            (
                said(f"papers-{group}"),
                [_paper(job, one, lacks.get(one, "")) for one in names if one not in hidden],
            )
            for group, names in (
                *_BY_MOMENT,
                ("slab", SLAB),
                ("acid", ACID),
                ("days", DAYS),
                ("open", OPEN),
            )
            if names
        ]
        return page(
            "papers.html", state=state, house=state.name or state.id, house_id=job,
            here="way-papers", groups=groups,
        )  # fmt: skip

    def _lacks(self, state: State) -> dict[str, str]:
        """Why a paper cannot be made yet."""
        found = {}
        if state.shown is None:
            why = said("papers-no-plan")
            found = dict.fromkeys((*SLAB, *ACID, *BY_FILE, "plan.json"), why)
            del found["go.pdf"]  # it is asked before there is a plan
        elif (ground := self._paper_ground(state)) is not None:
            for file, all_ in lacking(ground).items():
                found[file] = " ".join((said("papers-lacks"), *map(str, all_)))
        if self._calendar(state.id) is None:
            found |= dict.fromkeys(("chain.pdf", "days.ics"), said("papers-no-days"))
        if not self.book.entries(state.id):
            found["log.jsonl"] = said("papers-no-log")
        return found

    def _calendar(self, job: str) -> tuple[Json, Json] | None:
        """The calendar that stands, and this house in it."""
        stands = self.book.document(CALENDAR, FIRM)
        document = stands.get("document") if stands is not None else None
        if stands is None or document is None:
            return None
        house = next((one for one in document["houses"] if one["id"] == job), None)
        return None if house is None else (stands, house)

    def _in_calendar(self, job: str) -> tuple[Json, Json]:
        found = self._calendar(job)
        if found is None:
            raise Unanswerable(said("papers-no-days"))
        return found

    # one maker for each paper that this page itself hands out

    def _go(self, state: State) -> bytes:
        from farwall.job.go import go_or_no_go
        from farwall.papers.go_page import go_pdf

        job = self._facts(state)
        wishes = replace(job.wishes, language=language_of_paper(job))
        hash_ = state.shown.plan.inputs_hash if state.shown is not None and state.fresh else ""
        job = replace(job, wishes=wishes)
        return go_pdf(
            go_or_no_go(job), job, units=wishes.units, paper=wishes.paper, inputs_hash=hash_
        )

    def _chain(self, state: State) -> bytes:
        from farwall.papers.chain.sheet import chain_pdf

        stands, house = self._in_calendar(state.id)
        units = self._facts(state).wishes.units
        with speaking("en"):  # not yet whole in Spanish: rather English than half of each
            return chain_pdf(stands["document"], house, units=units)

    def _ics(self, state: State) -> bytes:
        """The events of this house alone, as they stand in the firm's calendar file."""
        from farwall.papers.calendar_file import calendar_file

        stands, house = self._in_calendar(state.id)
        alone = {**stands["document"], "houses": [house]}
        stamp = datetime.fromisoformat(stands["made_at"])
        return calendar_file(alone, stamp=stamp, earlier=_only(stands["ics"], state.id)).encode()

    def _seal(self, state: State) -> bytes:
        went = state.shown.went if state.shown is not None else None
        key = ("seal", state.id, state.version, went.mark if went else "", LANGUAGE.get())
        return self.kept.made(key, lambda: self._sealed(state))

    def _sealed(self, state: State) -> bytes:
        from farwall.job.rinsed_seen import as_rinsed
        from farwall.job.seal_day import seal_day
        from farwall.papers.seal_sheet import seal_sheet_pdf

        job, shown = self._facts(state), state.shown
        if shown is not None and shown.went is not None:
            job = as_rinsed(job, shown.plan, shown.went.story)
        day = seal_day(job)
        wishes = job.wishes
        with speaking("en"):  # as above
            return seal_sheet_pdf(
                day.plan, day.sealing, units=wishes.units, paper=wishes.paper, notes=wishes.notes
            )

    def _acid(self, name: str, state: State) -> bytes:
        from farwall.job.acid_day.day import acid_day
        from farwall.job.acid_day.ground import Ground

        shown = _planned(state)
        wishes = replace(shown.job.wishes, language=language_of_paper(shown.job))
        kept = tuple(self.book.entries(state.id))
        ground = Ground(replace(shown.job, wishes=wishes), shown.plan, kept=kept)
        return ACID_PAPERS[name](ground, acid_day(ground))

    def _office(self, name: str, state: State, *, screens: str) -> bytes:
        """A paper of a bundle. screens: the address of the house, as a telephone reaches it."""
        ground = self._paper_ground(state, screens=screens)
        if ground is None:
            raise NotPlanned(said("papers-no-plan"), remedies=list(state.no))
        return BY_FILE[name].make(ground)

    def _paper_ground(self, state: State, *, screens: str = "") -> PaperGround | None:
        from farwall.papers.office.ground import PaperGround
        from farwall.web.pages.price.ground import office_ground_of

        ground = office_ground_of(self.book, state)
        if ground is None:
            return None
        found = self._calendar(state.id)
        calendar = None if found is None else found[0]["document"]
        return PaperGround(ground, language_of_paper(ground.job), calendar, screens)

    def _job(self, state: State) -> bytes:
        from farwall.readers.job_json import job_to_text

        return job_to_text(self._facts(state)).encode()

    def _plan(self, state: State) -> bytes:
        from farwall.papers.json_text import json_text

        _planned(state)
        document = self.book.document(PLAN, state.id)
        return (json_text(dict(document or {})) + "\n").encode()

    def _floor(self, state: State) -> bytes:
        from farwall.papers.exchange.files import geojson_bytes

        return geojson_bytes({**self._collection(state), "job": state.id})

    def _dxf(self, state: State) -> bytes:
        from farwall.papers.exchange.dxf import dxf_bytes

        return dxf_bytes(self._collection(state))

    def _layers(self, state: State) -> bytes:
        from farwall.papers.exchange.svg import svg_bytes

        return svg_bytes(self._collection(state))

    def _collection(self, state: State) -> Json:
        """The floor as the job tells it, with stop lines and bands of its newest plan."""
        from farwall.job.exchange import collection_of, exchanged_job

        shown = state.shown
        plan = shown.plan if shown is not None and shown.version == state.version else None
        job = self._facts(state)
        return collection_of(exchanged_job(job), name=state.name or state.id, plan=plan)

    def _log(self, state: State) -> bytes:
        lines = [
            json.dumps(kept_to_dict(one), ensure_ascii=False, allow_nan=False)
            for one in self.book.entries(state.id)
        ]
        return "".join(f"{line}\n" for line in lines).encode()

    def _facts(self, state: State) -> Any:
        from farwall.readers.job_json import job_from

        return job_from(self.book.facts(state.id, state.version), f"The job {state.id}")


def _paper(job: str, name: str, lacks: str) -> Paper:
    base = house_path(job) if name in _ELSEWHERE else f"{house_path(job)}/papers"
    key = name.replace(".", "-")
    return Paper(
        said(f"papers-name-{key}"), "" if lacks else f"{base}/{name}", said(f"papers-for-{key}"),
        lacks,
    )  # fmt: skip


def _planned(state: State) -> Shown:
    if state.shown is None:
        raise NotPlanned(said("papers-no-plan"), remedies=list(state.no))
    return state.shown


def _only(ics: str, job: str) -> str:
    """The events of one house in a calendar file, so that its ids and counts stay the same."""
    own = f"UID:{'-'.join(job.split())}."
    events = ics.split("BEGIN:VEVENT\r\n")[1:]
    kept = [one.partition("END:VEVENT")[0] for one in events if own in one.replace("\r\n ", "")]
    return "".join(f"BEGIN:VEVENT\r\n{one}END:VEVENT\r\n" for one in kept)
