"""Pages from templates: one set of words, everything escaped, every refusal a page too."""

from __future__ import annotations

import hashlib
from collections.abc import Awaitable, Callable
from functools import cache
from importlib.resources import files
from pathlib import PurePosixPath
from typing import Any
from urllib.parse import quote

from fastapi import Request, Response
from fastapi.exceptions import RequestValidationError
from fastapi.responses import HTMLResponse, RedirectResponse
from fastapi.routing import APIRoute
from jinja2 import Environment, PackageLoader, StrictUndefined

from farwall.errors import FarwallError, Refused, Unanswerable, mistakes_of
from farwall.store.nouns import BookTrouble, NoSuchJob
from farwall.web.door import TooLarge
from farwall.web.pages.guard import FromElsewhere, NotEntered
from farwall.web.pages.house_ways import house_ways
from farwall.web.pages.light import LIGHT, light_of, other_light
from farwall.web.pages.told import ToldBetweenTags, names_kept, told_on_page
from farwall.web.pages.tongue import language_of
from farwall.web.pages.ways import ways
from farwall.web.people.roles import NotAllowed
from farwall.web.people.who import REQUEST, only_looks, who_asks
from farwall.web.words import LANGUAGE, said

_CODES: tuple[tuple[type[FarwallError], int, str], ...] = (
    (NoSuchJob, 404, "no-house"),
    (BookTrouble, 503, "book-trouble"),
    (TooLarge, 413, "too-large"),
    (FromElsewhere, 403, "from-elsewhere"),
    (NotAllowed, 403, "not-allowed"),
    (Refused, 422, "refused"),
    (Unanswerable, 409, "unanswerable"),
    (FarwallError, 400, "refused"),
)
_KINDS = {".css": "text/css", ".js": "text/javascript", ".svg": "image/svg+xml"}


@cache
def templates() -> Environment:
    """The templates; whatever is put into them is escaped, what is missing is an error."""
    found = Environment(
        loader=PackageLoader("farwall.web"), autoescape=True, undefined=StrictUndefined,
        trim_blocks=True, lstrip_blocks=True, extensions=[ToldBetweenTags],
    )  # fmt: skip
    found.filters["t"] = told_on_page
    found.globals |= {"w": said, "v": static_version, "house_path": house_path}
    found.globals |= {"ways": ways, "who": who_asks, "only_looks": only_looks}
    found.globals |= {"light": LIGHT.get, "other_light": other_light}
    found.globals |= {"house_ways": house_ways}
    return found


def page(name: str, /, *, code: int = 200, **values: Any) -> HTMLResponse:
    """A template as a page that nobody keeps."""
    with names_kept(values.get("shown")):
        text = templates().get_template(name).render(**values)
    return HTMLResponse(text, code, headers={"cache-control": "no-store"})


def seen_elsewhere(path: str) -> RedirectResponse:
    """On to another page, by GET."""
    return RedirectResponse(path, 303)


def house_path(job: str) -> str:
    """The address of a house."""
    return f"/houses/{quote(job, safe='')}"


@cache
def static_files() -> dict[str, str]:
    """The files that pages are made up with, written or built: their kind by their name."""
    folder = files("farwall.web").joinpath("static")
    names = [one.name for there in (folder, folder / "built") for one in there.iterdir()]
    return {name: kind for name in names if (kind := _KINDS.get(PurePosixPath(name).suffix))}


@cache
def static_file(name: str) -> bytes:
    """The content of one of `static_files`."""
    folder = files("farwall.web").joinpath("static")
    there = folder / name if (folder / name).is_file() else folder / "built" / name
    return there.read_bytes()


@cache
def static_version(name: str) -> str:
    """A word that changes with the file."""
    return hashlib.sha256(static_file(name)).hexdigest()[:12]


class PageRoute(APIRoute):
    """A route whose refusals are pages: what happened, all mistakes, where to go next."""

    def get_route_handler(self) -> Callable[[Request], Awaitable[Response]]:  # type: ignore[override]
        """The handler, calm."""
        answer = super().get_route_handler()

        async def calmly(request: Request) -> Response:
            LANGUAGE.set(language_of(request))
            REQUEST.set(request)
            LIGHT.set(light_of(request))
            try:
                return await answer(request)
            except NotEntered:
                there = request.url.path if request.method == "GET" else "/"
                return seen_elsewhere(f"/enter?to={quote(there)}")
            except RequestValidationError as error:
                wrong = [f"{one['loc'][-1]}: {one['msg']}" for one in error.errors()]
                return page("trouble.html", code=422, what="refused", mistakes=wrong)
            except FarwallError as error:
                return refusal(error, house=house_of(request.url.path))

        return calmly


def house_of(path: str) -> str:
    """The address of the house that a page belongs to; nothing where it belongs to none."""
    _, _, place = path.partition("/houses/")
    return f"/houses/{quote(place.split('/')[0], safe='')}" if path.startswith("/houses/") else ""


def refusal(error: FarwallError, *, house: str = "") -> HTMLResponse:
    """The page for a refusal. house: where to go back to, if it is there."""
    code, what = next((code, what) for kind, code, what in _CODES if isinstance(error, kind))
    # Of these the heading says all.
    alone = isinstance(error, NotAllowed | FromElsewhere | NoSuchJob)
    told = [] if alone else [one[:1].upper() + one[1:] for one in mistakes_of(error)]
    back = "" if isinstance(error, NoSuchJob) else house
    return page("trouble.html", code=code, what=what, mistakes=told, house=back)


def no_page() -> Response:
    """Where nothing is."""
    return page("trouble.html", code=404, what="no-page", mistakes=[])
