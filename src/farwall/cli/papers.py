"""`farwall papers`: every paper of a job, or those of a moment, as PDF."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from farwall.cli.office_ground import office_arguments, office_ground
from farwall.cli.paper_words import paper_words
from farwall.errors import Mistake, Refused

_DONE = 0
_TWO_FILES = "Or give two files with --before and --after."


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall papers` takes."""
    office_arguments(parser)
    parser.add_argument(
        "--only", metavar="NAME", nargs="+", action="extend", default=[],
        help="papers by name (invoice), or a moment: before-the-pour, quote, day, hand-over; may "
        "be said again",
    )  # fmt: skip
    paper_words(parser, what="the papers")

    photos = parser.add_argument_group("for before-after: two of the log, or two files")
    photos.add_argument(
        "--chosen", metavar=("BEFORE", "AFTER"), nargs=2,
        help="ids of two entries of one place; else each place's first photo and its last",
    )  # fmt: skip
    photos.add_argument("--before", metavar="PHOTO", type=Path, help="JPEG, PNG or HEIC")
    photos.add_argument("--after", metavar="PHOTO", type=Path, help="of the same place")
    photos.add_argument(
        "--values",
        metavar="FILE",
        help="Lab of the target's squares in the photos, as `colour look`",
    )


def run(options: argparse.Namespace) -> int:
    """Write the papers, whole or not at all."""
    from farwall.cli.forked import forked
    from farwall.cli.paper_photos import log_photos, pair_given
    from farwall.papers.folder import write_folder
    from farwall.papers.office.bundles import chosen, lacking, office_files
    from farwall.papers.office.ground import PaperGround

    if options.out is None:
        raise Refused(Mistake("--out", "no folder was named.", "Add --out DIR."))
    only = tuple(options.only)
    chosen(only)
    ground = office_ground(options)
    language = options.language or ground.job.wishes.language
    photos = log_photos(options)
    papers = PaperGround(
        ground, language, ground.calendar, options.screens, photo=photos, pair=pair_given(options),
        chosen=None if options.chosen is None else (options.chosen[0], options.chosen[1]),
    )  # fmt: skip
    files = office_files(papers, only, beside=forked)
    write_folder(options.out, files)
    for file, lacks in lacking(papers, only).items():
        more = (_TWO_FILES,) if file == "before-after.pdf" else ()
        print(f"{file} is left out:", *lacks, *more, sep="\n  ", file=sys.stderr)
    for name in files:
        print(options.out / name)
    return _DONE
