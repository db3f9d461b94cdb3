"""How thirsty the slab is, from tub and tank as they were looked at. Pure.

Between two looks so much was taken of what was planned: each such span moves the belief by the
step of `mix.thirst`. A span over several fields tells the job's share more surely, one over a
few bands less: there a scale read to `READ_L` weighs as much as the slab.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace

from farwall.facts.plan import Field, Plan
from farwall.job.first_thirst import first_thirst
from farwall.job.story.noun import CoatStory, Level
from farwall.mix.thirst import READ_L, Thirst, inside
from farwall.nouns import dataclass

LEAST_SPAN_L = 0.3
"""A span planned for less than this is the scale's doing. Rank: guess."""

__all__ = ["LEAST_SPAN_L", "READ_L", "after_look", "belief_of", "inside", "seen_factor"]


@dataclass(frozen=True)
class _Span:
    """Between two looks: planned and used litres, and the planned litres of each field in it."""

    planned_l: float
    used_l: float
    parts_l: tuple[float, ...]


def belief_of(plan: Plan, name: str, coat: CoatStory | None, *, bands: int | None = None) -> Thirst:
    """The belief of the thirst of coat `name` after all looks; `bands`: until so many were done."""
    belief = first_thirst(plan, name)
    if coat is None or belief.variance == 0:
        return belief
    if bands is not None:
        coat = replace(coat, levels=tuple(one for one in coat.levels if one.bands <= bands))
    for span in _spans(plan, coat):
        belief = after_look(belief, parts_l=span.parts_l, used_l=span.used_l)
    return belief


def after_look(belief: Thirst, *, parts_l: Sequence[float], used_l: float) -> Thirst:
    """The belief after a look: `used_l` since the last one; `parts_l` what was planned, by field.

    The noise of such a span is the fields' own, each by its part, and the scale's at both ends.
    """
    planned_l, own = math.fsum(parts_l), belief.field_variance
    shared = own * math.fsum(one**2 for one in parts_l) / planned_l**2
    read = 2 * (READ_L / planned_l) ** 2
    seen = replace(belief, field_variance=shared + read)
    return replace(seen.after(likely_l=planned_l, used_l=used_l), field_variance=own)


def seen_factor(coat: CoatStory | None) -> float | None:
    """Used over planned up to the last look; None where that is not known."""
    if coat is None or coat.used_l is None or coat.levels[-1].planned_l <= 0:
        return None
    return coat.used_l / coat.levels[-1].planned_l


def _spans(plan: Plan, coat: CoatStory) -> Iterator[_Span]:
    """Spans from stop line to stop line, then from the last stop line into the open field."""
    litres = {band.id: band.litres for field in plan.fields for band in field.bands}
    owner = {band.id: field for field in plan.fields for band in field.bands}
    done = [one.band for one in coat.done if one.band in owner]
    bounds = _stop_lines(owner, done)
    # of several looks at the same floor the last one counts
    levels = list({one.bands: one for one in coat.levels if one.bands <= len(done)}.values())
    if coat.mixed_l is not None:
        levels.insert(0, Level(0.0, 0.0, 0.0, 0.0, 0, 0.0, 0.0))  # nothing mixed, nothing used
    at_lines = [level for level in levels if level.bands in bounds]
    chain = [*at_lines]
    if levels and (not chain or levels[-1].bands > chain[-1].bands):
        chain.append(levels[-1])
    before: Level | None = None
    for level in chain:
        if before is not None and level.bands > before.bands:
            names = done[before.bands : level.bands]
            parts: dict[str, float] = {}
            for name in names:
                parts[owner[name].id] = parts.get(owner[name].id, 0.0) + litres[name]
            used = level.mixed_l - before.mixed_l + before.hand_l - level.hand_l
            planned = math.fsum(parts.values())
            if planned < LEAST_SPAN_L or used <= 0:
                continue  # this look says too little: the span goes on to the next
            yield _Span(planned, used, tuple(parts.values()))
        before = level


def _stop_lines(owner: Mapping[str, Field], done: Sequence[str]) -> set[int]:
    """After how many bands no field stands open."""
    found: set[int] = {0}
    open_: dict[str, int] = {}
    for number, name in enumerate(done, 1):
        field = owner[name]
        left = open_.pop(field.id, len(field.bands)) - 1
        if left:
            open_[field.id] = left
        if not open_:
            found.add(number)
    return found
