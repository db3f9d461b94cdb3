"""A small planned house for pure tests of its page: two rooms, its log where one is told."""

from __future__ import annotations

from datetime import datetime, timedelta

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.log import Entry, Kept
from farwall.job.plan_job import plan_job
from farwall.web.pages.shown import Shown
from farwall.web.pages.went import went

STARTS_AT = "2026-06-08T08:00:00+00:00"


def house(**more):
    """The house of two rooms, planned for a day of its own."""
    facts = job(TWO_ROOMS, id="two", **{"starts_at": STARTS_AT} | more)
    return Shown(facts, plan_job(facts), 1, ())


def kept(*told):
    """Entries as the book keeps them, each from a word, a minute and what it carries."""
    start, found = datetime.fromisoformat(STARTS_AT), []
    for n, (word, minute, about) in enumerate(told, 1):
        at = (start + timedelta(minutes=minute)).isoformat()
        found.append(Kept(Entry(f"0190-{n:04}", "two", word, at, number=n, about=about), n, at))
    return found


def logged(shown, *told, now_min=0.0, rest=None):
    """The house with its day as logged."""
    found = went(shown.plan, kept(*told), now_min=now_min, rest=rest)
    return Shown(shown.job, shown.plan, shown.version, shown.faults, found)


def bands(shown):
    """All bands of the first coat, as they are sprayed."""
    first = shown.plan.fields[0].coat
    every = [band for field in shown.plan.fields if field.coat == first for band in field.bands]
    return sorted(every, key=lambda one: one.start_min)
