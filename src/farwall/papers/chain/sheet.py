"""A house of a calendar document and its job in, one PDF page out."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import date, datetime
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.days.words import date_words
from farwall.evidence import rank_words
from farwall.facts.job import Job
from farwall.facts.plain import plain as plain_facts
from farwall.job.plan_job import hash_of
from farwall.papers.days_tape import days_tape_svg
from farwall.papers.days_words import moment_words, time_words
from farwall.papers.foot import foot_line
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.long_words import breakable
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units
from farwall.phrasebook import Language, speaking
from farwall.phrasebook import told as spoken
from farwall.units import ft2_from_m2

SCREEN = "papers"
"""Where the page is found as it stands today."""


def chain_pdf(
    told: Mapping[str, Any],
    house: Mapping[str, Any],
    job: Job,
    *,
    language: Language | None = None,
    screens: str = "",
) -> bytes:
    """The page as PDF bytes; the same calendar and the same job give the same bytes.

    Units, paper and, unless `language` is told, the language are those that the job wishes for.
    screens: address of the house in the firm's book, empty where it has none.
    """
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    home = Path(str(files("farwall.papers")))
    data = chain_data(told, house, job, language=language, screens=screens)
    pdf = typst.compile(
        home / "chain" / "chain.typ",
        root=home,
        font_paths=run_sheet_fonts(),
        ignore_system_fonts=True,
        format="pdf",
        sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(told["begins"]).timestamp()),
    )
    return bytes(pdf)


def made_from(told: Mapping[str, Any], house: Mapping[str, Any], job: Job) -> str:
    """The hash of what the page is made from: the job, and the house's own part of the calendar
    with what all houses share. Another house that moves does not change it."""
    shared = {key: told[key] for key in ("version", "begins", "rests_on", "work", "cautions")}
    return hash_of({"job": plain_facts(job), "house": house, **shared})


def chain_data(
    told: Mapping[str, Any],
    house: Mapping[str, Any],
    job: Job,
    *,
    language: Language | None = None,
    screens: str = "",
) -> dict[str, Any]:
    """What the template sets, in words of the language."""
    wishes = job.wishes
    size = paper_for(wishes.units, wishes.paper)
    qr, name = square(screens, SCREEN), str(house["name"])
    with speaking(language or wishes.language, {name, str(house["id"])}):
        footer = foot_line(
            name, "the days", revision=job.revision, inputs_hash=made_from(told, house, job),
            size=size, square=qr,
        )  # fmt: skip
        tape = days_tape_svg(
            told, house=house["id"], width=size.inner_width, lettering=PAPER_LETTERING
        )
        words = in_language({
            "paper": size.typst_name,
            "job": plain(name),
            "tape": tape,
                **page_words(told, house, units=wishes.units),
        })  # fmt: skip
    asked = " · ".join(plain(one) for one in (job.firm.name, job.firm.phone) if one)
    return words | {"footer": footer, "qr": qr, "screen": SCREEN, "asked": breakable(asked)}


def page_words(
    told: Mapping[str, Any], house: Mapping[str, Any], *, units: Units
) -> dict[str, object]:
    """The words of the page."""
    lock = [moment_words(datetime.fromisoformat(house["lock"][key]), units)
            for key in ("starts_at", "ends_at")]  # fmt: skip
    return {
        "under": _under(house, units),
        "lock": f"from {lock[0]} until {lock[1]}",
        "lock_late": _lock_late(house["lock"]["ends_high_at"], units),
        "steps": [_row(step, units) for step in house["steps"]],
        "before": [
            (date_words(date.fromisoformat(one["date"])), one["what"])
            for one in house["milestones"]
        ],
        "rests": _rests(told, house),
        "cautions": list(told["cautions"]),
    }


def _lock_late(ends_high_at: str | None, units: Units) -> str:
    if ends_high_at is None:
        return "Where drying is slow there is no end that can be told: ask before you go in."
    late = spoken(moment_words(datetime.fromisoformat(ends_high_at), units))
    return f"Where drying is slow until {late}: ask before you go in."


def _under(house: Mapping[str, Any], units: Units) -> str:
    m2 = float(house["area_m2"])
    area = f"{ft2_from_m2(m2):,.0f} ft²" if units == "us" else f"{m2:,.0f} m²"
    coats = f"{house['coats']} coat{'s' * (house['coats'] != 1)} of stain"
    return f"{area} · {coats} · {house['crew']}"


def _row(step: Mapping[str, Any], units: Units) -> dict[str, str]:
    start, end, low = (
        datetime.fromisoformat(step[key]) for key in ("starts_at", "ends_at", "ends_low_at")
    )
    until = time_words(end, units)
    if end.date() != start.date():
        until = f"{date_words(end)[:3]} {until}"
    high = step["ends_high_at"]
    may = "open end" if high is None else _short(datetime.fromisoformat(high), units)
    return {
        "day": date_words(start),
        "hours": f"{time_words(start, units)} to {until}",
        "name": step["name"],
        "wait": step["wait"],
        "ends": f"{_short(low, units)} to {may}",
    }


def _short(at: datetime, units: Units) -> str:
    return f"{date_words(at)} {time_words(at, units)}"


def _rests(told: Mapping[str, Any], house: Mapping[str, Any]) -> list[str]:
    rests = told["rests_on"]
    lines = [
        f"Weather: {rank_words(rests['rank'], rests['source'])}.",
        (
            "Hours of work for the floor and its crew, and waits: common practice, no source; how "
            "hours part within a line is a guess."
        ),
    ]
    if house["lost_chance"] is not None:
        lines.append(
            f"Chance that a day for stain or sealer is lost to the weather: "
            f"{house['lost_chance']:.0%} (guess)."
        )
    if house["due"] is not None:
        late = house["late_days"]
        due = date_words(date.fromisoformat(house["due"]))
        days = f"{late} day{'s' * (late != 1)}"
        lines.append(f"Due {due}" + (f": late by {days}." if late else "."))
    return lines
