"""The wash day on the page: when, the floor with its order, and each room with what comes next."""

from __future__ import annotations

import re
from typing import Any

from markupsafe import Markup

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.washing.noun import SoFar
from farwall.papers.acid.wash.drawing import wash_svg
from farwall.papers.acid.wash.pages import front, room_block
from farwall.papers.lettering import SCREEN_LETTERING
from farwall.papers.wall_clock import plan_clock
from farwall.web.words import said

_WIDE, _HIGH = 640.0, 460.0
_INLINE = re.compile(r' style="[^"]*"')
"""A page of ours carries no style of its own; `acid.css` says the same of figures."""
_DONE = ("enough",)


def washing_shown(ground: Ground, day: AcidDay) -> dict[str, Any]:
    """What the template of the part is given."""
    part, units = day.washing, ground.job.wishes.units
    picture = wash_svg(ground.plan, part, units=units, width=_WIDE, height=_HIGH,
                       lettering=SCREEN_LETTERING)  # fmt: skip
    begun = any(one.so_far.rinses for one in part.rooms)
    return {
        **front(part, units, plan_clock(ground.plan, units)),
        "picture": Markup(_INLINE.sub("", picture)),
        "begun": begun,
        "rooms": [
            {**room_block(one, units), "next": _next(one.so_far)} for one in part.rooms
        ],
        "left": said("acid-washing-left", n=sum(one.so_far.verdict not in _DONE
                                                for one in part.rooms), all=len(part.rooms)),
    }  # fmt: skip


def _next(one: SoFar) -> dict[str, Any]:
    """What was read after the last rinse, and what the room asks for."""
    phs = ", ".join(f"{ph:g}" for ph in one.phs)
    parts = [said("acid-washing-rinse", n=one.rinses)] if one.rinses else []
    parts += [f"pH {phs}"] if phs else []
    parts += [said(f"acid-washing-rag-{one.rag}")] if one.rag else []
    if one.powder is not None:
        parts.append(said("acid-washing-powder" if one.powder else "acid-washing-no-powder"))
    return {
        "read": ", ".join(parts),
        "why": one.why,
        "do": _sentences(one.do),
        "stop": one.verdict in {"rinse", "scrub"},
        "rinsed": one.rinses > 0,
    }


def _sentences(text: str) -> list[str]:
    """Each sentence by itself."""
    return [f"{one.rstrip('.')}." for one in text.split(". ") if one]
