"""Facts changed on the screen: judged, kept as a new version; what that gained."""

from __future__ import annotations

import asyncio
import copy
import math
from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.store.book import Book
from farwall.units import M_PER_IN
from farwall.web.door import Door
from farwall.web.pages.beside import sums_of
from farwall.web.pages.fact_form import (
    FactForm,
    fact_form,
    facts_in_words,
    start_of,
    version_in_words,
)
from farwall.web.pages.figures import BEFORE, Figures, noted
from farwall.web.pages.shown import State
from farwall.web.pages.what_if import what_ifs
from farwall.web.people.who import name_of_who
from farwall.web.words import said

_CHOICES = {"helper": ("yes", "no"), "sprayers": ("1", "2")}
_SAME_MIN = 0.05


async def change_facts(door: Door, state: State, form: Mapping[str, Any]) -> bool:
    """Keep what the form says as new facts; False when it says what they are already.

    Raises Refused with every mistake, and when the facts have changed since the form was made.
    """
    facts = await asyncio.to_thread(_facts_of, door, state, form)
    changed = with_form(facts, fact_form(facts, state.version), form)
    return changed is not None and await _keep(door, state, changed)


async def try_out(door: Door, state: State, form: Mapping[str, Any]) -> bool:
    """Keep one of the sheet's what-ifs as new facts: the one whose key the form names.

    Raises Refused when it is none of them any more, or its facts cannot be.
    """
    facts = await asyncio.to_thread(_facts_of, door, state, form)
    key = str(form.get("what", ""))
    offered = what_ifs(state.shown) if state.shown is not None and state.fresh else ()
    one = next((one for one in offered if key and one.key == key), None)
    if one is None:
        raise Refused(Mistake("", said("facts-other")))
    return await _keep(door, state, with_these(facts, one.settings))


async def set_order(door: Door, state: State, form: Mapping[str, Any], order: list[str]) -> bool:
    """Keep an order of rooms as a wish, none where it is empty. Raises Refused."""
    facts = await asyncio.to_thread(_facts_of, door, state, form)
    told = f"wishes.order={','.join(order)}" if order else "wishes.order=none"
    return await _keep(door, state, with_these(facts, (told,)))


async def take_back(door: Door, state: State, form: Mapping[str, Any]) -> bool:
    """Keep older facts once more, as a new version. Raises Refused for a version there is not."""
    await asyncio.to_thread(_facts_of, door, state, form)
    told = str(form.get("to", ""))
    version = int(told) if told.isdecimal() and len(told) < 9 else 0
    older = await asyncio.to_thread(door.book.facts, state.id, version)
    return await _keep(door, state, older)


def _facts_of(door: Door, state: State, form: Mapping[str, Any]) -> dict[str, Any]:
    """The facts that the form was made from. Raises Refused where they have changed since."""
    if str(form.get("version", "")) != str(state.version):
        raise Refused(Mistake("", said("facts-other")))
    return door.book.facts(state.id, state.version)


async def _keep(door: Door, state: State, changed: Mapping[str, Any]) -> bool:
    """Keep facts as a new version, and beside it what the plan before came to."""
    now, book, who = door.now(), door.book, name_of_who()

    def keep() -> bool:
        if book.versions(state.id)[-1].version != state.version:
            raise Refused(Mistake("", said("facts-other")))
        if book.put_facts(state.id, changed, who=who, at=now) == state.version:
            return False
        if state.shown is not None and state.fresh:
            shown = state.shown
            note = noted(
                shown.figures, version=shown.version, starts_at=shown.plan.starts_at,
                told=facts_in_words(shown.job),
            ) | sums_of(shown.plan)  # fmt: skip
            book.put_document(BEFORE, state.id, note)
        return True

    return await door.written(keep)


def with_these(facts: Mapping[str, Any], settings: Sequence[str]) -> dict[str, Any]:
    """The facts with these settings, judged by the reader of jobs. Raises Refused."""
    from farwall.readers.job_json import job_from
    from farwall.readers.job_settings import with_settings

    changed = with_settings(copy.deepcopy(dict(facts)), settings)
    job_from(changed, said("try-facts"))
    return changed


def with_form(
    facts: Mapping[str, Any], was: FactForm, form: Mapping[str, Any]
) -> dict[str, Any] | None:
    """The facts with what the form changes; None when that is nothing. Raises Refused."""
    told = {key: str(form.get(key, getattr(was, key))).strip() for key in (
        "helper", "sprayers", "day", "start", "band",
    )}  # fmt: skip
    mistakes: list[Mistake] = []
    settings: list[str] = []
    for key, choices in _CHOICES.items():
        if told[key] not in choices:
            mistakes.append(
                Mistake(said(f"fact-{key}"), said("facts-choice-wrong", text=told[key]))
            )
    if told["helper"] != was.helper:
        settings.append(f"crew.helper={'true' if told['helper'] == 'yes' else 'false'}")
    if told["sprayers"] != was.sprayers:
        settings.append(f"crew.sprayers={told['sprayers']}")
    settings += _start(facts, was, told, mistakes)
    settings += _band(was, told, mistakes)
    if mistakes:
        raise Refused(*mistakes)
    return with_these(facts, settings) if settings else None


def _start(
    facts: Mapping[str, Any], was: FactForm, told: Mapping[str, str], mistakes: list[Mistake]
) -> list[str]:
    """The new start, with the offset of the old one."""
    if (told["day"], told["start"]) == (was.day, was.start):
        return []
    from farwall.readers.job_json import job_from

    try:
        moment = datetime.fromisoformat(f"{told['day']}T{told['start']}")
    except ValueError:
        text = f"{told['day']} {told['start']}"[:60]
        mistakes.append(Mistake(said("fact-start"), said("facts-day-wrong", text=text)))
        return []
    zone = start_of(job_from(facts, "The job")).tzinfo
    return [f"starts_at={moment.replace(tzinfo=zone).isoformat()}"]


def _band(was: FactForm, told: Mapping[str, str], mistakes: list[Mistake]) -> list[str]:
    if told["band"] == was.band:
        return []
    us = was.units == "us"
    try:
        width_m = float(told["band"].replace(",", ".")) * (M_PER_IN if us else 0.01)
    except ValueError:
        width_m = math.nan
    if not math.isfinite(width_m):
        where = said(f"fact-band-{was.units}")
        text = told["band"][:40]
        mistakes.append(Mistake(where, said("facts-band-wrong", text=text, such=was.band)))
        return []
    return [f"tools.band_m={width_m:.6g}"]


def gain_of(book: Book, state: State) -> str:
    """What the newest facts gained against those before, in a sentence; empty where none is told.

    Fields that fit, minutes to spare at the tightest edge, when the spraying ends.
    """
    before = book.document(BEFORE, state.id)
    if before is None or not state.fresh or state.shown is None:
        return ""
    if before["facts"] != state.version - 1:
        return ""
    told = version_in_words(book, state.id, before["facts"])
    return gain_told({**before, "told": told}, state.shown.figures, state.shown.plan.starts_at)


def gain_told(before: Mapping[str, Any], now: Figures, starts_at: str) -> str:
    """The sentence, from the figures kept of the plan before."""
    same = (now.fit, now.fields) == (before["fit"], before["fields"])
    fields = said("gain-fit-same" if same else "gain-fit", fit=now.fit, fields=now.fields,
                  was=before["fit"], of=before["fields"])  # fmt: skip
    more = now.spare_min - before["spare_min"]
    spare = said("gain-even")
    if abs(more) >= _SAME_MIN:
        spare = said("gain-more" if more > 0 else "gain-less", by=f"{abs(more):.1f}")
    moved = datetime.fromisoformat(starts_at) - datetime.fromisoformat(before["starts_at"])
    later = moved.total_seconds() / 60 + now.ends_min - before["ends_min"]
    ends = said("gain-when-same")
    if abs(later) >= 0.5:
        ends = said("gain-later" if later > 0 else "gain-earlier", by=f"{abs(later):.0f}")
    return said("gain", n=before["facts"], told=before["told"], fields=fields, spare=spare,
                ends=ends)  # fmt: skip
