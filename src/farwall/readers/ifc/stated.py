"""Areas that an IFC model states of its spaces, with the class that their name gives them."""

from __future__ import annotations

from collections.abc import Mapping
from statistics import median

from farwall.facts.reading import Note, Stated, StatedKind
from farwall.nouns import dataclass
from farwall.readers.ifc.load import Entity
from farwall.readers.ifc.tree import properties, quantities
from farwall.readers.ifc.unit import Units

_BY_NAME: dict[str, StatedKind | None] = {
    "GrossFloorArea": "gross",
    "NetFloorArea": "net",
    "GSA BIM Area": None,
    "NetPlannedArea": "net",
    "GrossPlannedArea": "gross",
    "Area": None,
}
"""Names in the order in which they are taken: a gross area is that of the whole outline, which is
what can be set beside a polygon; a net one leaves out columns, and often a share for plaster."""
_PLANNED = frozenset({"NetPlannedArea", "GrossPlannedArea", "Area"})
_SAME = 0.005


@dataclass(frozen=True)
class Sizes:
    """What a file states of a space: areas by name [m²], clear height [m]."""

    areas_m2: dict[str, float]
    height_m: float | None


def sizes_of(space: Entity, units: Units) -> Sizes:
    """The areas and the clear height that a file states of a space."""
    areas: dict[str, float] = {}
    heights: dict[str, float] = {}
    for _, name, value in quantities(space):
        if name in _BY_NAME and value > 0:
            areas.setdefault(name, value * units.area_m2)
        elif name in {"FinishCeilingHeight", "ClearHeight", "Height"} and value > 0:
            heights.setdefault(name, value * units.length_m)
    if not areas:
        for name, value in properties(space, named=_PLANNED).items():
            if isinstance(value, float | int) and value > 0:
                areas.setdefault(name, float(value) * units.area_m2)
    order = ("FinishCeilingHeight", "ClearHeight", "Height")
    return Sizes(areas, next((heights[name] for name in order if name in heights), None))


def stated_of(
    sizes: Mapping[str, Sizes], polygon_m2: Mapping[str, float]
) -> tuple[dict[str, Stated], list[Note]]:
    """The stated area of each space, and what is to be said of their class.

    Where the name tells no class, the outlines decide: figures that are larger in most rooms run to
    the wall centres, figures that are equal run along the outline and are net of the walls.
    """
    stated: dict[str, Stated] = {}
    notes: list[Note] = []
    for name, kind in _BY_NAME.items():
        own = {
            key: one.areas_m2[name]
            for key, one in sizes.items()
            if name in one.areas_m2 and key not in stated
        }
        if not own:
            continue
        told = kind or _kind_by_outline(own, polygon_m2)
        for key, area in own.items():
            stated[key] = Stated(round(area, 4), told, f"{name} {area:.2f} m²")
        if kind is None:
            what = (
                f"“{name}” does not say how it was measured; set beside the outlines it is "
                f"{'net of the walls' if told == 'net' else 'to the wall centres'}."
            )
            notes.append(Note("stated-class", what))
    return stated, [*notes, *_net_too(sizes, stated)]


def _kind_by_outline(own: Mapping[str, float], polygon_m2: Mapping[str, float]) -> StatedKind:
    ratios = [polygon_m2[key] / area for key, area in own.items() if key in polygon_m2]
    return "wall-centre" if ratios and median(ratios) < 1 - _SAME else "net"


def _net_too(sizes: Mapping[str, Sizes], stated: Mapping[str, Stated]) -> list[Note]:
    """Net areas that stand beside the gross ones, and how far they lie below them."""
    shares = [
        1 - one.areas_m2["NetFloorArea"] / stated[key].area_m2
        for key, one in sizes.items()
        if "NetFloorArea" in one.areas_m2 and key in stated and stated[key].kind == "gross"
    ]
    off = [share * 100 for share in shares if abs(share) > _SAME]
    if not off:
        return []
    what = (
        f"The file states net areas too, {min(off):.1f} to {max(off):.1f} % below the gross ones "
        f"in {len(off)} of {len(shares)} rooms. The gross ones are set beside the outlines."
    )
    return [Note("stated-net-too", what)]
