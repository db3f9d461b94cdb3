"""What speaks against sealer that is entered: a floor that cannot be dry yet. Pure.

The log takes what was done; what does not fit is said beside it.
"""

from __future__ import annotations

from collections.abc import Iterator

from farwall.evidence import Rank
from farwall.facts.default_table import PRACTICE
from farwall.facts.plan import Clock
from farwall.job.live.found import found_over
from farwall.job.live.noun import Advice
from farwall.job.live.standing import Standing

DRY_DOWN = "dry-down before sealing"
_WEIGHT = 95


def sealed_wet(standing: Standing) -> Iterator[Advice]:
    """Sealer entered sooner after the last rinse than the floor dries at the earliest, by the
    plan, with no look between that found it dry. It stops more sealer as long as that lasts, and
    stays advice until the floor is handed over."""
    story, clock = standing.story, _clock(standing)
    first = next(iter(story.of("sealed")), None)
    if clock is None or first is None or story.last("handed-over") is not None:
        return
    rinses = [one for one in story.of("rinsed") if one.at_min <= first.at_min]
    if not rinses or first.at_min - rinses[-1].at_min >= clock.low_min:
        return
    rinsed = rinses[-1].at_min
    if found_over(standing.plan, story, clock=DRY_DOWN, since_min=rinsed, until_min=first.at_min):
        return
    dry = standing.clock(rinsed + clock.low_min)
    yield Advice(
        "sealed wet", standing.at_min < rinsed + clock.low_min,
        f"Sealer is entered {standing.clock(first.at_min)}, {_span(first.at_min - rinsed)} after "
        f"the last rinse; by the plan no floor is dry before {dry}, and none was entered dry.",
        "No more sealer before plastic taped down overnight stays dry beneath. A slip? Strike it.",
        _WEIGHT, Rank.PRACTICE.value, PRACTICE,
    )  # fmt: skip


def _clock(standing: Standing) -> Clock | None:
    return next((one for one in standing.plan.clocks if one.name == DRY_DOWN), None)


def _span(minutes: float) -> str:
    return f"{minutes:.0f} min" if minutes < 100 else f"{minutes / 60:.0f} h"
