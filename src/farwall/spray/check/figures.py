"""`edited`: figures that do not follow from the rest of the plan."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise

from farwall.spray.check.edges import Edge
from farwall.spray.check.nouns import (
    LITRE,
    SHARE,
    TIME_MIN,
    Band,
    Fault,
    Field,
    Mix,
    PlanRead,
    Refill,
    area_slack,
)

WIDEST_OVERLAP_M = 0.305
"""12 inches: more than is kept wet of an earlier band."""


def edited(plan: PlanRead, edges: Sequence[Edge], peaks: Mapping[str, float]) -> Iterator[Fault]:
    """Every derived figure of the plan that is wrong."""
    yield from _hash(plan)
    yield from _ids(plan)
    borders = _borders(edges)
    for field in plan.fields:
        yield from _field(field, plan)
        yield from _peak(field, peaks[field.id])
        for band in field.bands:
            yield from _band(band, plan, borders[band])
        for refill in field.refills:
            yield from _refill(refill, field, plan)
    yield from _crew(plan)
    for coat in {field.coat: None for field in plan.fields}:
        yield from _order(coat, plan)
        yield from _mixes(coat, plan)


def _wrong(field: Field, what: str, at_min: float | None = None) -> Fault:
    return Fault("edited", field.id, field.start_min if at_min is None else at_min, what)


def _hash(plan: PlanRead) -> Iterator[Fault]:
    if plan.inputs_hash.lower() != plan.inputs_hash_found:
        what = (
            f"`inputs_hash` says {plan.inputs_hash[:12]!r}…, the inputs themselves give "
            f"{plan.inputs_hash_found[:12]!r}…: they were changed after planning."
        )
        yield Fault("edited", "", 0.0, what)


def _ids(plan: PlanRead) -> Iterator[Fault]:
    for twin, count in Counter(field.id for field in plan.fields).items():
        if count > 1:
            yield Fault("edited", twin, 0.0, f"The id {twin!r} is given to {count} fields.")
    for (field, band_id), count in Counter((b.field, b.id) for b in plan.bands).items():
        if count > 1:
            what = f"The id {band_id!r} is given to {count} bands of field {field}."
            yield Fault("edited", field, 0.0, what)


def _field(field: Field, plan: PlanRead) -> Iterator[Fault]:
    rooms = {room.id for room in plan.house.rooms}
    for room in sorted(set(field.rooms) - rooms):
        yield _wrong(field, f"Field {field.id} names room {room!r}, which the floor has not.")
    if field.coat not in plan.coats:
        yield _wrong(field, f"Field {field.id} is of coat {field.coat!r}, which no input names.")
    area_m2 = sum(band.shape.area for band in field.bands)
    if abs(area_m2 - field.area_m2) > area_slack(area_m2):
        what = f"Field {field.id} says {field.area_m2:.2f} m², its bands have {area_m2:.2f} m²."
        yield _wrong(field, what)
    if field.bands:
        yield from _span(field, plan)


def _span(field: Field, plan: PlanRead) -> Iterator[Fault]:
    """A field begins with its first band or the walk and refill before it, and ends likewise.

    Of two who sprayed each went at his own pace: in the past their bands need not be in order.
    """
    first, last = min(b.begins for b in field.bands), max(b.ends for b in field.bands)
    starts = [first, *(r.at_min for r in field.refills), *(w.path[0, 2] for w in field.walks)]
    ends = [last, *(r.ready_min for r in field.refills), *(w.path[-1, 2] for w in field.walks)]
    if not min(starts) - TIME_MIN <= field.start_min <= first + TIME_MIN:
        what = f"Field {field.id} says that it starts at {field.start_min:.2f} min; its first "
        yield _wrong(field, what + f"band begins at {first:.2f} min.")
    if not last - TIME_MIN <= field.end_min <= max(ends) + TIME_MIN:
        what = f"Field {field.id} says that it ends at {field.end_min:.2f} min; its last band "
        yield _wrong(field, what + f"is done at {last:.2f} min.")
    ordered = sorted(field.bands, key=lambda band: band.order)
    for before, after in pairwise(ordered):
        by_two = before.who != after.who and plan.is_past(max(before.ends, after.ends))
        early = after.begins < before.begins - TIME_MIN and not by_two
        if before.order == after.order or early:
            what = f"Bands {before.id} and {after.id} of field {field.id} are numbered "
            what += f"{before.order} and {after.order}, and begin at {before.begins:.2f} and "
            yield _wrong(field, what + f"{after.begins:.2f} min.", after.begins)


def _peak(field: Field, peak_min: float) -> Iterator[Fault]:
    if abs(field.peak_age_min - peak_min) > TIME_MIN:
        what = f"Field {field.id} says that its oldest edge is {field.peak_age_min:.2f} min old; "
        yield _wrong(field, what + f"the replay finds {peak_min:.2f} min.")


def _band(band: Band, plan: PlanRead, border_m: float) -> Iterator[Fault]:
    where = f"Band {band.id} of field {band.field}"
    if abs(band.start_min - band.begins) > TIME_MIN or abs(band.end_min - band.ends) > TIME_MIN:
        what = f"{where} says {band.start_min:.2f} to {band.end_min:.2f} min, its path goes from "
        what += f"{band.begins:.2f} to {band.ends:.2f} min."
        yield Fault("edited", band.field, band.begins, what)
    coat = plan.coats.get(band.coat)
    if coat is None:
        return
    low = band.shape.area * coat.l_per_m2
    high = (band.shape.area + border_m * WIDEST_OVERLAP_M) * coat.l_per_m2
    slack = max(LITRE, SHARE * high)
    if not low - slack <= band.litres <= high + slack:
        what = f"{where} says {band.litres:.2f} L; its {band.shape.area:.2f} m² take {low:.2f} L, "
        what += f"and {high:.2f} L with the widest overlap."
        yield Fault("edited", band.field, band.begins, what)


def _borders(edges: Sequence[Edge]) -> Mapping[Band, float]:
    """Metres along which each band can overlap others of its field. [m]"""
    borders: defaultdict[Band, float] = defaultdict(float)
    for edge in edges:
        if edge.later.field == edge.earlier.field:
            borders[edge.later] += edge.line.length
            # Two sprayers side by side: either may lap onto the other's band.
            if edge.later.begins < edge.earlier.ends:
                borders[edge.earlier] += edge.line.length
    return borders


def _refill(refill: Refill, field: Field, plan: PlanRead) -> Iterator[Fault]:
    what = f"The refill of field {field.id} at {refill.at_min:.2f} min"
    if refill.litres < 0 or refill.minutes < 0:
        says = f"{what} has {refill.litres:.2f} L in {refill.minutes:.2f} min."
        yield _wrong(field, says, refill.at_min)
    tools = [m for m in (plan.tools.refill_min, plan.tools.swap_min) if m is not None]
    first = min((b.begins for b in plan.bands if b.coat == field.coat), default=0.0)
    quickest = min(tools, default=0.0)
    if plan.is_past(refill.ready_min):
        return
    if refill.at_min >= first and refill.minutes < quickest - TIME_MIN:
        says = f"{what} takes {refill.minutes:.2f} min; the tools say {quickest:.2f} min."
        yield _wrong(field, says, refill.at_min)


def _crew(plan: PlanRead) -> Iterator[Fault]:
    """Somebody sprays, walks or fills who is not in the crew."""
    known = ["sprayer", *(f"sprayer {n}" for n in range(2, plan.sprayers + 1))]
    known += ["helper", "helper to sprayer 2"] if plan.helper else []
    for field in plan.fields:
        names = {band.who for band in field.bands} | {walk.who for walk in field.walks}
        names |= {refill.by for refill in field.refills}
        for name in sorted(names - set(known)):
            yield _wrong(field, f"Field {field.id} counts on {name!r}, who is not in the crew.")


def _order(coat: str, plan: PlanRead) -> Iterator[Fault]:
    fields = [field for field in plan.fields if field.coat == coat and field.bands]
    for before, after in pairwise(sorted(fields, key=lambda field: field.order)):
        late = min(band.begins for band in before.bands)
        soon = min(band.begins for band in after.bands)
        if before.order == after.order or soon < late - TIME_MIN:
            what = f"Fields {before.id} and {after.id} are numbered {before.order} and "
            what += f"{after.order}, and begin at {late:.2f} and {soon:.2f} min."
            yield _wrong(after, what, soon)


def _mixes(coat: str, plan: PlanRead) -> Iterator[Fault]:
    """Enough mix for every coat, true to its cut, and every field served."""
    bands = [band for band in plan.bands if band.coat == coat]
    mixes = [mix for mix in plan.mixes if mix.coat == coat]
    needed = sum(band.litres for band in bands)
    mixed = sum(mix.stain_l + mix.water_l + mix.acid_l for mix in mixes)
    if mixed < needed - max(LITRE, SHARE * needed):
        what = f"Coat {coat} sprays {needed:.2f} L, and {mixed:.2f} L are mixed for it."
        yield Fault("edited", "", 0.0, what)
    for mix in mixes:
        yield from _cut(mix, plan)
    served = {field for mix in mixes for field in mix.fields}
    for field in plan.fields:
        if field.coat == coat and field.bands and field.id not in served:
            yield _wrong(field, f"Field {field.id} is in no mix of coat {coat}.")


def _cut(mix: Mix, plan: PlanRead) -> Iterator[Fault]:
    coat = plan.coats.get(mix.coat)
    if coat is None or coat.cut is None:
        return
    stain, water = coat.cut
    whole = mix.stain_l + mix.water_l
    meant = whole * stain / (stain + water) if stain + water > 0 else mix.stain_l
    if abs(meant - mix.stain_l) > max(LITRE, SHARE * whole):
        what = f"Mix {mix.id} has {mix.stain_l:.2f} L of stain in {whole:.2f} L; the cut "
        what += f"{stain:g}:{water:g} of coat {mix.coat} asks for {meant:.2f} L."
        yield Fault("edited", "", 0.0, what)
