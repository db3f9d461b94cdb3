"""Who may do what: one table of roles, and one of what each route asks for.

A route that stands in no table asks for `look` where it only reads, else for `change`, so that a
new screen is never open by being forgotten; a test asks that every route stands here.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from fastapi import Request

from farwall.errors import FarwallError
from farwall.store.people_nouns import LEAD

LOOK, TAP, CHANGE, CLOSE, PEOPLE, BACK_UP = "look", "tap", "change", "close", "people", "back-up"
"""To look; to log on the slab; to change facts and floor; to take closing and lessons; to invite
and manage people; to make backups and exports of the whole book."""
OPEN, SELF = "open", "self"
"""Asked of nobody; asked of whoever is in, of any role."""

MAY: Mapping[str, frozenset[str]] = MappingProxyType({
    LEAD: frozenset({SELF, LOOK, TAP, CHANGE, CLOSE, PEOPLE, BACK_UP}),
    "office": frozenset({SELF, LOOK, TAP, CHANGE, CLOSE}),
    "helper": frozenset({SELF, LOOK, TAP}),
    "owner": frozenset({SELF, LOOK}),
})  # fmt: skip

NEEDS: Mapping[str, str] = MappingProxyType({
    "GET /enter": OPEN, "POST /enter": OPEN, "GET /static/{name}": OPEN,
    "GET /join/{token}": OPEN, "POST /join/{token}": OPEN,
    "GET /healthz": OPEN, "GET /readyz": OPEN, "GET /api/openapi.json": OPEN,
    "GET /api/clock": OPEN, "GET /slab/files/{name}": OPEN, "GET /slab/{job}": OPEN,
    "POST /leave": SELF, "GET /me": SELF, "GET /me/phone": SELF,
    "POST /me/password": SELF, "POST /me/leave-all": SELF,
    "GET /people": PEOPLE, "POST /people/first": PEOPLE, "POST /people/invite": PEOPLE,
    "POST /people/{person}/role": PEOPLE, "POST /people/{person}/link": PEOPLE,
    "POST /people/{person}/end": PEOPLE, "GET /people/done": PEOPLE,
    "GET /": LOOK, "GET /houses/{job}": LOOK, "GET /houses/{job}/state": LOOK,
    "GET /houses/{job}/tape.svg": LOOK, "GET /houses/{job}/order": LOOK,
    "GET /houses/{job}/order/state": LOOK, "POST /houses/{job}/order": CHANGE,
    "POST /houses/{job}/try": CHANGE, "POST /houses/{job}/back": CHANGE,
    "GET /houses/{job}/moment.svg": LOOK, "GET /houses/{job}/{name}": LOOK,
    "POST /houses/sample": CHANGE, "POST /houses/bring": CHANGE,
    "POST /houses/{job}/facts": CHANGE, "POST /houses/{job}/aside": CHANGE,
    "GET /brought/{key}": LOOK, "GET /brought/{key}/picture.svg": LOOK,
    "POST /brought/{key}": CHANGE,
    "GET /settings": LOOK, "POST /settings": SELF, "POST /settings/firm": CHANGE,
    "GET /rooms": LOOK, "POST /rooms": CHANGE,
    "GET /enquiry": LOOK, "POST /enquiry": LOOK, "POST /enquiry/house": CHANGE,
    "GET /walk": LOOK, "GET /walk/sheet.pdf": LOOK, "POST /walk": CHANGE,
    "POST /houses/{job}/survey/window": CHANGE,
    "GET /houses/{job}/survey": LOOK, "POST /houses/{job}/survey": CHANGE,
    "GET /houses/{job}/samples": LOOK, "POST /houses/{job}/samples": CHANGE,
    "GET /houses/{job}/sheets": LOOK, "POST /houses/{job}/sheets": CHANGE,
    "GET /houses/{job}/crew": LOOK, "POST /houses/{job}/crew": CHANGE,
    "GET /houses/{job}/washing": LOOK, "POST /houses/{job}/washing": CHANGE,
    "GET /houses/{job}/workers": LOOK, "POST /houses/{job}/workers": CHANGE,
    "GET /houses/{job}/waste": LOOK, "POST /houses/{job}/waste": CHANGE,
    "GET /houses/{job}/terms": LOOK, "POST /houses/{job}/terms": CHANGE,
    "GET /houses/{job}/change": LOOK, "POST /houses/{job}/change": TAP,
    "GET /houses/{job}/first": LOOK, "POST /houses/{job}/first": CHANGE,
    "GET /days": LOOK, "GET /days/state": LOOK, "GET /days/farwall.ics": LOOK,
    "GET /days/days.json": LOOK, "POST /days/weather": CHANGE, "POST /days/ask": CHANGE,
    "POST /days/if": CHANGE, "POST /days/keep": CHANGE, "POST /days/drop": CHANGE,
    "GET /houses/{job}/log": LOOK, "POST /houses/{job}/log": TAP,
    "GET /houses/{job}/photo/{sha}": LOOK,
    "GET /houses/{job}/acid": LOOK, "GET /houses/{job}/acid/{part}": LOOK,
    "GET /houses/{job}/colour": LOOK, "POST /houses/{job}/colour": TAP,
    "GET /houses/{job}/colour/ladder": LOOK, "POST /houses/{job}/colour/ladder": TAP,
    "GET /houses/{job}/colour/sample-day": LOOK, "POST /houses/{job}/colour/sample-day": TAP,
    "GET /houses/{job}/colour/marks": LOOK, "POST /houses/{job}/colour/marks": TAP,
    "GET /houses/{job}/colour/marks/{photo}": LOOK, "POST /houses/{job}/colour/marks/{photo}": TAP,
    "GET /houses/{job}/colour/marks/{photo}/picture": LOOK,
    "GET /houses/{job}/colour/pairs": LOOK, "POST /houses/{job}/colour/pairs": CHANGE,
    "GET /api/jobs/{job}/colour": LOOK, "GET /api/jobs/{job}/sample-day": LOOK,
    "GET /houses/{job}/masking/plan.svg": LOOK,
    "GET /houses/{job}/masking/place/{number}": CHANGE,
    "POST /houses/{job}/masking/place/{number}": CHANGE,
    "GET /houses/{job}/masking": LOOK, "POST /houses/{job}/masking": CHANGE,
    "GET /houses/{job}/offers": LOOK, "POST /houses/{job}/offers": CHANGE,
    "GET /houses/{job}/price": LOOK, "GET /houses/{job}/price/{part}": LOOK,
    "POST /houses/{job}/price/buying/list": CHANGE,
    "GET /price-list.xlsx": LOOK, "GET /price-list.csv": LOOK,
    "GET /houses/{job}/supplies": LOOK, "POST /houses/{job}/supplies": CHANGE,
    "GET /houses/{job}/pour": LOOK, "GET /houses/{job}/call-back": LOOK,
    "GET /houses/{job}/materials": LOOK, "POST /houses/{job}/materials": CHANGE,
    "GET /houses/{job}/papers": LOOK, "GET /houses/{job}/papers/{name}": LOOK,
    "GET /van": LOOK, "GET /van/van.json": LOOK, "POST /van/sprayer": CHANGE,
    "POST /van/stock": CHANGE, "POST /van/remove": CHANGE, "POST /van/bring": CHANGE,
    "POST /van/after": CLOSE,
    "GET /lessons": LOOK, "GET /lessons/look": LOOK, "GET /lessons/state": LOOK,
    "GET /lessons/lessons.json": LOOK, "POST /lessons/learn": CLOSE,
    "POST /lessons/switch": CLOSE,
    "GET /book": CHANGE, "GET /book/state": CHANGE, "POST /book/check": CHANGE,
    "POST /book/backup": BACK_UP,
    "GET /houses/{job}/corners": LOOK, "POST /houses/{job}/corners": CHANGE,
    "GET /houses/{job}/corners/picture": LOOK,
    "GET /draw": LOOK, "POST /draw": CHANGE,
    "GET /houses/{job}/draw": LOOK, "POST /houses/{job}/draw": CHANGE,
    "POST /houses/{job}/draw/preview": LOOK, "POST /houses/{job}/draw/unit": CHANGE,
    "POST /houses/{job}/draw/rooms": LOOK,
    "GET /houses/{job}/draw/underlay": LOOK, "POST /houses/{job}/draw/underlay": CHANGE,
    "POST /houses/{job}/draw/underlay/place": CHANGE,
    "GET /authority.crt": OPEN, "GET /houses/{job}/phone": LOOK,
    "GET /houses/{job}/slab.html": LOOK, "GET /api/jobs/{job}/sheet/rest": LOOK,
    "GET /api/jobs": LOOK, "GET /api/jobs/{job}": LOOK, "GET /api/jobs/{job}/entries": LOOK,
    "GET /api/jobs/{job}/now": LOOK, "GET /api/jobs/{job}/plan": LOOK,
    "GET /api/jobs/{job}/rest": LOOK, "GET /api/jobs/{job}/sheet": LOOK,
    "GET /api/jobs/{job}/washing": LOOK, "GET /api/jobs/{job}/pours": LOOK,
    "GET /api/jobs/{job}/pour": LOOK,
    "GET /api/files/{sha}": LOOK, "POST /api/have": LOOK,
    "POST /api/entries": TAP, "POST /api/jobs/{job}/log": TAP, "PUT /api/files/{sha}": TAP,
    "PUT /api/jobs/{job}/facts": CHANGE,
})  # fmt: skip


_FORMS: Mapping[str, str] = MappingProxyType({
    "GET /": CHANGE, "GET /days": CHANGE, "GET /van": CHANGE, "GET /lessons": CLOSE,
})  # fmt: skip
"""What the forms of a page ask for that sends them elsewhere."""


class NotAllowed(FarwallError):
    """Who asks is known, and may not do this."""


def route_of(request: Request) -> str:
    """Method and template of the route that answers, such as `GET /houses/{job}`; "" for none."""
    route = request.scope.get("route")
    method = "GET" if request.method == "HEAD" else request.method
    return f"{method} {route.path}" if route is not None else ""


def need_of(request: Request) -> str:
    """What the route asks for."""
    reads = request.method in {"GET", "HEAD"}
    return NEEDS.get(route_of(request), LOOK if reads else CHANGE)


def form_needs_of(request: Request) -> str:
    """What it takes to keep what is typed on the page that is asked for; LOOK without a form."""
    page = route_of(request)
    if not page.startswith("GET "):
        return LOOK
    return _FORMS.get(page) or NEEDS.get(page.replace("GET ", "POST ", 1), LOOK)


def may(role: str, need: str) -> bool:
    """Whether a role is enough for a need."""
    return need == OPEN or need in MAY.get(role, frozenset())
