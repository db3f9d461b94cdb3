"""`farwall colour look`."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that it takes."""
    from farwall.cli.colour_photo import photo_arguments

    parser.add_argument("photo", metavar="PHOTO", type=Path, help="JPEG, PNG or HEIC")
    photo_arguments(parser)
    parser.add_argument("--json", action="store_true", help="print it as JSON")


def run(options: argparse.Namespace) -> int:
    """Tell the photo's target, its error, what spoils it, and the colour of the spot."""
    from farwall.cli.colour_photo import lines, looked

    found = looked(options)
    print(json.dumps(found) if options.json else "\n".join(lines(found)))
    return _DONE
