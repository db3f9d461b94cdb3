"""Our own target, to be printed: grey steps on both sides, colours of floors, four markers.

Eight columns, six rows of squares on bare paper. What a printer makes of the colours nobody knows
until the print is measured: the values here are what it is asked for (nominal). Where the markers
stand and what they look like is data; their cells are those of the open dictionary of squares
4 × 4, 50, which the library OpenCV finds.
"""

from __future__ import annotations

from farwall.colour.lab import lab_of_srgb, srgb_of_lab
from farwall.colour.targets.nouns import Lab, Marker, Patch, Target

PITCH_MM, SIDE_MM = 22.0, 18.0
COLUMNS, ROWS = 8, 6
_LETTERS = "ABCDEFGH"

GREYS = (88.0, 74.0, 60.0, 46.0, 32.0, 10.0)
"""Lightness that the printer is asked for; the lightest grey is the paper around them."""
_GREY_CELLS = {
    "A2": 0, "A3": 2, "A4": 4, "A5": 5, "H2": 5, "H3": 3, "H4": 1, "H5": 0,
    "C1": 3, "F1": 4, "C6": 1, "F6": 2,
}  # fmt: skip

COLOURS: tuple[tuple[float, float, float], ...] = (
    # tans and browns of a floor: lightness, chroma, hue
    (80, 14, 82), (74, 26, 76), (68, 18, 70), (66, 36, 72), (60, 28, 62), (56, 16, 78),
    (52, 38, 66), (48, 24, 58), (44, 14, 66), (42, 32, 54), (36, 22, 60), (32, 12, 62),
    (30, 26, 48), (24, 12, 50),
    # reds
    (58, 44, 42), (48, 52, 36), (42, 36, 30), (34, 44, 34),
    # olives and greens
    (68, 30, 104), (52, 30, 112), (44, 18, 130), (38, 28, 142),
    # blue-greens
    (70, 20, 182), (58, 28, 190), (48, 16, 204), (42, 24, 178), (34, 20, 214),
    # the edges, so that nothing lies outside
    (82, 60, 92), (66, 52, 64), (46, 36, 268), (38, 30, 308), (54, 44, 354),
)  # fmt: skip
"""Thirty-two colours, chosen by eye around those of stained floors. Rank: guess."""

_MARKERS = {
    (0, 0): (11, "0001 0001 1010 0111"),
    (7, 0): (19, "0111 0110 1010 1111"),
    (7, 5): (29, "0011 0100 0110 1111"),
    (0, 5): (41, "0010 1010 0010 1000"),
}
"""By column and row: number and inner cells, 1 white, inside a rim of black."""


def own_target() -> Target:
    """The target with the values that the printer is asked for."""
    return Target(
        name="Farwall sheet",
        size_mm=(COLUMNS * PITCH_MM, ROWS * PITCH_MM),
        patches=tuple(_patches()),
        known=False,
        lit_between=True,
        markers=tuple(
            Marker(number, _middle(*cell), SIDE_MM, _cells(rows))
            for cell, (number, rows) in _MARKERS.items()
        ),
    )


def asked_srgb(patch: Patch) -> tuple[int, int, int]:
    """What the printer is asked for, 0 to 255."""
    assert patch.lab is not None
    return _coded(patch.lab)


def _patches() -> list[Patch]:
    colours = iter(_mixed(COLOURS))
    found = []
    for row in range(ROWS):
        for column in range(COLUMNS):
            if (column, row) in _MARKERS:
                continue
            name = f"{_LETTERS[column]}{row + 1}"
            step = _GREY_CELLS.get(name)
            lab = _lch(GREYS[step], 0.0, 0.0) if step is not None else _lch(*next(colours))
            found.append(Patch(name, _middle(column, row), SIDE_MM, lab, grey=step is not None))
    return found


def _mixed(colours: tuple[tuple[float, float, float], ...]) -> list[tuple[float, float, float]]:
    """Light and dark, brown and blue far from each other, so that light is not taken for colour."""
    return [colours[(k * 13) % len(colours)] for k in range(len(colours))]


def _lch(lightness: float, chroma: float, hue_deg: float) -> Lab:
    """The colour as eight bits of sRGB hold it."""
    from math import cos, radians, sin

    angle = radians(hue_deg)
    return _held((lightness, chroma * cos(angle), chroma * sin(angle)))


def _held(lab: Lab) -> Lab:
    lightness, a, b = (float(v) for v in lab_of_srgb([v / 255 for v in _coded(lab)]))
    return lightness, a, b


def _coded(lab: Lab) -> tuple[int, int, int]:
    red, green, blue = (round(255 * float(v)) for v in srgb_of_lab(lab))
    return red, green, blue


def _middle(column: int, row: int) -> tuple[float, float]:
    return (column + 0.5) * PITCH_MM, (row + 0.5) * PITCH_MM


def _cells(rows: str) -> tuple[tuple[bool, ...], ...]:
    inner = [[False, *(one == "1" for one in row), False] for row in rows.split()]
    rim = [False] * 6
    return tuple(tuple(row) for row in (rim, *inner, rim))
