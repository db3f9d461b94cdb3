"""Words of the command line that every command with papers takes: their language, their square."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.phrasebook import Language


def paper_words(parser: argparse.ArgumentParser, *, what: str) -> None:
    """`--language` of what is written, and `--screens`."""
    parser.add_argument(
        "--language", choices=("en", "es"),
        help=f"of {what}; without it what the job wishes for",
    )  # fmt: skip
    parser.add_argument(
        "--screens", metavar="ADDRESS", default="",
        help="address of the house in the book, for the square that a phone's camera reads",
    )  # fmt: skip


def wishing(job: Job, language: Language | None) -> Job:
    """The job with this language in place of the one that it wishes for; None leaves it."""
    from dataclasses import replace

    if language is None:
        return job
    return replace(job, wishes=replace(job.wishes, language=language))
