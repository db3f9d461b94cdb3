"""`farwall colour`: what the samples say, the next coat, and what a photo of the floor shows."""

from __future__ import annotations

import argparse
import importlib

WHAT = {
    "fit": "what the samples on this slab say: from a dose to a colour, with its range",
    "next": "the weakest next coat that closes the gap to the sample, or to stop",
    "look": "a photo with or without a target: its colour, and marks on a mopped floor",
}


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall colour` takes."""
    parts = parser.add_subparsers(dest="part", metavar="PART", required=True)
    for name, what in WHAT.items():
        sub = parts.add_parser(name, help=what, description=what)
        importlib.import_module(f"farwall.cli.colour_{name}").arguments(sub)


def run(options: argparse.Namespace) -> int:
    """Do the part."""
    return int(importlib.import_module(f"farwall.cli.colour_{options.part}").run(options))
