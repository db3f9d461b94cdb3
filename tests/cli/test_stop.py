"""`farwall stop`: in two minutes, in plain words."""

import json
import re

import pytest
from tests.midday import day_of

from farwall.cli.main import main
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict


@pytest.fixture(scope="module")
def plan(tmp_path_factory):
    path = tmp_path_factory.mktemp("morning") / "plan.json"
    path.write_text(json_text(plan_to_dict(day_of("quince-street"))))
    return str(path)


def test_with_nothing_open_it_says_stop_now(plan, capsys):
    assert main(["stop", plan, "at_min=23.95", "done=first.5"]) == 0
    assert capsys.readouterr().out.startswith("STOP NOW. No edge is open")


def test_a_door_in_time_is_a_yes(plan, capsys):
    assert main(["stop", plan, "now=8:31", "--within-min", "3"]) == 0
    said = capsys.readouterr().out
    assert "STOP AT the door between Bedroom 1 and Hall: it hides the seam." in said


def test_no_line_in_time_is_a_no_with_the_place(plan, capsys):
    assert main(["stop", plan, "now=8:30", "--within-min", "2"]) == 1
    said = capsys.readouterr().out
    assert said.startswith("NO line that hides a seam is reached in 2 min. A seam will show.")
    assert "FEATHER the edge out" in said
    assert re.search(
        r"With \d\.\d min you reach the door between Bedroom 1 and Hall, which hides it\.", said
    )


def test_json_is_one_document(plan, capsys):
    assert main(["stop", plan, "now=8:30", "--json"]) == 1
    found = json.loads(capsys.readouterr().out)
    assert found["how"] == "feather"
    assert found["then_line"] == "d1"


@pytest.mark.parametrize("minutes", ["-1", "nan", "inf"])
def test_a_time_that_is_none_is_refused(plan, capsys, minutes):
    assert main(["stop", plan, "now=8:30", f"--within-min={minutes}"]) == 2
    assert "--within-min" in capsys.readouterr().err
