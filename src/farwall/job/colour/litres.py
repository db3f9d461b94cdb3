"""How much of the next coat to mix: by field, and in all with the reserve of the gate. Pure."""

from __future__ import annotations

from collections.abc import Sequence

import shapely

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
    """Litres of a field by its bands; by what of each lies there where not all rooms are meant."""
    own = tuple(room for room in field.rooms if room in rooms)
    if not own:
        return None
    parts = _parts(plan, field, own)
    planned_l = sum(band.litres * part for band, part in zip(field.bands, parts, strict=True))
    area_m2 = sum(
        band.polygon.shape.area * part for band, part in zip(field.bands, parts, strict=True)
    )
    per_m2 = plan.inputs.l_per_m2[field.coat]
    return FieldLitres(
        field=field.id, rooms=own, area_m2=area_m2, likely_l=planned_l * way.l_per_m2 / per_m2
    )


def _parts(plan: Plan, field: Field, rooms: Sequence[str]) -> list[float]:
    """Which share of each band lies in these rooms."""
    if set(rooms) >= set(field.rooms):
        return [1.0] * len(field.bands)
    here = shapely.union_all(
        [room.polygon.shape for room in plan.inputs.floor.rooms if room.id in rooms]
    )
    shapes = [band.polygon.shape for band in field.bands]
    return [float(one.intersection(here).area / one.area) if one.area else 0.0 for one in shapes]
