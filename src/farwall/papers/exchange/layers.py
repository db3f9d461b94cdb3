"""The layers of an exported floor: one for each kind of thing, by its word of the trade."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping, Sequence

import shapely

from farwall.floor.geometry import Point
from farwall.job.carried import Piece, storey_of
from farwall.nouns import dataclass
from farwall.papers.ink import DANGER, INK, LINE, PAPER, RAMP, SOFT


@dataclass(frozen=True)
class Layer:
    """How a kind is drawn.

    name: of the layer in DXF, in small letters the id of the group in SVG. aci: colour number of
    DXF (0 to 255); ink, fill, dash and width_m: line and ground in SVG, dash lengths in metres.
    """

    name: str
    aci: int
    ink: str = INK
    fill: str = "none"
    width_m: float = 0.03
    dash_m: str = ""
    linetype: str = "CONTINUOUS"


LAYERS: Mapping[str, Layer] = {
    "band": Layer("BANDS", 150, RAMP[3], RAMP[0], 0.015),
    "room": Layer("ROOMS", 7, INK, "none", 0.05),
    "threshold": Layer("THRESHOLDS", 8, LINE, PAPER, 0.01),
    "fixture": Layer("FIXTURES", 30, INK, PAPER, 0.02),
    "step": Layer("STEPS", 34, INK, "none", 0.02, "0.05 0.05", "DASHED"),
    "saw cut": Layer("SAW-CUTS", 9, SOFT, "none", 0.015, "0.2 0.1", "DASHED"),
    "window": Layer("WINDOWS", 4, RAMP[4], "none", 0.06),
    "opening": Layer("OPENINGS", 3, SOFT, "none", 0.04),
    "exit": Layer("WAYS-OUT", 5, INK, "none", 0.09),
    "stop line": Layer("STOP-LINES", 1, DANGER, "none", 0.06, "0.25 0.12", "DASHED"),
}
"""By the kind of the collection, drawn from first to last."""
NAMES, NORTH = "NAMES", "NORTH"


def layer_name(kind: str, storey: str = "") -> str:
    """The layer of a kind; floors of several storeys have one for each."""
    plain = unicodedata.normalize("NFKD", storey).encode("ascii", "ignore").decode()
    ending = re.sub(r"[^A-Z0-9]+", "-", plain.upper()).strip("-")[:60]
    return f"{LAYERS[kind].name}-{ending}" if ending else LAYERS[kind].name


def storeys_of(pieces: Sequence[Piece]) -> list[str]:
    """The storey of each piece, "" where nobody knows or where the floor has only one."""
    told = [piece.properties for piece in pieces]
    rooms = {str(one["id"]): str(one.get("storey") or "") for one in told if one["kind"] == "room"}
    if len(set(rooms.values())) < 2:
        return [""] * len(pieces)
    openings = {str(one["id"]): one["rooms"] for one in told if one["kind"] == "opening"}
    return [storey_of(piece, rooms, openings) for piece in pieces]


def dry_of(pieces: Sequence[Piece]) -> shapely.Geometry:
    """Where fixtures stand: no name is lettered there."""
    found = [shapely.Polygon(p.lines[0], p.lines[1:]) for p in pieces if p.kind == "fixture"]
    return shapely.union_all(shapely.make_valid(found))


def name_spot(room: Piece, dry: shapely.Geometry) -> Point:
    """A place for the room's name: on its floor, beside the fixtures where there is room."""
    shape = shapely.Polygon(room.lines[0], room.lines[1:])
    if not shape.is_valid or shape.is_empty:
        return room.lines[0][0]
    free = shape.difference(dry)
    spot = (shape if free.is_empty else free).representative_point()
    return float(spot.x), float(spot.y)
