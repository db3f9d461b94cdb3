"""The files of a seal day: seal.json, the sheet, the floor of each coat, as bytes."""

from __future__ import annotations

from farwall.facts.plain import plain
from farwall.facts.plan import Plan
from farwall.job.seal_day.noun import Sealing
from farwall.papers.json_text import json_text
from farwall.papers.seal_drawing import seal_svg
from farwall.papers.seal_sheet import seal_sheet_pdf
from farwall.papers.wall_clock import Units


def seal_document(plan: Plan, sealing: Sealing) -> dict[str, object]:
    """The content of seal.json: a plan, readable and checkable as one, with the part `sealing`."""
    document, part = plain(plan), plain(sealing)
    assert isinstance(document, dict)
    return {**document, "sealing": part}


def seal_files(
    plan: Plan, sealing: Sealing, document: dict[str, object], *, units: Units, notes: str = ""
) -> dict[str, bytes]:
    """File names with their content; `document` is seal.json as plain values."""
    return {
        "seal.json": (json_text(document) + "\n").encode(),
        "seal.svg": seal_svg(plan, sealing, units=units).encode(),
        "seal-sheet.pdf": seal_sheet_pdf(plan, sealing, units=units, notes=notes),
    }
