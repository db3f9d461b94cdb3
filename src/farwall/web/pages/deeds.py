"""A deed as a line of words."""

from __future__ import annotations

from farwall.papers.wall_clock import Units
from farwall.store.people_nouns import Done
from farwall.web.pages.when import zoned_told
from farwall.web.words import said

_KNOWN = frozenset({
    "signed-in", "refused", "came-by-key", "joined", "left-all", "password-changed", "invited",
    "link-made", "role-changed", "access-ended", "change", "close", "back-up", "denied",
})  # fmt: skip


def told_deed(one: Done, units: Units) -> dict[str, str]:
    """When, who and what, as they are said."""
    what = said(f"did-{one.word}") if one.word in _KNOWN else one.word
    more = [
        said(f"role-{value}") if key == "role" else str(value)
        for key, value in sorted(one.about.items()) if key not in {"how", "route"}
    ]  # fmt: skip
    at = zoned_told(one.at, units)
    return {"at": at, "who": one.who or said("did-nobody"), "what": ": ".join([what, *more[:3]])}
