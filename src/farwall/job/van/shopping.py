"""What is there for each need, and what has to be bought."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.van import Need, Shopping, Stock, Van

HAIR = 1e-6


def shopping(van: Van, needs: Sequence[Need], *, on: str) -> tuple[Shopping, ...]:
    """A line for each need, in their order. on: the day of the job, ISO; empty: no age counts.

    What is past its day is not counted. Of a stain that the job names lots of, only these are;
    else of one lot as much as there is, for lots that are mixed have to be boxed: where one lot
    does it alone that one is taken, and where several are needed that is told.
    """
    return tuple(_line(van, need, on) for need in needs)


def _line(van: Van, need: Need, on: str) -> Shopping:
    own = [one for one in van.stock if one.kind == need.kind and same(one.of, need.of)]
    own = [one for one in own if one.unit == need.unit and one.amount > HAIR]
    old = [one for one in own if on and one.good_until and one.good_until < on]
    good = [one for one in own if one not in old]
    mind = [f"{one.id} was good until {one.good_until}: not counted" for one in old]
    if need.lots:
        other = [one for one in good if one.lot not in need.lots]
        good = [one for one in good if one.lot in need.lots]
        mind += [f"{one.id} is of lot {one.lot or 'unknown'}, not the sample's" for one in other]
    taken = _taken(good, need.amount) if need.kind == "stain" else good
    there = sum(one.amount for one in taken)
    lots = sorted({one.lot or "unknown" for one in taken})
    if need.kind == "stain" and len(lots) > 1:
        mind.append(f"lots {', '.join(lots)}: box them before anything is cut")
    elif need.kind == "stain" and taken and there < need.amount - HAIR:
        mind.append(f"lot {lots[0]} is not enough: buy of the same, or box old and new")
    buy = max(need.amount - there, 0.0)
    return Shopping(
        need, round(min(there, need.amount), 3), tuple(one.id for one in taken),
        round(buy, 3) if buy > HAIR else 0.0, "; ".join(mind),
    )  # fmt: skip


def _taken(good: Sequence[Stock], amount: float) -> list[Stock]:
    """One lot where one does it: the oldest such; else all, the fullest lot first."""
    lots: dict[str, list[Stock]] = {}
    for one in good:
        lots.setdefault(one.lot, []).append(one)
    held = {lot: sum(one.amount for one in ones) for lot, ones in lots.items()}
    enough = [lot for lot in lots if lot and held[lot] >= amount - HAIR]
    if enough:
        oldest = min(enough, key=lambda lot: (min(one.opened or "~" for one in lots[lot]), lot))
        return lots[oldest]
    taken: list[Stock] = []
    for lot in sorted(lots, key=lambda lot: (-held[lot], lot)):
        if sum(one.amount for one in taken) >= amount - HAIR:
            break
        taken += lots[lot]
    return taken


def same(one: str, other: str) -> bool:
    """The same name, however it is written."""
    return one.casefold() == other.casefold()
