"""`farwall days`: words in, lines, files and an exit code out."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pypdfium2
import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.cli.main import main
from farwall.days.check import check_days
from farwall.facts.job import Place, Wishes
from farwall.facts.plain import plain


@pytest.fixture
def days(tmp_path, capsys):
    """Lay jobs into days with some words: exit code, stdout, stderr."""

    def run(*words, ids=("elm",), units=("us", "us")):
        files = []
        for name, manner in zip(ids, units, strict=False):
            facts = replace(job(TWO_ROOMS), id=name, name=f"{name.title()} Row",
                            starts_at="2026-06-08T08:00:00-06:00",
                            wishes=Wishes(units=manner))  # fmt: skip
            files.append(tmp_path / f"{name}.json")
            files[-1].write_text(json.dumps(plain(facts)), encoding="utf-8")
        code = main(["days", *map(str, files), *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err

    return run


def test_a_house_is_placed(days):
    code, out, err = days()
    assert code == 0
    assert "Elm Row" in out
    assert err == ""


@pytest.mark.parametrize(
    ("units", "us"), [(("us", "us"), True), (("us", "metric"), False), (("metric",), False)]
)
def test_hours_are_by_am_and_pm_where_every_house_counts_in_us_units(days, units, us):
    _, out, _ = days("--crews", "2", ids=("elm", "fir")[: len(units)], units=units)
    halves = re.findall(r"\b\d+:\d\d( [ap]m)?", out)
    assert {bool(half) for half in halves} == {us}


def _begun(out):
    steps = json.loads(out)["houses"][0]["steps"]
    return {one["id"]: one["starts_at"][:16] for one in steps}


def test_one_house_is_coated_when_its_job_says_and_cleaned_before(days):
    """A job's start is its first stroke: before, its broom stood there and its coat days later."""
    begun = _begun(days("--json")[1])
    assert begun["coat-1"] == "2026-06-08T08:00"
    assert begun["clean"] < begun["mask"] < "2026-06-08"


@pytest.mark.parametrize("word", ["--from", "--free"])
def test_who_names_the_first_day_has_the_house_begun_on_it(days, word):
    begun = _begun(days(word, "2026-06-08", "--json")[1])
    assert begun["clean"] == "2026-06-08T07:30"


def test_a_coat_on_another_day_than_the_plan_is_said(days):
    said = "Coat 1 does not fall on the day that the job tells"
    assert said not in days()[1]
    assert said in days("--from", "2026-06-08")[1]


def test_json_is_one_document_that_the_checker_accepts(days):
    code, out, _ = days("--json", "--crews", "2", ids=("elm", "fir"))
    assert code == 0
    told = json.loads(out)
    assert check_days(told) == []
    assert {one["crew"] for one in told["houses"]} == {"crew 1", "crew 2"}


def test_a_folder_and_a_calendar_file_are_written(days, tmp_path):
    out, ics = tmp_path / "week", tmp_path / "week.ics"
    code, told, _ = days("--out", str(out), "--ics", str(ics))
    assert code == 0
    assert {one.name for one in out.iterdir()} == {"days.json", "days.svg", "chain-elm.pdf"}
    assert str(out) in told
    assert b"BEGIN:VEVENT\r\nUID:elm.clean@farwall\r\n" in ics.read_bytes()


def test_tape_and_pages_are_spanish_where_they_are_asked_for_so(days, tmp_path):
    out = tmp_path / "week"
    code, _, _ = days("--out", str(out), "--language", "es", "--screens", "https://b.example/elm")
    assert code == 0
    assert "limpieza" in (out / "days.svg").read_text()
    page = pypdfium2.PdfDocument(out / "chain-elm.pdf")[0].get_textpage().get_text_range()
    assert "Los demás oficios se quedan fuera" in page
    assert "datos 1 · entradas " in page


def test_one_address_of_a_house_is_not_for_two(days, tmp_path):
    code, _, err = days("--out", str(tmp_path / "week"), "--screens", "https://b.example/elm",
                        ids=("elm", "fir"))  # fmt: skip
    assert code == 2
    assert "--screens" in err
    assert not (tmp_path / "week").exists()


def test_a_calendar_file_is_renewed_and_never_doubled(days, tmp_path):
    ics = tmp_path / "week.ics"
    days("--ics", str(ics))
    first = ics.read_bytes()
    days("--ics", str(ics), "--stamp", "2026-06-09T08:00:00Z")
    assert ics.read_bytes() == first
    days("--ics", str(ics), "--stamp", "2026-06-09T08:00:00Z", "--rain", "tue")
    renewed = ics.read_bytes()
    assert renewed.count(b"BEGIN:VEVENT") == first.count(b"BEGIN:VEVENT")
    assert b"SEQUENCE:1\r\n" in renewed
    assert b"DTSTAMP:20260609T080000Z" in renewed


def test_what_if_it_rains_and_the_plumber_comes(days):
    _, rain, _ = days("--from", "2026-06-08", "--rain", "tue")
    assert "instead of Tue 9 Jun" in rain
    _, plumber, _ = days("--from", "2026-06-08", "--away", "plumber:2026-06-10")
    assert "Against the first answer" in plumber


def test_weather_comes_from_a_file(days, tmp_path):
    file = tmp_path / "w.epw"
    file.write_text(epw_text(), encoding="utf-8")
    code, out, _ = days("--weather", str(file))
    assert code == 0
    assert "weather file" in out


def test_a_day_late_is_a_no(days):
    code, out, _ = days("--due", "2026-06-09")
    assert code == 1
    assert "LATE" in out


def test_free_and_due_may_name_a_job(days):
    code, out, _ = days("--free", "fir/2026-06-22", "--json", ids=("elm", "fir"))
    assert code == 0
    starts = {one["id"]: one["steps"][0]["starts_at"] for one in json.loads(out)["houses"]}
    assert starts["fir"] >= "2026-06-22"
    assert starts["elm"] < "2026-06-22"


def test_all_mistakes_come_at_once(days):
    code, out, err = days("--people", "1", "--crews", "0", "--rain", "someday", "--away", "plumber",
                          "--due", "oak/2026-06-09")  # fmt: skip
    assert code == 2
    assert out == ""
    for word in ("--people", "nobody works alone", "--crews", "someday", "plumber:tue", "oak"):
        assert word.lower() in err.lower()


def test_a_trade_in_one_of_two_houses_has_to_say_which(days):
    code, _, err = days("--away", "plumber:tue", ids=("elm", "fir"))
    assert code == 2
    assert "elm/" in err


def test_a_stamp_without_offset_is_refused(days, tmp_path):
    code, _, err = days("--ics", str(tmp_path / "a.ics"), "--stamp", "2026-06-09T08:00:00")
    assert code == 2
    assert "offset" in err


def test_the_same_job_twice_is_refused(days):
    code, _, err = days(ids=("elm", "elm"))
    assert code == 2
    assert "comes twice" in err


def test_a_written_calendar_is_checked_again(days, tmp_path, capsys):
    days("--out", str(tmp_path / "week"))
    file = tmp_path / "week" / "days.json"
    assert main(["days", "--check", str(file)]) == 0
    assert "holds" in capsys.readouterr().out
    told = json.loads(file.read_text())
    told["houses"][0]["lock"]["ends_at"] = told["houses"][0]["lock"]["starts_at"]
    file.write_text(json.dumps(told))
    assert main(["days", "--check", str(file), "--json"]) == 1
    assert [one["code"] for one in json.loads(capsys.readouterr().out)["faults"]] == ["lock"]


def test_a_calendar_that_is_none_is_a_fault_or_a_refusal(tmp_path, capsys):
    file = tmp_path / "days.json"
    file.write_text("[1]")
    assert main(["days", "--check", str(file)]) == 1
    file.write_text("no")
    assert main(["days", "--check", str(file)]) == 2
    assert capsys.readouterr().err


def test_no_job_is_refused(capsys):
    assert main(["days"]) == 2
    assert "Name a job" in capsys.readouterr().err


def test_the_calendar_file_follows_summer_time_where_the_zone_is_told(tmp_path, capsys):
    """Half past seven in Chicago is 12:30 in UTC in October, 13:30 after the clock is put back."""
    facts = replace(job(TWO_ROOMS), starts_at="2026-10-26T08:00:00-05:00",
                    place=Place(time_zone="America/Chicago"))  # fmt: skip
    house, ics = tmp_path / "elm.json", tmp_path / "elm.ics"
    house.write_text(json.dumps(plain(facts)), encoding="utf-8")
    assert main(["days", str(house), "--from", "2026-10-26", "--ics", str(ics)]) == 0
    capsys.readouterr()
    starts = [line for line in ics.read_text().splitlines() if line.startswith("DTSTART:2026")]
    assert any(line.endswith("T123000Z") for line in starts if line[8:16] < "20261101")
    assert any(line.endswith("T133000Z") for line in starts if line[8:16] > "20261101")
    assert not any(line.endswith("T123000Z") for line in starts if line[8:16] > "20261101")
