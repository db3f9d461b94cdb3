"""`farwall bench clocks`: the table, its verdict, and few floors from end to end."""

import json

import pytest

from farwall.bench import floors_drawn, floors_same_coat, floors_score
from farwall.bench.floors_tally import ClockScore
from farwall.cli.bench_clocks import lines, run_clocks
from farwall.cli.main import main

GOOD = ClockScore("dry to recoat", 100, 80.0, 79.0, 30.0, 15.0, 5.0, 6.0)
BAD = ClockScore("open time", 100, 80.0, 60.0, 30.0, 15.0, 5.0, 30.0)


def test_a_range_that_is_not_honest_is_called_so():
    told = lines([GOOD, BAD])
    assert "NOT HONEST" not in told[-2]
    assert "NOT HONEST" in told[-1]


@pytest.mark.parametrize(("scores", "code"), [([GOOD], 0), ([GOOD, BAD], 1)])
def test_the_exit_says_whether_all_are_honest(monkeypatch, capsys, scores, code):
    monkeypatch.setattr(floors_score, "score_floors", lambda seeds: scores)
    monkeypatch.setattr(floors_score, "score_second_coat", lambda seeds: (GOOD,))
    monkeypatch.setattr(floors_score, "score_same_room", lambda seeds: (GOOD,))
    monkeypatch.setattr(floors_same_coat, "score_same_coat", lambda seeds: (GOOD,))
    assert run_clocks(as_json=True) == code
    told = json.loads(capsys.readouterr().out)
    assert told["honest"] is (code == 0)
    assert told["half"] == "test"


def test_a_few_floors_from_end_to_end(monkeypatch, capsys):
    monkeypatch.setattr(floors_drawn, "TUNING", range(1, 9))
    main(["bench", "clocks", "--tuning", "--json"])
    told = json.loads(capsys.readouterr().out)
    within = [one for one in told["clocks"] if one["clock"].endswith(" of the coat")]
    assert len(within) == 4
    assert all(one["floors"] <= 8 for one in within)
    told = [one for one in told["clocks"] if one not in within]
    names = {one["clock"].removesuffix(", same room") for one in told}
    assert names == {
        "open time",
        "dry to recoat",
        "dry to neutralise",
        "dry-down before sealing",
        "next coat of sealer",
        "second coat after the first",
        "second after first, closet after both",
    }
    assert all(one["floors"] == 8 for one in told)
