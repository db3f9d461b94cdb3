"""The gate on a phone: its table is the gate's own answer, and it never allows more."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest
from tests.job.live.test_now import JOB
from tests.web.slab.node import replayed

from farwall.acid.pouring.nouns import VESSELS, WORDS
from farwall.facts.materials import Material
from farwall.phrasebook import speaking
from farwall.web.slab.pours import CARRIED, MOST_THINGS, pours_of, verdict_of

HOUR_MS = 3_600_000
LISTED = (
    Material("acid", "muriatic acid", sheet_read=True),
    Material("bleach", "hand soap", "the blue jug", sheet_read=True),
    Material("wash", "neutral cleaner", "Bleach"),
    Material("drum 1", "rinse water", sheet_read=True),
    Material("sealer", "water sealer", sheet_read=True),
)
JOBS = {
    "bare": JOB,
    "listed": replace(JOB, materials=LISTED),
    "read": replace(
        JOB,
        stains=tuple(replace(one, sheet_read="2026-05-01", oxidiser=False) for one in JOB.stains),
        materials=(*LISTED[:1], Material("soda", "bicarbonate", sheet_read=True)),
    ),
}


@pytest.fixture(scope="module")
def tables():
    return {name: pours_of(job) for name, job in JOBS.items()}


def ids(table):
    return [one[0] for one in table["things"]]


@pytest.mark.parametrize("name", JOBS)
def test_every_cell_is_what_the_gate_says_of_these_two_in_that_vessel(tables, name):
    table = tables[name]
    things, dice = ids(table), random.Random(4)
    assert len(things) == len(set(things))
    for vessel in CARRIED:
        for n, one in enumerate(things):
            row = table["cells"][vessel][n]
            assert len(row) == len(things) + 1
            for m in dice.sample(range(len(things)), 4):
                told = verdict_of(JOBS[name], [one, things[m]], vessel)
                assert table["reasons"][row[m]][0] == told["word"], (one, things[m], vessel)
                assert table["reasons"][row[m]][1:] == told["reasons"][0][1:]
            alone = verdict_of(JOBS[name], [one], vessel)
            assert table["reasons"][row[-1]][0] == alone["word"], (one, vessel)


def test_a_phone_without_signal_never_allows_what_the_gate_refuses(tables, tmp_path):
    dice, asked = random.Random(7), []
    for _ in range(4000):
        name = dice.choice(list(JOBS))
        things = dice.choices([*ids(tables[name]), "nobody knows"], k=dice.choice((1, 2, 2, 3, 4)))
        age = dice.choice((0, HOUR_MS, 15 * HOUR_MS, 17 * HOUR_MS, -HOUR_MS, None))
        asked.append([name, things, dice.choice(VESSELS), age])
    found = replayed("pour", {"tables": tables, "asked": asked}, tmp_path)
    count = dict.fromkeys(("", *WORDS), 0)
    for (name, things, vessel, age), theirs in zip(asked, found, strict=True):
        count[theirs["word"]] += 1
        told = verdict_of(JOBS[name], things, vessel)["word"]
        if theirs["word"] == "refused":
            assert told == "refused", (things, vessel)
        elif theirs["word"]:
            assert (theirs["word"], len(things) <= 2) == (told, True), (things, vessel)
            assert age is not None
            assert 0 <= age <= 16 * HOUR_MS
        elif vessel in CARRIED and "nobody knows" not in things:
            fresh = age is not None and 0 <= age <= 16 * HOUR_MS
            assert len(things) > 2 or not fresh, "a table in hand that knows it keeps silent"
    assert min(count.values()) > 30, count


def test_what_nobody_knows_is_refused_by_the_book_too():
    for things, vessel in (
        (["water", "nobody knows"], "open tub"), (["water"], "a hat"), ([], "open tub"),
        (["water"] * (MOST_THINGS + 1), "open tub"), (["water", "other"], "open tub"),
    ):  # fmt: skip
        told = verdict_of(JOB, things, vessel)
        assert told["word"] == "refused"
        assert told["reasons"]


def test_a_brought_kind_is_left_out_where_the_list_calls_something_else_so(tables):
    brought = [one[0] for one in tables["listed"]["things"] if one[2]]
    assert "bleach" not in brought
    assert "pool chlorine" in brought
    assert "bleach" in [one[0] for one in tables["bare"]["things"] if one[2]]


def test_order_counts_by_hand(tables):
    """By hand, water first: stain into water is no danger of its own, water into stain is."""
    table = tables["read"]
    stain = next(one for one in ids(table) if one in {s.id for s in JOB.stains})
    place = {one: n for n, one in enumerate(ids(table))}
    cells = table["cells"]["open tub"]
    word = {
        pair: table["reasons"][cells[place[pair[0]]][place[pair[1]]]][0]
        for pair in ((stain, "water"), ("water", stain))
    }
    assert word[stain, "water"] == "refused"
    assert word["water", stain] != "refused"


def test_the_table_speaks_spanish_and_keeps_the_job_s_own_names():
    with speaking("es"):
        table = pours_of(JOB)
    names = {one[0]: one[1] for one in table["things"]}
    assert names["water"] == "agua"
    stain = JOB.stains[0]
    assert names[stain.id] == (stain.name or stain.id)
    english = {tuple(one) for one in pours_of(JOB)["reasons"]}
    assert not english & {tuple(one) for one in table["reasons"]}
