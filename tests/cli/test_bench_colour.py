"""`farwall bench colour`: its tables and exit codes, with scores in place of floors."""

import json

import pytest

from farwall.bench import colour, colour_score, colour_sealed
from farwall.bench.colour import Foreseen, Jobs
from farwall.bench.colour_score import Chances, Dark, Houses, Whole
from farwall.bench.colour_sealed import Sealed
from farwall.cli.main import main

SEEN = tuple(Foreseen(one, 8, 0.5, 0.9, 2.7, 0.1, 80.0) for one in ("4", "7", "7 of two colours"))
OURS, HABIT = Jobs("ours", 8, 1.0, 2.8, 2.1, 1.7), Jobs("habit", 8, 22.0, 5.0, 2.3, 1.4)
HOUSE = Houses("ours", 2, 9, 0.0, 0.0, 3.0, 2.0, 1.9)
CHANCE = Chances(1.0, 3.0, 5, 2.0, 0.0)


@pytest.fixture
def pretend(monkeypatch):
    def as_told(jobs=(OURS, HABIT), dark=Dark(1, 100.0, 0.0, 2.0)):  # noqa: B008
        whole = Whole((HOUSE, HOUSE), (CHANCE,), dark, (HOUSE, HOUSE))
        asked = []
        monkeypatch.setattr(colour, "score_foreseen", lambda seeds: asked.append(seeds) or SEEN)
        monkeypatch.setattr(colour, "score_jobs", lambda _: jobs)
        monkeypatch.setattr(colour_score, "score_whole", lambda *_: whole)
        monkeypatch.setattr(colour_sealed, "score_sealed", lambda _: (Sealed(0, 8, 0.4, 1, 0, 99),))
        return asked

    return as_told


def test_all_tables_are_told_and_aims_that_are_met_exit_in_peace(pretend, capsys):
    asked = pretend()
    assert main(["bench", "colour", "--once"]) == 0
    shown = capsys.readouterr().out
    assert len(asked[0]) == 8
    assert asked[0][0] == colour.JUDGING
    for words in ("too dark %", "that was said, and the share that came", "sealed look", "1 to 3"):
        assert words in shown
    assert "Rooms that we left too dark: 1." in shown


def test_too_many_too_dark_exits_with_one(pretend, capsys):
    pretend(jobs=(Jobs("ours", 8, 1.6, 2.8, 2.1, 1.7), HABIT))
    assert main(["bench", "colour", "--floors", "3", "--tuning", "--json"]) == 1
    told = json.loads(capsys.readouterr().out)
    assert told["half"] == "tuning"
    assert told["whole"]["chances"][0]["said"] == 2.0
    assert told["met"] is False


def test_of_no_dark_room_nothing_is_said(pretend, capsys):
    pretend(dark=Dark(0, 0.0, 0.0, 0.0))
    main(["bench", "colour", "--once"])
    assert "left too dark" not in capsys.readouterr().out
