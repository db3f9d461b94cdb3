"""What the papers of a house are made by: one maker for each file that its page hands out."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import datetime
from functools import partial
from typing import TYPE_CHECKING, Any

from farwall.errors import Refused, Unanswerable
from farwall.papers.acid_files import PAPERS as ACID_PAPERS
from farwall.papers.office.bundles import BY_FILE
from farwall.papers.office.bundles import PAPERS as OFFICE_PAPERS
from farwall.readers.kept_json import kept_to_dict
from farwall.web.door import Door
from farwall.web.firm import FIRM, print_values
from farwall.web.live_jobs import PLAN, NotPlanned
from farwall.web.pages.lines import CALENDAR
from farwall.web.pages.papers import language_of_paper
from farwall.web.pages.shown import Kept, Shown, State
from farwall.web.words import LANGUAGE, said

if TYPE_CHECKING:
    from farwall.facts.photo_shown import PhotoShown
    from farwall.papers.office.ground import PaperGround

Json = dict[str, Any]
_MOST_PHOTOS = 24
"""Kept small in memory, some 200 kB each."""


class Made:
    """A maker by file name; what takes seconds is kept for its plan."""

    def __init__(self, door: Door) -> None:
        self.book = door.book
        self.kept = Kept(door.book, door.clock)
        self.photos: dict[str, PhotoShown] = {}
        self.makers: Mapping[str, Callable[[State], bytes]] = {
            "go.pdf": self._go, "chain.pdf": self.chain, "days.ics": self._ics,
            "seal-sheet.pdf": self.seal, "job.json": self._job, "plan.json": self._plan,
            "floor.geojson": self._floor, "floor.dxf": self._dxf, "floor-layers.svg": self._layers,
            "log.jsonl": self._log,
            **{name: partial(self.acid, name, screens="") for name in ACID_PAPERS},
            **{
                one.file: partial(self.office, one.file, screens="")
                for one in OFFICE_PAPERS
                if one.file != "go.pdf"
            },
        }  # fmt: skip
        self.squared: Mapping[str, Callable[..., bytes]] = {
            "chain.pdf": self.chain, "seal-sheet.pdf": self.seal,
            **{name: partial(self.office, name) for name in BY_FILE},
            **{name: partial(self.acid, name) for name in ACID_PAPERS},
        }  # fmt: skip
        """Those that lead to their screen once they are told the address of the house."""

    def calendar(self, job: str) -> tuple[Json, Json] | None:
        """The calendar that stands, and this house in it."""
        stands = self.book.document(CALENDAR, FIRM)
        document = stands.get("document") if stands is not None else None
        if stands is None or document is None:
            return None
        house = next((one for one in document["houses"] if one["id"] == job), None)
        return None if house is None else (stands, house)

    def _in_calendar(self, job: str) -> tuple[Json, Json]:
        found = self.calendar(job)
        if found is None:
            raise Unanswerable(said("papers-no-days"))
        return found

    # one maker for each paper that this page itself hands out

    def _go(self, state: State) -> bytes:
        from farwall.job.colour.told import survey_told
        from farwall.job.go import go_or_no_go
        from farwall.papers.go_page import go_pdf

        job = survey_told(self._facts(state), self.book.entries(state.id))
        wishes = replace(job.wishes, language=language_of_paper(job))
        hash_ = state.shown.plan.inputs_hash if state.shown is not None and state.fresh else ""
        job = replace(job, wishes=wishes)
        return go_pdf(
            go_or_no_go(job), job, units=wishes.units, paper=wishes.paper, inputs_hash=hash_
        )

    def chain(self, state: State, *, screens: str = "") -> bytes:
        """The days of this house for other trades. screens: as `office`."""
        from farwall.papers.chain.sheet import chain_pdf

        stands, house = self._in_calendar(state.id)
        job = self._facts(state)
        return chain_pdf(
            stands["document"], house, job, language=language_of_paper(job), screens=screens
        )

    def _ics(self, state: State) -> bytes:
        """The events of this house alone, as they stand in the firm's calendar file."""
        from farwall.papers.calendar_file import calendar_file

        stands, house = self._in_calendar(state.id)
        alone = {**stands["document"], "houses": [house]}
        stamp = datetime.fromisoformat(stands["made_at"])
        return calendar_file(alone, stamp=stamp, earlier=_only(stands["ics"], state.id)).encode()

    def seal(self, state: State, *, screens: str = "") -> bytes:
        """The seal sheet. screens: as `office`."""
        went = state.shown.went if state.shown is not None else None
        mark = went.mark if went else ""
        key = ("seal", state.id, state.version, mark, LANGUAGE.get(), screens)
        return self.kept.made(key, lambda: self._sealed(state, screens))

    def _sealed(self, state: State, screens: str) -> bytes:
        from farwall.job.rinsed_seen import as_rinsed
        from farwall.job.seal_day import seal_day
        from farwall.papers.seal_sheet import seal_sheet_pdf
        from farwall.readers.clock_change import with_clock_change

        job, shown = self._facts(state), state.shown
        if shown is not None and shown.went is not None:
            job = as_rinsed(job, shown.plan, shown.went.story)
        day, wishes = seal_day(job), replace(job.wishes, language=language_of_paper(job))
        plan = with_clock_change(day.plan, job)
        return seal_sheet_pdf(plan, day.sealing, wishes, revision=job.revision, screens=screens)

    def acid(self, name: str, state: State, *, screens: str) -> bytes:
        """A paper of acid. screens: as for `office`."""
        from farwall.job.acid_day.day import acid_day
        from farwall.job.acid_day.ground import Ground

        shown = _planned(state)
        wishes = replace(shown.job.wishes, language=language_of_paper(shown.job))
        kept = tuple(self.book.entries(state.id))
        ground = Ground(replace(shown.job, wishes=wishes), shown.plan, kept=kept)
        return ACID_PAPERS[name](ground, acid_day(ground), screens)

    def office(
        self, name: str, state: State, *, screens: str, chosen: tuple[str, str] | None = None
    ) -> bytes:
        """A paper of a bundle. screens: the address of the house, as a telephone reaches it ·
        chosen: ids of two photos of the log, before and after."""
        ground = self.paper_ground(state, screens=screens)
        if ground is None:
            raise _no_plan(state)
        return BY_FILE[name].make(replace(ground, chosen=chosen))

    def paper_ground(self, state: State, *, screens: str = "") -> PaperGround | None:
        """What papers are written from; None where no plan stands."""
        from farwall.papers.office.ground import PaperGround
        from farwall.web.pages.price.ground import office_ground_of

        ground = office_ground_of(self.book, state)
        if ground is None:
            return None
        found = self.calendar(state.id)
        calendar = None if found is None else found[0]["document"]
        language = language_of_paper(ground.job)
        return PaperGround(ground, language, calendar, screens, photo=self._photo)

    def _photo(self, sha: str) -> PhotoShown | None:
        """A photo of the book made fit for a paper, by the firm's own print where it has measured
        it; None where it cannot be read."""
        values = print_values(self.book)
        key = f"{sha} {sorted(values.items())}"
        if key not in self.photos:
            from farwall.readers.apart.colours import photo_shown_apart

            try:
                self.photos[key] = photo_shown_apart(self.book.file(sha), own_values=values)
            except Refused:
                return None
            while len(self.photos) > _MOST_PHOTOS:
                self.photos.pop(next(iter(self.photos)))
        return self.photos.get(key)

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


def _planned(state: State) -> Shown:
    if state.shown is None:
        raise _no_plan(state)
    return state.shown


def _no_plan(state: State) -> NotPlanned:
    word = "papers-refused" if state.no else "papers-no-plan"
    return NotPlanned(said(word), remedies=state.why_not)


def _only(ics: str, job: str) -> str:
    """The events of one house in a calendar file, so that its ids and counts stay the same."""
    own = f"UID:{'-'.join(job.split())}."
    events = ics.split("BEGIN:VEVENT\r\n")[1:]
    kept = [one.partition("END:VEVENT")[0] for one in events if own in one.replace("\r\n ", "")]
    return "".join(f"BEGIN:VEVENT\r\n{one}END:VEVENT\r\n" for one in kept)
