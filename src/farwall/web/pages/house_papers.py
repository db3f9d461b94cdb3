"""All papers of a house: a plain list, what each is for, made when it is asked for."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Sequence
from functools import partial
from typing import TYPE_CHECKING, Any

from fastapi import APIRouter, Request, Response

from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.papers.acid_files import PAPERS as ACID_PAPERS
from farwall.papers.office.bundles import BY_FILE, MOMENTS, lacking
from farwall.papers.office.bundles import PAPERS as OFFICE_PAPERS
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import house_path, page
from farwall.web.pages.papers_made import Made
from farwall.web.pages.phone_ways import phone_base
from farwall.web.pages.shown import Kept, State
from farwall.web.people.roles import NotAllowed
from farwall.web.people.who import may_see_costs
from farwall.web.session import Sessions
from farwall.web.words import said

if TYPE_CHECKING:
    pass

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
_PAIR = "before-after.pdf"
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
    lacks: Sequence[str]


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
        self.made = Made(door)

    async def show(self, job: str) -> Response:
        """The list."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job)

    async def one(
        self, job: str, name: str, request: Request, before: str = "", after: str = ""
    ) -> Response:
        """A paper, made now. before, after: ids of two photos of the log, for the paper of that
        name. Raises NotPlanned, Unanswerable where it cannot be made yet, Refused."""
        if name not in self.made.makers:
            return page("trouble.html", code=404, what="no-page", mistakes=[])
        if name in FIRM_ALONE and not may_see_costs():
            raise NotAllowed(said("price-firm-alone"))
        state = await asyncio.to_thread(self.kept.state, job)
        make = self.made.makers[name]
        if name in self.made.squared:
            base, _ = phone_base(request)
            make = partial(
                self.made.squared[name], screens=f"{base}{house_path(job)}" if base else ""
            )
            if name == _PAIR and (before or after):
                make = partial(make, chosen=(before, after))
        content = await asyncio.to_thread(_plainly, name, make, state)
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
                [_paper(job, one, lacks.get(one, ())) for one in names if one not in hidden],
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

    def _lacks(self, state: State) -> dict[str, tuple[str, ...]]:
        """Why a paper cannot be made yet."""
        found: dict[str, tuple[str, ...]] = {}
        if state.shown is None:
            why = (said("papers-refused" if state.no else "papers-no-plan"),)
            found = dict.fromkeys((*SLAB, *ACID, *BY_FILE, "plan.json"), why)
            del found["go.pdf"]  # it is asked before there is a plan
        elif (ground := self.made.paper_ground(state)) is not None:
            for file, all_ in lacking(ground).items():
                found[file] = (said("papers-lacks"), *map(str, map(_on_a_page, all_)))
        if self.made.calendar(state.id) is None:
            found |= dict.fromkeys(("chain.pdf", "days.ics"), (said("papers-no-days"),))
        if not self.book.entries(state.id):
            found["log.jsonl"] = (said("papers-no-log"),)
        return found


def _plainly(name: str, make: Callable[[State], bytes], state: State) -> bytes:
    """The paper; where it lacks something, Refused in words alone."""
    try:
        return make(state)
    except Refused as error:
        if name not in BY_FILE or BY_FILE[name].lacks is None:
            raise
        raise Refused(*map(_on_a_page, error.mistakes), about=error.about) from error


def _on_a_page(one: Mistake) -> Mistake:
    """What a paper lacks without the key of the file: its sentences say whose it is."""
    return Mistake("", one.what[:1].upper() + one.what[1:], one.remedy)


def _paper(job: str, name: str, lacks: Sequence[str]) -> Paper:
    base = house_path(job) if name in _ELSEWHERE else f"{house_path(job)}/papers"
    key = name.replace(".", "-")
    return Paper(
        said(f"papers-name-{key}"), "" if lacks else f"{base}/{name}", said(f"papers-for-{key}"),
        lacks,
    )  # fmt: skip
