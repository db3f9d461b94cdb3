"""`farwall bench learn`: the table, its verdict, and few firms from end to end."""

import json

import pytest

from farwall.bench import learn_firms
from farwall.bench.learn import LearnScore
from farwall.cli.bench_learn import lines
from farwall.cli.main import main


def score(next_percent, own_percent):
    return LearnScore("spray rate", 5, 100, next_percent, own_percent, 4.5, 15.0)


@pytest.mark.parametrize(("shares", "marked"), [
    ((80.0, 80.0), False), ((74.9, 80.0), True), ((80.0, 85.1), True), ((None, 80.0), False),
])  # fmt: skip
def test_a_range_that_is_not_honest_is_marked(shares, marked):
    assert lines([score(*shares)])[-1].endswith("NOT HONEST") is marked


def test_few_firms_from_end_to_end(capsys, monkeypatch):
    monkeypatch.setattr(learn_firms, "TUNING", range(1, 4))
    code = main(["bench", "learn", "--tuning", "--json"])
    told = json.loads(capsys.readouterr().out)
    assert code in {0, 1}
    assert told["half"] == "tuning"
    assert [one["rule"] for one in told["gate"]] == ["learned from 20 jobs", "the guesses"]
    assert {one["jobs"] for one in told["lessons"]} == {5, 20, 100}
