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


def ended_day(plan, dice, name):
    """A day that is washed, sealed or judged after some of its fields, and now and then gone on."""
    told = drawn_day(plan, dice, name)
    at = max(datetime.fromisoformat(one.at) for one in told)

    def tell(word, **about):
        nonlocal at
        number, at = len(told) + 1, at + timedelta(minutes=dice.choice([1.0, 20.0, 40.0, 300.0]))
        when = at.isoformat(timespec="milliseconds")
        told.append(Entry(f"{name}-{number:03d}", "q", word, when, "", "phone", number, 0, about))
        return told[-1]

    coats = [coat.id for coat in plan.inputs.coats]
    for _ in range(dice.randint(1, 4)):
        word = dice.choice(
            ["coat-done", "coat-judged", "neutralised", "rinsed", "sealed", "struck", "mixed"]
        )
        coat = {"coat": dice.choice(coats[:1] * 2 + coats)}
        tell(word, **{
            "coat-done": coat, "struck": {"entry": told[-1].id}, "mixed": coat | {"litres": 2.0},
            "coat-judged": coat | {"look": "right", "next": dice.choice(["enough", "another"])},
        }.get(word, {}))  # fmt: skip
    return told


def test_days_that_end_before_their_last_coat_end_alike_on_the_phone_and_in_the_book(tmp_path):
    plan = day_of("quince-street")
    dice = random.Random(11)
    days = [ended_day(plan, dice, f"e{number}") for number in range(200)]
    own = [{"own": [entry_to_dict(e) for e in day], "others": [], "low": None} for day in days]
    drawn = {"sheet": sheet_of(plan_to_dict(plan), "q"), "days": own}
    found = replayed("day", drawn, tmp_path)
    ended = 0
    for day, theirs in zip(days, found, strict=True):
        ours = by_the_book(plan, day)
        assert {k: theirs[k] for k in ("coat", "field", "band")} == {
            k: ours[k] for k in ("coat", "field", "band")
        }
        if not ours["band"]:
            ended += 1
            assert (theirs["mix"], theirs["fills"]) == ("", [])
    assert ended > 50


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


def two_phones(plan, dice, name):
    """A day that two phones entered, each on its own, with some of it on both."""
    start = datetime.fromisoformat(plan.starts_at)
    told = {"a": [], "b": []}

    def tell(device, word, minute, **about):
        own = told[device]
        when = (start + timedelta(minutes=minute)).isoformat(timespec="milliseconds")
        own.append(Entry(f"{name}-{device}{len(own) + 1:03d}", "q", word, when, "", device,
                         len(own) + 1, 0, about))  # fmt: skip

    at = 0.0
    for word, about in (("mixed", {"coat": "first", "litres": 5.9}), ("filled", {"tank_l": 7.0})):
        for device in dice.sample("ab", dice.randint(1, 2)):
            tell(device, word, at + dice.uniform(0, 3.9), **about)
        at += 4
    for field in sorted(plan.fields, key=lambda one: one.start_min)[: dice.randint(1, 5)]:
        for band in field.bands:
            at += band.end_min - band.start_min
            for device in dice.sample("ab", dice.randint(0, 2)):
                tell(device, "band-done", at + dice.uniform(0, 0.5), band=band.id)
        if dice.random() < 0.5:
            fill = {"tank_l": dice.choice([7.0, 6.0])}
            for device in dice.sample("ab", dice.randint(1, 2)):
                tell(device, "filled", at + dice.uniform(0, 3), **fill)
            at += 4
    return told["a"], told["b"]


def test_two_phones_stand_alike_on_either_and_in_the_book_and_one_thing_counts_once(tmp_path):
    plan = day_of("quince-street")
    dice = random.Random(11)
    days = [two_phones(plan, dice, f"d{number}") for number in range(60)]

    def seen(own, others):
        from_book = [{"entry": entry_to_dict(one), "place": place, "clock_off_s": 0.0}
                     for place, one in enumerate(others, 1)]  # fmt: skip
        return {"own": [entry_to_dict(one) for one in own], "others": from_book, "low": None}

    drawn = [seen(*pair) for a, b in days for pair in ((a, b), (b, a))]
    found = replayed("day", {"sheet": sheet_of(plan_to_dict(plan), "q"), "days": drawn}, tmp_path)
    mixes = [one for one in sheet_of(plan_to_dict(plan), "q")["mixes"] if one["coat"] == "first"]
    doubled = 0
    for (a, b), on_a, on_b in zip(days, found[::2], found[1::2], strict=True):
        assert on_a == on_b
        ours = by_the_book(plan, [*a, *b])
        assert {k: on_a[k] for k in ("coat", "field", "band")} == {
            k: ours[k] for k in ("coat", "field", "band")
        }
        assert on_a["done"].keys() == ours["done"].keys()
        kept = [Kept(one, place, one.at, 0.0) for place, one in enumerate([*a, *b], 1)]
        told = story(plan, kept)
        doubled += len(told.doubled)
        assert len(told.of("mixed")) == 1
        if len(mixes) > 1:
            assert on_a["mix"] in {one["id"] for one in mixes[1:]} | {""}
    assert doubled > 40, "too few taps on both to tell"
