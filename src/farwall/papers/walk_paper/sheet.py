"""Blank sheets for a walk with a tape as PDF: one for each room."""

from __future__ import annotations

import json
from importlib.resources import files
from pathlib import Path

from farwall.papers.run_sheet.margins import Paper, paper_for
from farwall.papers.walk_paper.words import WORDS
from farwall.papers.wall_clock import Units
from farwall.phrasebook import Language

MOST_ROOMS = 60
WALLS, WAYS, CHECKS = 12, 5, 3
"""Rows on a sheet; a room with more takes two."""


def walk_sheet_pdf(
    rooms: int = 1, *, language: Language = "en", units: Units = "us", paper: Paper | None = None
) -> bytes:
    """The sheets of as many rooms; the same words give the same bytes.

    Raises ValueError for fewer than 1 or more than 60 rooms.
    """
    if not 1 <= rooms <= MOST_ROOMS:
        raise ValueError(f"sheets are made for 1 to {MOST_ROOMS} rooms")
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    home = Path(str(files("farwall.papers")))
    data = {
        "paper": paper_for(units, paper).typst_name, "lang": language, "rooms": rooms,
        "us": units == "us", "walls": WALLS, "ways": WAYS, "checks": CHECKS,
        "words": WORDS[language],
    }  # fmt: skip
    pdf = typst.compile(
        home / "walk_paper" / "walk.typ", root=home, font_paths=run_sheet_fonts(),
        ignore_system_fonts=True, format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)}, timestamp=0,
    )  # fmt: skip
    return bytes(pdf)
