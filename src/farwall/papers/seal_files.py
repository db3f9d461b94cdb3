"""The files of a seal day: seal.json, the sheet, the floor of each coat, as bytes."""

from __future__ import annotations

from farwall.facts.job import Wishes
from farwall.facts.plain import plain
from farwall.facts.plan import Plan
from farwall.job.seal_day.noun import Sealing
from farwall.papers.json_text import json_text
from farwall.papers.seal_drawing import seal_svg
from farwall.papers.seal_sheet import own_names, seal_sheet_pdf
from farwall.phrasebook import speaking


def seal_document(plan: Plan, sealing: Sealing) -> dict[str, object]:
    """The content of seal.json: a plan, readable and checkable as one, with the part `sealing`."""
    document, part = plain(plan), plain(sealing)
    assert isinstance(document, dict)
    return {**document, "sealing": part}


def seal_files(
    plan: Plan,
    sealing: Sealing,
    document: dict[str, object],
    *,
    wishes: Wishes,
    revision: int = 1,
    screens: str = "",
) -> dict[str, bytes]:
    """File names with their content; `document` is seal.json as plain values.

    wishes: units, paper, language and notes of the job. screens: address of the house in the
    firm's book.
    """
    with speaking(wishes.language, own_names(plan, sealing)):
        drawn = seal_svg(plan, sealing, units=wishes.units)
    return {
        "seal.json": (json_text(document) + "\n").encode(),
        "seal.svg": drawn.encode(),
        "seal-sheet.pdf": seal_sheet_pdf(plan, sealing, wishes, revision=revision, screens=screens),
    }
