"""Without signal the phone reckons as the book would: bands done, next band, edge."""

from __future__ import annotations

import random
from datetime import datetime, timedelta

from tests.midday import day_of
from tests.web.slab.node import replayed

from farwall.facts.log import Entry, Kept
from farwall.job.live.edges import edge_due
from farwall.job.live.standing import Standing
from farwall.job.story import story
from farwall.readers.log_json import entry_to_dict
from farwall.readers.plan_json import plan_to_dict
from farwall.web.slab.sheet import sheet_of

MINUTE = 1e-3
"""The book rounds its edge to a hundredth of a minute, and bands to a ten-thousandth."""


def drawn_day(plan, dice, name):
    """A day gone through to some point: bands skipped, slips struck, fields told whole."""
    start = datetime.fromisoformat(plan.starts_at)
    pace, at, told = dice.uniform(0.8, 1.6), 0.0, []

    def tell(word, minute, **about):
        number = len(told) + 1
        when = (start + timedelta(minutes=minute)).isoformat(timespec="milliseconds")
        told.append(Entry(f"{name}-{number:03d}", "q", word, when, "", "phone", number, 0, about))
        return told[-1]

    fields = sorted(plan.fields, key=lambda one: one.start_min)
    upto = dice.randint(1, len(fields))
    for number, field in enumerate(fields[:upto]):
        last = number == upto - 1
        bands = list(field.bands)[: dice.randint(1, len(field.bands)) if last else None]
        if dice.random() < 0.3:
            tell("field-started", at + 0.1, field=field.id)
        for band in bands:
            at = max(at, band.start_min) + pace * (band.end_min - band.start_min)
            if dice.random() < 0.75:
                entry = tell("band-done", at, band=band.id)
                if dice.random() < 0.1:
                    tell("struck", at + 0.05, entry=entry.id)
        if not last and dice.random() < 0.5:
            tell("field-done", at + 0.2, field=field.id)
    return told


def by_the_book(plan, entries):
    kept = [Kept(one, place, one.at, 0.0) for place, one in enumerate(entries, 1)]
    at_min = 0.0
    standing = Standing(plan, story(plan, kept), at_min)
    field = standing.in_hand
    due = edge_due(standing, field, field.open_time_min.low) if field is not None else None
    return {
        "coat": standing.coat,
        "field": field.id if field is not None else "",
        "band": standing.next_band.id if standing.next_band is not None else "",
        "due": due.at_min if due is not None else None,
        "done": {name: one.end_min for name, one in standing.done.items()},
    }


def test_two_hundred_drawn_days_stand_alike_on_the_phone_and_in_the_book(tmp_path):
    plan = day_of("quince-street")
    dice = random.Random(8)
    days = [drawn_day(plan, dice, f"d{number}") for number in range(200)]
    own = [{"own": [entry_to_dict(e) for e in day], "others": [], "low": None} for day in days]
    drawn = {"sheet": sheet_of(plan_to_dict(plan), "q"), "days": own}
    found = replayed("day", drawn, tmp_path)
    edges = 0
    for day, theirs in zip(days, found, strict=True):
        ours = by_the_book(plan, day)
        assert {k: theirs[k] for k in ("coat", "field", "band")} == {
            k: ours[k] for k in ("coat", "field", "band")
        }
        assert theirs["done"].keys() == ours["done"].keys()
        assert all(abs(theirs["done"][b] - end) < MINUTE for b, end in ours["done"].items())
        assert (theirs["due"] is None) == (ours["due"] is None)
        if ours["due"] is not None:
            edges += 1
            assert abs(theirs["due"] - ours["due"]) < 0.006
    assert edges > 50, "too few live edges to tell"
