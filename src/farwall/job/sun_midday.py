"""The sun of the morning's plan, for fields that are planned again at other minutes."""

from __future__ import annotations

from dataclasses import replace

from farwall.air.clocks import SUN
from farwall.evidence import Rank
from farwall.facts.plan import Plan, RoomOpenTime
from farwall.facts.sunlight import SunOnFloor, SunPatch
from farwall.spray.lives import Lives


def in_sun(lives: Lives, plan: Plan, from_min: float, to_min: float) -> Lives:
    """The same open times, and those of the plan's patches of sun between two minutes.

    Rooms that were told to be sunny as a whole have their shorter time already.
    """
    if plan.sun is None:
        return lives
    grounds = {ground.name for ground in plan.grounds}
    known = {(one.room, one.from_min, one.polygon) for one in lives.open_times}
    more = [
        _of_patch(lives, patch)
        for patch in plan.sun.patches
        if patch.room in lives.floors
        and patch.from_min <= to_min
        and patch.to_min > from_min
        and (patch.room, patch.from_min, patch.polygon) not in known
        and f"survey.rooms.{patch.room}.sun" not in grounds
    ]
    return Lives((*lives.open_times, *more), lives.floors)


def without_advice(sun: SunOnFloor | None) -> SunOnFloor | None:
    """The patches alone: they hold all day, while advice was given for the morning's minutes."""
    return None if sun is None else replace(sun, advice=())


def _of_patch(lives: Lives, patch: SunPatch) -> RoomOpenTime:
    """The open time of the patch's room then, shortened by the sun."""
    own = [one for one in lives.open_times if one.polygon is None and one.room == patch.room]
    begun = [one for one in own if one.from_min <= patch.from_min]
    shade = max(begun, key=lambda one: one.from_min) if begun else own[0]
    return RoomOpenTime(
        patch.room,
        patch.from_min,
        round(SUN * shade.low, 2),
        round(SUN * shade.likely, 2),
        round(SUN * shade.high, 2),
        Rank.GUESS.value,
        shade.source,
        patch.polygon,
        patch.to_min,
    )
