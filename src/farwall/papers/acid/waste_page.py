"""Two pages about waste water as PDF: one to take to the utility, one to keep as a log."""

from __future__ import annotations

import json
from collections.abc import Sequence
from datetime import datetime
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.facts.defaults import own_stain_words
from farwall.facts.job import Job
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.waste.figures import figure, range_of
from farwall.job.acid_day.waste.noun import MetalIn, Waste
from farwall.papers.acid import waste_words as words
from farwall.papers.acid.waste_log import log_rows
from farwall.papers.lettering import clipped
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, day_in_words
from farwall.papers.words import area, listed
from farwall.phrasebook import speaking
from farwall.phrasebook import told as spoken
from farwall.units import KG_PER_LB, gal_from_l

_HASH_SHOWN = 12
_ROWS = 19
"""Lines of the log that fill a page."""
_SHORT = 50
"""Letters that lie on two lines of its narrowest column of words."""
Row = dict[str, str]


def waste_page_pdf(ground: Ground, part: Waste, *, screens: str = "") -> bytes:
    """The pages as PDF bytes; the same facts give the same bytes.

    Units, paper (US Letter or A4) and language are those of the job's wishes. screens: address of
    the house in the firm's book.
    """
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    home = Path(str(files("farwall.papers.run_sheet")))
    job = ground.job
    rooms = {word for room in job.floor.rooms for word in (room.id, room.label)}
    stains = own_stain_words(job.stains)
    name = job.name or job.id or "The job"
    own = rooms | stains | {name, _told(job.firm.contact, job.firm.name)}
    with speaking(job.wishes.language, own):
        data = in_language(page_words(ground, part), job.wishes.units)
    data |= {"qr": square(screens, "acid/waste"), "screen": "acid/waste"}
    pdf = typst.compile(
        home / "waste.typ",
        root=home,
        font_paths=run_sheet_fonts(),
        ignore_system_fonts=True,
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(ground.plan.starts_at).timestamp()),
    )
    return bytes(pdf)


def page_words(ground: Ground, part: Waste) -> dict[str, Any]:
    """What both pages say, in words ready to be set."""
    job, units = ground.job, ground.job.wishes.units
    name = plain(job.name or job.id or "The job")
    return {
        "paper": paper_for(units, job.wishes.paper).typst_name,
        "footer": f"{clipped(name, 260, 9)} · waste water · facts {job.revision} · inputs "
        f"{ground.plan.inputs_hash[:_HASH_SHOWN]}",
        "job": name,
        "title": words.TITLE,
        "under": words.UNDER,
        "work": _work(ground, part, units),
        "facts": _facts(part, units),
        "metals": [_metal(one, part) for one in words.METAL_NAMES],
        "how": _how(part, job),
        "danger": _danger(part),
        "asks": list(words.ASKS),
        "no_yes": words.NO_YES,
        "address": plain(job.emergency.address),
        "firm": _told(job.firm.contact, job.firm.name),
        "reach": _told(job.firm.phone, job.firm.email),
        "log_under": words.LOG_UNDER,
        "log_never": words.LOG_NEVER,
        "log_clear": words.LOG_CLEAR,
        "unit": "gal" if units == "us" else "L",
        "log": (rows := log_rows(ground, part, rows=_ROWS)),
        "log_fits": len(rows) <= _ROWS and all(len(cell) <= _SHORT for row in rows for cell in row),
    }


def _told(*words: str) -> str:
    return plain(", ".join(one for one in words if one.strip()))


def _work(ground: Ground, part: Waste, units: Units) -> str:
    count = len(ground.plan.inputs.coats)
    coats = "one coat" if count == 1 else f"{count} coats"
    day = spoken(day_in_words(datetime.fromisoformat(ground.plan.starts_at), units))
    told = words.STAINED.format(area=area(part.area_m2, units), coats=coats)
    return f"{told} {words.THEN} {words.BEGINS.format(day=day)}"


def _facts(part: Waste, units: Units) -> list[Row]:
    count = part.drums_full + part.drums_spare
    weight = (
        f"{figure(part.drum_full_kg / KG_PER_LB)} lb" if units == "us"
        else f"{figure(part.drum_full_kg)} kg"
    )  # fmt: skip
    return [
        {"name": "water", "value": words.WATER.format(
            likely=_litres(part.water_likely_l, units), low=_litres(part.water_low_l, units),
            high=_litres(part.water_high_l, units),
        )},
        {"name": "drums", "value": words.DRUMS.format(
            count=count, holds=_litres(part.drum_holds_l, units), weight=weight,
        )},
        {"name": "pH", "value": words.PH},
        {"name": "warmth", "value": words.WARMTH},
    ]  # fmt: skip


def _litres(litres: float, units: Units) -> str:
    gallons, metric = f"{figure(gal_from_l(litres))} gal", f"{figure(litres)} L"
    first, second = (gallons, metric) if units == "us" else (metric, gallons)
    return f"{first} ({second})"


def _metal(metal: str, part: Waste) -> Row:
    found: MetalIn | None = next((one for one in part.metals if one.metal == metal), None)
    row = {"name": words.METAL_NAMES[metal]}
    if found is None:
        cement = metal.startswith("chromium")
        told = words.CEMENT if cement else words.SETTLES[""]
        return {**row, "laid": "", "found": "?" if part.unread else told, "settles": ""}
    return {
        **row,
        "laid": f"{range_of(found.laid_low_g, found.laid_high_g)} g",
        "found": f"{range_of(found.low_mg_l, found.high_mg_l)} mg/L",
        "settles": words.SETTLES[found.settles],
    }


def _how(part: Waste, job: Job) -> list[str]:
    share = range_of(part.washed_off_low_percent, part.washed_off_high_percent)
    told = [words.HOW.format(share=share, rank=part.washed_off_rank)] if part.metals else []
    return [*told, words.TESTED if job.discharge.tests else words.NO_TEST, words.FARTHEST]


def _stains(names: Sequence[str]) -> str:
    """Names of stains in a row, those that Farwall gave in the language of the page."""
    return listed([spoken(one) for one in names])


def _danger(part: Waste) -> list[str]:
    told = (
        [words.UNREAD.format(stain=listed([spoken(one) for one in part.unread]))]
        if part.unread
        else []
    )
    if part.chromate:
        told.append(words.CHROMATE.format(stain=listed([spoken(one) for one in part.chromate])))
    return told
