"""The days: what `farwall days` answers, kept, looked at, asked about, fetched."""

from __future__ import annotations

import html
import json
import re
from dataclasses import replace
from datetime import datetime

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text, forecast_text
from tests.web.pages.office import Office, faults_of_html

from farwall.cli.main import main
from farwall.facts.plain import plain
from farwall.web.pages.days import WHAT_IF
from farwall.web.pages.lines import CALENDAR

BEGINS = "2026-06-08"


def facts_of(name, **more):
    made = replace(job(TWO_ROOMS), id=name, name=f"{name.title()} Row",
                   starts_at="2026-06-08T08:00:00-06:00", **more)  # fmt: skip
    return json.loads(json.dumps(plain(made, omit_empty=True)))


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    for name in ("elm", "fir", "oak"):
        found.put(facts_of(name), name=f"{name.title()} Row")
    yield found
    found.close()


def ask(office, *houses, **more):
    told = {"house": list(houses), "begins": BEGINS, "crews": "1", "people": "2"}
    return office.post("/days/ask", data=told | more)


def command(tmp_path, capsys, *words, ids=("elm", "fir")):
    files = []
    for name in ids:
        files.append(tmp_path / f"{name}.json")
        files[-1].write_text(json.dumps(facts_of(name)), encoding="utf-8")
    main(["days", *map(str, files), "--from", BEGINS, *words])
    return capsys.readouterr().out


def test_the_screen_gives_the_very_calendar_of_the_command(office, tmp_path, capsys):
    assert ask(office, "elm", "fir").status_code == 303
    told = office.get("/days/days.json").json()
    assert told == json.loads(command(tmp_path, capsys, "--json"))
    text = office.get("/days").text
    assert faults_of_html(text) == []
    proof = told["proof"]
    assert f"moves): {proof['cost_days']:.1f}." in text
    assert "Elm Row" in text
    assert "Oak Row" in text  # offered, not placed
    assert 'href="/houses/elm"' in text


def test_a_question_moves_what_the_command_says_it_moves(office, tmp_path, capsys):
    ask(office, "elm", "fir")
    office.post("/days/if", data={"rain": "2026-06-09", "trade": "", "where": "", "back": ""})
    case = office.book.document(WHAT_IF, "firm")
    told = command(tmp_path, capsys, "--rain", "2026-06-09", "--json")
    assert case["document"] == json.loads(told)
    text, said = office.get("/days").text, command(tmp_path, capsys, "--rain", "2026-06-09")
    assert "What if it rains on Tue 9 Jun?" in text
    assert said.count("instead of") > 0
    for line in said.splitlines():
        name, _, what = line.partition(": handed over ")
        if what and "Row" in name:
            assert f"{name}: handed over {what.rstrip('.')}; " in text
    assert text.count(" instead of ") == said.count("instead of")


def test_what_was_asked_about_stands_once_it_is_kept(office):
    ask(office, "elm")
    first = office.get("/days/days.json").json()
    office.post("/days/if", data={
        "rain": "", "trade": "plumber", "where": "elm", "back": "2026-06-10",
    })  # fmt: skip
    assert office.get("/days/days.json").json() == first
    assert "the plumber has Elm Row on Wed 10 Jun" in office.get("/days").text
    office.post("/days/keep")
    then = office.get("/days/days.json").json()
    assert then != first
    assert then["away"] == [{"house": "elm", "trade": "plumber", "date": "2026-06-10"}]
    assert "What if the plumber" not in office.get("/days").text


def test_why_a_trade_moves_a_house_is_told_with_the_question_and_when_it_stands(office):
    ask(office, "elm")
    office.post("/days/if", data={
        "rain": "", "trade": "the roofer", "where": "elm", "back": "2026-06-10",
    })  # fmt: skip
    (moved,) = office.book.document(WHAT_IF, "firm")["document"]["moved"]
    assert moved["house"] == "elm"
    for told, path in (("question", "/days"), ("stands", "/days")):
        text = html.unescape(office.get(path).text)
        assert all(one in text for one in moved["why"]), told
        spanish = html.unescape(office.get(path, headers={"accept-language": "es"}).text)
        assert "La casa la tiene the roofer el mié. 10 jun" in spanish
        assert not any(one in spanish for one in moved["why"])
        office.post("/days/keep")
    assert office.get("/days/days.json").json()["moved"] == [moved]


def test_a_dropped_question_leaves_the_calendar_as_it_was(office):
    ask(office, "elm")
    before = office.book.document(CALENDAR, "firm")
    office.post("/days/if", data={"rain": "2026-06-09"})
    office.post("/days/drop")
    assert office.book.document(CALENDAR, "firm") == before
    assert "Let this calendar stand" not in office.get("/days").text


def test_the_calendar_file_doubles_nothing_and_renews_what_moved(office):
    ask(office, "elm")
    first = office.get("/days/farwall.ics")
    assert first.headers["content-type"].startswith("text/calendar")
    assert b"UID:elm.clean@farwall\r\n" in first.content
    ask(office, "elm")
    assert office.get("/days/farwall.ics").content == first.content
    office.post("/days/if", data={"rain": "2026-06-09"})
    office.post("/days/keep")
    renewed = office.get("/days/farwall.ics").content
    assert renewed.count(b"BEGIN:VEVENT") == first.content.count(b"BEGIN:VEVENT")
    assert b"SEQUENCE:1\r\n" in renewed


def test_a_house_set_aside_is_in_no_calendar_and_its_events_are_cancelled(office):
    ask(office, "elm", "fir")
    before = office.get("/days/farwall.ics").content
    assert b"STATUS:CANCELLED" not in before
    office.post("/houses/elm/aside", data={"do": "aside"})
    text = office.get("/days").text
    assert "Elm Row" not in text
    assert "Fir Row" in text
    after = office.get("/days/farwall.ics").content
    elm = before.count(b"UID:elm.")
    assert elm > 3
    assert after.count(b"UID:elm.") == elm
    assert after.count(b"STATUS:CANCELLED") == elm
    ask(office, "fir")
    assert office.get("/days/farwall.ics").content.count(b"STATUS:CANCELLED") == elm


def test_many_houses_are_folded_and_found_by_name(office):
    for n in range(20):
        office.put(facts_of("elm") | {"id": f"more-{n}"}, name=f"More {n}")
    text = office.get("/days").text
    assert faults_of_html(text) == []
    shown, folded = text.split('<details class="more-rows">')
    assert shown.count('name="house" value=') == 12 + 1  # and the blank of the search
    assert "12 of 23 houses are shown" in folded
    sought = office.get("/days?house=fir+row").text
    shown, folded = sought.split('<details class="more-rows">')
    assert 'name="house" value="fir"' in shown
    assert shown.count('type="checkbox" name="house"') == 1
    assert folded.count('type="checkbox" name="house"') == 22  # none is lost to the form
    assert folded.count(" checked") == text.count(" checked") - shown.count(" checked")
    assert "12 of them are chosen" in folded or "11 of them are chosen" in folded


def test_a_house_that_fits_nowhere_says_why_and_the_others_are_placed(office):
    wide = facts_of("barn")
    for room in wide["floor"]["rooms"]:
        room["polygon"]["coordinates"] = [
            [[60 * x, 60 * y] for x, y in ring] for ring in room["polygon"]["coordinates"]
        ]
    for opening in wide["floor"]["openings"]:
        opening["line"] = [[60 * x, 60 * y] for x, y in opening["line"]]
        opening.pop("threshold", None)
    office.put(wide, name="Barn")
    ask(office, "elm", "barn")
    stands = office.book.document(CALENDAR, "firm")
    assert [one["id"] for one in stands["document"]["houses"]] == ["elm"]
    (lost,) = stands["unplaced"]
    assert lost["house"] == "barn"
    text = office.get("/days").text
    assert faults_of_html(text) == []
    assert "finds no days" in text
    assert "cut into zones" in text
    assert lost["why"].split(":")[0] in text


def test_all_mistakes_come_at_once_and_nothing_is_asked(office):
    answer = office.post("/days/ask", data={
        "begins": "soon", "crews": "0", "people": "1", "days": "3", "slab": "x",
    })  # fmt: skip
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    for told in ("none is chosen", "soon is no day", "0 is no number", "1 is no number from 2",
                 "3 is no number from 14", "x is no reading"):  # fmt: skip
        assert told in answer.text
    assert office.book.document(CALENDAR, "firm") is None


def test_readings_of_one_house_are_those_of_its_survey(office, tmp_path, capsys):
    ask(office, "elm", slab="41", air="50", rh="80")
    case = office.book.document(CALENDAR, "firm")
    facts = facts_of("elm")
    facts["survey"] = facts.get("survey", {}) | {"slab_c": 5.0, "air_c": 10.0, "rh_percent": 80.0}
    path = tmp_path / "cold.json"
    path.write_text(json.dumps(facts), encoding="utf-8")
    code = main(["days", str(path), "--from", BEGINS, "--json"])
    shown = capsys.readouterr()
    assert code == 1
    assert case["document"] is None
    assert case["unplaced"][0]["why"] in shown.err.replace("\n", " ")
    assert "they hold for one house" in ask(office, "elm", "fir", slab="60").text


def test_a_calendar_is_asked_of_a_book_of_many_open_houses(office):
    for n in range(60):
        office.put(facts_of("elm") | {"id": f"more-{n}"}, name=f"More {n}")
    blanks = {f"{key}.more-{n}": "" for n in range(60) for key in ("free", "due")}
    answer = office.post(
        "/days/ask", data=blanks | {"house": "elm", "begins": BEGINS, "crews": "x"}
    )
    assert answer.status_code == 422  # for its crews, not for its many blanks
    assert "x is no number from 1" in answer.text
    assert "Too many" not in answer.text


def test_readings_are_read_with_their_units(office):
    ask(office, "elm", slab="5 °C", air="50F", rh="80%")
    told = office.book.document(CALENDAR, "firm")["asked"]["readings"]
    assert told == {"slab_c": 5.0, "air_c": 10.0, "rh_percent": 80.0}


def test_a_weather_file_is_kept_and_used_and_another_file_is_turned_away(office, tmp_path, capsys):
    good = epw_text()
    answer = office.post("/days/weather", files={"file": ("town.epw", good.encode())})
    assert answer.status_code == 303
    assert "By the weather file town.epw." in office.get("/days").text
    wrong = office.post("/days/weather", files={"file": ("x.csv", b"time,air\n")})
    assert wrong.status_code == 422
    assert "no hourly EPW file" in wrong.text
    ask(office, "elm")
    (tmp_path / "town.epw").write_text(good, encoding="utf-8")
    told = command(
        tmp_path, capsys, "--weather", str(tmp_path / "town.epw"), "--json", ids=("elm",)
    )
    assert office.get("/days/days.json").json() == json.loads(told)
    assert not [one for one in office.book.check() if one.code == "loose-file"]


def test_a_forecast_is_kept_over_a_typical_year_and_used_as_the_command_uses_it(
    office, tmp_path, capsys
):
    begins = datetime.fromisoformat("2026-06-07T00:00:00-06:00")
    files = {
        "town.epw": epw_text(),
        "next-days.csv": forecast_text(begins, hours=264, air_c=12.0),
    }
    for name, text in files.items():
        answer = office.post("/days/weather", files={"file": (name, text.encode())})
        assert answer.status_code == 303
        (tmp_path / name).write_text(text, encoding="utf-8")
    text = office.get("/days").text
    assert "By the forecast next-days.csv for the days that it holds." in text
    assert "By the weather file town.epw." in text
    assert faults_of_html(text) == []
    ask(office, "elm")
    both = [word for name in files for word in ("--weather", str(tmp_path / name))]
    told = json.loads(command(tmp_path, capsys, *both, "--json", ids=("elm",)))
    assert office.get("/days/days.json").json() == told
    assert re.search(
        r"The forecast goes until \w+ \d+ \w+ \d+:\d\d [ap]m\.", office.get("/days").text
    )
    ask(office, "elm", **{"no-forecast": "yes"})
    year = ["--weather", str(tmp_path / "town.epw")]
    alone = json.loads(command(tmp_path, capsys, *year, "--json", ids=("elm",)))
    assert office.get("/days/days.json").json() == alone != told
    assert not [one for one in office.book.check() if one.code == "loose-file"]


def test_what_it_rests_on_and_its_notes_are_said_in_spanish(office):
    begins = datetime.fromisoformat("2026-06-07T00:00:00-06:00")
    table = forecast_text(begins, hours=264)
    office.post("/days/weather", files={"file": ("next-days.csv", table.encode())})
    ask(office, "elm")
    text = office.get("/days", headers={"accept-language": "es-MX"}).text
    assert "Clima: estimación, pronóstico." in text
    assert "El pronóstico llega hasta el" in text
    assert "se toma como la media de los suyos" in text
    assert "The forecast" not in text
    assert "house-guess" not in office.get("/days").text
    wrong = office.post(
        "/days/weather",
        files={"file": ("x.csv", b"time,air\n2026,x\n")},
        headers={"accept-language": "es-MX"},
    )
    assert wrong.status_code == 422
    assert "ni un pronóstico que se pueda leer" in wrong.text
    assert "línea 2: Su hora no es ISO 8601." in wrong.text


def test_a_forecast_that_is_over_is_told_and_places_nothing(office):
    begins = datetime.fromisoformat("2026-05-07T00:00:00-06:00")
    old = forecast_text(begins, hours=48)
    office.post("/days/weather", files={"file": ("old.csv", old.encode())})
    ask(office, "elm")
    assert "Fetch a forecast of these days" in office.get("/days").text


@pytest.mark.parametrize("path", ["/days", "/days/farwall.ics", "/days/days.json", "/days/state"])
def test_without_the_key_it_stays_shut(tmp_path, path):
    office = Office(tmp_path)
    assert office.get(path).status_code == 303
    office.close()


def test_an_empty_book_and_a_book_without_a_calendar_say_so(tmp_path):
    office = Office(tmp_path)
    office.enter()
    assert "no open house" in office.get("/days").text
    assert '<a href="/">Bring, draw or type a house</a>' in office.get("/days").text
    office.put(facts_of("elm"))
    assert "No calendar has been asked for yet" in office.get("/days").text
    assert office.get("/days/farwall.ics").status_code == 409
    office.close()


def test_the_page_is_sound_in_spanish_at_every_scale(office):
    ask(office, "elm", "fir", crews="2")
    for asked in ("", "?weeks=1", "?weeks=4&first=2026-06-01", "?weeks=x&first=y"):
        text = office.get(f"/days{asked}", headers={"accept-language": "es"}).text
        assert faults_of_html(text) == []
        assert "Los días" in text
        assert "proteger y limpiar" in text
