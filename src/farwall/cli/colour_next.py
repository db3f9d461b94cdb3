"""`farwall colour next`."""

from __future__ import annotations

import argparse

from farwall.errors import Unanswerable


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that it takes."""
    parser.add_argument("--json", action="store_true", help="print it as JSON")


def run(options: argparse.Namespace) -> int:
    """Not laid yet."""
    raise Unanswerable(f"{options.part}: not laid yet.")
