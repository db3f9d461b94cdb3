"""What a page says of a floor's photo and of the marks on it, in the request's language."""

from __future__ import annotations

import re
from typing import Any

from markupsafe import Markup

from farwall.colour.marks.mirror import brewster_deg, mirrored_share
from farwall.colour.marks.nouns import Mark
from farwall.floor.geometry import Point
from farwall.floor.nouns import Floor
from farwall.job.colour.mark_remedies import DECIDES, SHEET_WINS, remedy_of
from farwall.job.colour.marks import Judged, Proposed, Touched
from farwall.papers.wall_clock import Units
from farwall.papers.words import area
from farwall.readers.floor_photo.nouns import FloorSeen
from farwall.units import M_PER_IN, feet_and_inches
from farwall.web.pages.colour.marks_places import off_told
from farwall.web.pages.log_words import choice_told
from farwall.web.pages.told import told_on_page
from farwall.web.words import said

MOST_SURE = 0.99
"""No photo is surer than that of anything, whatever the sum says. Rank: guess."""
_LONG = 2.0
"""Length to width from which a mark is told by its length alone."""
_FEW_MM = 30.0
"""Off by more than this, the points are to be looked at again. Rank: guess."""
_METRES = re.compile(r"(?<![\d.])(\d+(?:\.\d+)?)[ \u00a0]m(?![\w²³/])")
_CENTIMETRES = re.compile(r"(?<![\d.])(\d+)[ \u00a0]cm(?![\w²³])")
_ANGLES = (45, 60, 75)
_WAYS = ("n", "ne", "e", "se", "s", "sw", "w", "nw")


def size_told(metres: float, units: Units) -> str:
    """A length of less than a room."""
    return feet_and_inches(metres) if units == "us" else f"{metres:.2f} m"


def kind_told(kind: str) -> str:
    """A kind of mark by its name."""
    own = f"marks-kind-{kind}"
    return said(own) if kind in {"crack", "joint"} else choice_told(kind)


def mark_said(one: Proposed, floor: Floor, units: Units, photo: str) -> dict[str, Any]:
    """A proposed mark as the page asks it."""
    mark = one.mark
    photos = said("marks-photos-n", n=len(one.photos)) if len(one.photos) > 1 else ""
    if len(one.photos) == 1 and one.photos[0] != photo:
        photos = said("marks-photos-other")
    return {
        "name": one.name, "kind": mark.kind, "asks": one.asks,
        "question": said("marks-question", kind=_begun(kind_told(mark.kind))),
        "size": _size(mark, units), "place": place_told(floor, one.room, mark.at, units),
        "likely": said("marks-likely", p=f"{min(mark.confidence, MOST_SURE):.2f}"),
        "why": why_told(mark.why, units), "photos": photos,
        "unseen": said("marks-unseen", n=one.unseen_by) if one.unseen_by else "",
        "remedy": remedy_said(mark.kind),
    }  # fmt: skip


def judged_said(one: Judged, floor: Floor, units: Units) -> dict[str, Any]:
    """A mark that a person confirmed."""
    place = place_told(floor, one.room, one.at, units) if one.at else ""
    return {
        "name": one.name, "kind": _begun(kind_told(one.kind)), "place": place, "who": one.who,
        "note": one.note, "mended": one.mended, "remedy": remedy_said(one.kind), "photo": one.photo,
        "stands": one.stands, "room": one.room,
        "size": size_told(one.length_m, units) if one.length_m else "",
    }  # fmt: skip


def remedy_said(kind: str) -> list[str]:
    """What can be done, with its rank."""
    remedy = remedy_of(kind)
    return [
        *(told_on_page(line) for line in remedy.says),
        said(f"marks-rank-{remedy.rank.name.lower()}"),
    ]


def why_told(why: str, units: Units) -> str:
    """Why a mark is proposed, in the page's language; lengths as its job has them."""
    told = told_on_page(f"{why.rstrip('.')}.")
    if units != "us":
        return told
    feet = _METRES.sub(lambda found: feet_and_inches(float(found[1])), told)
    found = _CENTIMETRES.sub(lambda one: f"{float(one[1]) / 100 / M_PER_IN:.0f}\u00a0in", feet)
    return Markup(found) if isinstance(told, Markup) else found


def place_told(floor: Floor, room: str, at: Point, units: Units) -> str:
    """How far a place lies from the two nearest sides of the room; by the compass where known."""
    x0, y0, x1, y1 = floor.room_by_id[room].polygon.shape.bounds
    sides = (
        min((at[0] - x0, "left"), (x1 - at[0], "right")),
        min((at[1] - y0, "low"), (y1 - at[1], "up")),
    )
    near, far = sorted(sides)
    return said(
        "marks-place", a=size_told(max(near[0], 0.0), units), side_a=_side(floor, near[1]),
        b=size_told(max(far[0], 0.0), units), side_b=_side(floor, far[1]),
    )  # fmt: skip


def photo_said(seen: FloorSeen, units: Units, edges: int = 0) -> list[tuple[str, bool]]:
    """How the photo lies and what it shows; whether each line says that something is to be done.

    edges: how many edges of bands are known in its room.
    """
    told = seen.told
    fits = said("marks-fits-four")
    if told.checked:
        rms, worst = (off_told(one, units) for one in (told.rms_mm, told.worst_mm))
        fits = said("marks-fits", n=told.pairs, rms=rms, worst=worst, name=told.worst)
    sure = said(
        "marks-sure", off=off_told(told.place_mm, units), most=off_told(told.place_most_mm, units)
    )
    share = f"{100 * told.seen_m2 / max(told.room_m2, 1e-9):.0f}"
    of = {"seen": area(told.seen_m2, units), "room": area(told.room_m2, units)}
    lines = [
        (fits, not told.checked or told.worst_mm > _FEW_MM),
        (sure, told.place_most_mm > 3 * _FEW_MM),
        (said("marks-seen", share=share, **of), False),
    ]
    if told.glare_m2 > 0.02:
        lines.append((said("marks-glare", area=area(told.glare_m2, units)), True))
    if told.far_m2 > 0.5:
        lines.append((said("marks-far", area=area(told.far_m2, units)), False))
    lines.append((said("marks-edges", n=edges) if edges else said("marks-edges-none"), False))
    return lines


def touched_said(one: Touched, rooms: str) -> dict[str, Any]:
    """How much of a field is touched, and what that asks for."""
    share = f"{100 * one.share:.1f}"
    if one.whole:
        line = said("marks-field-whole", rooms=rooms)
    elif one.whole_field:
        line = said("marks-field-over", rooms=rooms, share=share)
    else:
        line = said("marks-field-under", rooms=rooms, share=share)
    return {"line": line, "again": one.whole_field}


def advice() -> list[tuple[str, str]]:
    """How to photograph a wet floor without glare: each line with its rank."""
    shares = {
        f"at{angle}": f"{100 * sum(mirrored_share(angle)) / 2:.0f}" for angle in (0, *_ANGLES)
    }
    brewster = f"{brewster_deg():.0f}"
    optics, practice = said("marks-rank-published"), said("marks-rank-practice")
    return [
        (said("marks-shoot-mop"), practice),
        (said("marks-shoot-light"), practice),
        (said("marks-shoot-back"), practice),
        (said("marks-shoot-angle", **shares), optics),
        (said("marks-shoot-filter", angle=brewster, level=f"{90 - brewster_deg():.0f}"), optics),
        (said("marks-shoot-two"), practice),
        (said("marks-shoot-points"), practice),
    ]


def always() -> list[str]:
    """Who decides, and what wins."""
    return [told_on_page(DECIDES), told_on_page(SHEET_WINS)]


def _size(mark: Mark, units: Units) -> str:
    if mark.length_m > _LONG * mark.width_m:
        return said("marks-long", long=size_told(mark.length_m, units))
    return said("marks-size", long=size_told(mark.length_m, units),
                wide=size_told(mark.width_m, units))  # fmt: skip


def _side(floor: Floor, side: str) -> str:
    """By the compass where north is known to lie along a side, else as the plan is drawn."""
    if floor.north_deg is None:
        return said(f"marks-side-{side}")
    way = {"up": 0, "right": 90, "low": 180, "left": 270}[side]
    turned = (way - floor.north_deg) % 360
    return said(
        f"marks-side-{('n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw')[round(turned / 45) % 8]}"
    )


def _begun(text: str) -> str:
    return text[:1].upper() + text[1:]
