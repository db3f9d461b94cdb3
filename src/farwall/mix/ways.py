"""Which way a coat is mixed, by the facts of the job; its gates and looks, as a plan has them."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.look import Look, MixWay
from farwall.mix.gate import PAPER_FACTORS, Gate, StartAt, taught
from farwall.mix.lean import Ahead, begin_need_l, lean_mixes, look_tables, looks_of
from farwall.mix.look import BandNeed
from farwall.mix.thirst import Thirst
from farwall.nouns import dataclass


@dataclass(frozen=True)
class FieldNeed:
    """One field in one coat: the litres of cut mix that its bands will likely take.

    busy: minutes in which the helper is at a tank. seen: no leaf lies between it and floor of the
    coat done before. Without bands a coat is mixed at stop lines only.
    """

    id: str
    coat: str
    litres: float
    bands: tuple[BandNeed, ...] = ()
    busy: tuple[tuple[float, float], ...] = ()
    seen: bool = False


def ahead_of(own: Sequence[FieldNeed], chances: Sequence[float]) -> tuple[Ahead, ...]:
    """The fields of one coat in order, as the leaner way takes them."""
    return tuple(
        Ahead(one.litres, chance, one.seen, one.bands, one.busy)
        for one, chance in zip(own, chances, strict=True)
    )


def way_of(
    coat: str,
    own: Sequence[FieldNeed],
    belief: Thirst,
    chances: Sequence[float],
    *,
    helper: bool,
    lots: Sequence[str],
) -> MixWay:
    """The way a coat is mixed: the leaner one with a helper, one lot, and a field to look into."""
    if not helper:
        return MixWay(coat, "at stop lines", "nobody is there to mix while the sprayer sprays")
    if len(set(lots)) > 1:
        why = f"lots {', '.join(sorted(set(lots)))} differ: box them into one and give it one name"
        return MixWay(coat, "at stop lines", why)
    if not own[-1].bands or belief.variance == 0:
        return MixWay(coat, "at stop lines", "there is nothing for a look to tell")
    if looks_of(ahead_of(own, chances)[-1], _before_last(own, belief)):
        return MixWay(coat, "look inside", f"a helper, one lot, time to box inside {own[-1].id}")
    why = f"{own[-1].id} is done before a batch could be boxed inside it"
    return MixWay(coat, "in parts" if len(own) > 1 else "at stop lines", why)


def lean_gates(
    coat: str, own: Sequence[FieldNeed], belief: Thirst, chances: Sequence[float]
) -> tuple[Gate, ...]:
    """The start rule of each field by the leaner way, as `gate.gates` gives it by the other."""
    ahead, made = ahead_of(own, chances), []
    for number, one in enumerate(own):
        before = [each.litres for each in own[:number]]
        starts = tuple(
            StartAt(factor, begin_need_l(ahead[number:], taught(belief, before, factor)))
            for factor in (PAPER_FACTORS if before else PAPER_FACTORS[:1])
        )
        made.append(Gate(one.id, coat, one.litres, starts[0].start_l, starts, chances[number]))
    return tuple(made)


def looks_of_coat(
    way: MixWay, own: Sequence[FieldNeed], belief: Thirst, chances: Sequence[float]
) -> tuple[Look, ...]:
    """The looks into the coat's last field; none unless its way is to look inside."""
    if way.way != "look inside":
        return ()
    ahead = ahead_of(own, chances)
    mixed_at = lean_mixes(ahead, belief)[-1].band
    return tuple(
        Look(
            coat=way.coat,
            field=own[-1].id,
            band=place.band,
            after=place.after,
            at_min=round(place.at_min, 2),
            ready_min=round(place.ready_min, 2),
            done_l=place.done_l,
            until_ready_l=place.until_ready_l,
            to_do_l=place.to_do_l,
            begin_l=ifs[0].begin_l,
            bears=place.bears(ifs[0].begin_l),
            mixes=place.band == mixed_at,
            ifs=tuple(ifs),
        )
        for place, ifs in look_tables(ahead, belief)
    )


def _before_last(own: Sequence[FieldNeed], belief: Thirst) -> Thirst:
    """The belief at the last field's start, if all went as believed."""
    for one in own[:-1]:
        belief = belief.after(likely_l=one.litres, used_l=one.litres * belief.factor)
    return belief
