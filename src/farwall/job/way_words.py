"""By which door a field is left, in words: ids of doors are a file's own."""

from __future__ import annotations

from farwall.facts.plan import Field, Plan


def way_words(plan: Plan, field: Field) -> str:
    """`the outside door of Hall`, `the door to Hall`, `the saw cut`; an id that leads nowhere
    stays as it is."""
    inputs = plan.inputs
    label = {room.id: room.label for room in inputs.floor.rooms}
    by_exit = {one.id: one.opening for one in inputs.exits}
    wanted = by_exit.get(field.exit, field.exit)
    opening = next((one for one in inputs.openings if one.id == wanted), None)
    if opening is None:
        cuts = {one.id for one in inputs.saw_cuts if one.id}
        return "the saw cut" if field.exit in cuts else field.exit
    if len(opening.rooms) == 1:
        return f"the outside door of {label[opening.rooms[0]]}"
    beyond = [room for room in opening.rooms if room not in field.rooms]
    if not beyond:
        return f"the door inside {label[opening.rooms[0]]}"
    word = "door" if opening.kind == "door" else "opening"
    return f"the {word} to {label[beyond[0]]}"
