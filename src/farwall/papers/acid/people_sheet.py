"""The list of the morning: ticks for each person, looks, eyewash, minutes; and the sign for a door.

Both are set by the templates of the run sheet; the same job and plan give the same bytes.
"""

from __future__ import annotations

import json
import math
from datetime import datetime, timedelta
from importlib.resources import files
from pathlib import Path
from typing import Any

from farwall.acid.may import VERBS, needs_of
from farwall.acid.worn import day_told, held_until
from farwall.facts.plan import Plan
from farwall.facts.workers import Emergency, Worker
from farwall.job.acid_day.fumes import Fumes
from farwall.job.acid_day.ground import Ground
from farwall.job.acid_day.noun import AcidDay
from farwall.job.acid_day.people.noun import People, Person
from farwall.papers.acid.cards.sheet import WINS
from farwall.papers.acid.foot import HASH_SHOWN, Foot
from farwall.papers.acid.people_words import (
    every_line,
    free_min,
    keep_out_lines,
    look_lines,
    people_clock,
    person_lines,
)
from farwall.papers.lettering import clipped
from farwall.papers.run_sheet.in_language import in_language
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.square import square
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock
from farwall.papers.words import names_in
from farwall.phrasebook import LANGUAGE, Language, speaking, told

COLUMNS: tuple[tuple[str, str], ...] = (
    ("fit test", "fitted to"), ("medical word", "cleared"), ("clean-shaven", "shaven"),
    ("cartridges", "cartridges"), ("change schedule", "schedule"), ("gloves", "gloves"),
    ("eyes", "eyes"), ("apron", "apron"), ("boots", "boots"), ("training", "gone through"),
)  # fmt: skip
"""What is looked at, and the word that heads its column."""
LEAST_ROWS = 3
"""Rows of the table; who is not told of is written by hand."""
SCREEN = "acid/people"
_FOOT_WIDE_PT = 440.0
"""Room for the line at the foot of the sign, beside its square."""
_STATES = {"in order": "", "missing": "missing", "not told": "ask"}


def people_pdf(ground: Ground, day: AcidDay, *, screens: str = "") -> bytes:
    """The list of the morning as PDF bytes, in the language of the job or of who asks.

    screens: address of the house in the firm's book.
    """
    data = people_data(ground, day.people, language=_language(ground), fumes=fumes_of_day(day))
    data |= {"qr": square(screens, SCREEN), "screen": SCREEN}
    return _set("acid_people.typ", data, ground.plan)


def fumes_of_day(day: AcidDay) -> Fumes | None:
    """What the air of the day holds; None where it could not be reckoned."""
    return day.fumes if day.fumes.sprayer is not None else None


def people_data(
    ground: Ground, people: People, *, language: Language, fumes: Fumes | None = None
) -> dict[str, Any]:
    """The words of the list, ready to be set."""
    job, plan = ground.job, ground.plan
    units = job.wishes.units
    clock = people_clock(plan, units)
    by_id = {one.id: one for one in job.workers}
    names = names_in(plan) | {one.name for one in people.people} | {plan.job}
    columns = COLUMNS
    if needs_of(job).chromate:
        columns = (*COLUMNS, ("exposure settled", "hygienist"))
    with speaking(language, names):
        rows = [_row(one, by_id[one.id], columns, clock, fumes) for one in people.people]
        data = in_language({
            "paper": paper_for(units, job.wishes.paper).typst_name,
            "footer": f"{clipped(plain(plan.job or 'The job'), 170, 9)} · people with acid · "
            f"facts {job.revision} · "
            f"inputs {plan.inputs_hash[:HASH_SHOWN]}",
            "columns": [head for _, head in columns],
        }, job.wishes.units)  # fmt: skip
        return data | {
            "job": plain(plan.job or told("The job")),
            "day": told(clock.day()),
            "rows": rows,
            "blank_rows": max(LEAST_ROWS - len(rows), 1),
            "stops": [told(one) for one in people.stops],
            "every": every_line(people),
            "stands_by": ", ".join(plain(one) for one in people.stands_by),
            "looks": [
                {"coat": coat, "times": times} for coat, times in look_lines(people, plan, clock)
            ],
            "eyewash_at": plain(people.eyewash_at),
            "aid": [[told(one.harm), told(one.do)] for one in people.first_aid],
            "numbers": [[told(one.what), plain(one.value)] for one in people.numbers],
            "keep_out": keep_out_lines(people, clock, fumes),
        }


def _row(
    person: Person,
    worker: Worker,
    columns: tuple[tuple[str, str], ...],
    clock: WallClock,
    fumes: Fumes | None,
) -> dict[str, Any]:
    states = {one.item: one.state for one in person.looked}
    breathes = person.cartridge is not None or "cartridges" in states
    pair = person.cartridge
    used = ""
    if pair is not None and pair.change_after_min is not None:
        used = f"{pair.used_min:.0f} / {pair.change_after_min:.0f} min"
    new = "" if pair is None or pair.change_by_min is None else clock.time(pair.change_by_min)
    return {
        "name": plain(person.name),
        "does": ", ".join(told(VERBS[one.duty]) for one in person.duties),
        "cells": [_cell(item, states.get(item), worker) for item, _ in columns],
        "against": [words for no, words in person_lines(person, clock, fumes) if no],
        "breathes": breathes,
        "used": used,
        "new": new,
    }


def _cell(item: str, state: str | None, worker: Worker) -> dict[str, Any]:
    """A box to tick and what was told; none where no duty of the person asks for it."""
    if state is None:
        return {"box": False, "note": "", "no": False}
    note = told(_STATES[state]) if _STATES[state] else ""
    fit = day_told(worker.fit_tested)
    if item == "fit test" and state == "in order" and fit is not None:
        note = held_until(fit).isoformat()
    return {"box": True, "note": note, "no": state == "missing"}


def keep_out_pdf(ground: Ground, day: AcidDay, *, screens: str = "") -> bytes:
    """The sign for a door as PDF bytes, in both languages.

    screens: address of the house in the firm's book.
    """
    data = keep_out_data(ground, day.people, fumes=fumes_of_day(day), screens=screens)
    return _set("keep_out.typ", data, ground.plan)


def keep_out_data(
    ground: Ground, people: People, *, fumes: Fumes | None = None, screens: str = ""
) -> dict[str, Any]:
    """The words of the sign, ready to be set; its square leads to who may go in."""
    job, plan = ground.job, ground.plan
    both: tuple[Language, Language] = ("es", "en") if job.wishes.language == "es" else ("en", "es")
    return Foot(ground, both, _FOOT_WIDE_PT, 9.0, screens).on(1, 1, SCREEN) | {
        "paper": paper_for(job.wishes.units, job.wishes.paper).typst_name,
        "job": plain(plan.job or "Farwall"),
        "wins": [WINS.by(one) for one in both],
        "free": _free(people, fumes, job.wishes.units),
        "number": plain(_number(job.emergency)),
        "chromate": needs_of(job).chromate,
        "lang": job.wishes.language,
        "phrases": {},
    }


def _number(emergency: Emergency) -> str:
    """The emergency number, else the poison centre's; empty where the firm entered neither."""
    return emergency.number or emergency.poison_centre


def _free(people: People, fumes: Fumes | None, units: Units) -> dict[str, str]:
    """The earliest moment of entry in both languages, up to the next full hour; empty: unknown."""
    out, (likely, _) = people.keep_out, free_min(people, fumes)
    if out is None or likely is None:
        return {"en": "", "es": ""}
    moment = datetime.fromisoformat(out.from_at) + timedelta(minutes=math.ceil(likely))
    if moment.minute or moment.second:
        moment = moment.replace(minute=0, second=0) + timedelta(hours=1)
    clock = WallClock(moment, units, half_day_words=units == "us", day_told=True)
    found = {}
    for language in ("en", "es"):
        with speaking(language):
            found[language] = f"{_day(clock)}, {clock.time(0)}"
    return found


def _day(clock: WallClock) -> str:
    """The day without its year, in the language that is spoken."""
    year = str(clock.starts_at.year)
    return told(clock.day()).removesuffix(f" de {year}").removesuffix(year).rstrip(" ,")


def _language(ground: Ground) -> Language:
    """Spanish where the job wishes for it or who asks is spoken to in Spanish."""
    return "es" if "es" in {ground.job.wishes.language, LANGUAGE.get()} else "en"


def _set(template: str, data: dict[str, Any], plan: Plan) -> bytes:
    import typst

    from farwall.papers.run_sheet.sheet import run_sheet_fonts

    home = Path(str(files("farwall.papers.run_sheet")))
    pdf = typst.compile(
        home / template, root=home, font_paths=run_sheet_fonts(), ignore_system_fonts=True,
        format="pdf", sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        timestamp=int(datetime.fromisoformat(plan.starts_at).timestamp()),
    )  # fmt: skip
    return bytes(pdf)
