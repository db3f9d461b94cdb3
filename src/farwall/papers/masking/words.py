"""What is said of each thing that is masked, and how masking is hung and taken down."""

from __future__ import annotations

from farwall.facts.supplies import GapSeal
from farwall.job.office.masking import ItemMasked, RoomMasked
from farwall.papers.masking.measures import tall
from farwall.papers.wall_clock import Units
from farwall.phrasebook import told

DEEDS = {
    "drain": "plug it, film over it",
    "register": "tape it shut, air handling off",
    "metal": "wrap it, or better take it out",
    "kick": "film from the kick to the counter",
    "tub": "film over the apron, tape along its foot on the tub",
    "appliance": "wrap it whole: fumes pit stainless within hours",
    "stair": "film along the strings",
    "post": "film all round",
    "outside door": "dam of towel and film",
    "other": "wrap it",
}
"""What is done with a thing that stays."""

_FOOT = (
    "Baseboards come off if they can. Film goes up from the bottom: tape on the wall or the face "
    "of the base, 1/8 in (3 mm) above the slab."
)
_GHOST = (
    "No tape on the slab, anywhere: it leaves a ghost that no coat hides. What must stay down on "
    "the floor is held by weight."
)
_LAPS = (
    "Film laps film by 6 in (15 cm); an upright strip of tape closes it where it ends at a frame. "
    "Its top is held to the wall, so that it cannot fall on wet floor."
)
_FRAMES = (
    "Both jambs and the head of each frame in cling film; removable putty under the feet, for end "
    "grain wicks stain up."
)
_GAPS: dict[GapSeal, str] = {
    "tape": "Tape over the gap between door and frame.",
    "foam": "Foam strip pressed into the gap between door and frame, both sides and the head.",
}
_AIR = "Drains and floor boxes plugged, registers taped, the return shut, air handling off."
_DAMS = (
    "Outside doors: wet the slab outside, lay a towel rolled in film across, with its returns. "
    "Stain walks out on boots."
)


def hanging(gaps_by: GapSeal) -> tuple[str, ...]:
    """How it is hung, to be ticked off; gaps_by: what closes the gaps of doors."""
    return (_FOOT, _GHOST, _LAPS, f"{_FRAMES} {_GAPS[gaps_by]}", _AIR, _DAMS)


SAME_DAY = (
    "The same day that stain goes down, lift the film in each room and look for mist on walls, "
    "jambs, tubs and metal. Flush at once with bicarbonate water, 1 lb in 5 gal (24 g/L): mist "
    "that dries stays."
)
_GLOVES = (
    "Gloves and goggles: the film carries acid. Fold it inwards, bag it, never drag it over the "
    "floor. The bags go where the waste water's sheet says."
)
_TAPE = (
    "Tape comes off slowly, back along itself. Putty out from under the jambs, plugs out of the "
    "drains, registers open, what was taken out back in its place."
)
TAKING_DOWN = (_GLOVES, _TAPE)


def named(kind: str) -> str:
    """A kind as a word of its own."""
    return "thing" if kind == "other" else kind


def stands_out(room: RoomMasked, units: Units) -> str:
    """What of a room is filmed to another height: `cabinet 36" · tub 20" · beside metal 96"`.

    In the language that is spoken.
    """
    found: dict[str, float] = {}
    for one in room.runs:
        if one.film_m in {0.0, room.film_m} and one.what == "wall":
            continue
        if one.film_m:
            found[named(one.what) if one.what != "wall" else one.why] = one.film_m
    return " · ".join(told(f"{name} {tall(high, units)}") for name, high in found.items())


def item_told(item: ItemMasked) -> str:
    """`a drain: plug it, film over it`; what is taken out says so."""
    many = f"{item.count} × " if item.count > 1 else ""
    kind = named(item.kind)
    deed = "take it out, bag its screws" if item.take_out else DEEDS.get(item.kind, "wrap it")
    return f"{item.letter} {many}{kind}: {deed}"
