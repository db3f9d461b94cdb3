"""`farwall walk-sheet --out FILE.pdf`: blank sheets to fill in while walking with a tape."""

from __future__ import annotations

import argparse
from pathlib import Path

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall walk-sheet` takes."""
    parser.add_argument("--out", metavar="FILE.pdf", type=Path, required=True, help="the sheets")
    parser.add_argument(
        "--rooms", metavar="N", type=int, default=1, help="a sheet for each room, 1 to 60"
    )
    parser.add_argument("--language", choices=("en", "es"), default="en", help="their words")
    parser.add_argument("--paper", choices=("us-letter", "a4"), default="us-letter")


def run(options: argparse.Namespace) -> int:
    """Write the sheets; then `farwall read` takes what was filled in, typed."""
    from farwall.errors import Mistake, Refused
    from farwall.papers.walk_paper.sheet import MOST_ROOMS, walk_sheet_pdf

    if not 1 <= options.rooms <= MOST_ROOMS:
        raise Refused(Mistake("--rooms", f"{options.rooms} sheets are not made.", "1 to 60."))
    pdf = walk_sheet_pdf(
        options.rooms,
        language=options.language,
        units="metric" if options.paper == "a4" else "us",
        paper=options.paper,
    )
    options.out.write_bytes(pdf)
    print(f"{options.out}: a sheet for each of {options.rooms} room(s).")
    return _DONE
