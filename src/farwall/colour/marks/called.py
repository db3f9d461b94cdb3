"""What a find is called by the trade, and how sure; or nothing.

Cracks and joints are in the slab, not of the spraying: dark, sharp, as thin as can be seen. A lap
runs on, straight or gently ragged; mottle wanders and ends; light that falls in is soft.
All bounds were chosen on tuning floors and on the real surfaces, none is of a book.
"""

from __future__ import annotations

import math

from farwall.colour.marks.areas import Area
from farwall.colour.marks.crescents import Crescent
from farwall.colour.marks.dots import Dot
from farwall.colour.marks.lines import Line
from farwall.colour.marks.profile import Profile
from farwall.colour.marks.shape import Shape
from farwall.nouns import dataclass

LEAST_OVER = 0.95
"""Below this share of the largest sum in mottle a line is not looked at further."""
LAP_M = 1.0
"""A shorter line is no lap. A guess: a band is wall to wall, and a foot of it may be hidden."""
COARSE_M = 0.03
GREATEST_STEP = 0.38
"""In -ln Y: a greater step is the rim of a reflection."""
FAINTEST_SHADOW = 0.075
SOFTEST = 0.16
"""Of a line's change so much happens within 1 cm; light that falls in changes over more."""
LEAST_SURE = 0.35


@dataclass(frozen=True)
class Called:
    """kind, how sure from 0 to 1, and what speaks for it."""

    kind: str
    confidence: float
    why: str


def called(line: Line, like: Profile) -> Called | None:
    """The name of a line and how sure it is, or None where it may as well be mottle."""
    if _is_of_the_slab(line, like):
        return _of_the_slab(line, like)
    if line.coarse_m > COARSE_M:
        return _soft_band(line, like)
    if like.sharp < SOFTEST or abs(like.step) > GREATEST_STEP:
        return None
    straight = like.spread_m < 0.004 + 0.007 * like.length_m
    strip = line.sort != "step" and 0.02 < like.width_m < 0.085 and like.length_m < 2.4
    if strip and straight:
        lean = 2.0 * (line.over - 1.3) + 5 * (like.sharp - 0.25)
        return _worth("tape ghost", lean, line, like, "a straight strip")
    return _lap(line, like)


def _soft_band(line: Line, like: Profile) -> Called | None:
    """A wide band is a lap only where it is faint: a shadow is as soft, and darker."""
    faint = 0 < like.ridge < FAINTEST_SHADOW and abs(like.step) < 0.13
    if line.sort != "dark" or not faint or like.chord_m < LAP_M or line.over < 2.4:
        return None
    return _worth("lap line", 1.2 * (line.over - 2.4), line, like, "a faint dark band")


def _is_of_the_slab(line: Line, like: Profile) -> bool:
    """Dark and as thin as can be seen, or straight as no wand goes."""
    if line.sort == "light" or line.over < 1.0 or like.ridge < 0.08:
        return False
    level = abs(like.step) < 0.7 * like.ridge
    thin = like.sharp > 0.42 and like.width_m < 0.026 and level
    ruled = like.spread_m < 0.005 and like.chord_m > 1.2 and like.width_m < 0.032
    return (thin and like.ridge > 0.09) or (ruled and like.sharp > 0.25)


def _of_the_slab(line: Line, like: Profile) -> Called:
    straight = like.spread_m < 0.006 + 0.002 * like.length_m
    kind = "joint" if straight and like.length_m > 0.5 else "crack"
    form = "dark, thin and straight" if kind == "joint" else "dark, thin and jagged"
    return Called(kind, _sure(2.0 * (line.over - 0.9)), _line_words(line, like, form))


def _lap(line: Line, like: Profile) -> Called | None:
    wanders = like.spread_m / max(like.chord_m, 1e-6)
    if like.chord_m < LAP_M or wanders > 0.032:
        return None
    lean = (
        3.0 * math.log(line.over / 1.2) - 100 * max(wanders - 0.02, 0)
        + 5 * (min(like.sharp, 0.4) - 0.22)
    )  # fmt: skip
    form = "a step between two tones" if line.sort == "step" else f"a {line.sort} band"
    return _worth("lap line", lean, line, like, f"{form} that runs on")


def _worth(kind: str, lean: float, line: Line, like: Profile, form: str) -> Called | None:
    sure = _sure(lean)
    return Called(kind, sure, _line_words(line, like, form)) if sure >= LEAST_SURE else None


def called_area(area: Area, shape: Shape) -> Called | None:
    """The name of an area and how sure it is, or None."""
    if area.steep < 1.9 or shape.area_m2 > 0.6:
        return None
    lean = 2.2 * (area.over - 1.25) + 1.2 * (area.steep - 2.2) + 3 * (shape.solid - 0.8)
    kind = _light(shape) if area.sign < 0 else _dark(shape)
    sure = _sure(lean)
    if kind is None or sure < LEAST_SURE:
        return None
    tone = "lighter" if area.sign < 0 else "darker"
    return Called(
        kind, sure,
        f"{tone} inside an outline {area.steep:.1f} times as steep as the floor's; "
        f"{area.over:.1f} times the largest that mottle like this floor's gave",
    )  # fmt: skip


def _light(shape: Shape) -> str | None:
    if shape.area_m2 < 0.005:
        return None
    slim = shape.width_m < 0.35 * shape.length_m
    return "missed crescent" if slim and shape.length_m < 0.8 else "light patch"


def _dark(shape: Shape) -> str | None:
    if shape.closed > 0.3 or (shape.bend > 0.15 and shape.width_m < 0.25 * shape.length_m):
        return "ring"
    if 0.1 < shape.length_m < 0.42 and 0.04 < shape.width_m < 0.14:
        return "footprint"
    return None


def called_crescent(crescent: Crescent) -> Called:
    """A crescent that the filter found; how sure is a share of such finds already."""
    return Called(
        "missed crescent", crescent.sure,
        f"lighter in the form of a crescent, radius {crescent.form.radius_m:.2f} m; it stands out "
        f"{crescent.answer:.1f} spreads of this floor, and its gentler side changes "
        f"{max(crescent.gentler, 0.0):.1f} times as fast as the floor does",
    )  # fmt: skip


def called_dot(dot: Dot) -> Called:
    """A dot that stands out of the floor's specks."""
    return Called(
        "drip", _sure(0.8 * (dot.beyond - 4.0)),
        f"a round dark dot of about {100 * dot.wide_m:.0f} cm, beyond the floor's own specks",
    )  # fmt: skip


def _line_words(line: Line, like: Profile, form: str) -> str:
    return (
        f"{form}; {like.length_m:.1f} m long; its sum is {line.over:.1f} times the largest that "
        "mottle like this floor's gave"
    )


def _sure(lean: float) -> float:
    return 1 / (1 + math.exp(-max(min(lean, 30.0), -30.0)))
