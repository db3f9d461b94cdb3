"""A paper set as PDF: the same facts give the same bytes."""

from __future__ import annotations

import json
from dataclasses import fields
from datetime import date, datetime
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.facts.defaults import own_stain_words
from farwall.facts.firm import Address, Firm
from farwall.papers.glyphs import missing_words, strings_in
from farwall.papers.lettering import clipped, text_width
from farwall.papers.long_words import breakable
from farwall.papers.office.blocks import Beside, Block, Own, Paper, Picture, Rows, Text
from farwall.papers.office.ground import PaperGround
from farwall.papers.run_sheet.margins import PaperSize, paper_for
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, day_in_words
from farwall.papers.words import own_first, unbroken, whole_names_in
from farwall.phrasebook import speaking, told

WINS = "The sheet of the material in hand, local codes and licensed practice win."
OF_ALL = "papers"
"""The screen of a paper that has none of its own: there it is found as it stands today."""
_HASH_SHOWN = 12
_FOOT_PT = 48.0
"""What the foot of a page takes beside its margins."""


def paper_pdf(paper: Paper, ground: PaperGround) -> bytes:
    """The paper as PDF bytes, tagged, in the language, units and size of the job's wishes."""
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    home = Path(str(files("farwall.papers")))
    made = typst.compile(
        home / "office" / "paper.typ", root=home, font_paths=run_sheet_fonts(),
        ignore_system_fonts=True, format="pdf",
        sys_inputs={"data": json.dumps(paper_data(paper, ground), ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(ground.plan.starts_at).timestamp()),
    )  # fmt: skip
    return bytes(made)


def paper_data(paper: Paper, ground: PaperGround) -> dict[str, Any]:
    """What the template is given: every word told in the language of the paper."""
    job, plan = ground.job, ground.plan
    size = paper_for(job.wishes.units, job.wishes.paper)
    name = plain(job.name or job.id or plan.job or "")
    screen = paper.screen or OF_ALL
    with speaking(ground.language, whole_names_in(plan) | own_names(ground)):
        title = told(paper.title)
        blocks = [_block(one, job.wishes.units) for one in paper.blocks]
        own = (name, title, *paper.to, *firm_lines(job.firm), *strings_in(blocks))
        return {
            "missing": missing_words(own),
            "paper": size.typst_name,
            "inner": _inner(size),
            "lang": ground.language,
            "title": title,
            "job": breakable(name),
            "under-line": _text(paper.under) if paper.under else breakable(name),
            "day": _day(paper, ground),
            "letterhead": paper.letterhead,
            "firm": firm_lines(job.firm),
            "to": [breakable(plain(one)) for one in paper.to],
            "footer": _foot(name, title, ground, size, qr=bool(ground.screens)),
            "wins": _text(paper.wins or WINS),
            "screen": screen,
            "qr": square(ground.screens, screen),
            "blocks": blocks,
            "phrases": {one: told(one) for one in _TEMPLATE_WORDS},
        }


_TEMPLATE_WORDS = ("Page", " of ")
_FOOT_SIZE = 8.5
_QR_WIDE = 48.0
_PAGES_WIDE = 95.0
"""Room for the longest `Page n of N ·` of a paper, in either language."""


def _foot(name: str, title: str, ground: PaperGround, size: PaperSize, *, qr: bool) -> str:
    """One line: the name of the job is shortened so that title, revision and hash are whole."""
    job, plan = ground.job, ground.plan
    rest = f" · {title} · " + told(
        f"facts {job.revision} · inputs {plan.inputs_hash[:_HASH_SHOWN]}"
    )
    room = size.inner_width - _PAGES_WIDE - (_QR_WIDE if qr else 0.0)
    left = max(room - text_width(rest, _FOOT_SIZE), 60.0)
    return clipped(name or told("The job"), left, _FOOT_SIZE) + rest


def _day(paper: Paper, ground: PaperGround) -> str:
    if paper.day == "none":
        return ""
    day = day_in_words(date.fromisoformat(paper.day), ground.units) if paper.day else ""
    return told(day or ground.clock.day())


def _inner(size: PaperSize) -> float:
    return size.inner_height - _FOOT_PT


def own_names(ground: PaperGround) -> set[str]:
    """Names that are the user's own and no words of ours: `light colour` is one of ours."""
    job = ground.job
    found = {word for room in job.floor.rooms for word in (room.id, room.label)}
    found |= own_stain_words(job.stains)
    found |= {coat.id for coat in job.coats} | {one.name for one in job.workers}
    found |= {job.name, job.id, job.firm.name, job.customer.name, job.builder.name}
    return found - {""}


def firm_lines(firm: Firm) -> list[str]:
    """The firm at the head of a paper: name, address, phone, mail, licence; what was told."""
    lines = [firm.name, *address_lines(firm.address), firm.phone, firm.email, firm.licence]
    return [plain(one) for one in lines if one]


def address_lines(address: Address) -> list[str]:
    """An address as it stands on a letter, without the country."""
    town = " ".join(one for one in (address.city, address.region, address.post_code) if one)
    return [*address.lines, *([town] if town else [])]


def _text(text: Text, units: Units = "us") -> str:
    said = plain(text.text) if isinstance(text, Own) else own_first(told(text), units)
    return breakable(unbroken(said))


def _block(block: Block, units: Units) -> dict[str, Any]:
    made: dict[str, Any] = {"kind": type(block).__name__.lower()}
    if isinstance(block, Beside):
        return made | {
            "left": [_block(one, units) for one in block.left],
            "right": [_block(one, units) for one in block.right],
            "share": block.share,
        }
    if isinstance(block, Picture):
        words = _text(block.words, units) if block.words else ""
        return made | {
            "svg": block.svg, "height": block.height_share, "words": words, "alt": words,
            "wide": block.wide_pt,
        }  # fmt: skip
    if isinstance(block, Rows):
        return made | {
            "heads": [_text(one, units) for one in block.heads],
            "rows": [[_text(one, units) for one in row] for row in block.rows],
            "widths": list(block.widths or (1.0,) * len(block.heads)),
            "right": list(block.right), "blank": block.blank, "tick": block.tick,
            "tick-head": _text(block.tick_head, units) if block.tick_head else "",
            "tick-end": _text(block.tick_end, units) if block.tick_end else "",
            "strong-last": block.strong_last, "pen": block.pen,
        }  # fmt: skip
    names = (one.name for one in fields(block))
    return made | {key: _said(getattr(block, key), units) for key in names}


def _said(value: Any, units: Units) -> Any:
    if isinstance(value, Own | str):
        return _text(value, units)
    if isinstance(value, tuple):
        return [_said(one, units) for one in value]
    return value
