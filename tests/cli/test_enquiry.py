"""`farwall enquiry`: from words to an exit code."""

import json

import pytest

from farwall.cli.main import main


def test_a_call_in_words_and_as_json(capsys):
    assert main(["enquiry", "film=sealer", "area_ft2=1180", "work=one colour"]) == 0
    text = capsys.readouterr().out
    assert text.startswith("Visit: look at it before any word on price.")
    assert "Rough range: 5,900 to 11,250 USD for 1,180 ft²" in text
    assert main(["enquiry", "film=sealer", "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["verdict"] == "visit"
    assert document["rough"] is None
    assert {"question", "about", "word", "reason", "change", "rank", "source"} == set(
        document["found"][0]
    )


def test_a_decline_is_exit_1_with_what_would_change_it(capsys):
    assert main(["enquiry", "film=unknown"]) == 1
    assert "The bottles or the receipt" in capsys.readouterr().out


@pytest.mark.parametrize("words", [["film"], ["fil=x"], ["pours=1.5"], ["film=cure", "film=cure"]])
def test_mistakes_are_exit_2(words, capsys):
    assert main(["enquiry", *words]) == 2
    heard = capsys.readouterr()
    assert heard.out == ""
    assert "The call cannot be answered with this." in heard.err
