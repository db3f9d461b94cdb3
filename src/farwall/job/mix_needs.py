"""What the mix needs to know of the fields of a plan: litres, minutes, helper, what is seen."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from farwall.facts.plan import Field, Plan
from farwall.mix.look import BandNeed
from farwall.mix.ways import FieldNeed

SEEN = frozenset({"cased", "saw cut"})
"""Stop lines without a leaf: both sides are seen together."""


def mix_needs(fields: Sequence[Field]) -> list[FieldNeed]:
    """The fields in the order given, as `mix.plan.plan_mixes` takes them."""
    return [
        FieldNeed(
            one.id,
            one.coat,
            sum(band.litres for band in one.bands),
            bands=tuple(BandNeed(b.id, b.litres, b.start_min, b.end_min) for b in one.bands),
            busy=helper_busy(one),
            seen=bool(seen_beside(one, fields)),
        )
        for one in fields
    ]


def helper_busy(field: Field) -> tuple[tuple[float, float], ...]:
    """From when to when the helper walks to a tank, fills it, or walks back."""
    helps = [fill for fill in field.refills if fill.by.startswith("helper")]
    spans = [(fill.at_min, fill.at_min + fill.minutes) for fill in helps]
    walks = [walk.path for walk in field.walks if walk.who == "helper" and walk.path]
    return tuple(sorted(spans + [(path[0][2], path[-1][2]) for path in walks]))


def seen_beside(field: Field, fields: Sequence[Field]) -> str:
    """An earlier field of the coat that is seen together with this one; empty when none is."""
    mine = {line.id for line in field.stop_lines if line.kind in SEEN}
    for other in fields:
        before = other.coat == field.coat and other.order < field.order
        if before and mine & {line.id for line in other.stop_lines}:
            return other.id
    return ""


def planned_mixed_l(plan: Plan, coat: str, begun: Collection[str], done: Collection[str]) -> float:
    """What the plan has mixed of a coat by now, litres.

    Its first mix always; each later one once its field is begun, or the band done that it is
    boxed before.
    """
    own = [mix for mix in plan.mixes if mix.coat == coat]
    made = [
        mix
        for number, mix in enumerate(own)
        if number == 0
        or (mix.before_band in done if mix.before_band else set(mix.fields[:1]) & set(begun))
    ]
    return sum(mix.stain_l + mix.water_l + mix.acid_l for mix in made)
