"""The ways from screen to screen: a line of words at the head of every page."""

from __future__ import annotations

from farwall.web.people.roles import CHANGE, PEOPLE
from farwall.web.people.who import who_asks

WAYS: tuple[tuple[str, str], ...] = (
    ("/", "way-houses"),
    ("/days", "way-days"),
    ("/van", "way-van"),
    ("/lessons", "way-lessons"),
    ("/book", "way-book"),
    ("/people", "way-people"),
    ("/settings", "way-settings"),
)
"""Address and key of the words, in the order of the line."""
ONLY = {"/people": PEOPLE, "/book": CHANGE}
"""What who is shown a way must be allowed; a way that is not named is shown to everybody."""


def ways() -> list[tuple[str, str]]:
    """The ways that are open to who asks."""
    who = who_asks()
    return [one for one in WAYS if one[0] not in ONLY or (who and who.may(ONLY[one[0]]))]
