"""`key=value` with the plan's own ids for what people tell by numbers or names."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.facts.plan import Plan

LOG_KEYS = frozenset({"coat", "field", "band"})
DAY_KEYS = frozenset({"done", "band"})
_ROOM_KEYS = frozenset({"room", "rooms", "closed"})


def with_id(told: str, plan: Plan, keys: frozenset[str]) -> str:
    """`band=2.3.14` as `band=second.3.14`, where the key is one of these and the plan has it.

    Rooms go by the name that is read on the sheet too: `room="Great room"` is `room=great-room`.
    """
    from farwall.facts.numbered import coats_of, named

    key, equals, text = told.partition("=")
    if key in _ROOM_KEYS:
        return f"{key}={','.join(_room(one, plan) for one in text.split(','))}"
    if key not in keys or not equals:
        return told
    return f"{key}={named(coats_of(plan), text.strip())}"


def _room(told: str, plan: Plan) -> str:
    """The id of the one room of that name, whatever its capitals; else as it was told.

    What stands behind a colon (until when a room is closed) stays.
    """
    name, colon, until = told.partition(":")
    rooms = plan.inputs.floor.rooms
    sought = name.strip().casefold()
    if any(one.id == name.strip() for one in rooms):
        return told
    found = [one.id for one in rooms if sought in {one.id.casefold(), one.label.casefold()}]
    return f"{found[0]}{colon}{until}" if len(found) == 1 else told
