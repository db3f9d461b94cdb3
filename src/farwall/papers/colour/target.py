"""The target to be printed: squares at their true size, a measured bar, lines to write on."""

from __future__ import annotations

from farwall.colour.targets.nouns import Marker, Target
from farwall.colour.targets.own import COLUMNS, PITCH_MM, ROWS, asked_srgb, own_target
from farwall.papers.ink import INK, WHITE
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.office.blocks import Blanks, Paper, Picture, Steps, Words
from farwall.papers.office.ground import PaperGround
from farwall.papers.svg import Svg

PT_PER_MM = 72 / 25.4
BAR_MM = 150
_ABOVE_MM, _BELOW_MM, _SIDE_MM = 4.0, 11.0, 3.0
"""Around the squares: letters of the columns, the bar, numbers of the rows."""
_WIDE_MM = COLUMNS * PITCH_MM + 2 * _SIDE_MM
_SMALL = 7.0

USE = (
    (
        "Print it in colour at 100 %, on plain matt paper, and put a rule to the bar: 150 mm, or "
        "the lengths in a photo are wrong too. Keep one print for the whole job, dry and in the "
        "dark."
    ),
    (
        "Lay it flat beside the spot, a hand away, in the same light: no shadow of yours over one "
        "of them, no lamp and window mixed, no flash. Not on wet stain."
    ),
    (
        "Hold the camera over both, less than 45° aslant, the four black corners in the picture, a "
        "third of its width filled. Touch the target on the screen, so that its white is not burnt."
    ),
    (
        "What the printer made of these squares nobody knows until the print is measured. Without "
        "that the paper is taken for white and the rest stays a guess."
    ),
)


def target_sheet(_ground: PaperGround) -> Paper:
    """One page: the target, its bar, when and where it was used, and how."""
    return Paper(
        title="Colour target",
        under="Laid beside a sample or on the floor, so that photos can be compared",
        screen="colour",
        blocks=(
            Picture(target_svg(), wide_pt=_WIDE_MM * PT_PER_MM),
            Blanks(("date and time", "room, sample", "dry, wet or sealed; which light"), 3),
            Steps(USE),
            Words(
                "A photo is no floor: two colours that one light shows alike, another may part; "
                "what decides is the signed sample, looked at by day and by lamp.",
                "soft",
            ),
        ),
    )


def target_svg() -> str:
    """The target in points, its squares at true size."""
    target = own_target()
    high = target.size_mm[1]
    svg = Svg(
        width=_WIDE_MM * PT_PER_MM,
        height=(high + _ABOVE_MM + _BELOW_MM) * PT_PER_MM,
        family=PAPER_LETTERING.family, ident="target",
    )  # fmt: skip
    svg.element("rect", x=0, y=0, width=svg.width, height=svg.height, fill=WHITE)
    for patch in target.patches:
        red, green, blue = asked_srgb(patch)
        _square(svg, patch.at_mm, patch.side_mm, f"#{red:02x}{green:02x}{blue:02x}")
    for marker in target.markers:
        _marker(svg, marker)
    _names(svg)
    _bar(svg, target)
    return svg.document(
        title="Colour target",
        description="Twelve grey and thirty-two coloured squares between four markers.",
    )


def _place(at_mm: tuple[float, float]) -> tuple[float, float]:
    return (at_mm[0] + _SIDE_MM) * PT_PER_MM, (at_mm[1] + _ABOVE_MM) * PT_PER_MM


def _square(svg: Svg, at_mm: tuple[float, float], side_mm: float, fill: str) -> None:
    x, y = _place((at_mm[0] - side_mm / 2, at_mm[1] - side_mm / 2))
    side = side_mm * PT_PER_MM
    svg.element("rect", x=x, y=y, width=side, height=side, fill=fill, shape_rendering="crispEdges")


def _marker(svg: Svg, marker: Marker) -> None:
    """White cells on black; neighbours in a row are one piece, so that no hair shows between."""
    _square(svg, marker.at_mm, marker.side_mm, "#000000")
    cell = marker.side_mm / len(marker.cells)
    left, top = marker.at_mm[0] - marker.side_mm / 2, marker.at_mm[1] - marker.side_mm / 2
    path = "".join(
        f"M{x:.3f} {y:.3f}h{w:.3f}v{w:.3f}h-{w:.3f}z"
        for row, cells in enumerate(marker.cells)
        for column, white in enumerate(cells)
        if white
        for x, y in (_place((left + column * cell, top + row * cell)),)
        for w in (cell * PT_PER_MM,)
    )
    svg.element("path", d=path, fill=WHITE, shape_rendering="crispEdges")


def _names(svg: Svg) -> None:
    for column in range(COLUMNS):
        x, y = _place(((column + 0.5) * PITCH_MM, -1.2))
        svg.text((x, y), "ABCDEFGH"[column], _SMALL)
    for row in range(ROWS):
        x, y = _place((-1.2, (row + 0.5) * PITCH_MM))
        svg.text((x, y + 2.4), str(row + 1), _SMALL)


def _bar(svg: Svg, target: Target) -> None:
    """A bar of known length with a tick at each centimetre."""
    left, top = (target.size_mm[0] - BAR_MM) / 2, target.size_mm[1] + 2.5
    svg.line((_place((left, top)), _place((left + BAR_MM, top))), stroke=INK, stroke_width=0.8)
    for mm in range(0, BAR_MM + 1, 10):
        down = 2.2 if mm % 50 == 0 else 1.2
        svg.line(
            (_place((left + mm, top)), _place((left + mm, top + down))),
            stroke=INK, stroke_width=0.8,
        )  # fmt: skip
        if mm % 50 == 0:
            svg.text(_place((left + mm, top + 5.2)), f"{mm} mm" if mm else "0", _SMALL)
