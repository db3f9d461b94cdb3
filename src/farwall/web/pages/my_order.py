"""My order: the fields in an order of the user's own, weighed against the best one."""

from __future__ import annotations

import asyncio
from collections.abc import Callable, Mapping, Sequence
from typing import Any

from fastapi import APIRouter, Request, Response

from farwall.errors import FarwallError, mistakes_of
from farwall.facts.plan import Plan
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.papers.words import room_names
from farwall.units import ft_from_m
from farwall.web.door import Door
from farwall.web.firm import FIRM, LESSONS
from farwall.web.live import Live
from farwall.web.pages.facts import set_order
from farwall.web.pages.guard import form_of
from farwall.web.pages.moment_words import named
from farwall.web.pages.paper import house_path, page, seen_elsewhere
from farwall.web.pages.shown import Kept, Shown, State, planned
from farwall.web.people.roles import CHANGE
from farwall.web.people.who import who_asks
from farwall.web.words import said

ASKED = "order-asked"
"""Kind of document: an order that was asked about, and what came of it."""
Json = dict[str, Any]


@dataclass(frozen=True)
class Placed:
    """A field in its place: the ids of its rooms, their names, its number in the plan."""

    rooms: tuple[str, ...]
    names: str
    number: int


@dataclass(frozen=True)
class Weighed:
    """What came of an order, against the best: a sentence first, then a row for each figure."""

    verdict: str
    good: bool
    why: tuple[str, ...]
    rows: tuple[tuple[str, str, str], ...]


def order_of(facts: Json, job: str, order: Sequence[str], lessons: Json | None) -> Json:
    """Slow: what an order comes to, as plain values. Never raises for what the facts say."""
    from farwall.facts.plain import plain
    from farwall.job.explain import explain
    from farwall.readers.job_json import job_from
    from farwall.web.firm import lessons_in

    try:
        found = explain(job_from(facts, f"The job {job}"), order=order, lessons=lessons_in(lessons))
    except FarwallError as error:
        return {"no": mistakes_of(error)}
    return {"no": [], "best": plain(found.best), "asked": plain(found.asked)}


class _Orders:
    """What is answered of orders; one question of a house at a time."""

    def __init__(self, door: Door, held: Live, kept: Kept) -> None:
        self.door, self.held, self.kept = door, held, kept
        self.asking: dict[str, asyncio.Task[None]] = {}

    async def form(self, job: str) -> Response:
        """The fields in an order: the last one asked about, else the plan's own."""
        state = await asyncio.to_thread(self.kept.state, job)
        shown = planned(state)
        asked = await asyncio.to_thread(self.door.book.document, ASKED, job)
        waiting = job in self.asking
        if asked is not None and asked["version"] != shown.version:
            asked = None
        fields = placed(shown.plan, asked["order"] if asked is not None else ())
        return self._page(state, fields, asked=asked, waiting=waiting)

    async def ask(self, job: str, request: Request) -> Response:
        """A button of the form: one field up or down, weigh it, plan with it, or let go of it."""
        form = await form_of(request)
        state = await asyncio.to_thread(self.kept.state, job)
        shown = planned(state)
        fields = moved(placed(shown.plan, in_places(shown.plan, form)), str(form.get("do", "")))
        order = [fields_rooms for one in fields for fields_rooms in one.rooms]
        order = list(dict.fromkeys(order))
        if form.get("do") in {"plan", "free"}:
            await set_order(self.door, state, form, order if form.get("do") == "plan" else [])
            await self.held.plan_soon(job)
            return seen_elsewhere(house_path(job))
        if form.get("do") == "weigh":
            if job not in self.asking:
                task = asyncio.create_task(self._weigh(job, shown, order))
                self.asking[job] = task
                task.add_done_callback(lambda _: self.asking.pop(job, None))
            return seen_elsewhere(f"{house_path(job)}/order")
        return self._page(state, fields, asked=None, waiting=False)

    async def how_far(self, job: str) -> Json:
        """Whether the order that was asked about has been weighed."""
        return {"fresh": job not in self.asking, "no": []}

    async def _weigh(self, job: str, shown: Shown, order: list[str]) -> None:
        book = self.door.book

        def work() -> None:
            facts, lessons = book.facts(job, shown.version), book.document(LESSONS, FIRM)
            found = self.held.jobs.hands.submit(order_of, facts, job, order, lessons).result()
            book.put_document(ASKED, job, {"version": shown.version, "order": order, **found})

        await asyncio.to_thread(work)

    def _page(
        self, state: State, fields: Sequence[Placed], *, asked: Json | None, waiting: bool
    ) -> Response:
        shown = planned(state)
        told = weighed(asked, shown) if asked is not None and not waiting else None
        return page(
            "house_order.html", state=state, shown=shown, house=state.name or shown.name,
            path=house_path(state.id),
            may_change=(asks := who_asks()) is not None and asks.may(CHANGE),
            fields=fields, weighed=told, waiting=waiting, wished=bool(shown.job.wishes.order),
        )  # fmt: skip


def my_order(router: APIRouter, door: Door, held: Live, kept: Kept) -> None:
    """The routes of an order of one's own, put onto those of a house."""
    orders = _Orders(door, held, kept)
    router.get("/houses/{job}/order")(orders.form)
    router.post("/houses/{job}/order")(orders.ask)
    router.get("/houses/{job}/order/state")(orders.how_far)


def placed(plan: Plan, order: Sequence[str]) -> list[Placed]:
    """The fields of the first coat, by the first of their rooms in `order`; else as planned."""
    first = plan.fields[0].coat if plan.fields else ""
    fields = sorted((f for f in plan.fields if f.coat == first), key=lambda one: one.order)
    names = [named(room_names(plan, field.rooms)) for field in fields]
    found = []
    for n, (field, name) in enumerate(zip(fields, names, strict=True), 1):
        if names.count(name) > 1:
            name = said("order-part", rooms=name, n=n)  # noqa: PLW2901 - told apart
        found.append(Placed(field.rooms, name, n))
    place = {room: n for n, room in enumerate(order)}
    last = len(place)
    return sorted(found, key=lambda one: min(place.get(room, last) for room in one.rooms))


def in_places(plan: Plan, form: Mapping[str, Any]) -> list[str]:
    """The rooms in the order of the numbers that the form has beside each field."""

    def number(one: Placed) -> float:
        try:
            return float(str(form.get(f"place-{one.number}", one.number)))
        except ValueError:
            return float(one.number)

    ordered = sorted(placed(plan, ()), key=number)
    return list(dict.fromkeys(room for one in ordered for room in one.rooms))


def moved(fields: list[Placed], do: str) -> list[Placed]:
    """The fields with one of them a place up or down, as a button says (`up-3`)."""
    way, _, number = do.partition("-")
    at = next((k for k, one in enumerate(fields) if str(one.number) == number), None)
    if at is None or way not in {"up", "down"}:
        return fields
    to = at - 1 if way == "up" else at + 1
    if 0 <= to < len(fields):
        fields[at], fields[to] = fields[to], fields[at]
    return fields


def weighed(asked: Json, shown: Shown) -> Weighed:
    """What an order came to, in words."""
    if asked["no"]:
        return Weighed(said("order-no"), good=False, why=tuple(asked["no"]), rows=())
    mine, best = asked["asked"], asked["best"]
    if mine["shut_in"]:
        return Weighed(said("order-shut-in"), good=False, why=tuple(mine["shut_in"]), rows=())
    if mine["faults"]:
        return Weighed(said("order-faults"), good=False, why=tuple(mine["faults"]), rows=())
    rows = tuple(
        (said(f"order-{key}"), tell(mine, shown), tell(best, shown)) for key, tell in _ROWS.items()
    )
    less = best["least_margin_min"] - mine["least_margin_min"]
    key = "order-costs" if less > 0.05 else "order-gains" if less < -0.05 else "order-even"
    return Weighed(said(key, by=f"{abs(less):.1f}"), good=True, why=(), rows=rows)


def _walked(metres: float, units: Units) -> str:
    return f"{ft_from_m(metres):,.0f} ft" if units == "us" else f"{metres:,.0f} m"


_ROWS: dict[str, Callable[[Json, Shown], str]] = {
    "spare": lambda one, _: said("order-min", minutes=f"{one['least_margin_min']:.1f}"),
    "minutes": lambda one, _: said("order-min", minutes=f"{one['minutes']:.0f}"),
    "walked": lambda one, shown: _walked(one["walked_m"], shown.units),
    "refills": lambda one, _: str(one["refills_in_the_open"]),
    "stops": lambda one, _: str(len(one["stop_lines"])),
}
