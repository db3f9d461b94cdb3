"""The line at the foot of a paper: its job, what it is, its revision, the hash of its inputs."""

from __future__ import annotations

from farwall.papers.lettering import clipped, text_width
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.svg import plain
from farwall.phrasebook import told

HASH_SHOWN = 12
_SIZE = 9.0
"""Of the words in the foot of `parts.typ`. [pt]"""
_QR_WIDE, _PAGES_WIDE, _LEAST = 46.0, 104.0, 60.0
"""Room for the square and for the longest `Page n of N ·`, in either language. [pt]"""


def foot_line(
    name: str, what: str, *, revision: int, inputs_hash: str, size: PaperSize, square: str = ""
) -> str:
    """One line in the language that is spoken; the name is shortened so that all else is whole.

    what: the kind of paper. inputs_hash: of which twelve digits are shown. square: SVG of the
    square beside it, empty where there is none.
    """
    rest = " · ".join(
        ("", told(what), told(f"facts {revision} · inputs {inputs_hash[:HASH_SHOWN]}"))
    )
    room = size.inner_width - _PAGES_WIDE - (_QR_WIDE if square else 0.0)
    left = max(room - text_width(rest, _SIZE), _LEAST)
    return clipped(plain(name), left, _SIZE) + rest
