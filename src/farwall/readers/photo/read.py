"""A photo or a scan of a plan to a reading: the sheet found and flattened, its walls traced.

Words are not read. Nothing tells how large a house on a photo is: the scale is told or asked.
"""

from __future__ import annotations

from dataclasses import replace
from math import dist

from farwall.errors import Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.nouns import dataclass
from farwall.readers.hints import Hints
from farwall.readers.lines.read import read_sheet
from farwall.readers.photo.corners import find_corners
from farwall.readers.photo.flatten import Flat, flatten
from farwall.readers.photo.kinds import is_heic, is_png
from farwall.readers.photo.opening import Grey, opened
from farwall.readers.photo.traced import trace

MOST_STROKES = 20_000
_LEAST_PX = 20


@dataclass(frozen=True)
class Laid:
    """The flattened picture; corners: of the sheet as the photo is shown [px]; told: by whom."""

    flat: Flat
    corners: tuple[Point, ...]
    told: bool
    shrunk: float
    lies_flat: bool = False


def kind_of(data: bytes) -> str:
    """The picture's format by name."""
    return "PNG" if is_png(data) else "HEIC" if is_heic(data) else "JPEG"


def read_photo(data: bytes, *, hints: Hints | None = None) -> Reading:
    """The floor on a photo or a scan. Raises Refused for a picture that cannot be opened."""
    told = hints or Hints()
    grey, shrunk = opened(data)
    return read_laid(lay_flat(grey, told, shrunk=shrunk), told, format_name=kind_of(data))[0]


def read_laid(laid: Laid, hints: Hints, *, format_name: str) -> tuple[Reading, Point]:
    """The floor on a sheet that is laid flat.

    With it, where the upper left corner of the flattened picture lies in the frame of the rooms
    [m; by a likely scale where none is told].
    """
    traced = trace(laid.flat, format_name)
    scale = scale_of(laid, hints)
    if not traced.sheet.strokes or len(traced.sheet.strokes) > MOST_STROKES:
        return _told(_nothing(format_name, traced.style), laid, scale, None), (0.0, 0.0)
    working = scale or traced.working_m_per_unit
    reading = read_sheet(traced.sheet, scale_m_per_unit=working)
    top_m = laid.flat.grey.shape[0] / (laid.flat.px_per_mm or 1.0) * working
    x, y = reading.origin_m
    return _told(reading, laid, scale, working), (-x, top_m - y)


def lay_flat(grey: Grey, hints: Hints, *, shrunk: float = 1.0, lies_flat: bool = False) -> Laid:
    """The sheet flattened, by the corners told, else by those that are seen.

    shrunk: pixels of the picture as the caller knows it to one of `grey`; `lies_flat`: the page of
    a scan, whose edges are those of the sheet.
    """
    if hints.corners:
        check_corners(hints.corners, (grey.shape[1] * shrunk, grey.shape[0] * shrunk))
    corners = tuple((x / shrunk, y / shrunk) for x, y in hints.corners)
    if not corners and not lies_flat:
        corners = find_corners(grey)
    flat = flatten(grey, corners, hints.paper_mm)
    shown = tuple((x * shrunk, y * shrunk) for x, y in corners)
    return Laid(flat, shown, bool(hints.corners), shrunk, lies_flat)


def check_corners(corners: tuple[Point, ...], size: tuple[float, float]) -> None:
    """Raises Refused unless they are four, go clockwise and enclose some of the picture."""
    remedy = "Give four corners clockwise from the sheet's upper left: x,y,x,y,x,y,x,y in pixels."
    if len(corners) != 4:
        raise Refused(Mistake("--corners", f"{len(corners)} corners were given.", remedy))
    low = -0.5 * max(size)
    if not all(low <= value <= 1.5 * max(size) for point in corners for value in point):
        raise Refused(Mistake("--corners", "A corner lies far outside the picture.", remedy))
    turns = []
    for k in range(4):
        (ax, ay), (bx, by), (cx, cy) = (corners[(k + n) % 4] for n in range(3))
        turns.append((bx - ax) * (cy - by) - (by - ay) * (cx - bx))
    if min(turns) < _LEAST_PX**2:
        what = "The four corners make no sheet: two are too near, or they do not go clockwise."
        raise Refused(Mistake("--corners", what, remedy))


def scale_of(laid: Laid, hints: Hints) -> float | None:
    """Metres to a unit of the flattened picture, by what was told; None where nothing was.

    Raises Refused for a known length between places that are one.
    """
    if hints.length is None:
        return hints.scale_m_per_unit
    start, end = (
        laid.flat.place((x / laid.shrunk, y / laid.shrunk))
        for x, y in (hints.length.start, hints.length.end)
    )
    long_px = dist(start, end)
    if not _LEAST_PX <= long_px <= 100_000:
        what = "The two places of the known length lie too near each other."
        raise Refused(Mistake("--length", what, "Take a length across the house."))
    return hints.length.length_m / long_px * (laid.flat.px_per_mm or 1.0)


def _nothing(format_name: str, style: str) -> Reading:
    what = (
        "Walls drawn as single lines are not traced from a picture. Trace the rooms by hand."
        if style == "single"
        else "No walls were found on the picture. Trace the rooms by hand."
    )
    return Reading(format_name, "", "", None, Floor(()), asks=(Note("tracing", what),))


def _told(reading: Reading, laid: Laid, scale: float | None, working: float | None) -> Reading:
    unit = "mm" if laid.flat.px_per_mm else ""
    of = "millimetre of paper" if unit else "pixel of the flattened picture"
    mended = [n for n in reading.mended if n.code not in {"scale-told", "origin-moved"}]
    asks = [note for note in reading.asks if note.code != "scale"]
    if not laid.lies_flat:
        mended.append(_flattened(laid))
        bent, unlike = _bent(laid.flat)
        mended += bent
        asks += unlike
    if abs(laid.flat.turned_deg) >= 0.1:
        what = f"The lines were {abs(laid.flat.turned_deg):.1f}° off the level and were turned."
        mended.append(Note("turned", what))
    if scale is not None:
        mended.append(Note("scale-told", f"Read at {scale:.5g} metres a {of}, as told."))
    else:
        asks.insert(0, Note("scale", _ask_scale(of)))
    if reading.floor.rooms:
        asks.append(Note("names", "Words on a picture are not read. Name the rooms."))
    if not (laid.told or laid.lies_flat):
        asks.insert(0, Note("corners", _ask_corners(laid.corners)))
    return replace(
        reading,
        length_unit=unit,
        header_unit="",
        scale_m_per_unit=scale,
        shapes_m_per_unit=None if scale else working,
        mended=tuple(mended),
        asks=tuple(asks),
    )


def _flattened(laid: Laid) -> Note:
    if not laid.corners:
        return Note(
            "taken-flat", "No sheet of paper was seen: the picture was taken as lying flat."
        )
    by = "as told" if laid.told else "as the edge of the light paper was seen"
    what = f"Flattened by the corners {_pixels(laid.corners)}, {by}."
    if laid.flat.bend is None:
        what += " The sheet's edges were not seen between them, so a bend of it would not be known."
    return Note("flattened", what)


def _bent(flat: Flat) -> tuple[list[Note], list[Note]]:
    """What was laid back, and what is asked where opposite edges contradict each other."""
    if flat.bend is None or flat.bend.straight:
        return [], []
    by = _on_paper(flat.bend.moved_px, flat)
    what = f"The sheet does not lie flat: what its bends and folds moved, by up to {by}, was laid"
    mended = [Note("laid-back", f"{what} back as its edges show it.")]
    if not flat.bend.contradicts:
        return mended, []
    unlike = _on_paper(flat.bend.unlike_px, flat)
    ask = (
        f"Opposite edges of the sheet bow unlike each other, by {unlike}: between them it was taken"
    )
    return mended, [
        Note(
            "bent", f"{ask} to run straight. Flatten it and photograph it anew, or measure a room."
        )
    ]


def _on_paper(long_px: float, flat: Flat) -> str:
    if flat.px_per_mm:
        return f"{long_px / flat.px_per_mm:.1f} mm of paper"
    return f"{long_px:.0f} pixels of the flattened picture"


def _ask_corners(seen: tuple[Point, ...]) -> str:
    if seen:
        return f"Are these the sheet's corners? If so say --corners {_pixels(seen)}"
    return (
        "Say where the sheet's four corners lie in the picture, clockwise from its upper left: "
        "--corners x,y,x,y,x,y,x,y in pixels."
    )


def _pixels(corners: tuple[Point, ...]) -> str:
    return ",".join(f"{value:.0f}" for point in corners for value in point)


def _ask_scale(of: str) -> str:
    paper = "" if of.startswith("milli") else " Tell the sheet's size by --paper, and"
    return (
        f"A picture does not tell how large the house is.{paper} say the scale printed on it, "
        "--drawn 1:50, or one length that you know, --length x,y,x,y,4.2m in pixels of the "
        f"picture; --scale is metres a {of}."
    )
