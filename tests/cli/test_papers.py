"""`farwall papers` and `farwall price`: which papers, and the days of a calendar in a file."""

from __future__ import annotations

import json
from dataclasses import replace

import pypdfium2
import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.cli.main import main
from farwall.facts.plain import plain
from farwall.job.office.hours.days import ALONE, CALENDAR, calendar_days

STARTS = "2026-06-10T08:00:00-06:00"


@pytest.fixture
def elm(tmp_path):
    """A job file, and a calendar of it and another house with one crew."""

    def written(**also):
        for name, told in (("elm", also), ("fir", {})):
            facts = replace(job(TWO_ROOMS), id=name, name=f"{name.title()} Row", starts_at=STARTS)
            path = tmp_path / f"{name}.json"
            path.write_text(json.dumps(plain(replace(facts, **told))), encoding="utf-8")
        jobs = [str(tmp_path / f"{name}.json") for name in ("fir", "elm")]
        assert main(["days", *jobs, "--from", "2026-06-05", "--out", str(tmp_path / "days")]) == 0
        return tmp_path / "elm.json", tmp_path / "days" / "days.json"

    return written


def pages_of(path):
    return [page.get_textpage().get_text_bounded() for page in pypdfium2.PdfDocument(path)]


def test_only_may_be_said_again_and_every_name_counts(elm, tmp_path):
    file, _ = elm()
    out = tmp_path / "papers"
    words = ["--only", "care", "--only", "warranty", "punch-list", "--only", "before-the-pour"]
    assert main(["papers", str(file), "--out", str(out), *words]) == 0
    assert {one.name for one in out.iterdir()} == {
        "care.pdf", "warranty.pdf", "punch-list.pdf", "enquiry.pdf", "slab-protection.pdf",
    }  # fmt: skip


def test_days_of_the_price_are_those_of_the_calendar(elm, capsys):
    file, days = elm()
    capsys.readouterr()
    found = {}
    for words in ((), ("--days", str(days))):
        assert main(["price", str(file), "--json", *words]) == 0
        found[bool(words)] = json.loads(capsys.readouterr().out)["hours"]
    told = calendar_days(json.loads(days.read_text(encoding="utf-8")), "elm")
    assert found[False]["days_from"] == ALONE
    assert found[True]["days_from"] == CALENDAR
    assert found[True]["days"][1] == told[2]


def test_schedule_and_quote_tell_the_days_of_the_calendar(elm, tmp_path):
    file, days = elm()
    first, last, _ = calendar_days(json.loads(days.read_text(encoding="utf-8")), "elm")
    out = tmp_path / "papers"
    words = ["--only", "schedule", "--only", "quote", "--days", str(days)]
    assert main(["papers", str(file), "--out", str(out), *words]) == 0
    schedule = " ".join(" ".join(pages_of(out / "schedule.pdf")).split())
    assert "From the firm's calendar." in schedule
    assert f"{first:%a} {first.day} {first:%b}" in schedule
    quote = " ".join(" ".join(pages_of(out / "quote.pdf")).split())
    assert f"{last:%B} {last.day}" in quote


def test_a_house_without_an_id_is_found_by_its_name(elm, capsys):
    file, days = elm(id="", name="The only one")
    told = json.loads(days.read_text(encoding="utf-8"))
    assert "The only one" in {one["id"] for one in told["houses"]}
    capsys.readouterr()
    assert main(["price", str(file), "--json", "--days", str(days)]) == 0
    assert json.loads(capsys.readouterr().out)["hours"]["days_from"] == CALENDAR


def spoilt(told):
    told["houses"][0]["steps"][0]["ends_at"] = told["houses"][0]["steps"][0]["starts_at"]


def unnamed(told):
    for one in told["houses"]:
        one["milestones"] = [{"date": "2026-06-05"}]


def gone(told):
    told["houses"] = [one for one in told["houses"] if one["id"] != "elm"]


@pytest.mark.parametrize(
    ("harm", "says"),
    [(spoilt, "ends before it begins"), (unnamed, "cannot be written out"),
     (gone, "elm does not stand in it"), (dict.clear, "cannot be read")],
)  # fmt: skip
def test_a_calendar_with_a_fault_or_without_the_house_is_refused(elm, capsys, harm, says):
    file, days = elm()
    told = json.loads(days.read_text(encoding="utf-8"))
    harm(told)
    days.write_text(json.dumps(told), encoding="utf-8")
    capsys.readouterr()
    assert main(["price", str(file), "--days", str(days)]) == 2
    shown = capsys.readouterr()
    assert shown.out == ""
    assert says in " ".join(shown.err.split())


@pytest.mark.parametrize("text", ["no calendar", "[1]", '{"houses": [{"id": 1}]}'])
def test_what_is_no_calendar_is_refused_calmly(elm, tmp_path, capsys, text):
    file, _ = elm()
    other = tmp_path / "other.json"
    other.write_text(text, encoding="utf-8")
    assert main(["price", str(file), "--days", str(other)]) == 2
    assert "other.json" in capsys.readouterr().err
