"""The labels as PDF: three to a page for jugs, sprayers and pails, two for drums, with cut marks.

Sizes: at least 74 x 105 mm for 3 to 50 L, 105 x 148 mm for 50 to 500 L [clp, annex I 1.2.1, from
memory]; 29 CFR 1910.1200 names none. Letters are at least 6 pt: a label is read in the hand.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import datetime
from importlib.resources import files
from pathlib import Path

from farwall.job.acid_day.containers import containers_of
from farwall.job.acid_day.ground import Ground
from farwall.papers.acid.cards.card import Said
from farwall.papers.acid.foot import Foot
from farwall.papers.acid.labels.hazardous import acid_label, ammonia_label, batch_labels
from farwall.papers.acid.labels.label import Label, Size
from farwall.papers.acid.labels.plain_ones import drum_labels, pail_label
from farwall.papers.acid.users_words import as_written
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.svg import plain
from farwall.papers.words import unbroken
from farwall.phrasebook import Language

LEAST_PT = 6.0
_SIZES = (13.0, 12.0, 11.0, 10.0, 9.5, 9.0, 8.5, 8.0, 7.5, 7.0, 6.5, LEAST_PT)
_FOOT_WIDE_PT = 500.0
"""Room for the line at a label's foot: an A4 label between its insets, not quite."""
ON_A_PAGE: dict[Size, int] = {"jug": 3, "large jug": 2, "drum": 2}


def labels_of(ground: Ground) -> tuple[Label, ...]:
    """All labels of a job: batches, then what stands beside, then drums."""
    return tuple(_labels(ground))


def _labels(ground: Ground) -> Iterator[Label]:
    units = ground.job.wishes.units
    for one in containers_of(ground):
        match one.kind:
            case "batch":
                yield from batch_labels(one, ground.plan, units)
            case "muriatic acid":
                yield acid_label(one)
            case "ammonia water":
                yield ammonia_label(one)
            case "bicarbonate":
                yield pail_label(units)
            case "rinse water":
                yield from drum_labels(one, ground.job.washing.drums, units)


def labels_pdf(ground: Ground, *, screens: str = "") -> bytes:
    """The labels of a job; the same job and plan give the same bytes.

    screens: address of the house in the firm's book.
    """
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    wishes = ground.job.wishes
    labels = labels_of(ground)
    home = Path(str(files("farwall.papers")))
    parts = [
        (size, part)
        for size, count in ON_A_PAGE.items()
        for part in _parts([one for one in labels if one.size == size], count)
    ]
    order = _order(wishes.language)
    foot = Foot(ground, order, _FOOT_WIDE_PT, LEAST_PT, screens)
    pages = [
        {
            "size": size,
            "count": ON_A_PAGE[size],
            "labels": [_set(one, order) | foot.on(n, len(parts), one.screen) for one in part],
        }
        for n, (size, part) in enumerate(parts, 1)
    ]
    data = {
        "title": as_written(ground.plan.job or "Farwall"),
        "paper": paper_for(wishes.units, wishes.paper).typst_name,
        "sizes": [f"{one:.2f}" for one in _SIZES],
        "least": f"{LEAST_PT:.2f}",
        "pages": pages,
    }
    pdf = typst.compile(
        home / "acid" / "labels" / "labels.typ", root=home, font_paths=run_sheet_fonts(),
        ignore_system_fonts=True, format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(ground.plan.starts_at).timestamp()),
    )  # fmt: skip
    return bytes(pdf)


def _parts(labels: list[Label], count: int) -> list[list[Label]]:
    return [labels[k : k + count] for k in range(0, len(labels), count)]


def _order(first: Language) -> tuple[Language, Language]:
    return ("en", "es") if first == "en" else ("es", "en")


def _set(one: Label, order: tuple[Language, Language]) -> dict[str, object]:
    """The label as its template takes it: each thing in the job's language and in the other."""

    def both(said: Said | None) -> list[str]:
        if said is None:
            return []
        return [unbroken(plain(said.by(language))) for language in order]

    return {
        "on": both(one.on), "what": both(one.what), "more": both(one.more),
        "signal": both(one.signal), "no": both(one.no), "wide": both(one.wide),
        "pictograms": [f"/acid/pictograms/{name}.svg" for name in one.pictograms],
        "statements": [both(said) for said in one.statements],
        "precautions": [both(said) for said in one.precautions],
        "lines": [both(said) for said in one.lines],
        "blanks": [both(said) for said in one.blanks],
    }  # fmt: skip
