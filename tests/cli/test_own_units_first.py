"""A metric job at the terminal: metres, litres and °C stand first in every answer."""

import json
import re

import pytest
from tests.midday import EXAMPLES

from farwall.cli.main import main

_US_FIRST = re.compile(r"\d (gal|ft²|ft|in|°F|cfm) \(\d")
_SI_FIRST = re.compile(r"\d (L|m²|m|°C|mm) \(\d")


@pytest.fixture(scope="module")
def job(tmp_path_factory):
    facts = json.loads((EXAMPLES / "fennel-court" / "job.json").read_text())
    facts["wishes"]["units"] = "metric"
    path = tmp_path_factory.mktemp("metric") / "job.json"
    path.write_text(json.dumps(facts))
    return path


@pytest.mark.parametrize("command", ["plan", "price", "seal", "days", "go"])
def test_no_answer_begins_with_gallons_or_feet(job, command, tmp_path, capsys):
    out = [] if command in {"price", "go", "days"} else ["--out", str(tmp_path / "o")]
    main([command, str(job), *out])
    said = capsys.readouterr().out
    assert _US_FIRST.findall(said) == []
    assert _SI_FIRST.findall(said), said
