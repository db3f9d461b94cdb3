"""The page of the sun: the floor at the hours with sun, and what to do about it."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Any

from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.job.sun_advice import advice_words
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.sun_pictures import scenes_of_plan, sun_svg
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, plan_clock
from farwall.papers.words import listed, room_names, unbroken

_HEAD_AND_FOOT_PT, _ADVICE_PT, _NO_ADVICE_PT = 110.0, 50.0, 34.0
MOST_ADVICE = 6
FOOT = (
    "Eaves, trees and neighbours are not reckoned with: they only make it less. Concrete that the "
    "sun has warmed stays warm when it has gone: read the slab there before the first stroke. "
    "Film the glass, not the air: windows and doors stay as open as the lungs need."
)


def sun_page(plan: Plan, *, units: Units, size: PaperSize) -> dict[str, Any] | None:
    """What the page shows; None where no sun was reckoned, or none falls on the floor."""
    scenes = scenes_of_plan(plan)
    if plan.sun is None or not scenes:
        return None
    clock = replace(plan_clock(plan, units), half_day_words=units == "us")
    start = datetime.fromisoformat(plan.starts_at)
    rooms = {field.id: listed(room_names(plan, field.rooms)) for field in plan.fields}
    advice = [
        plain(unbroken(advice_words(one, rooms[one.field], numbered(plan, one.field), clock.time)))
        for one in plan.sun.advice
    ]
    more = len(advice) - MOST_ADVICE
    if more > 0:
        advice = [*advice[:MOST_ADVICE], f"And {more} more: sun.advice in plan.json tells them."]
    shown = advice or ([] if plan.so_far else ["No edge of this plan is tight by the sun."])
    advice_pt = _ADVICE_PT * len(advice) if advice else _NO_ADVICE_PT * len(shown)
    pictures = sun_svg(
        scenes,
        time=clock.time,
        full_hour_min=-(start.minute + start.second / 60),
        units=units,
        width=size.inner_width,
        height=size.inner_height - _HEAD_AND_FOOT_PT - advice_pt,
        lettering=PAPER_LETTERING,
        ground=None,
    )
    return {
        "title": "Sun on the floor",
        "under": plain(f"{clock.day()}, clear sky"),
        "pictures": pictures,
        "advice": shown,
        "foot": FOOT,
    }
