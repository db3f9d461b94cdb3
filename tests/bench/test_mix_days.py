"""The bench of the mix: the same days every time, honest rules, the habits beside them."""

import math
from dataclasses import replace

import pytest

from farwall.bench.mix_days import RULES, TUNING, extra_gallon, gate, mix_day, score_mix
from farwall.cli.bench import run


@pytest.fixture(scope="module")
def scores():
    return {one.rule: one for one in score_mix(600)}


def test_a_seed_is_always_the_same_day():
    day = mix_day(7)
    assert day == mix_day(7) != mix_day(8)
    assert math.fsum(day.likely_l) == pytest.approx(12.2737, abs=1e-3)  # recorded


def test_the_days_are_skewed_and_drift_apart_from_the_model():
    """Mean about 1, spread about a fifth: what the plan believes, by another law."""
    used = [math.fsum(map(math.fsum, d.taken_l)) / math.fsum(d.likely_l)
            for d in map(mix_day, range(1, 1501))]  # fmt: skip
    mean = math.fsum(used) / len(used)
    spread = math.sqrt(math.fsum((one - mean) ** 2 for one in used) / len(used))
    assert mean == pytest.approx(1.0, abs=0.03)
    assert 0.14 < spread < 0.26


def test_tuning_days_are_not_those_reported():
    assert min(TUNING) > 5_000


def test_the_gate_runs_dry_seldom_and_the_habits_often(scores):
    """600 days: three standard errors of 1 % are 1.2 %."""
    assert scores["the gate, at stop lines"].short_percent <= 2.2
    assert scores["looked at inside, boxed at once"].short_percent <= 2.2
    assert scores["one extra gallon on five, once"].short_percent > 8
    assert scores["one extra gallon on six, once"].short_percent > 10


def test_looking_inside_leaves_least_over(scores):
    left = {rule: one.left_percent for rule, one in scores.items()}
    assert min(left, key=left.get) == "looked at inside, boxed at once"
    assert left["enough on 99 %, once"] > 2 * left["the gate, at stop lines"]


@pytest.mark.parametrize("rule", RULES)
def test_no_rule_makes_mix_out_of_nothing(rule):
    for seed in range(1, 120):
        day = mix_day(seed)
        found = RULES[rule](day)
        used = math.fsum(map(math.fsum, day.taken_l))
        if not found.short:
            assert found.left_l == pytest.approx(found.mixed_l - used, abs=1e-6)


def test_a_day_that_drinks_twice_as_much_runs_the_habit_dry_and_not_the_gate():
    for seed in range(1, 40):
        day = mix_day(seed)
        thirsty = replace(day, taken_l=tuple(
            tuple(2 / len(parts) * likely for _ in parts)
            for likely, parts in zip(day.likely_l, day.taken_l, strict=True)
        ))  # fmt: skip
        assert extra_gallon(5)(thirsty).short
        assert gate(thirsty).mixed_l > 1.4 * math.fsum(day.likely_l)


def test_the_command_prints_a_line_for_each_rule(monkeypatch, capsys):
    from argparse import Namespace

    monkeypatch.setattr("farwall.bench.mix_days.DAYS", 20)
    monkeypatch.setattr("farwall.bench.mix_jobs.JOBS", 6)
    monkeypatch.setattr("farwall.bench.mix_days.score_mix", lambda: score_mix(20))
    assert run(Namespace(what="mix", json=False)) == 0
    said = capsys.readouterr().out
    assert all(rule in said for rule in RULES)
