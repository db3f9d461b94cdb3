"""What stands before every page: who is in and may, and forms that come from this site only."""

from __future__ import annotations

from fastapi import Request
from starlette.datastructures import FormData
from starlette.exceptions import HTTPException
from starlette.types import Message

from farwall.errors import FarwallError, Mistake, Refused
from farwall.web.door import body_of
from farwall.web.people.roles import OPEN, need_of
from farwall.web.people.who import let_in, who_asks
from farwall.web.session import Sessions

MOST_FORM_BYTES = 20_000
MOST_FIELDS = 1_000
"""A form has a line for each house or field of the floor: its bytes bound it, not fifty blanks."""
_OURS = frozenset({"same-origin", "none"})


class NotEntered(FarwallError):
    """No session is open: the page that asks for the key comes first."""


class FromElsewhere(FarwallError):
    """A form that another site sent."""


def asks_for_session(sessions: Sessions, request: Request) -> None:
    """Note who asks, in `request.state.person`.

    Raises NotEntered when the request bears no open session, NotAllowed when the route asks for
    more than its person may (`web.people.roles` says what each asks for).
    """
    who = sessions.who(request)
    if who is None:
        raise NotEntered("Nobody is in.")
    let_in(request, who)


def asks_for_role(request: Request) -> None:
    """Raises NotEntered or NotAllowed unless who asks may do what the route is for."""
    if need_of(request) == OPEN:
        return
    who = who_asks(request)
    if who is None:
        raise NotEntered("Nobody is in.")
    let_in(request, who)


def asks_for_origin(request: Request) -> None:
    """Raises FromElsewhere unless the browser says that this site itself sent the form.

    Over plain http browsers send no Sec-Fetch-Site; the Origin tells it then. A request with
    neither is no form of ours.
    """
    site = request.headers.get("sec-fetch-site")
    origin = request.headers.get("origin")
    ours = f"{request.url.scheme}://{request.headers.get('host', '')}"
    if site is not None and site not in _OURS:
        raise FromElsewhere("This form came from another site.")
    if origin is not None and origin != ours:
        raise FromElsewhere("This form came from another site.")
    if site is None and origin is None:
        raise FromElsewhere("It cannot be told where this form came from.")


async def form_of(
    request: Request, most: int = MOST_FORM_BYTES, *, fields: int = MOST_FIELDS, files: int = 1
) -> FormData:
    """The fields of a form of this site, never more than `most` bytes, `fields` of them, `files`.

    A browser sends a place for a file as a file where none was chosen, too.

    Raises FromElsewhere, NotEntered, NotAllowed, TooLarge, Refused. A form with a file is to be
    closed.
    """
    asks_for_origin(request)
    asks_for_role(request)
    body = await body_of(request, most)

    async def again() -> Message:
        return {"type": "http.request", "body": body, "more_body": False}

    try:
        return await Request(request.scope, again).form(max_files=files, max_fields=fields)
    except HTTPException as error:
        raise Refused(Mistake("", str(error.detail))) from None


def text_of(form: FormData, name: str) -> str:
    """A field's text, cut short and without its spaces at the ends; empty when it is not there."""
    value = form.get(name)
    return value.strip()[:2000] if isinstance(value, str) else ""
