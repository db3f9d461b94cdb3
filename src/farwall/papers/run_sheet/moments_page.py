"""The page of moments: the first coat in six pictures, to talk through before the first stroke."""

from __future__ import annotations

from typing import Any

from farwall.facts.plan import Plan
from farwall.job.moments import telling_moments
from farwall.papers.film_strip import film_strip_svg
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.run_sheet.names import coat_ids, coat_words
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units

_HEAD_AND_FOOT_PT = 82.0


def moments_page(plan: Plan, *, units: Units, size: PaperSize) -> dict[str, Any] | None:
    """What the page shows; None when nothing of the first coat can be sprayed."""
    coats = coat_ids(plan)
    if not any(telling_moments(plan, coat) for coat in coats[:1]):
        return None
    strip = film_strip_svg(
        plan,
        units=units,
        width=size.inner_width,
        height=size.inner_height - _HEAD_AND_FOOT_PT,
        lettering=PAPER_LETTERING,
        ground=None,
    )
    later = ", later coats alike at their own times" if len(coats) > 1 else ""
    return {
        "title": "Six moments",
        "under": plain(f"{coat_words(plan, plan.fields[0].coat)}{later}"),
        "strip": strip,
    }
