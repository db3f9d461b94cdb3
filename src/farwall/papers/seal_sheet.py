"""The seal sheet as PDF: words of each page as JSON, laid out by the template of the run sheet."""

from __future__ import annotations

import json
from datetime import datetime
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.facts.job import Wishes
from farwall.facts.plan import Plan
from farwall.job.seal_day.noun import Sealing
from farwall.papers.foot import foot_line
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.run_sheet.sheet import run_sheet_fonts
from farwall.papers.seal_front import front_page
from farwall.papers.seal_pages import coat_pages
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.words import names_in
from farwall.phrasebook import speaking

SCREEN = "log"
"""Where what was laid is entered."""
_USUAL = Wishes()


def seal_sheet_pdf(
    plan: Plan, sealing: Sealing, wishes: Wishes = _USUAL, *, revision: int = 1, screens: str = ""
) -> bytes:
    """The seal sheet as PDF bytes; the same seal day gives the same bytes.

    wishes: units (which come first, and US Letter or A4 unless `paper` is told), notes, language.
    revision: of the facts. screens: address of the house in the firm's book, empty where it has
    none.
    """
    import typst

    home = Path(str(files("farwall.papers.run_sheet")))
    data = seal_data(plan, sealing, wishes, revision=revision, screens=screens)
    pdf = typst.compile(
        home / "seal.typ",
        root=home,
        font_paths=run_sheet_fonts(),
        ignore_system_fonts=True,
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(plan.starts_at).timestamp()),
    )
    return bytes(pdf)


def seal_data(
    plan: Plan, sealing: Sealing, wishes: Wishes = _USUAL, *, revision: int = 1, screens: str = ""
) -> dict[str, Any]:
    """What the template sets, in words of the language."""
    size = paper_for(wishes.units, wishes.paper)
    name = plain(plan.job or "The job")
    qr = square(screens, SCREEN)
    with speaking(wishes.language, own_names(plan, sealing)):
        footer = foot_line(
            name, "seal day", revision=revision, inputs_hash=plan.inputs_hash, size=size, square=qr
        )
        data = in_language({
            "paper": size.typst_name,
            "job": name,
            "front": front_page(plan, sealing, units=wishes.units, notes=wishes.notes),
            "coats": coat_pages(plan, sealing, units=wishes.units, size=size),
        }, wishes.units)  # fmt: skip
    return data | {"footer": footer, "qr": qr, "screen": SCREEN}


def own_names(plan: Plan, sealing: Sealing) -> frozenset[str]:
    """Names that are the user's own: rooms, ways in, the sealer's."""
    return names_in(plan) | {one.exit for one in sealing.barriers} | {sealing.sealer.name}
