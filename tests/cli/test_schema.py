"""`farwall schema`: one JSON document on stdout."""

from __future__ import annotations

import json

import pytest
from jsonschema import Draft202012Validator

from farwall.cli.main import main


@pytest.mark.parametrize("what", ["job", "plan", "so-far", "van", "wares"])
def test_it_prints_one_schema_and_nothing_else(what, capsys):
    assert main(["schema", what]) == 0
    printed = capsys.readouterr()
    schema = json.loads(printed.out)
    Draft202012Validator.check_schema(schema)
    assert schema["title"] == f"Farwall {what}"
    assert printed.err == ""


def test_another_word_is_refused(capsys):
    with pytest.raises(SystemExit) as stopped:
        main(["schema", "house"])
    assert stopped.value.code == 2
    assert "job" in capsys.readouterr().err
