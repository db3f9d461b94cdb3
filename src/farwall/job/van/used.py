"""What a job took from the van, from its plan and the story of its log. Pure."""

from __future__ import annotations

from collections import defaultdict
from datetime import datetime, timedelta

from farwall.facts.plan import Mix, Plan
from farwall.facts.van import UsedUp, Van
from farwall.job.story.noun import Story
from farwall.mix.cut import parse_cut


def used_up(plan: Plan, story: Story, van: Van) -> UsedUp:
    """Sprayers that were named while spraying, and the stain in every batch that was mixed, by lot.

    A batch with a cut of its own holds stain by that cut, else as the plan's mix of its coat. What
    else was used (tape, film, gloves) no entry tells. Its day is that of the first band.
    """
    first = min((coat.start_min for coat in story.coats if coat.start_min is not None), default=0.0)
    day = datetime.fromisoformat(plan.starts_at) + timedelta(minutes=first)
    names = {one.id for one in van.sprayers}
    sprayed = story.of("day-started", "field-started", "filled", "band-done", "tank-empty")
    used = dict.fromkeys(one.text("sprayer") for one in sprayed)
    return UsedUp(
        on=day.date().isoformat(),
        sprayers=tuple(name for name in used if name in names),
        stains=tuple(_stains(plan, story)),
    )


def _stains(plan: Plan, story: Story) -> list[tuple[str, str, float]]:
    stains = {coat.id: coat.stain for coat in plan.inputs.coats}
    litres: dict[tuple[str, str], float] = defaultdict(float)
    for one in story.of("mixed"):
        coat, mixed_l = one.text("coat"), one.number("litres")
        if coat in stains and mixed_l:
            share = _stain_share(plan, coat, one.text("cut"))
            litres[stains[coat], one.text("lot")] += mixed_l * share
    return [(stain, lot, round(total, 3)) for (stain, lot), total in litres.items()]


def _stain_share(plan: Plan, coat: str, cut: str) -> float:
    """Litres of stain in a litre of mix."""
    if cut:
        return parse_cut(cut).stain_share
    mixes = [mix for mix in plan.mixes if mix.coat == coat]
    whole = sum(map(_litres, mixes))
    return sum(mix.stain_l for mix in mixes) / whole if whole > 0 else 0.0


def _litres(mix: Mix) -> float:
    return mix.stain_l + mix.water_l + mix.acid_l
