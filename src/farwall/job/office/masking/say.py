"""The masking in words, for a terminal."""

from __future__ import annotations

from farwall.job.office.masking.nouns import ItemMasked, Masked, RoomMasked
from farwall.job.office.masking.rules import STAGES
from farwall.nouns import dataclass
from farwall.units import M2_PER_FT2, M_PER_FT, M_PER_IN, counted


def masked_said(found: Masked, *, us: bool = True) -> tuple[str, ...]:
    """Lines for a terminal: what is masked in all, then by room, then what is taken out.

    us: feet first, else metres first.
    """
    told = _Told(us=us)
    wall = (
        f"{told.long(found.wall_m)} of wall, {counted(found.jambs, 'side')} of frames, "
        f"{counted(found.dams, 'outside door')} to dam"
    )
    rule = STAGES[found.stage]  # type: ignore[index]
    lines = [wall, *_in_all(found, told), rule.words]
    lines += [_room(one, told) for one in found.rooms]
    lines += [_item(one, found) for one in found.items]
    return (*lines, *found.warnings)


@dataclass(frozen=True)
class _Told:
    """Sizes both ways, the reader's own first."""

    us: bool

    def long(self, metres: float) -> str:
        return self._both(f"{metres / M_PER_FT:.0f} ft", f"{metres:.1f} m")

    def tall(self, metres: float) -> str:
        return self._both(f"{metres / M_PER_IN:.0f} in", f"{metres:.2f} m")

    def area(self, area_m2: float) -> str:
        return self._both(f"{area_m2 / M2_PER_FT2:.0f} ft²", f"{area_m2:.0f} m²")

    def _both(self, feet: str, metres: str) -> str:
        return f"{feet} ({metres})" if self.us else f"{metres} ({feet})"


def _in_all(found: Masked, told: _Told) -> list[str]:
    hung = found.film_lengths_m
    film = ", ".join(f"{told.long(long)} of {told.tall(high)}" for high, long in hung)
    area = told.area(found.film_m2)
    rolled = (
        f"tape {told.long(found.tape_m)}, cling film around jambs {told.long(found.wrap_m)}, putty "
        f"under {counted(found.jamb_feet, 'jamb foot', 'jamb feet')}"
    )
    rest = (
        f"{counted(found.doors, 'door')} with {told.long(found.gap_m)} of gap, "
        f"{counted(found.corners, 'corner')}, kicks {told.long(found.kick_m)}, "
        f"dams {told.long(found.dam_m)}"
    )
    return [f"film {area}: {film}" if film else f"film {area}", rolled, rest]


def _room(one: RoomMasked, told: _Told) -> str:
    high = f"film {told.tall(one.film_m)}" if one.film_m else "no film on walls"
    wall = f"{one.number} {one.name}: {told.long(one.wall_m)}"
    return f"{wall}, {high}, {counted(one.jambs, 'frame')}"


def _item(one: ItemMasked, found: Masked) -> str:
    names = {room.room: room.name for room in found.rooms}
    where = f", {names[one.room]}" if one.room in names else ""
    deed = "take out" if one.take_out else "mask"
    return f"{one.letter} {deed} {one.count} {one.kind}{where}"
