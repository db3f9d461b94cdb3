"""Drums of the wash day: how many, how heavy, where they may stand. Pure."""

from __future__ import annotations

from farwall.acid.rinse_water import (
    DRUM_ACROSS_M,
    DRUM_EMPTY_KG,
    DRUM_FILL,
    DRUM_L,
    DrumNeed,
    drums_for,
)
from farwall.facts.plan import Plan
from farwall.facts.washing import Washing
from farwall.job.acid_day.washing.noun import DrumsTold, Ends

ONE_M2 = 1.0


def drums_told(washing: Washing, plan: Plan, all_l: Ends) -> DrumsTold:
    """The drums for the water of the day, held against what is there and what a floor bears."""
    told = washing.drums
    need, most = (_need(washing, litres or 0.0) for litres in (all_l.likely, all_l.high))
    return DrumsTold(
        size_l=told.size_l or DRUM_L,
        holds_l=need.holds_l,
        full=need.full,
        full_high=most.full,
        spares=need.spares,
        full_kg=need.full_kg,
        under_kg_m2=need.under_kg_m2,
        had=told.count,
        enough=None if told.count is None else told.count >= need.count,
        van_full=None if washing.van_load_kg is None else int(washing.van_load_kg // need.full_kg),
        square_m=None if need.square_m is None else max(need.square_m, DRUM_ACROSS_M),
        floor=_floor(washing, need),
        at=told.at,
        room=_room(plan, told.at),
    )


def _need(washing: Washing, litres: float) -> DrumNeed:
    told = washing.drums
    share = DRUM_FILL if told.fill_percent is None else told.fill_percent / 100
    return drums_for(
        litres,
        size_l=told.size_l or DRUM_L,
        fill=max(share, 0.01),
        empty_kg=DRUM_EMPTY_KG if told.empty_kg is None else told.empty_kg,
        floor_kg_m2=washing.floor_load_kg_m2,
    )


def _floor(washing: Washing, need: DrumNeed) -> str:
    """Whether a full drum may stand there: on the ground yes, above a room only as told.

    `fine` · `spread`: each wants more floor than it stands on, `square_m` · `ask`: nobody told
    what the floor bears, or whether a room lies below · `no`: it wants more than one square metre
    for itself and the one who tips it.
    """
    if washing.upstairs is False:
        return "fine"
    bears = washing.floor_load_kg_m2
    if bears is None:
        return "ask"
    if bears >= need.under_kg_m2:
        return "fine"
    return "spread" if need.full_kg / bears <= ONE_M2 else "no"


def _room(plan: Plan, at: str) -> str:
    """The room that a place is named after, empty where it names none."""
    named = at.strip().casefold()
    for room in plan.inputs.floor.rooms:
        if named and named in {room.id.casefold(), room.label.casefold()}:
            return room.id
    return ""
