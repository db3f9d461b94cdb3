"""What each new house begins with: the firm's own crew, sprayer, stains and units."""

from __future__ import annotations

import copy
import hashlib
import json
from collections.abc import Mapping
from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

from farwall.facts.defaults import DEFAULT_STAINS, coats_by_default
from farwall.facts.job import Job
from farwall.floor.from_sizes import SizedRoom, floor_from_sizes
from farwall.readers.room_names import slug
from farwall.store.book import Book
from farwall.store.nouns import NoSuchJob
from farwall.web.firm import FIRM

NEW_HOUSES = "new-houses"
"""Kind of the document; its id is that of the firm."""
_KEYS = ("crew", "tools", "stains", "coats", "firm")
_PRICES = ("currency", "rates", "call_backs", "terms", "taxes")
"""What a firm tells of money; offers are each house's own."""
_NUMBERS = ("number", "poison_centre", "spill_line", "look_in_min")
"""What a firm tells of an emergency; hospital, address and eyewash are each house's own."""
_STARTS_H, _SATURDAY = 8, 5
Json = dict[str, Any]


def firm_facts(book: Book) -> Json:
    """Facts of a house of one room that holds what the firm told, for a form to fill."""
    return facts_with(book.document(NEW_HOUSES, FIRM) or {})


def older_facts(book: Book, word: str) -> Json | None:
    """The same of an older telling, by its `version_of`; None where there is none such.

    The newest that says so is taken. Every telling may be looked at: asked only where two met.
    """
    told: list[Json] = [{}]
    while (one := book.document(NEW_HOUSES, FIRM, len(told))) is not None:
        told.append(one)
    made = (facts_with(one) for one in reversed(told))
    return next((one for one in made if version_of(one) == word), None)


def facts_with(told: Mapping[str, Any]) -> Json:
    """Facts of a house of one room that holds what this document of the firm tells."""
    from farwall.readers.job_json import job_to_dict

    floor, exits = floor_from_sizes([SizedRoom("room", "", 4.0, 3.0)])
    bare = Job(version=1, floor=floor, exits=exits, id="new-house")
    bare = replace(bare, stains=DEFAULT_STAINS, coats=coats_by_default(DEFAULT_STAINS))
    return _with(job_to_dict(bare), told)


def with_firm(facts: Mapping[str, Any], book: Book) -> Json:
    """Facts of a new house with what the firm told in place of what stands in."""
    return _with(facts, book.document(NEW_HOUSES, FIRM) or {})


def _with(facts: Mapping[str, Any], told: Mapping[str, Any]) -> Json:
    made = copy.deepcopy(dict(facts))
    for key in ("crew", "tools", "wishes", "emergency", "firm", "prices"):
        if told.get(key):
            made[key] = {**made.get(key, {}), **copy.deepcopy(told[key])}
    if told.get("stains") and told.get("coats"):
        made |= {key: copy.deepcopy(told[key]) for key in ("stains", "coats")}
    return made


def told_by_firm(facts: Mapping[str, Any]) -> Json:
    """The document of the firm in facts that its form filled."""
    wishes = {key: value for key, value in facts.get("wishes", {}).items() if key == "units"}
    found = {key: copy.deepcopy(facts[key]) for key in _KEYS if facts.get(key)}
    emergency = facts.get("emergency", {})
    numbers = {key: emergency[key] for key in _NUMBERS if emergency.get(key)}
    found |= {"emergency": numbers} if numbers else {}
    prices = facts.get("prices", {})
    money = {key: copy.deepcopy(prices[key]) for key in _PRICES if prices.get(key)}
    found |= {"prices": money} if money else {}
    return found | ({"wishes": wishes} if wishes else {})


def keep_money(book: Book, job: str) -> None:
    """What the facts of a house tell of firm, rates, terms and taxes, kept for new houses."""
    newest = book.versions(job)[-1]
    told = told_by_firm(book.facts(job, newest.version))
    own = {key: told[key] for key in ("firm", "prices") if told.get(key)}
    before = book.document(NEW_HOUSES, FIRM) or {}
    if own and {**before, **own} != before:
        book.put_document(NEW_HOUSES, FIRM, {**before, **own})


def version_of(facts: Mapping[str, Any]) -> str:
    """A word that changes with what the firm told."""
    text = json.dumps(told_by_firm(facts), sort_keys=True)
    return hashlib.sha256(text.encode()).hexdigest()[:12]


def free_id(book: Book, name: str) -> str:
    """An id for a new house by its name, with a number where that is taken."""
    bare = slug(name)[:50] or "house"
    for n in range(1, 10_000):
        found = bare if n == 1 else f"{bare}-{n}"
        try:
            book.versions(found)
        except NoSuchJob:
            return found
    raise AssertionError("ten thousand houses of one name")


def next_working_day(now: datetime) -> str:
    """Eight in the morning of the next day that is no Saturday or Sunday, with now's offset."""
    day = now + timedelta(days=1)
    while day.weekday() >= _SATURDAY:
        day += timedelta(days=1)
    return day.replace(hour=_STARTS_H, minute=0, second=0, microsecond=0).isoformat()
