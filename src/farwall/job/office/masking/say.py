"""The masking in words, for a terminal."""

from __future__ import annotations

from farwall.job.office.masking.nouns import ItemMasked, Masked, RoomMasked
from farwall.job.office.masking.rules import STAGES
from farwall.units import M2_PER_FT2, M_PER_FT, M_PER_IN


def masked_said(found: Masked) -> tuple[str, ...]:
    """Lines for a terminal: what is masked in all, then by room, then what is taken out."""
    wall = (
        f"{_feet(found.wall_m)} of wall, {_many(found.jambs, 'side')} of frames, "
        f"{_many(found.dams, 'outside door')} to dam"
    )
    rule = STAGES[found.stage]  # type: ignore[index]
    lines = [wall, *_in_all(found), rule.words]
    lines += [_room(one) for one in found.rooms]
    lines += [_item(one, found) for one in found.items]
    return (*lines, *found.warnings)


def _in_all(found: Masked) -> list[str]:
    film = ", ".join(f"{_feet(long)} of {_tall(high)}" for high, long in found.film_lengths_m)
    area = f"{found.film_m2 / M2_PER_FT2:.0f} ft² ({found.film_m2:.0f} m²)"
    rolled = (
        f"tape {_feet(found.tape_m)}, cling film around jambs {_feet(found.wrap_m)}, putty under "
        f"{found.jamb_feet} jamb feet"
    )
    rest = (
        f"{_many(found.doors, 'door')} with {_feet(found.gap_m)} of gap, {found.corners} corners, "
        f"kicks {_feet(found.kick_m)}, dams {_feet(found.dam_m)}"
    )
    return [f"film {area}: {film}" if film else f"film {area}", rolled, rest]


def _room(one: RoomMasked) -> str:
    high = f"film {_tall(one.film_m)}" if one.film_m else "no film on walls"
    return f"{one.number} {one.name}: {_feet(one.wall_m)}, {high}, {_many(one.jambs, 'frame')}"


def _item(one: ItemMasked, found: Masked) -> str:
    names = {room.room: room.name for room in found.rooms}
    where = f", {names[one.room]}" if one.room in names else ""
    deed = "take out" if one.take_out else "mask"
    return f"{one.letter} {deed} {one.count} {one.kind}{where}"


def _many(count: int, what: str) -> str:
    return f"{count} {what}" if count == 1 else f"{count} {what}s"


def _feet(metres: float) -> str:
    return f"{metres / M_PER_FT:.0f} ft ({metres:.1f} m)"


def _tall(metres: float) -> str:
    return f"{metres / M_PER_IN:.0f} in ({metres:.2f} m)"
