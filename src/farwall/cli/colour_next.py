"""`farwall colour next`: the weakest safe coat that closes the gap to the sample, wait, or stop."""

from __future__ import annotations

import argparse
import json

from farwall.cli.colour_ground import ground_arguments, ground_of

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that it takes."""
    ground_arguments(parser)
    parser.add_argument("--room", metavar="ROOM", default="", help="this room alone, by its id")
    parser.add_argument(
        "--coat", metavar="COAT", default="",
        help="the coat to be decided, those before it taken as laid; else the next by the log",
    )  # fmt: skip
    parser.add_argument("--stain", metavar="ID", default="", help="this stain alone")


def run(options: argparse.Namespace) -> int:
    """Say the verdict. Raises Unanswerable where samples or standard are missing."""
    from farwall.job.colour.asked import Asked
    from farwall.job.colour.document import next_document
    from farwall.job.colour.next_coat import colour_next
    from farwall.job.colour.say import lines_of, said
    from farwall.units import measures_own_first

    job, plan, kept, lessons = ground_of(options)
    asked = Asked(
        job, plan, kept, lessons, room=options.room, coat=options.coat, stain=options.stain
    )
    found = colour_next(asked)
    if options.json:
        print(json.dumps(next_document(job, found), ensure_ascii=False))
    else:
        told = "\n".join(lines_of(said(job, found)))
        print(measures_own_first(told, us=job.wishes.units == "us"))
    return _DONE
