"""The safety sheet of each stain as a form: acid, density, what is in it, the day it was read."""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

MOST_CONTENTS = 12

_SHEET = (
    Sentence("s-sheet", (
        Blank("hcl-low", "hcl_percent_low", size=4), Blank("hcl-high", "hcl_percent_high", size=4),
        Blank("density", "density_kg_l"), Blank("chromate", "chromate"),
    ), help="stain-sheet"),
    Sentence("s-oxidiser", (Blank("oxidiser", "oxidiser"),), help="oxidiser"),
    Sentence("s-sheet-read", (Blank("sheet-read", "sheet_read", day=True),), help="sheet-read"),
)  # fmt: skip
_CONTENT = Sentence("s-content", (
    Blank("substance", "substance", must=True),
    Blank("share-low", "mass_percent_low", size=4),
    Blank("share-high", "mass_percent_high", size=4),
), help="contents")  # fmt: skip


def sheets_of(job: Job) -> Form:
    """A part for what each stain's sheet says, and one for what section 3 lists."""
    parts = [
        part
        for number, stain in enumerate(job.stains)
        for name in [stain.name or stain.id]
        for part in (
            Part("sheet-part", _SHEET, way=f"stains.{number}", title=name),
            Part("contents-part", (_CONTENT,), each="rows", way=f"stains.{number}.contents",
                 told=True, most=MOST_CONTENTS, title=name),
        )
    ]  # fmt: skip
    return Form("sheets", tuple(parts))
