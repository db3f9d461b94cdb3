"""The cards as PDF: one a page, first in the language of the job, then in the other.

How large. Letters of a message are at least 1/300 of the distance high in good reading conditions,
signal words 1/150 [z535-2, section 9.2.3, quoted]; in poor ones the same table asks about 1/145
for a message. At 2 m that is 6.7 mm, 13.3 mm, 13.8 mm. Here titles reach 1/145, steps and the foot
1/250 and more, as large as their page allows; nothing that is to be read at 2 m is under 1/300,
but for words of the firm's own that are too many. The line at the very foot is for the hand.
"""

from __future__ import annotations

import json
from datetime import datetime
from importlib.resources import files
from pathlib import Path

from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.papers.acid.cards.card import Card, Said
from farwall.papers.acid.cards.deck import deck_of
from farwall.papers.acid.foot import Foot
from farwall.papers.acid.users_words import as_written, shortened
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.svg import plain
from farwall.papers.words import unbroken
from farwall.phrasebook import LANGUAGES, Language

READ_AT_M = 2.0
CAP_HEIGHT_EM = 1462 / 2048
"""Height of a capital of Open Sans over its size: sCapHeight over unitsPerEm of its OS/2 table."""
_PT_M = 72 / 0.0254
_FOOT_PT, _FOOT_WIDE_PT = 9.0, 480.0
"""Type of the lines at the very foot, and room for the first of them beside the square."""
_SCREENS = (
    ("spill", "acid/neutralising"), ("drip", "acid/neutralising"), ("wear", "acid/people"),
    ("eyewash", "acid/people"), ("mixing", "acid/strength"), ("batches", "acid/strength"),
)  # fmt: skip
WINS = Said(
    "The sheet of the material in hand, local codes and licensed practice win.",
    "Mandan la hoja del material que tiene en la mano, los códigos locales y la práctica con "
    "licencia.",
)


def size_pt(distance_over_height: float) -> float:
    """Size of type whose capitals are 1/`distance_over_height` of 2 m high. [pt]"""
    return READ_AT_M / distance_over_height * _PT_M / CAP_HEIGHT_EM


LEAST_PT = size_pt(300)
STEP_PT = size_pt(250)
TITLE_PT = size_pt(145)
_TITLES = (72.0, 66.0, 60.0, 56.0, TITLE_PT)
_OF_WIDE_PT = 510.0
"""Room for stain and cut of a batch at the least size: a line."""
_CROWDED = (28.0, 24.0, 21.0, 18.0, 16.0, 14.0)
"""For lines of the firm's own words alone, where they are too many for the size of steps."""
_STEPS = (56.0, 52.0, 48.0, 44.0, 42.0, 40.0, 38.0, 36.0, 34.0, STEP_PT)


def cards_pdf(ground: Ground, day: AcidDay, *, screens: str = "") -> bytes:
    """The cards of a job; the same job and plan give the same bytes.

    screens: address of the house in the firm's book.
    """
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    wishes = ground.job.wishes
    sheets = [
        (card, language)
        for card in deck_of(ground, day)
        for language in (wishes.language, _other(wishes.language))
    ]
    home = Path(str(files("farwall.papers")))
    data = {
        "title": as_written(ground.plan.job or "Farwall"),
        "paper": paper_for(wishes.units, wishes.paper).typst_name,
        "titles": [f"{one:.2f}" for one in _TITLES],
        "sizes": [f"{one:.2f}" for one in _STEPS],
        "crowded": [f"{one:.2f}" for one in _CROWDED],
        "least": f"{LEAST_PT:.2f}",
        "never": f"{STEP_PT:.2f}",
        "cards": [
            _set(card, language)
            | Foot(ground, (language,), _FOOT_WIDE_PT, _FOOT_PT, screens).on(
                n, len(sheets), screen_of(card)
            )
            for n, (card, language) in enumerate(sheets, 1)
        ],
    }
    pdf = typst.compile(
        home / "acid" / "cards" / "cards.typ", root=home, font_paths=run_sheet_fonts(),
        ignore_system_fonts=True, format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(ground.plan.starts_at).timestamp()),
    )  # fmt: skip
    return bytes(pdf)


def _other(language: Language) -> Language:
    return next(one for one in LANGUAGES if one != language)


def screen_of(card: Card) -> str:
    """Where in the book the card's square leads: its part of the acid day."""
    return next((at for key, at in _SCREENS if card.key.startswith(key)), "acid")


def _set(card: Card, language: Language) -> dict[str, object]:
    """The card in one language, as its template takes it."""

    def said(words: Said | None) -> str:
        return unbroken(plain(words.by(language))) if words is not None else ""

    return {
        "lang": language,
        "title": said(card.title),
        "drawing": f"/acid/drawings/{card.drawing}.svg",
        "steps": [said(one) for one in card.steps],
        "ticked": card.ticked,
        "boxed": said(card.boxed),
        "blanks": [{"name": said(one.name), "told": as_written(one.told)} for one in card.blanks],
        "batches": [
            {
                "name": said(one.name),
                "of": shortened(one.of.by(language), _OF_WIDE_PT, LEAST_PT),
                "lines": [[said(name), plain(figure)] for name, figure in one.lines],
            }
            for one in card.batches
        ],
        "table": [said(one) for one in card.table],
        "note": said(card.note),
        "never": said(card.never),
        "wins": WINS.by(language),
    }
