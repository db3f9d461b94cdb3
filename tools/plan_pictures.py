"""Draw each plan of a folder as Farwall sees it, and a table of what was found: for docs/plans.md.

    .venv/bin/python tools/plan_pictures.py FOLDER --out docs/plans [--leave NAME,…]

A file that is refused has no picture; its refusal is printed in the table. Files of `--leave` are
read and tabled, and their pictures are not written: such as may not be copied.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Iterator
from pathlib import Path

from farwall.errors import FarwallError
from farwall.facts.reading import Reading
from farwall.papers.folder import write_folder
from farwall.papers.reading.picture import reading_svg
from farwall.readers.any_plan import read_plan

NOT_PLANS = {".md", ".json", ".txt"}
HEAD = ("file", "rooms", "m²", "doors", "cased, wide", "outside", "ways out", "windows",
        "mended / left / asked", "CPU s")  # fmt: skip


def main() -> int:
    """Write the pictures, print the table."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--out", type=Path, required=True)
    parser.add_argument("--leave", default="", help="names whose pictures are not written")
    options = parser.parse_args()
    left = set(filter(None, options.leave.split(",")))
    pictures: dict[str, bytes] = {}
    rows = [HEAD, ("---",) * len(HEAD)]
    for path in plans_in(options.folder):
        begun = spent_s()
        try:
            reading = read_plan(path)
        except FarwallError as error:
            rows.append((path.name, str(error).replace("\n", " "), *("",) * (len(HEAD) - 2)))
            continue
        spent = spent_s() - begun
        rows.append((path.name, *figures(reading), f"{spent:.1f}"))
        if path.stem not in left:
            pictures[f"{path.stem}.svg"] = reading_svg(reading, title=path.stem).encode()
    if pictures:
        write_folder(options.out, pictures)
    for row in rows:
        print(f"| {' | '.join(row)} |")
    return 0


def spent_s() -> float:
    """CPU seconds of this process and of the readers that it started."""
    told = os.times()
    return told.user + told.system + told.children_user + told.children_system


def plans_in(folder: Path) -> Iterator[Path]:
    """Every file of the folder that may be a plan."""
    for path in sorted(folder.iterdir()):
        if path.is_file() and path.suffix not in NOT_PLANS:
            yield path


def figures(reading: Reading) -> Iterator[str]:
    """The row of a reading, without its name."""
    floor = reading.floor
    kinds = [opening.kind for opening in floor.openings]
    area = sum(room.polygon.shape.area for room in floor.rooms)
    yield str(len(floor.rooms))
    yield f"{area:.2f}" if reading.scale_m_per_unit is not None else "no scale"
    yield str(kinds.count("door"))
    yield f"{kinds.count('cased')}, {kinds.count('wide')}"
    yield str(kinds.count("outside"))
    yield str(len(reading.exits))
    yield str(len(floor.windows))
    yield f"{len(reading.mended)} / {len(reading.left)} / {len(reading.asks)}"


if __name__ == "__main__":
    sys.exit(main())
