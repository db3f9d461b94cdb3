"""The files of an acid day: acid.json and its papers, as bytes."""

from __future__ import annotations

from collections.abc import Callable

from farwall.facts.plain import Plain, plain
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.papers.acid.cards.sheet import cards_pdf
from farwall.papers.acid.labels.sheet import labels_pdf
from farwall.papers.acid.people_sheet import keep_out_pdf, people_pdf
from farwall.papers.acid.wash.sheet import wash_day_pdf
from farwall.papers.acid.waste_page import waste_page_pdf
from farwall.papers.json_text import json_text

Maker = Callable[[Ground, AcidDay, str], bytes]
PAPERS: dict[str, Maker] = {
    "cards.pdf": lambda ground, day, at: cards_pdf(ground, day, screens=at),
    "people.pdf": lambda ground, day, at: people_pdf(ground, day, screens=at),
    "keep-out.pdf": lambda ground, day, at: keep_out_pdf(ground, day, screens=at),
    "labels.pdf": lambda ground, _, at: labels_pdf(ground, screens=at),
    "wash-day.pdf": lambda ground, day, at: wash_day_pdf(ground, day.washing, screens=at),
    "waste-page.pdf": lambda ground, day, at: waste_page_pdf(ground, day.waste, screens=at),
}
"""File name to maker, in the order in which they are needed; the screens hand out the same.
The last of what a maker takes is the address of the house in the firm's book, else empty."""


def acid_document(day: AcidDay) -> dict[str, object]:
    """The content of acid.json; six figures are more than any of its numbers is good for."""
    document = _to_figures(plain(day))
    assert isinstance(document, dict)
    return dict(document)


def acid_files(
    ground: Ground, day: AcidDay, document: dict[str, object], *, screens: str = ""
) -> dict[str, bytes]:
    """File names with their content; `document` is acid.json as plain values.

    screens: address of the house in the firm's book.
    """
    papers = {name: make(ground, day, screens) for name, make in PAPERS.items()}
    return {"acid.json": (json_text(document) + "\n").encode(), **papers}


def _to_figures(value: Plain) -> Plain:
    if isinstance(value, float):
        return float(f"{value:.6g}")
    if isinstance(value, list):
        return [_to_figures(one) for one in value]
    if isinstance(value, dict):
        return {key: _to_figures(one) for key, one in value.items()}
    return value
