"""Draw invented mopped floors from above with what is found on them, the edges of bands known.

For docs/marks.md:

    .venv/bin/python tools/mark_pictures.py SEED … --out docs/picture/marks

Solid outline: proposed, with its word and how sure. Dashed: a true mark that was not proposed.
A proposal that meets no true mark says so. What the photo does not show, or glare hides, is paper.
"""

from __future__ import annotations

import argparse
import io
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw, ImageFont

from farwall.bench.mopped_edges import known_edges
from farwall.bench.mopped_floors import MoppedFloor
from farwall.bench.mopped_match import Proposed, Sought, matched
from farwall.bench.mopped_score import drawn_sheet
from farwall.colour.marks.find import marks_in
from farwall.colour.marks.nouns import Mark, Sheet

FONT = Path("src/farwall/papers/run_sheet/fonts/OpenSans-Bold.ttf")
LONG_PX, MOST_BYTES = 880, 100_000
PAPER, INK = (250, 248, 243), (26, 24, 20)
Ring = Sequence[tuple[float, float]]
Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Board:
    """A picture of a sheet, so many points to a metre."""

    picture: Image.Image
    sheet: Sheet
    px: float

    def at(self, ring: Ring) -> list[tuple[float, float]]:
        """Places of the plan as points of the picture."""
        return [
            ((x - self.sheet.left_m) * self.px, (self.sheet.top_m - y) * self.px) for x, y in ring
        ]


def main() -> None:
    """Draw each floor, write its picture, print what stands on it."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("seeds", type=int, nargs="+")
    parser.add_argument("--out", type=Path, required=True)
    options = parser.parse_args()
    options.out.mkdir(parents=True, exist_ok=True)
    for seed in options.seeds:
        floor, sheet = drawn_sheet(seed)
        marks = marks_in(sheet, known_edges(floor))
        sought, proposed = matched(floor, sheet, marks)
        data = jpeg(board_of(sheet, floor, marks, (sought, proposed)))
        (options.out / f"{seed}.jpg").write_bytes(data)
        print(seed, len(data), [(s.kind, s.lighter, s.found, s.called, s.seen) for s in sought],
              [(p.kind, p.confidence, p.met, p.on_line) for p in proposed])  # fmt: skip


def board_of(
    sheet: Sheet, floor: MoppedFloor, marks: Sequence[Mark],
    scored: tuple[Sequence[Sought], Sequence[Proposed]],
) -> Image.Image:  # fmt: skip
    """The floor from above with outlines and words."""
    board = ground(sheet)
    sought, proposed = scored
    words: list[tuple[Ring, str]] = []
    for true, came in zip(floor.marks, sought, strict=True):
        if came.seen and not came.found:
            for ring in true.rings:
                outline(board, ring, dashed=True)
            words.append((true.rings[0], f"missed: {true.kind}, {abs(true.lighter):.1f} L"))
    for mark, came_of in in_order(marks, proposed):
        outline(board, mark.outline, dashed=False)
        aside = "" if came_of.met or came_of.on_line else ", not there"
        if came_of.met and came_of.met != mark.kind:
            aside = f", is a {came_of.met}"
        words.append((mark.outline, f"{mark.kind} {mark.confidence:.2f}{aside}"))
    taken: list[Box] = []
    for ring, text in words:
        taken.append(word(board, ring, text, taken))
    return board.picture


def in_order(
    marks: Sequence[Mark], proposed: Sequence[Proposed]
) -> Iterator[tuple[Mark, Proposed]]:
    """Each mark with what came of it; `matched` tells cracks and joints last."""
    apart = [one for one in marks if one.kind in {"crack", "joint"}]
    rest = [one for one in marks if one.kind not in {"crack", "joint"}]
    return zip([*rest, *apart], proposed, strict=True)


def ground(sheet: Sheet) -> Board:
    """The sheet as a picture, paper where no floor is seen."""
    import cv2

    rgb = np.clip(cv2.cvtColor(sheet.lab, cv2.COLOR_LAB2RGB), 0, 1)
    rgb = (255 * rgb).astype(np.uint8)
    rgb[~sheet.floor] = PAPER
    picture = Image.fromarray(rgb)
    scale = LONG_PX / max(picture.size)
    size = (round(picture.width * scale), round(picture.height * scale))
    return Board(picture.resize(size, Image.Resampling.LANCZOS), sheet, scale / sheet.m_per_px)


def outline(board: Board, ring: Ring, *, dashed: bool) -> None:
    """A dark line in a light one, so that it stands out on any floor and in grey."""
    draw = ImageDraw.Draw(board.picture)
    points = board.at([*ring, ring[0]])
    runs = list(dashes(points)) if dashed else [points]
    for colour, wide in ((PAPER, 5), (INK, 2)):
        for run in runs:
            draw.line(run, fill=colour, width=wide, joint="curve")


def dashes(points: Ring, length: float = 9.0) -> Iterator[list[tuple[float, float]]]:
    """Every other piece of a line, so many points long."""
    left, on, run = length, True, [points[0]]
    for (ax, ay), (bx, by) in pairwise(points):
        whole = float(np.hypot(bx - ax, by - ay))
        done = 0.0
        while whole - done > left:
            done += left
            run.append((ax + (bx - ax) * done / whole, ay + (by - ay) * done / whole))
            if on:
                yield run
            run, on, left = [run[-1]], not on, length
        left -= whole - done
        run.append((bx, by))
    if on and len(run) > 1:
        yield run


def word(board: Board, ring: Ring, text: str, taken: Sequence[Box]) -> Box:
    """The word on paper, above the outline or wherever below it no other word stands."""
    draw, font = ImageDraw.Draw(board.picture), ImageFont.truetype(FONT, 17)
    points = board.at(ring)
    left, top = min(x for x, _ in points), min(y for _, y in points)
    low = max(y for _, y in points)
    _, _, wide, high = draw.textbbox((0, 0), text, font=font)
    x = max(2, min(left, board.picture.width - wide - 10))
    most = board.picture.height - high - 6
    places = [top - high - 8, *(low + 4 + n * (high + 8) for n in range(12)), 2]
    boxes = [(x, y, x + wide + 8, y + high + 5) for y in (max(2, min(y, most)) for y in places)]
    box = next((one for one in boxes if not any(meet(one, other) for other in taken)), boxes[0])
    draw.rectangle(box, fill=PAPER)
    draw.text((box[0] + 4, box[1] + 1), text, fill=INK, font=font)
    return box


def meet(one: Box, other: Box) -> bool:
    """Whether two boxes share ground."""
    across = one[0] < other[2] and other[0] < one[2]
    return across and one[1] < other[3] and other[1] < one[3]


def jpeg(picture: Image.Image) -> bytes:
    """JPEG of at most 100 kB."""
    for quality in range(82, 20, -6):
        into = io.BytesIO()
        picture.save(into, "JPEG", quality=quality, optimize=True)
        if into.tell() <= MOST_BYTES:
            break
    return into.getvalue()


if __name__ == "__main__":
    main()
