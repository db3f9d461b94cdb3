"""Who asks: known from the session or the token of the request that is being answered."""

from __future__ import annotations

from contextvars import ContextVar

from fastapi import Request

from farwall.nouns import dataclass
from farwall.store.people_nouns import LEAD, Open
from farwall.web.people.roles import CHANGE, NotAllowed, form_needs_of, may, need_of

BROWSER, DEVICE, KEY, KNOWN = "browser", "device", "key", "known"
"""Kinds of sessions. KNOWN opens nothing: it tells a browser in which a person once signed in."""
REQUEST: ContextVar[Request | None] = ContextVar("request", default=None)
"""The request that a page answers; set at the door of a page."""
_NOBODY = "office"


@dataclass(frozen=True)
class Who:
    """Somebody who is in. id: of the person, "" for who shows the book's key."""

    name: str
    role: str
    id: str = ""
    kind: str = KEY
    seal: str = ""

    def may(self, need: str) -> bool:
        """Whether they may do it."""
        return may(self.role, need)


THE_KEY = Who("the key", LEAD)
"""Who shows the book's key."""


def who_in(found: Open) -> Who:
    """Who a session is of."""
    if found.person is None:
        return Who(_NOBODY, LEAD, kind=KEY, seal=found.seal)
    return Who(found.person.name, found.person.role, found.person.id, found.kind, found.seal)


def let_in(request: Request, who: Who) -> None:
    """Note who asks. Raises NotAllowed when the route asks for more than they may."""
    request.state.person = who
    if not who.may(need_of(request)):
        raise NotAllowed("Your role in this book does not go that far. Ask a lead.")


def who_asks(request: Request | None = None) -> Who | None:
    """Who the request being answered is of; None when nobody is in."""
    request = request or REQUEST.get()
    found = getattr(request.state, "person", None) if request is not None else None
    return found if isinstance(found, Who) else None


def may_tell_of_money(request: Request) -> bool:
    """Whether who asks may enter what was agreed, invoiced and paid: whoever may change facts."""
    found = who_asks(request)
    return found is None or found.may(CHANGE)


def only_looks() -> bool:
    """Whether who asks may look at the page, and nothing that they type there would be kept."""
    request, found = REQUEST.get(), who_asks()
    return request is not None and found is not None and not found.may(form_needs_of(request))


def may_see_costs() -> bool:
    """Whether who asks may see what things cost the firm: not a helper, not the house's owner."""
    found = who_asks()
    return found is None or found.may(CHANGE)


def name_of_who() -> str:
    """Under which name a change is kept: of who is in, else of the office."""
    found = who_asks()
    return found.name if found is not None else _NOBODY
