"""The phone's queue and `web/phone.py` are one: the same cases, and walks drawn at random."""

from __future__ import annotations

import json
import random
from pathlib import Path

import pytest
from tests.web.slab.living import held, lived
from tests.web.slab.node import replayed

CASES = json.loads((Path(__file__).parent / "phone_cases.json").read_text())
DAYS = [f"2026-06-{day:02d}" for day in range(1, 29)] + ["2026-07-08", "2026-07-20"]


@pytest.mark.parametrize("case", CASES, ids=[one["name"] for one in CASES])
def test_the_python_queue_holds_what_the_case_says(case):
    assert held(lived(case["steps"]), case) == case["then"]


def walk(dice):
    """Up to 25 steps as a bad day might bring them, with its days going forward."""
    steps, day = [], 0
    names = [f"id-{number}" for number in range(6)]

    def some():
        return dice.sample(names, dice.randint(0, 4))

    for _ in range(dice.randint(1, 25)):
        day = min(day + dice.choice([0, 0, 0, 1, 9]), len(DAYS) - 1)
        today = DAYS[day]
        steps.append(dice.choice([
            {"do": "tap", "id": dice.choice(names)},
            {"do": "tap", "id": dice.choice(names)},
            {"do": "answered", "taken": some(), "turned": {one: ["no"] for one in some()},
             "places": dice.randint(0, 9), "today": today},
            {"do": "told", "missing": some(), "today": today},
            {"do": "lost", "ids": some()},
            {"do": "forgetting", "today": today},
        ]))  # fmt: skip
    return {"steps": steps, "most": dice.randint(1, 6), "asks": dice.sample(DAYS, 2)}


def test_a_thousand_walks_leave_both_queues_alike(tmp_path):
    dice = random.Random(20261126)
    walks = [walk(dice) for _ in range(1000)]
    ours = [held(lived(one["steps"]), one) for one in walks]
    assert replayed("phone", walks, tmp_path) == ours
    assert sum(bool(one["kept"] and one["waiting"]) for one in ours) > 100, "too tame to tell"
