"""The van on a page: `farwall van` with forms; a house's needs; a closed job taken off once."""

from __future__ import annotations

import json
import re
from datetime import date
from pathlib import Path

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms, two_rooms_planned

from farwall.cli.main import main
from farwall.facts.van import Stock
from farwall.readers.van_json import read_van
from farwall.web.pages.van import van_of
from farwall.web.pages.van_form import seen_of
from farwall.web.pages.van_words import age_told, is_past

VAN = Path(__file__).resolve().parents[3] / "examples" / "van" / "van.json"


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned("Two rooms")
    found.app.state.live.replanning.tapped = lambda job: None
    yield found
    found.close()


@pytest.fixture
def filled(office):
    content = VAN.read_bytes()
    assert office.post("/van/bring", files={"file": ("van.json", content)}).status_code == 303
    return office


def now(office):
    return van_of(office.book)


def form(office, **told):
    return {"seen": seen_of(now(office)), "was": ""} | told


def unescaped(text):
    return text.replace("&#39;", "'").replace("<strong>", "").replace("</strong>", "")


def test_an_empty_van_says_so_and_offers_two_forms(office):
    text = office.get("/van").text
    assert faults_of_html(text) == []
    assert "list is empty" in text
    for new in ("sprayer", "stock"):
        form_ = office.get(f"/van?new={new}").text
        assert faults_of_html(form_) == []
        assert f'action="/van/{new}"' in form_


def test_a_dozen_houses_are_offered_of_how_many_and_the_others_are_found_by_name(office):
    for n in range(20):
        office.put(two_rooms() | {"id": f"more-{n}"}, name=f"Möre {n}")
    text = office.get("/van").text
    assert faults_of_html(text) == []
    assert text.count('href="/van?for=') == 12
    assert "12 of 21 houses" in text
    found = office.get("/van?house=more-7").text
    assert faults_of_html(found) == []
    assert re.findall(r'href="/van\?for=([^"]+)"', found) == ["more-7"]
    none = office.get("/van?house=nowhere").text
    assert faults_of_html(none) == []
    assert "No house is so." in none


def test_the_page_says_what_the_command_says_of_its_state(filled, capsys):
    main(["van", str(VAN)])
    text = unescaped(filled.get("/van").text)
    lines = capsys.readouterr().out.splitlines()
    assert len(lines) > 9
    assert [line.strip() for line in lines if line.strip() not in text] == []


def test_the_page_says_what_the_command_says_of_a_house(filled, tmp_path, capsys):
    plan, job = tmp_path / "plan.json", tmp_path / "job.json"
    plan.write_text(json.dumps(two_rooms_planned()), encoding="utf-8")
    job.write_text(json.dumps(filled.book.facts("two")), encoding="utf-8")
    main(["van", str(VAN), "--job", str(job), "--plan", str(plan)])
    text = unescaped(filled.get("/van?for=two").text)
    assert faults_of_html(text) == []
    lines = [line.strip().removeprefix("Mind: ") for line in capsys.readouterr().out.splitlines()]
    assert len(lines) > 8
    assert [line for line in lines if line not in text] == []


def test_a_sprayer_is_put_in_changed_and_taken_out_by_forms(office):
    told = {
        "id": "red",
        "kind": "cheap",
        "tank": "2",
        "uses": "1",
        "seals_at": "0",
        "flow": "0.7 L/min",
    }
    assert office.post("/van/sprayer", data=form(office, **told)).status_code == 303
    (one,) = now(office).sprayers
    assert one.tank_l == pytest.approx(7.5708, abs=1e-4)  # two US gallons
    assert [(flow.on, flow.l_min) for flow in one.flows] == [("2026-06-08", 0.7)]
    shown = office.get("/van?edit=red").text
    assert faults_of_html(shown) == []
    assert 'value="2"' in shown
    office.post("/van/sprayer", data=form(office, **told | {"was": "red", "uses": "2", "flow": ""}))
    (one,) = now(office).sprayers
    assert (one.uses, len(one.flows)) == (2, 1)
    office.post("/van/remove", data=form(office, id="red"))
    assert now(office).sprayers == ()


def test_a_tip_gives_gallons_or_litres_as_the_firm_counts(office):
    told = {"id": "red", "kind": "cheap", "tank": "2 gal", "flow": "0.4"}
    office.post("/van/sprayer", data=form(office, **told))
    (one,) = now(office).sprayers
    assert one.flows[0].l_min == pytest.approx(1.5142, abs=1e-4)  # 0.4 US gallons
    text = office.get("/van?new=sprayer").text
    assert "Flow of its tip today, gal/min" in text
    assert "(cheap, 2.0 gal)" in text
    assert "0.40 gal/min (1.51 L/min)" in text
    office.post("/settings/new-houses", data={"wishes.units": "metric"})
    facts = two_rooms(wishes={"units": "metric"})
    office.put(facts, name="Two rooms")
    text = office.get("/van?new=sprayer").text
    assert "Flow of its tip today, L/min" in text
    assert "(cheap, 7.6 L)" in text
    assert "gal" not in text.partition("<main")[2]


def test_a_thing_is_counted_in_the_units_of_the_form(office):
    told = {"id": "w-1", "kind": "stain", "amount": "2", "unit": "gal", "of": "walnut", "lot": "7"}
    office.post("/van/stock", data=form(office, **told))
    office.post("/van/stock", data=form(office, id="t", kind="tape", amount="100", unit="ft"))
    by_id = {one.id: one for one in now(office).stock}
    assert by_id["w-1"].amount == pytest.approx(7.5708, abs=1e-4)
    assert (by_id["t"].amount, by_id["t"].unit) == (pytest.approx(30.48), "m")


def test_what_nobody_touched_keeps_its_last_digit(filled):
    before = {one.id: one.amount for one in now(filled).stock}
    text = filled.get("/van?edit=walnut-a").text
    fields = dict(re.findall(r'name="([a-z_]+)"[^>]*value="([^"]*)"', text))
    told = fields | {"kind": "stain", "unit": "gal", "seen": seen_of(now(filled))}
    assert filled.post("/van/stock", data=told).status_code == 303
    assert {one.id: one.amount for one in now(filled).stock} == before


def test_all_mistakes_come_at_once_what_was_typed_stays_and_nothing_is_changed(filled):
    before = now(filled)
    told = form(filled, id="", kind="golden", tank="-1", uses="x", flow="much")
    answer = filled.post("/van/sprayer", data=told)
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    for wrong in ("has to be told", "golden is no choice", "-1 is no number", "x is no number",
                  "much is no number"):  # fmt: skip
        assert wrong in answer.text
    twice = {"id": "blue", "kind": "cheap", "tank": "2"}
    assert "have this id" in filled.post("/van/sprayer", data=form(filled, **twice)).text
    assert now(filled) == before


def test_a_form_made_before_somebody_else_changed_the_van_is_not_taken(filled):
    old = form(filled, id="blue")
    filled.post("/van/remove", data=form(filled, id="green"))
    answer = filled.post("/van/remove", data=old)
    assert answer.status_code == 422
    assert "somebody else has changed the van" in answer.text
    assert [one.id for one in now(filled).sprayers] == ["blue", "old white"]


def test_two_who_change_one_sprayer_at_once_lose_nothing(filled):
    page = filled.get("/van?edit=blue").text
    names = ("seen", "was", "id", "tank", "tip", "uses", "seals_at", "unsound")
    was = {key: re.search(rf'name="{key}" [^>]*value="([^"]*)"|name="{key}" value="([^"]*)"', page)
           for key in names}  # fmt: skip
    was = {key: next(filter(None, one.groups()), "") for key, one in was.items()}
    was |= {"kind": now(filled).sprayers[0].kind, "flow": ""}
    assert filled.post("/van/sprayer", data=was | {"uses": "9", "tip": "T"}).status_code == 303
    late = filled.post("/van/sprayer", data=was | {"tip": "U", "unsound": "drips"})
    assert late.status_code == 422
    assert faults_of_html(late.text) == []
    assert "Tip: Somebody else put T here meanwhile" in late.text
    for name, stands in (("uses", "9"), ("tip", "U"), ("unsound", "drips")):
        assert re.search(rf'name="{name}" [^>]*value="{stands}"', late.text), name


def test_what_a_closed_job_used_is_asked_taken_off_once_and_as_the_command_does(
    filled, tmp_path, capsys
):
    coat = two_rooms_planned()["inputs"]["coats"][0]
    stain = coat["stain"]
    change = {"id": "s-1", "kind": "stain", "amount": "3", "unit": "gal", "of": stain, "lot": "7"}
    filled.post("/van/stock", data=form(filled, **change))
    for word, told in (
        ("day-started", {"coat": coat["id"], "sprayer": "blue"}),
        ("mixed", {"coat": coat["id"], "gal": "2", "lot": "7", "cut": "1:1"}),
        ("handed-over", {}),
    ):
        filled.post("/houses/two/log", data={"word": word} | told, files={"x": ("", b"")})
    path = tmp_path / "van.json"
    path.write_bytes(filled.get("/van/van.json").content)
    assert read_van(path) == now(filled)
    asked = filled.get("/van?after=two").text
    assert faults_of_html(asked) == []
    assert f"It used 1.00 gal (3.8 L) of {stain}, lot 7." in asked
    assert "It sprayed with blue" in asked
    assert now(filled) == read_van(path)  # asked first

    main(["van", str(path), "--after", "two", "--book", str(filled.book.where.folder), "--json"])
    due = json.loads(capsys.readouterr().out)["van"]
    told = form(filled, job="two")
    assert filled.post("/van/after", data=told).status_code == 303
    found = json.loads(filled.get("/van/van.json").text)
    assert {one["id"]: one["amount"] for one in found["stock"]} == {
        one["id"]: one["amount"] for one in due["stock"]
    }
    again = filled.post("/van/after", data=form(filled, job="two"))
    assert again.status_code == 422
    assert "has been taken off" in again.text


def test_things_that_no_entry_tells_are_taken_off_by_the_form(filled):
    filled.post("/houses/two/log", data={"word": "handed-over"}, files={"x": ("", b"")})
    filled.post("/van/after", data=form(filled, job="two", **{"used.tape-1": "40"}))
    assert {one.id: one.amount for one in now(filled).stock}["tape-1"] == 125


def test_a_file_that_is_no_van_is_refused(office):
    answer = office.post("/van/bring", files={"file": ("x.json", b'{"sprayers": 3}')})
    assert answer.status_code == 422
    assert office.post("/van/bring", files={"file": ("x", b"no")}).status_code == 422
    assert office.book.document("van", "firm") is None


def test_ages_are_told_and_what_is_past_its_day_is_named(filled):
    one = Stock("a", "stain", 1, "l", opened="2026-05-09", good_until="2026-06-07")
    assert age_told(one, date(2026, 6, 8)) == "opened 9 May 2026, 30 days ago"
    assert is_past(one, date(2026, 6, 8))
    assert not is_past(one, date(2026, 6, 7))
    text = filled.get("/van").text
    assert len(re.findall("Past its day", text)) == 1  # the cartridges


def test_in_spanish_the_page_is_sound_and_no_key_lacks(filled):
    for asked in ("", "?for=two", "?new=stock", "?edit=blue"):
        text = filled.get(f"/van{asked}", headers={"accept-language": "es"}).text
        assert faults_of_html(text) == []
        assert "La camioneta" in text
