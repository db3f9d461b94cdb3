"""One more window told in a line: its room, the way that its wall looks, its width."""

from __future__ import annotations

import copy
from collections.abc import Mapping
from typing import Any

from farwall.papers.wall_clock import Units
from farwall.web.pages.forms.asked import Asked
from farwall.web.pages.forms.measures import FEET, NoNumber
from farwall.web.pages.forms.told import Slip, Wrong
from farwall.web.pages.forms.windows import WINDS, window_line
from farwall.web.words import said

_LEAST_M, _MOST_M = 0.2, 12.0
Json = dict[str, Any]


def with_window(asked: Asked, facts: Mapping[str, Any], told: Mapping[str, Any]) -> Json:
    """The facts with one more window. Raises Wrong."""
    job, units = asked.job, asked.units
    room = job.floor.room_by_id.get(str(told.get("window.room", "")))
    wind = str(told.get("window.faces", ""))
    slips = []
    if room is None:
        slips.append(Slip("window.room", said("name-room"), said("no-choice", text="")))
    if wind not in WINDS:
        slips.append(Slip("window.faces", said("name-faces"), said("no-choice", text=wind[:40])))
    width_m = _width(str(told.get("window.width", "")).strip(), units, slips)
    if job.floor.north_deg is None:
        slips.append(Slip("floor.north_deg", said("name-north"), said("window-no-north")))
    if slips or room is None:
        raise Wrong(slips)
    line = window_line(job, room, wind, width_m)
    if line is None:
        where = said("name-faces")
        raise Wrong([Slip("window.faces", where, said("window-no-wall", room=room.label))])
    changed = copy.deepcopy(dict(facts))
    if "features" in changed.get("floor", {}):
        changed |= {key: copy.deepcopy(asked.held[key]) for key in ("floor", "exits")}
    row = {"line": [list(one) for one in line], "room": room.id}
    changed["floor"].setdefault("windows", []).append(row)
    return changed


def _width(text: str, units: Units, slips: list[Slip]) -> float:
    try:
        width_m = FEET.si(text, units)
    except NoNumber:
        what = said("no-number", text=text[:40])
    else:
        if _LEAST_M <= width_m <= _MOST_M:
            return width_m
        low, high = (FEET.text(one, units) for one in (_LEAST_M, _MOST_M))
        unit = said(FEET.scale(units).unit)
        what = said("no-sense", text=text[:40], low=low, high=high, unit=f" {unit}")
    slips.append(Slip("window.width", said("name-window-wide"), what))
    return _LEAST_M
