"""The wash day on a phone: judged there as the book judges it, and said in the book's own words."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import datetime, timedelta

import pytest
from tests.job.live.test_now import JOB, PLAN
from tests.job.story.entries import Log
from tests.web.slab.node import replayed

from farwall.facts.log import Entry, Kept
from farwall.facts.sealer import Sealer
from farwall.facts.washing import Washing
from farwall.job.live.rinse_rules import DO, SEALER, WHY
from farwall.job.rinses import Rinses
from farwall.job.story import story
from farwall.phrasebook import speaking, told
from farwall.readers.log_json import entry_to_dict
from farwall.readers.plan_json import plan_to_dict
from farwall.web.slab.sheet import sheet_of
from farwall.web.slab.washing import steps_of, washing_of

ROOMS = [room.id for room in PLAN.inputs.floor.rooms]
STRIPS = (4, 5, 5.5, 6, 6.5, 7, 7.5, 8, 8.5, 9, 10, 11)
RAGS = ("clean", "clean", "clean", "grey", "coloured")


def drawn_wash(dice, name):
    """Rinses, strips, swipes and slips in three rooms and on the whole floor."""
    start, told = datetime.fromisoformat(PLAN.starts_at), []

    def tell(word, **about):
        number = len(told) + 1
        when = (start + timedelta(minutes=700 + number)).isoformat(timespec="milliseconds")
        told.append(Entry(f"{name}-{number:03d}", "q", word, when, "", "phone", number, 0, about))

    for _ in range(dice.randint(1, 14)):
        room = {"room": dice.choice(ROOMS[:3])} if dice.random() < 0.9 else {}
        ph = {"ph": dice.choice(STRIPS)} if dice.random() < 0.8 else {}
        rag = {"rag": dice.choice(RAGS)} if dice.random() < 0.8 else {}
        number = {"round": dice.randint(1, 5)} if dice.random() < 0.5 else {}
        lot = dice.random()
        if lot < 0.6:
            tell("rinsed", **ph, **rag, **number, **room)
        elif lot < 0.75:
            of = dice.choice(("rinse water", "rinse water", "tap", "unstained patch"))
            tell("strip-read", of=of, ph=dice.choice(STRIPS), **room)
        elif lot < 0.85:
            tell("dry-swiped", powder=dice.random() < 0.3, **room)
        elif lot < 0.95:
            tell("scrubbed", **room)
        elif told:
            tell("struck", entry=dice.choice(told).id)
    return told


@pytest.mark.parametrize(
    "job",
    [JOB, replace(JOB, washing=Washing(tap_ph=9.5), sealer=Sealer(least_ph=6.0, most_ph=10.0))],
    ids=["nothing told", "tap and sealer told"],
)
def test_three_hundred_drawn_wash_days_are_judged_alike_on_the_phone_and_in_the_book(
    job, tmp_path, monkeypatch
):
    monkeypatch.setattr("farwall.acid.rinsing._more", lambda *_, **__: None)  # the book's alone
    dice = random.Random(31)
    days = [drawn_wash(dice, f"w{number}") for number in range(300)]
    sheet = sheet_of(plan_to_dict(PLAN), "q", washing=washing_of(job, PLAN))
    own = [{"own": [entry_to_dict(one) for one in day], "others": []} for day in days]
    found = replayed("wash", {"sheet": sheet, "days": own}, tmp_path)
    seen = set()
    for day, theirs in zip(days, found, strict=True):
        kept = [Kept(one, place, one.at, 0.0) for place, one in enumerate(day, 1)]
        rinses = Rinses(job, PLAN, story(PLAN, kept))
        assert (theirs["wanted"]["low"], theirs["wanted"]["high"]) == rinses.wanted.window
        for room in ROOMS:
            rounds = rinses.rounds(room)
            told = theirs["rounds"][room]
            assert [one["phs"] for one in told] == [list(one.phs) for one in rounds]
            assert [(o["rag"], o["powder"]) for o in told] == [(o.rag, o.powder) for o in rounds]
            step, mine = rinses.step(room), theirs["steps"][room]
            assert (mine["verdict"], mine["code"], mine["sealer"]) == (
                step.verdict, step.code, step.sealer,
            )  # fmt: skip
            seen.add(step.code)
    assert len(seen) >= 13, sorted(seen)


def test_phone_and_book_say_the_same_words_in_both_languages(tmp_path):
    words = replayed("words", {}, tmp_path)
    for language in ("en", "es"):
        table = words[language]

        def filled(key, table=table, **values):
            return table[key].format(**values)

        with speaking(language):
            values = {"ph": 7.5, "low": 7, "high": 9, "read": 1, "readings": 2}
            for code, text in WHY.items():
                said = told(text.format(**values))
                assert filled(f"why-{code}", **values) == said, (language, code)
            for code, text in DO.items():
                assert table[f"do-{code}"] == told(text), (language, code)
            for sealer, text in SEALER.items():
                key = {True: "true", False: "false", None: "null"}[sealer]
                assert table[f"sealer-{key}"] == told(text), (language, key)


def test_the_book_tells_each_room_how_many_more_and_nothing_once_it_is_sealed():
    log = Log(PLAN)
    log("rinsed", 1000, room=ROOMS[0], ph=6.0, rag="coloured")
    found = steps_of(JOB, PLAN, story(PLAN, log.kept))
    assert found.keys() == set(ROOMS)
    assert (found[ROOMS[0]]["verdict"], found[ROOMS[0]]["code"]) == ("scrub", "acid")
    low, likely, high = found[ROOMS[0]]["more"]
    assert 1 <= low <= likely <= high
    assert found[ROOMS[1]]["code"] == "not-rinsed"
    log("sealed", 1200)
    assert steps_of(JOB, PLAN, story(PLAN, log.kept)) == {}
