"""How much of the next coat to mix: by field, and in all with the reserve of the gate. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.colour.next_coat import Way
from farwall.facts.plan import Field, Plan
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.mix.thirst import FIELD_SHARE, first_belief
from farwall.nouns import dataclass


@dataclass(frozen=True)
class FieldLitres:
    """What a field, or the rooms of it that are asked about, will likely take of the mix."""

    field: str
    rooms: tuple[str, ...]
    area_m2: float
    likely_l: float


@dataclass(frozen=True)
class NextLitres:
    """Mix for all these fields: likely litres; ready_l: enough in `certainty_percent` of jobs.

    stain_l, water_l: what goes into `ready_l` · spread_percent: of a field's thirst.
    """

    fields: tuple[FieldLitres, ...]
    likely_l: float
    ready_l: float
    stain_l: float
    water_l: float
    certainty_percent: float
    spread_percent: float
    area_m2: float


def litres_of(
    settled: SettledJob, plan: Plan, coat: SettledCoat, way: Way, rooms: Sequence[str]
) -> NextLitres:
    """The mix of a coat laid that way in these rooms, by the fields of `coat` in the plan."""
    fields = [
        own for field in plan.fields
        if field.coat == coat.id and (own := _field(plan, field, way, frozenset(rooms))) is not None
    ]  # fmt: skip
    likely = [one.likely_l for one in fields]
    share = FIELD_SHARE if coat.field_share is None else coat.field_share
    belief = first_belief(coat.spread_percent, field_share=share)
    chance_dry = 1 - settled.certainty_percent / 100
    ready = belief.enough_for_all_l(likely, chance_dry=chance_dry) if likely else 0.0
    stain = ready / (1 + way.water_parts)
    return NextLitres(
        fields=tuple(fields), likely_l=sum(likely), ready_l=ready, stain_l=stain,
        water_l=ready - stain, certainty_percent=settled.certainty_percent,
        spread_percent=coat.spread_percent, area_m2=sum(one.area_m2 for one in fields),
    )  # fmt: skip


def _field(plan: Plan, field: Field, way: Way, rooms: frozenset[str]) -> FieldLitres | None:
    """Litres of a field by its bands; by area where not all its rooms are meant."""
    own = tuple(room for room in field.rooms if room in rooms)
    if not own:
        return None
    area = {one.id: one.polygon.shape.area for one in plan.inputs.floor.rooms}
    whole = sum(area.get(room, 0.0) for room in field.rooms) or field.area_m2
    share = sum(area.get(room, 0.0) for room in own) / whole
    planned = sum(band.litres for band in field.bands)
    per_m2 = plan.inputs.l_per_m2[field.coat]
    return FieldLitres(
        field=field.id, rooms=own, area_m2=field.area_m2 * share,
        likely_l=planned * share * way.l_per_m2 / per_m2,
    )  # fmt: skip
