"""What stands there to be poured, as a form: a row for each bottle, bag and drum."""

from __future__ import annotations

from farwall.web.pages.forms.nouns import Blank, Form, Part, Sentence

_MATERIALS = Part("materials-part", (
    Sentence("s-material", (
        Blank("material-id", "id", size=10), Blank("material-name", "name", size=16),
        Blank("material-kind", "kind", pick="material", must=True),
        Blank("material-stain", "stain", of="stains"),
    ), help="material"),
    Sentence("s-material-sheet", (
        Blank("material-read", "sheet_read", pick="read"), Blank("material-ph", "sheet_ph"),
    ), help="material-sheet"),
    Sentence("s-material-sampled", (
        Blank("material-sampled", "sampled_with", size=24),
    ), help="material-sampled"),
), each="rows", way="materials", told=True, stem="material")  # fmt: skip

MATERIALS = Form("materials", (_MATERIALS,))
