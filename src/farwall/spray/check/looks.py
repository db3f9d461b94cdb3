"""Mix inside a field: whether the look comes early enough to be boxed, of one lot, by somebody.

By the plan's own litres, no belief of thirst: a batch takes `MIX_MIN` to make, the helper's
minutes at a tank not counted, and `BOX_L` must be left when it is there. The first look of a field
must bear a slab `BEARS` times as thirsty as planned; the later ones go by what is left.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import fsum

from farwall.spray.check.nouns import (
    LITRE,
    TIME_MIN,
    Band,
    Fault,
    Field,
    Look,
    Mix,
    PlanRead,
)

MIX_MIN = 4.0
"""Measuring, stirring and boxing what is set out beside the tub. Rank: guess."""
BOX_L = 0.5
"""Less than this does nothing for the shade of a new mix. Rank: guess."""
BEARS = 1.1
"""A slab a tenth thirstier than planned is no rare one. Rank: guess."""
_OPEN = frozenset({"cased", "saw cut"})
"""Stop lines without a leaf."""


def look_faults(plan: PlanRead) -> Iterator[Fault]:
    """`look-late`, `look-alone`, `other-lot`, `two-shades`, and `edited` looks."""
    for coat in {mix.coat: None for mix in plan.mixes}:
        mixes = [mix for mix in plan.mixes if mix.coat == coat]
        yield from _lots(mixes)
        yield from _alone(mixes, plan)
        if plan.so_far is None:
            yield from _by_the_day(coat, mixes, plan)
    fields = {field.id: field for field in plan.fields}
    seen: set[str] = set()
    for look in plan.looks:
        field = fields.get(look.field)
        if field is None or look.band not in {band.id for band in field.bands}:
            what = f"A look before band {look.band!r} of field {look.field!r}: there is no such."
            yield Fault("edited", look.field, look.at_min, what)
            continue
        yield from _figures(look, field)
        if look.field not in seen and not _begun(field, plan):
            yield from _early(look, field)
        seen.add(look.field)


def _begun(field: Field, plan: PlanRead) -> bool:
    return plan.so_far is not None and field.start_min <= plan.so_far.at_min


def _lots(mixes: Sequence[Mix]) -> Iterator[Fault]:
    """Every mix of a coat is of the same lots; inside a field of one."""
    for mix in mixes[1:]:
        if set(mix.lots) != set(mixes[0].lots):
            what = f"Mix {mix.id} is of lots {_named(mix.lots)}, {mixes[0].id} of "
            what += f"{_named(mixes[0].lots)}: two lots side by side are two shades."
            yield Fault("other-lot", next(iter(mix.fields), ""), 0.0, what)
    for mix in mixes:
        if mix.before_band and len(set(mix.lots)) > 1:
            what = f"Mix {mix.id} is made inside a field, of lots {_named(mix.lots)}, not of one."
            yield Fault("other-lot", next(iter(mix.fields), ""), 0.0, what)


def _named(lots: Sequence[str]) -> str:
    return ", ".join(lots) if lots else "unknown"


def _alone(mixes: Sequence[Mix], plan: PlanRead) -> Iterator[Fault]:
    for mix in mixes:
        if mix.before_band and not plan.helper:
            what = (
                f"Mix {mix.id} is made before band {mix.before_band} while the field is sprayed, "
            )
            yield Fault(
                "look-alone", next(iter(mix.fields), ""), 0.0, what + "and there is no helper."
            )


def _by_the_day(coat: str, mixes: Sequence[Mix], plan: PlanRead) -> Iterator[Fault]:
    """What is in the tub when each mix is made, if all goes as planned."""
    fields = sorted((f for f in plan.fields if f.coat == coat and f.bands), key=_order)
    have_l = 0.0
    for number, field in enumerate(fields):
        own = [mix for mix in mixes if mix.fields[:1] == (field.id,)]
        at_line = [mix for mix in own if not mix.before_band]
        if number and at_line and have_l < BOX_L - LITRE and _seen(field, fields[:number]):
            what = (
                f"Mix {at_line[0].id} is begun with {max(have_l, 0.0):.2f} L left to box it with, "
            )
            what += f"and field {field.id} is seen beside what is done: two shades side by side."
            yield Fault("two-shades", field.id, field.start_min, what)
        have_l += fsum(mix.litres for mix in at_line)
        for mix in own:
            if mix.before_band:
                yield from _boxed(mix, field, have_l)
                have_l += mix.litres
        have_l -= fsum(band.litres for band in field.bands)


def _boxed(mix: Mix, field: Field, begin_l: float) -> Iterator[Fault]:
    band = next((one for one in field.bands if one.id == mix.before_band), None)
    if band is None:
        what = (
            f"Mix {mix.id} is made before band {mix.before_band!r}, which field {field.id} has not."
        )
        yield Fault("edited", field.id, field.start_min, what)
        return
    ready = _ready(band.begins, field)
    left_l = begin_l - _sprayed(field.bands, ready)
    if left_l < BOX_L - LITRE:
        what = f"Mix {mix.id}, begun before band {band.id}, is there at {ready:.2f} min; then "
        what += f"{max(left_l, 0.0):.2f} L are left to box it with, {BOX_L:g} L are wanted."
        yield Fault("look-late", field.id, band.begins, what)


def _early(look: Look, field: Field) -> Iterator[Fault]:
    """The first look of a field bears a slab somewhat thirstier than planned."""
    band = next(one for one in field.bands if one.id == look.band)
    until_l = _sprayed(field.bands, _ready(band.begins, field))
    bears = (look.begin_l - BOX_L) / until_l if until_l > 0 else BEARS
    if bears < BEARS - 1e-6:
        what = f"The first look into field {field.id}, before band {band.id}, bears {bears:.2f} "
        what += f"times the planned mix until a batch is boxed, not {BEARS:g}."
        yield Fault("look-late", field.id, band.begins, what)


def _figures(look: Look, field: Field) -> Iterator[Fault]:
    band = next(one for one in field.bands if one.id == look.band)
    done_l = _sprayed(field.bands, band.begins)
    to_do_l = fsum(one.litres for one in field.bands) - done_l
    wrong = abs(look.at_min - band.begins) > TIME_MIN
    slack = max(0.05, 0.01 * (done_l + to_do_l))
    if wrong or abs(look.done_l - done_l) > slack or abs(look.to_do_l - to_do_l) > slack:
        what = (
            f"The look before band {band.id} says {look.at_min:.2f} min, {look.done_l:.2f} L done "
        )
        what += f"and {look.to_do_l:.2f} L to do; the bands say {band.begins:.2f} min, "
        what += f"{done_l:.2f} and {to_do_l:.2f} L."
        yield Fault("edited", field.id, band.begins, what)


def _ready(at_min: float, field: Field) -> float:
    """When a batch begun then is there; the helper mixes nothing while at a tank."""
    helps = [fill for fill in field.refills if fill.by.startswith("helper")]
    away = [(fill.at_min, fill.ready_min) for fill in helps]
    away += [
        (float(walk.path[0, 2]), float(walk.path[-1, 2]))
        for walk in field.walks
        if walk.who == "helper"
    ]
    ready, left = at_min, MIX_MIN
    for begins, ends in sorted(away):
        if ends <= ready:
            continue
        if begins - ready >= left:
            break
        left -= max(begins - ready, 0.0)
        ready = ends
    return ready + left


def _sprayed(bands: Sequence[Band], until_min: float) -> float:
    found = 0.0
    for band in bands:
        lasts = max(band.ends - band.begins, 1e-9)
        found += band.litres * min(max((until_min - band.begins) / lasts, 0.0), 1.0)
    return found


def _seen(field: Field, before: Sequence[Field]) -> bool:
    mine = {line.id for line in field.stop_lines if line.kind in _OPEN}
    return any(mine & {line.id for line in other.stop_lines} for other in before)


def _order(field: Field) -> int:
    return field.order
