"""`farwall replan`: the manners of `plan`, what to do now first."""

import json
import re

import pypdfium2
import pytest
from tests.midday import EXAMPLES, day_of

from farwall.cli.main import main
from farwall.cli.midday_words import light_beside
from farwall.papers.json_text import json_text
from farwall.readers.plan_json import plan_to_dict, read_plan


@pytest.fixture(scope="module")
def plan(tmp_path_factory):
    path = tmp_path_factory.mktemp("morning") / "plan.json"
    path.write_text(json_text(plan_to_dict(day_of("quince-street"))))
    return path


def test_it_writes_all_three_and_says_what_to_do_now(plan, tmp_path, capsys):
    assert main(["replan", str(plan), "now=8:30", "--out", str(tmp_path / "o")]) == 0
    assert {f.name for f in (tmp_path / "o").iterdir()} == {
        "plan.json",
        "run-sheet.pdf",
        "floor.svg",
        "moments.svg",
    }
    said = capsys.readouterr().out.splitlines()
    now = r"NOW 8:30 am: finish 1\.6\.(\d) \(\d\.\d min\), then go on with band 1\.6\.(\d) in "
    found = re.match(now + r"Bedroom 1\.", said[0])
    assert found is not None, said[0]
    assert int(found[2]) == int(found[1]) + 1
    assert main(["check", str(tmp_path / "o" / "plan.json")]) == 0


def test_a_metric_day_tells_its_hours_by_24(plan, tmp_path, capsys):
    assert main(["replan", str(plan), "now=8:30", "--metric", "--out", str(tmp_path / "o")]) == 0
    said = capsys.readouterr().out
    assert said.startswith("NOW 8:30: finish")
    assert not re.search(r"\d [ap]m\b", said)


def test_a_metric_day_tells_litres_before_gallons(plan, tmp_path, capsys):
    words = ["now=8:30", "tub_l=0.5", "tank_l=4", "--metric", "--out", str(tmp_path / "o")]
    main(["replan", str(plan), *words])
    said = capsys.readouterr().out
    assert re.search(r"MIX \d+\.\d L \(\d+\.\d gal\)", said), said
    assert not re.search(r"gal \(", said)


def test_words_may_stand_on_either_side_of_options(plan, tmp_path, capsys):
    out = str(tmp_path / "o")
    told = ["replan", str(plan), "now=8:12", "--out", out, "done=first.3", "closed=bed-1:8:50"]
    assert main([*told, "--json"]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["so_far"]["closed"] == [{"room": "bed-1", "until_min": 50.0}]
    assert document == json.loads((tmp_path / "o" / "plan.json").read_text())


def test_a_dead_edge_is_a_no_with_the_age(plan, tmp_path, capsys):
    words = ["now=8:36", "done=first.6.3", "--out", str(tmp_path / "o")]
    assert main(["replan", str(plan), *words]) == 1
    said = capsys.readouterr().out
    assert re.search(r"NO: The edge before band 1\.6\.4 is \d+\.\d min old", said)
    assert "dead-edge" in said


def test_a_mix_that_may_not_be_is_a_no(plan, tmp_path, capsys):
    words = ["now=8:50", "tub_l=1", "tank_l=2", "--out", str(tmp_path / "o")]
    assert main(["replan", str(plan), *words]) == 1
    first, second = capsys.readouterr().out.splitlines()[:2]
    assert "farwall stop" in first
    assert second.startswith("MIX NOTHING NEW. No: a fresh mix against the wet edge")


def test_what_is_left_for_another_day_is_said(plan, tmp_path, capsys):
    words = ["now=8:12", "done=first.3", "closed=bed-1", "--out", str(tmp_path / "o")]
    assert main(["replan", str(plan), *words]) == 0
    assert "LEFT FOR ANOTHER DAY: Bedroom 1, Closet (1.6)" in capsys.readouterr().out


def test_done_floor_lies_in_grey_and_the_foot_says_so(plan, tmp_path):
    main(["replan", str(plan), "now=8:30", "--out", str(tmp_path / "o")])
    drawing = (tmp_path / "o" / "floor.svg").read_text()
    assert drawing.count("#dcd8cf") > 20
    assert ">done</text>" in drawing


@pytest.mark.parametrize(
    ("words", "says"),
    [
        ([], "what time is it?"),
        (["now=8:30", "done=first.99"], "no band or field 1.99"),
        (["now=8:30", "closed=bth"], "Did you mean bath?"),
        (["now=8:01", "done=first.6"], "Tell the minute now"),
        (["--so-far", "nowhere.json"], "nowhere.json"),
    ],
)
def test_a_mistake_is_told_calmly_and_nothing_is_written(plan, tmp_path, capsys, words, says):
    out = tmp_path / "o"
    assert main(["replan", str(plan), *words, "--out", str(out)]) == 2
    printed = capsys.readouterr()
    assert says in printed.err
    assert printed.out == ""
    assert not out.exists()


def test_without_a_folder_it_asks_for_one(plan, capsys):
    assert main(["replan", str(plan), "now=8:30"]) == 2
    assert "--out" in capsys.readouterr().err


def test_a_file_tells_the_day_as_words_do(plan, tmp_path, capsys):
    told = tmp_path / "day.json"
    told.write_text(json.dumps({"at_min": 30.0, "done_up_to": "first.6.3", "tank_gal": 1.2}))
    words = ["--so-far", str(told), "--out", str(tmp_path / "o"), "--json"]
    assert main(["replan", str(plan), *words]) == 0
    document = json.loads(capsys.readouterr().out)
    assert document["so_far"]["done"][-1]["id"] == "first.6.3"
    assert document["so_far"]["tank_l"] == pytest.approx(4.5425, abs=0.001)


def test_the_sheet_has_pages_for_what_is_still_to_do(plan, tmp_path):
    """Five of sixteen fields are done; two pages stand before those of the fields."""
    import pypdfium2

    main(["replan", str(plan), "now=8:30", "--out", str(tmp_path / "o")])
    sheet = pypdfium2.PdfDocument(tmp_path / "o" / "run-sheet.pdf")
    pages = [page.get_textpage().get_text_range() for page in sheet]
    heads = {line for text in pages for line in text.splitlines() if line.startswith("Field ")}
    assert not any(line.startswith("Field 5 of 8 · coat 1") for line in heads)
    assert any(line.startswith("Field 6 of 8 · coat 1") for line in heads)
    assert any(line.startswith("Field 1 of 8 · coat 2") for line in heads)
    assert all("planned again at 8:30" in text for text in pages)


def sheet_of(folder):
    pages = pypdfium2.PdfDocument(folder / "run-sheet.pdf")
    return " ".join(page.get_textpage().get_text_range() for page in pages)


def test_the_sheet_names_no_revision_that_nobody_told(plan, tmp_path):
    told, untold = tmp_path / "told", tmp_path / "untold"
    main(["replan", str(plan), "now=8:30", "--out", str(untold)])
    assert "revision" not in sheet_of(untold)
    assert "· inputs " in sheet_of(untold)
    words = ["--language", "es", "--revision", "3"]
    main(["replan", str(plan), "now=8:30", "--out", str(told), *words])
    assert "· datos 3 · entradas " in sheet_of(told)
    assert "planeado de nuevo a las 8:30" in sheet_of(told)


def test_the_place_in_the_job_beside_a_plan_tells_its_sunset_and_a_broken_one_stops_nothing(
    plan, tmp_path, capsys
):
    facts = json.loads((EXAMPLES / "quince-street" / "job.json").read_text())
    here, read = tmp_path / "plan.json", read_plan(plan)
    assert light_beside(here, read) is None
    place = {"latitude_deg": 50.0, "longitude_deg": -105.0}
    beside = tmp_path / "job.json"
    beside.write_text(json.dumps(facts | {"place": place}))
    light = light_beside(here, read)
    assert (light.latitude_deg, light.longitude_deg) == (50.0, -105.0)
    assert light.starts_at.isoformat() == read.starts_at
    beside.write_text(json.dumps(facts | {"place": place, "starts_at": None}))
    assert light_beside(here, read).latitude_deg is None  # no start of its own: no day is known
    beside.write_text("{")
    assert light_beside(here, read) is None
    assert "job.json could not be read" in capsys.readouterr().err
