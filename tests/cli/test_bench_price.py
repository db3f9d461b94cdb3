"""`farwall bench price`: a table or a document, and the exit code of a range that is not honest."""

import json

import pytest

from farwall.bench import price_jobs
from farwall.cli.main import main


@pytest.fixture(autouse=True)
def few(monkeypatch):
    """Forty jobs of each half: the whole takes half a minute."""
    monkeypatch.setattr(price_jobs, "TEST", range(2001, 2041))
    monkeypatch.setattr(price_jobs, "TUNING", range(1, 41))


def test_it_says_which_half_and_how_many_lie_within(capsys):
    main(["bench", "price"])
    said = capsys.readouterr().out
    assert "40 invented jobs, the half for judging" in said
    assert "within" in said
    main(["bench", "price", "--tuning"])
    assert "the half for tuning" in capsys.readouterr().out


def test_as_a_document_with_the_exit_code_of_what_it_says(capsys):
    code = main(["bench", "price", "--json"])
    told = json.loads(capsys.readouterr().out)
    assert code == (0 if told["honest"] else 1)
    assert told["price"][0]["jobs"] == 40
    assert told["losses"][-1]["band"] == "all"


def test_a_range_that_holds_nothing_ends_with_exit_1(monkeypatch, capsys):
    plain = price_jobs.priced_job

    def dear(seed):
        from dataclasses import replace

        job, true = plain(seed)
        return job, replace(true, cost=true.cost * 3)

    monkeypatch.setattr("farwall.bench.price.priced_job", dear)
    assert main(["bench", "price", "--json"]) == 1
    assert not json.loads(capsys.readouterr().out)["honest"]
