"""`farwall colour look`."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that it takes."""
    from farwall.cli.colour_photo import photo_arguments
    from farwall.cli.look_marks import marks_arguments

    parser.add_argument("photo", metavar="PHOTO", type=Path, help="JPEG, PNG or HEIC")
    photo_arguments(parser)
    marks_arguments(parser)
    parser.add_argument("--json", action="store_true", help="print it as JSON")


def run(options: argparse.Namespace) -> int:
    """Tell the photo's target, its error, what spoils it, the colour of the spot, and marks."""
    from farwall.cli import colour_photo, look_marks

    marks = look_marks.wanted(options)
    found = colour_photo.looked(options)
    told = colour_photo.lines(found)
    if marks:
        found["marks"] = look_marks.looked(options.photo, options)
        told += look_marks.lines(found["marks"])
    print(json.dumps(found) if options.json else "\n".join(told))
    return _DONE
