"""How well floors are read from photographs of them: rooms, areas, corners, doors.

python bench/photos.py [HOUSES]: invented houses, drawn with filled and with double walls on A3 or
ARCH-D, each photographed as hardly as `HARDSHIPS` say; read with the sheet's corners as they truly
are, and as they were found. Corners in millimetres of the house; processor time of a reading.
"""

from __future__ import annotations

import sys
import time
from dataclasses import dataclass, field
from math import dist

import numpy as np
from timing import ONCE

from farwall.bench.houses import houses
from farwall.bench.sheet_drawn import Drawn, Style, draw_sheet
from farwall.bench.sheet_photo import HARDSHIPS, Hardship, Photo, photograph
from farwall.bench.sheet_score import Score, score
from farwall.floor.nouns import Floor
from farwall.readers.hints import Hints
from farwall.readers.photo.corners import find_corners
from farwall.readers.photo.opening import opened
from farwall.readers.photo.papers import PAPERS_MM
from farwall.readers.photo.read import read_photo

STYLES: tuple[Style, ...] = ("filled", "double")


@dataclass
class Tally:
    """What came of all photos of one hardship: by the true corners, and by those found."""

    told: list[Score] = field(default_factory=list)
    seen: list[Score] = field(default_factory=list)
    off_px: list[float] = field(default_factory=list)
    unseen: int = 0
    cpu_s: list[float] = field(default_factory=list)


def main() -> None:
    """Draw, photograph, read, tell."""
    asked = [int(word) for word in sys.argv[1:] if word.isdigit()]
    count = 1 if ONCE else (asked or [8])[0]
    floors = [case.job.floor for case in houses() if _has_walls(case.job.floor)][:count]
    tallies = {one.name: Tally() for one in (HARDSHIPS[1:2] if ONCE else HARDSHIPS)}
    for number, floor in enumerate(floors):
        for style in STYLES[: 1 if ONCE else None]:
            drawn = _on_paper(floor, style, number)
            for hardship in HARDSHIPS:
                if hardship.name in tallies:
                    _try(drawn, hardship, number, tallies[hardship.name])
    for name, tally in tallies.items():
        print(f"{name:<9} corners told: {_words(tally.told)}")
        off = np.array(tally.off_px or [0.0])
        print(
            f"{'':<9} found:        {_words(tally.seen)}; sheet's corners off by median "
            f"{np.median(off):.1f}, worst {off.max():.1f} px, not seen in {tally.unseen}"
        )
        print(f"{'':<9} processor {np.median(tally.cpu_s):.1f} s, worst {max(tally.cpu_s):.1f}")


def _has_walls(floor: Floor) -> bool:
    return any(one.threshold for one in floor.openings)


def _on_paper(floor: Floor, style: Style, number: int) -> Drawn:
    """A3 at 1:50 or 1:100, ARCH-D at a quarter inch to the foot, by turns, what it fits on."""
    spans = [r.polygon.shape.bounds for r in floor.rooms]
    wide = max(b[2] for b in spans) - min(b[0] for b in spans)
    if number % 3 == 2:
        return draw_sheet(
            floor, style=style, paper_mm=PAPERS_MM["ARCH-D"], ratio=0.048, long_px=5400
        )
    ratio = 0.05 if wide < 17 else 0.1
    return draw_sheet(floor, style=style, paper_mm=PAPERS_MM["A3"], ratio=ratio, long_px=5000)


def _try(drawn: Drawn, hardship: Hardship, seed: int, into: Tally) -> None:
    photo = photograph(drawn.grey, drawn.px_per_mm, hardship, seed)
    began = time.process_time()
    into.told.append(_scored(drawn, photo, photo.corners))
    into.cpu_s.append(time.process_time() - began)
    found = find_corners(opened(photo.data)[0])
    if not found:
        into.unseen += 1
        return
    into.off_px += [dist(a, b) for a, b in zip(found, photo.corners, strict=True)]
    into.seen.append(_scored(drawn, photo, found))


def _scored(drawn: Drawn, photo: Photo, corners: tuple[tuple[float, float], ...]) -> Score:
    hints = Hints(drawn.ratio, corners=corners, paper_mm=drawn.paper_mm)
    return score(drawn.floor, read_photo(photo.data, hints=hints).floor)


def _words(scores: list[Score]) -> str:
    rooms, found = sum(s.rooms for s in scores), sum(s.found for s in scores)
    ways, seen = sum(s.ways for s in scores), sum(s.ways_found for s in scores)
    area = 100 * np.abs([off for s in scores for off in s.area] or [0.0])
    corner = 1000 * np.array([off for s in scores for off in s.corner_m] or [0.0])
    within = np.mean(area <= 2), np.mean(corner <= 50)
    return (
        f"{found} of {rooms} rooms, {sum(s.false for s in scores)} false; area off by median "
        f"{np.median(area):.2f} %, p95 {np.quantile(area, 0.95):.2f}, worst {area.max():.2f}, "
        f"{within[0]:.0%} within 2 %; corners median {np.median(corner):.0f} mm, p95 "
        f"{np.quantile(corner, 0.95):.0f}, worst {corner.max():.0f}, {within[1]:.0%} within 50; "
        f"{seen} of {ways} openings"
    )


if __name__ == "__main__":
    main()
