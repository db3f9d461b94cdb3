"""Photos for the papers: those of a log beside its file, or two that were given."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.photo_shown import PhotoShown


def pair_given(options: argparse.Namespace) -> tuple[PhotoShown, PhotoShown] | None:
    """The photos before and after, read by a process of their own. Raises Refused."""
    before, after = options.before, options.after
    if before is None and after is None:
        return None
    if before is None or after is None:
        lacks = "--before" if before is None else "--after"
        raise Refused(Mistake(lacks, "one of the two photos is missing.", "Give both."))
    return _file(before, options), _file(after, options)


def log_photos(options: argparse.Namespace) -> Callable[[str], PhotoShown | None] | None:
    """Photos of the log by their hash; what cannot be read is told and left out."""
    if options.log is None:
        return None
    from farwall.cli.log_file import LogFile
    from farwall.store.files import file

    folder = LogFile(options.log).files

    def shown(sha: str) -> PhotoShown | None:
        try:
            return _shown(file(folder, sha), sha[:12], options)
        except Refused as refusal:
            print(f"photo {sha[:12]}: {refusal}", file=sys.stderr)
            return None

    return shown


def _file(path: Path, options: argparse.Namespace) -> PhotoShown:
    try:
        content = path.read_bytes()
    except OSError as error:
        raise Refused(Mistake(str(path), "it cannot be opened.", "Name a photo.")) from error
    return _shown(content, path.name, options)


def _shown(content: bytes, name: str, options: argparse.Namespace) -> PhotoShown:
    from farwall.cli.colour_photo import values_told
    from farwall.readers.apart.colours import photo_shown_apart

    values = None if options.values is None else values_told(options.values)
    return photo_shown_apart(content, name=name, own_values=values)
