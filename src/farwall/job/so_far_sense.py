"""Does what is told of a day fit the plan: every mistake at once, with what to do."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace

from farwall.errors import Mistake, Refused
from farwall.facts.numbered import numbered
from farwall.facts.plan import Band, Field, Plan
from farwall.facts.so_far import Done, SoFar
from farwall.near_word import near_word

HAIR_MIN = 0.001
LITRE = 0.1
"""A tank read this near to the reckoned one is taken for it. Rank: guess."""


def insist_on_sense(plan: Plan, so_far: SoFar) -> None:
    """Raises `Refused` with all that cannot be so."""
    mistakes = [
        *_ids(plan, so_far),
        *_minutes(so_far),
        *_rooms(plan, so_far),
        *_litres(plan, so_far),
        *_second(plan, so_far),
    ]
    if mistakes:
        raise Refused(*mistakes, about="The day so far cannot be like this:")


def bands_by_id(plan: Plan) -> dict[str, Band]:
    """Every band of the plan by its id."""
    return {band.id: band for field in plan.fields for band in field.bands}


def whole_fields(plan: Plan) -> list[Field]:
    """All fields, those left for another day with them, each whole again."""
    left = {field.id: field for field in plan.left}
    fields = [
        replace(field, bands=(*field.bands, *left.pop(field.id).bands))
        if field.id in left
        else field
        for field in plan.fields
    ]
    return [*fields, *left.values()]


def every_band(plan: Plan) -> dict[str, Band]:
    """Every band, also of what is left for another day."""
    return {band.id: band for field in whole_fields(plan) for band in field.bands}


def did_you_mean(word: str, known: list[str]) -> str:
    """The nearest known word, or the first few of them."""
    near = near_word(word, known, alike=0.5)
    return f"Did you mean {near}?" if near else f"It has: {', '.join(known[:12])}."


def _by_numbers(plan: Plan, name: str, known: Sequence[str]) -> tuple[str, list[str]]:
    return numbered(plan, name), [numbered(plan, one) for one in known]


def _ids(plan: Plan, so_far: SoFar) -> Iterator[Mistake]:
    fields = [field.id for field in whole_fields(plan)]
    bands = list(every_band(plan))
    told = [("done", one.id) for one in so_far.done]
    told += [("done", so_far.done_up_to)] if so_far.done_up_to is not None else []
    for where, name in told:
        if name not in fields and name not in bands:
            remedy = did_you_mean(*_by_numbers(plan, name, [*fields, *bands]))
            what = f"the plan has no band or field {numbered(plan, name)}."
            yield Mistake(where, what, remedy)
    hand = so_far.in_hand
    if hand is not None and hand.id not in bands:
        remedy = did_you_mean(*_by_numbers(plan, hand.id, bands))
        yield Mistake("in_hand", f"the plan has no band {numbered(plan, hand.id)}.", remedy)
    if so_far.nothing_done and told:
        what = f"nothing is told to be done, and {numbered(plan, told[0][1])} is."
        yield Mistake("nothing_done", what, "Keep one of the two.")
    for name in {one.id for one in so_far.done if [d.id for d in so_far.done].count(one.id) > 1}:
        yield Mistake("done", f"{name} is told twice.", "Keep one of them.")


def _minutes(so_far: SoFar) -> Iterator[Mistake]:
    now = so_far.at_min
    for one in so_far.done:
        yield from _span(one, now)
    hand = so_far.in_hand
    if hand is not None and hand.start_min is not None and hand.start_min > now + HAIR_MIN:
        what = f"{hand.id} was begun at {hand.start_min:g} min, and now is {now:g} min."
        yield Mistake("in_hand", what, "Tell the minute now as at_min.")


def _span(one: Done, now: float) -> Iterator[Mistake]:
    start, end = one.start_min, one.end_min
    if start is not None and end is not None and end < start:
        yield Mistake("done", f"{one.id} ends at {end:g} min, before it begins at {start:g} min.")
    for minute in (start, end):
        if minute is not None and minute > now + HAIR_MIN:
            what = f"{one.id} is told for {minute:g} min, and now is {now:g} min."
            yield Mistake("done", what, "What is not finished yet is in_hand.")


def _rooms(plan: Plan, so_far: SoFar) -> Iterator[Mistake]:
    known = [room.id for room in plan.inputs.floor.rooms]
    for closed in so_far.closed:
        if closed.room not in known:
            remedy = did_you_mean(closed.room, known)
            yield Mistake("closed", f"the plan has no room {closed.room}.", remedy)
        elif closed.until_min is not None and closed.until_min <= so_far.at_min:
            what = f"{closed.room} is closed until {closed.until_min:g} min, which is past."
            yield Mistake("closed", what, "Leave it out when it is free again.")


def _litres(plan: Plan, so_far: SoFar) -> Iterator[Mistake]:
    tank_l = plan.inputs.tools.tank_l
    if so_far.tank_l is not None and so_far.tank_l > tank_l + LITRE:
        what = f"{so_far.tank_l:g} L is more than the tank takes, {tank_l:g} L."
        yield Mistake("tank_l", what, "What stands beside it is the tub's: tub_l.")
    if so_far.tank_2_l is not None and so_far.tank_2_l > tank_l + LITRE:
        what = f"{so_far.tank_2_l:g} L is more than the tank takes, {tank_l:g} L."
        yield Mistake("tank_2_l", what, "What stands beside it is the tub's: tub_l.")
    in_hand = (so_far.tank_l or 0.0) + (so_far.tank_2_l or 0.0) + (so_far.tub_l or 0.0)
    if so_far.mixed_l is not None and in_hand > so_far.mixed_l + LITRE:
        what = f"{in_hand:g} L are left, and only {so_far.mixed_l:g} L were mixed."
        yield Mistake("mixed_l", what, "Tell all that was mixed for this coat, litres.")


def _second(plan: Plan, so_far: SoFar) -> Iterator[Mistake]:
    told = {"at_2": so_far.at_2, "tank_2_l": so_far.tank_2_l}
    if plan.inputs.crew.sprayers == 2:
        if so_far.sprayers == 1:
            for where in [name for name, value in told.items() if value is not None]:
                what = "the second leaves, and is told of."
                yield Mistake(where, what, "Leave it out, or leave out sprayers=1.")
        return
    for where in [name for name, value in told.items() if value is not None]:
        yield Mistake(where, "the plan is for one sprayer.", "Leave it out.")
    if so_far.sprayers == 2:
        what = "the plan is for one sprayer."
        yield Mistake("sprayers", what, "Plan the job again with a crew of two.")
