"""`farwall pour`: from words to a verdict with its proof, and an exit code."""

import json
from dataclasses import replace

import pytest
from tests.job.pouring.test_listed import SAND

from farwall.cli.main import main
from farwall.facts.job import Coat, Stain
from farwall.facts.materials import Material
from farwall.facts.plain import plain

READ = replace(
    SAND,
    stains=(
        Stain("sand", "sand", chromate=False, oxidiser=False, sheet_read="2027-01-04"),
        Stain("blue", "blue green", chromate=True, sheet_read="2027-01-04"),
    ),
    coats=(Coat("one", "sand", "1:1"), Coat("two", "blue", "1:2")),
    materials=(
        Material("acid", "muriatic acid", sheet_read=True),
        Material("soap", "alkaline cleaner", "green drum", sheet_read=True),
    ),
)


@pytest.fixture
def pour(tmp_path, capsys):
    """Ask with some words: exit code, stdout, stderr."""
    path = tmp_path / "job.json"
    path.write_text(json.dumps(plain(READ)), encoding="utf-8")

    def asked(*words):
        code = main(["pour", str(path), *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err

    return asked


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (("sand", "into", "water"), 0),
        (("water", "into", "sand"), 1),
        (("acid", "into", "water", "sand"), 0),
        (("acid", "into", "water", "blue"), 1),
        (("sand", "acid", "into", "water"), 0),
        (("bleach", "into", "sand"), 1),
        (("other", "into", "water"), 1),
        (("mix-sand", "--vessel", "sprayer"), 0),
        (("mix-sand", "--vessel", "metal-pail"), 1),
        (("mix-sand", "--vessel", "floor", "--left", "dried-sand"), 0),
        (("mix-sand", "--vessel", "floor", "--left", "bleach"), 1),
        (("green drum", "into", "water"), 0),
        (("dried-blue", "--act", "sand-dry"), 1),
        (("dried-sand", "--act", "grind with shroud and vacuum"), 0),
        (("mix-sand", "--act", "open under pressure"), 1),
        (("nobody-knows", "into", "water"), 2),
        (("stain", "into", "water"), 2),
        (("into", "water"), 2),
        (("sand", "into"), 2),
        (("sand", "into", "water", "into", "acid"), 2),
        (("sand", "--vessel", "bath"), 2),
        (("sand", "--act", "juggle"), 2),
    ],
)
def test_the_exit_code_is_the_answer(pour, words, code):
    found, out, err = pour(*words)
    assert found == code
    assert bool(out) == (code != 2)
    if code == 2:
        assert err.strip()
        assert "Traceback" not in err


def test_all_words_that_nobody_knows_are_told_at_once(pour):
    _, _, err = pour("soup", "into", "broth")
    assert "soup" in err
    assert "broth" in err
    assert "Unknown means refused" in err


def test_the_document_holds_the_verdict_and_its_proof(pour):
    code, out, _ = pour("acid", "into", "water", "blue", "--json")
    told = json.loads(out)
    assert code == 1
    assert told["word"] == "refused"
    assert told["things"] == ["water", "blue green", "acid"]
    fired = next(one for one in told["fired"] if one["rule"] == "oxidiser and acid")
    assert {(met["name"], met["trait"]) for met in fired["met"]} == {
        ("blue green", "oxidiser"), ("acid", "strong acid"),
    }  # fmt: skip
    assert fired["rank"]
    assert fired["source"]
    assert told["notes"] == []


def test_what_is_not_on_the_list_is_said_to_be_judged_by_its_kind(pour):
    _, _, err = pour("bleach", "into", "water")
    assert "not on the job's list" in err


def test_added_acid_carries_its_warnings(pour):
    _, out, _ = pour("acid", "into", "water", "sand")
    assert "maker's sheet does not cover" in out
    assert "sample" in out
    assert "fumes rise" in out


def test_without_words_the_list_and_its_table_are_printed(pour):
    code, out, _ = pour()
    assert code == 0
    assert "soap: alkaline cleaner, green drum" in out
    assert "Refused: " in out
    assert "Unknown means refused" in out
    code, out, _ = pour("--json")
    assert code == 0
    assert {one["id"] for one in json.loads(out)["materials"]} >= {"acid", "soap", "water"}
