"""Switches and own figures of the list of quantities, as a form that works without script."""

from __future__ import annotations

import asyncio
import copy
from collections.abc import Mapping, Sequence
from typing import Any, get_args

from fastapi import APIRouter, Request, Response

from farwall import units as scales
from farwall.errors import Refused
from farwall.facts.kept_gear import LIVES
from farwall.facts.quantities import Quantities, Quantity
from farwall.facts.supplies import KeptGearWay, Supplies
from farwall.facts.van import Unit
from farwall.job.office import OfficeGround
from farwall.job.office.masking import masked_of
from farwall.job.office.quantities import quantities_of
from farwall.job.office.quantities.basis import amount_said
from farwall.job.office.quantities.said import HEADS
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, speaking
from farwall.web.door import Door
from farwall.web.live import Live
from farwall.web.pages.forms.flat import both_told, flat_merged
from farwall.web.pages.forms.keep import changed_by_other, keep_facts
from farwall.web.pages.forms.measures import COUNT, Measure, NoNumber, Scale, measure_of
from farwall.web.pages.forms.told import Slip, Wrong
from farwall.web.pages.guard import form_of
from farwall.web.pages.guarded import guarded
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.price.ground import office_ground_of
from farwall.web.pages.price.quantities import what_shown
from farwall.web.pages.shown import Kept, State
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.session import Sessions
from farwall.web.words import said

Json = dict[str, Any]
_MEASURES: dict[Unit, Measure] = {
    "l": measure_of("_l"), "m": measure_of("_m"), "count": COUNT,
    "kg": Measure(Scale("unit-lb", scales.KG_PER_LB), Scale("unit-kg")),
}  # fmt: skip
_WHOLE = ("person_days", "sprayers", "spare_percent")
"""Blanks for the list as a whole, by their keys."""
_LONGEST = 40
_MOST_BYTES, _MOST_FIELDS = 200_000, 2_000


def supplies(door: Door, held: Live, sessions: Sessions) -> APIRouter:
    """The routes of the form."""
    router = guarded(sessions)
    pages = _Supplies(door, held)
    router.get("/houses/{job}/supplies")(pages.show)
    router.post("/houses/{job}/supplies")(pages.tell)
    return router


class _Supplies:
    """The form of a house, of its newest plan and facts."""

    def __init__(self, door: Door, held: Live) -> None:
        self.door, self.held = door, held
        self.kept = Kept(door.book, door.clock)

    async def show(self, job: str, kept: str = "") -> Response:
        """The form; `kept` says what became of what was typed."""
        await self.held.plan_soon(job)
        return await asyncio.to_thread(self._page, job, kept=kept)

    async def tell(self, job: str, request: Request) -> Response:
        """Keep what was typed; refused, the form comes back as it was."""
        typed = dict(await form_of(request, _MOST_BYTES, fields=_MOST_FIELDS))
        state = await asyncio.to_thread(self.kept.state, job)
        try:
            new = await self._keep(state, typed)
        except Wrong as error:
            now, slips = await asyncio.to_thread(self._over_newest, job, typed, error.slips)
            return await asyncio.to_thread(self._page, job, typed=now, slips=slips, code=422)
        await self.held.plan_soon(job)
        return seen_elsewhere(f"{house_path(job)}/supplies?kept={'yes' if new else 'same'}")

    async def _keep(self, state: State, typed: Mapping[str, Any]) -> bool:
        from farwall.readers.job_json import job_from

        if str(typed.get("version", "")) != str(state.version):
            raise changed_by_other()
        found = await asyncio.to_thread(self._found, state)
        if found is None:
            raise Wrong([Slip("", "", said("price-supplies-no-plan"))])
        ground, lines = found
        facts = await asyncio.to_thread(self.door.book.facts, state.id, state.version)
        changed = changed_supplies(facts, lines, typed, ground.job.wishes.units)
        if changed is None:
            return False
        try:
            job_from(changed, "The job")
        except Refused as error:
            raise Wrong([Slip("", "", str(one)) for one in error.mistakes]) from None
        await keep_facts(self.door, state, changed)
        return True

    def _over_newest(
        self, job: str, typed: dict[str, Any], slips: tuple[Slip, ...]
    ) -> tuple[dict[str, Any], tuple[Slip, ...]]:
        """What was typed, with the slips; typed into older facts, as typing into the newest."""
        from farwall.readers.job_json import job_from

        state, book = self.kept.state(job), self.door.book
        found, word = self._found(state), str(typed.get("version", ""))
        versions = [str(one.version) for one in book.versions(job)]
        if found is None or word == versions[-1] or word not in versions:
            return typed, slips
        lines = found[1].lines
        was, now = (
            (one.wishes.units, blanks_of(one.supplies, lines, one.wishes.units))
            for one in (job_from(book.facts(job, int(each)), "The job")
                        for each in (word, versions[-1]))
        )  # fmt: skip
        told = by_line(typed, lines, was[0], now[0])
        both = flat_merged(was[1], now[1], told)
        return as_typed(both.told, lines), (
            Slip("", "", said("facts-other-merged")),
            *(Slip(key, _called(key, lines), both_told(text)) for key, text in both.both.items()),
        )

    def _found(self, state: State) -> tuple[OfficeGround, Quantities] | None:
        ground = office_ground_of(self.door.book, state)
        return None if ground is None else (ground, quantities_of(ground, masked_of(ground)))

    def _page(
        self,
        job: str,
        *,
        kept: str = "",
        typed: Mapping[str, Any] | None = None,
        slips: Sequence[Slip] = (),
        code: int = 200,
    ) -> Response:
        state = self.kept.state(job)
        found = self._found(state)
        form = None
        if found is not None:
            ground, lines = found
            with speaking(LANGUAGE.get(), names_in(ground.plan)):
                form = form_shown(ground, lines, typed, {one.name for one in slips})
        word = {"yes": said("price-supplies-kept", n=state.version), "same": said("form-same")}
        asks = who_asks()
        return page(
            "supplies.html",
            code=code, form=form, house=state.name or job, house_id=job, here="way-price",
            version=state.version, kept=word.get(kept, ""), slips=[str(one) for one in slips],
            may_change=asks is not None and asks.may(CHANGE), no=state.no,
            waiting=form is None and not state.no,
        )  # fmt: skip


def changed_supplies(
    facts: Mapping[str, Any], lines: Quantities, typed: Mapping[str, Any], units: str
) -> Json | None:
    """The facts with what was typed; None where they say that already. Raises Wrong.

    Switches and figures of lines that the list does not have now stay as they are.
    """
    held = dict(facts.get("supplies") or {})
    known = {one.id for one in lines.lines}
    off = [one for one in held.get("left_out", ()) if one not in known]
    amounts = {id_: much for id_, much in held.get("amounts", {}).items() if id_ not in known}
    slips: list[Slip] = []
    for n, one in enumerate(lines.lines):
        if str(typed.get(f"id.{n}", "")) != one.id:
            raise changed_by_other()
        if typed.get(f"on.{n}") != "yes":
            off.append(one.id)
        own = _own(one, str(typed.get(f"own.{n}", "")).strip(), held, units)
        if isinstance(own, Slip):
            slips.append(Slip(f"own.{n}", own.where, own.what))
        elif own is not None:
            amounts[one.id] = own
    new = {
        **held, "left_out": off, "amounts": amounts, **_wholes(typed, slips),
        "kept_gear": _way(typed), "lasts": _lasts(held, lines, typed, slips),
    }  # fmt: skip
    if slips:
        raise Wrong(slips)
    new = {key: value for key, value in new.items() if value not in ([], {}, None)}
    if new == {key: value for key, value in held.items() if value not in ([], {}, None)}:
        return None
    changed = copy.deepcopy(dict(facts))
    changed["supplies"] = new
    if not new:
        del changed["supplies"]
    return changed


def _way(typed: Mapping[str, Any]) -> str | None:
    way = str(typed.get("kept_gear", ""))
    return way if way in get_args(KeptGearWay) else None


def _lasts(
    held: Json, lines: Quantities, typed: Mapping[str, Any], slips: list[Slip]
) -> dict[str, float]:
    """Jobs that kept lines last, as typed; those of lines that the form does not ask stay."""
    found = dict(held.get("lasts", {}))
    for n, one in enumerate(lines.lines):
        if one.id not in LIVES:
            continue
        found.pop(one.id, None)
        text = str(typed.get(f"lasts.{n}", "")).strip()[:_LONGEST]
        try:
            jobs = COUNT.si(text, "us") if text else None
        except NoNumber:
            jobs = 0.0
        if jobs is not None and jobs < 1:
            slips.append(Slip(f"lasts.{n}", what_shown(one), said("no-number", text=text)))
        elif jobs is not None:
            found[one.id] = jobs
    return found


def blanks_of(told: Supplies, lines: Sequence[Quantity], units: str) -> dict[str, str]:
    """The blanks of the form as these facts fill them, by name; those of lines by their number."""
    found = {key: _count_text(getattr(told, key)) for key in _WHOLE}
    found["kept_gear"] = told.kept_gear or ""
    for n, one in enumerate(lines):
        own = told.amounts.get(one.id)
        found[f"own.{n}"] = "" if own is None else _own_text(one, own, units)
        found[f"on.{n}"] = "" if one.id in told.left_out else "yes"
        if one.id in LIVES:
            found[f"lasts.{n}"] = _count_text(told.lasts.get(one.id))
    return found


def by_line(
    typed: Mapping[str, Any], lines: Sequence[Quantity], was: str, now: str
) -> dict[str, str]:
    """What was typed, by the numbers that the lines have now and in today's units.

    A line is found by its id; blanks of a line that the older form did not have are left out.
    """
    then = {str(typed[key]): key[3:] for key in typed if key.startswith("id.")}
    found = {key: str(typed[key]).strip() for key in (*_WHOLE, "kept_gear") if key in typed}
    for n, one in enumerate(lines):
        if (number := then.get(one.id)) is None:
            continue
        found[f"on.{n}"] = str(typed.get(f"on.{number}", ""))
        found[f"own.{n}"] = _in_units(one, str(typed.get(f"own.{number}", "")).strip(), was, now)
        found[f"lasts.{n}"] = str(typed.get(f"lasts.{number}", "")).strip()
    return found


def as_typed(told: Mapping[str, str], lines: Sequence[Quantity]) -> dict[str, Any]:
    """Blanks as a browser sends them: with the ids of the lines, and no box that is not ticked."""
    ids = {f"id.{n}": one.id for n, one in enumerate(lines)}
    return ids | {key: text for key, text in told.items() if text or not key.startswith("on.")}


def _in_units(one: Quantity, text: str, was: str, now: str) -> str:
    if was == now or not text:
        return text
    try:
        return _own_text(one, _MEASURES[one.unit].si(text[:_LONGEST], was), now)  # type: ignore[arg-type]
    except NoNumber:
        return text


def _called(key: str, lines: Sequence[Quantity]) -> str:
    """What a blank is called."""
    name, _, number = key.partition(".")
    if number:
        return what_shown(lines[int(number)])
    if name == "kept_gear":
        return said("price-supplies-gear")
    return said(f"price-supplies-{name.replace('_', '-')}")


def _count_text(value: float | None) -> str:
    return "" if value is None else f"{value:g}"


def _own(one: Quantity, text: str, held: Json, units: str) -> float | Slip | None:
    """The user's own figure in SI; the one that is held where its blank stands as it stood."""
    if not text:
        return None
    before = held.get("amounts", {}).get(one.id)
    if before is not None and text == _own_text(one, float(before), units):
        return float(before)
    try:
        found = _MEASURES[one.unit].si(text[:_LONGEST], units)  # type: ignore[arg-type]
    except NoNumber:
        return Slip("", what_shown(one), said("no-number", text=text[:_LONGEST]))
    if found < 0:
        return Slip("", what_shown(one), said("no-number", text=text[:_LONGEST]))
    return found


def _own_text(one: Quantity, value: float, units: str) -> str:
    return _MEASURES[one.unit].text(value, units)  # type: ignore[arg-type]


def _wholes(typed: Mapping[str, Any], slips: list[Slip]) -> Json:
    """Person-days, sprayers and spare for all; None for a blank that stays empty."""
    found: Json = {}
    for key in _WHOLE:
        text = str(typed.get(key, "")).strip()
        name = said(f"price-supplies-{key.replace('_', '-')}")
        try:
            value = COUNT.si(text[:_LONGEST], "us") if text else None
        except NoNumber:
            slips.append(Slip(key, name, said("no-number", text=text[:_LONGEST])))
            continue
        if value is not None and key == "sprayers" and not value.is_integer():
            slips.append(Slip(key, name, said("no-whole", text=text[:_LONGEST])))
            continue
        found[key] = int(value) if value is not None and value.is_integer() else value
    return found


def form_shown(
    ground: OfficeGround,
    found: Quantities,
    typed: Mapping[str, Any] | None,
    wrong: set[str],
) -> Json:
    """What the template of the form is given: lines by moment, and the blanks for all of them."""
    told, units = ground.job.supplies, found.units
    rows: dict[str, list[Json]] = {moment: [] for moment in HEADS}
    for n, one in enumerate(found.lines):
        own = told.amounts.get(one.id)
        text = "" if own is None else _own_text(one, own, units)
        on = one.on
        if typed is not None:
            text, on = str(typed.get(f"own.{n}", "")), typed.get(f"on.{n}") == "yes"
        unit = _MEASURES[one.unit].scale(units).unit  # type: ignore[arg-type]
        ruled = one.ready if one.ruled is None else one.ruled
        rows[one.moment].append({
            "n": n, "id": one.id, "name": what_shown(one), "on": on, "own": text,
            "unit": said(unit) if unit else "", "ruled": amount_said(ruled, one.unit, units),
            "wrong": f"own.{n}" in wrong,
        })  # fmt: skip
    return {
        "parts": [{"moment": moment, "lines": own} for moment, own in rows.items() if own],
        "whole": [_whole_shown(key, told, typed, wrong) for key in _WHOLE],
        "lasts": [
            _lasts_shown(n, one, told, typed, wrong)
            for n, one in enumerate(found.lines)
            if one.id in LIVES
        ],
        "gear": (told.kept_gear or "") if typed is None else str(typed.get("kept_gear", "")),
        "ways": [(way, said(f"price-supplies-gear-{way}")) for way in get_args(KeptGearWay)],
    }


def _lasts_shown(
    n: int, one: Quantity, told: Supplies, typed: Mapping[str, Any] | None, wrong: set[str]
) -> Json:
    """The blank for how many jobs a kept line lasts."""
    life, own = LIVES[one.id], told.lasts.get(one.id)
    value = "" if own is None else f"{own:g}"
    if typed is not None:
        value = str(typed.get(f"lasts.{n}", ""))
    rule = said("price-supplies-lasts-rule", low=f"{life.low:g}", high=f"{life.high:g}")
    return {
        "n": n, "name": what_shown(one), "value": value, "rule": rule,
        "wrong": f"lasts.{n}" in wrong,
    }  # fmt: skip


def _whole_shown(
    key: str, told: Supplies, typed: Mapping[str, Any] | None, wrong: set[str]
) -> Json:
    value = getattr(told, key)
    text = "" if value is None else f"{value:g}"
    if typed is not None:
        text = str(typed.get(key, ""))
    return {
        "key": key, "word": said(f"price-supplies-{key.replace('_', '-')}"), "value": text,
        "wrong": key in wrong,
    }  # fmt: skip
