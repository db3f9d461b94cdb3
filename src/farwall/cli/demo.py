"""`farwall demo`: the whole way on an invented house, to see what comes out."""

from __future__ import annotations

import argparse
import json
from importlib.resources import files
from pathlib import Path

from farwall.cli.plan import fresh_word


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall demo` takes."""
    parser.add_argument(
        "--out",
        metavar="DIR",
        type=Path,
        default=Path("farwall-demo"),
        help="where to write (default ./farwall-demo)",
    )
    fresh_word(parser)


def run(options: argparse.Namespace) -> int:
    """Plan the invented house into the folder, and say what to open."""
    from farwall.cli.plan import plan_into
    from farwall.readers.job_json import job_from

    text = files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8")
    print("An invented house; nobody lives there. Its facts are in job.json, change them and plan.")
    job = job_from(json.loads(text), about="demo_house.json")
    also = {"job.json": text.encode()}
    return plan_into(job, options.out, also=also, fresh=options.fresh)
