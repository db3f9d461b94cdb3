"""A house: its floor at a moment, its tape, its sheet, its papers; changed facts beside."""

import re
import xml.etree.ElementTree as ET

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.web.pages.fact_form import FactForm, over_newest

MARKUP = '<script>alert("x")</script>&'


@pytest.fixture(scope="module")
def office(tmp_path_factory):
    """A planned house whose words are all markup."""
    found = Office(tmp_path_factory.mktemp("office"))
    found.enter()
    facts = two_rooms(name=MARKUP)
    for room in facts["floor"]["rooms"]:
        room["name"] = MARKUP[:24]
    found.put(facts, name=MARKUP)
    assert found.get("/houses/two").status_code == 200  # its plan is begun, and waited for
    yield found
    found.close()


@pytest.fixture
def own(tmp_path):
    """An office whose house may be changed."""
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms())
    found.get("/houses/two")
    yield found
    found.close()


def form(**more):
    return {
        "version": "1", "helper": "no", "sprayers": "1", "day": "2026-06-08", "start": "08:00",
    } | more  # fmt: skip


@pytest.mark.parametrize(
    "asked", ["", "?minute=3", "?at=08:05", "?scale=days&minute=2000", "?scale=coat", "?scale=x",
              "?at=noon", "?minute=-500", "?minute=99999"],
)  # fmt: skip
def test_the_page_is_sound_at_every_moment_and_all_its_words_are_escaped(office, asked):
    answer = office.get(f"/houses/two{asked}")
    assert answer.status_code == 200
    assert faults_of_html(answer.text) == []
    assert "<script>alert" not in answer.text
    assert "&lt;script&gt;" in answer.text


def test_landmarks_labels_and_the_tape_are_told_to_who_does_not_see(office):
    text = office.get("/houses/two?minute=3").text
    for told in ("<main", "<aside", "<header", 'role="group"', "data-told=", "<h1>",
                 'aria-live="polite"', "<desc"):  # fmt: skip
        assert told in text
    assert text.count("<label") >= text.count("<input") - text.count('type="hidden"')


def test_the_moments_differ_and_are_sound_svg(office):
    first, later = (
        office.get(f"/houses/two/moment.svg?minute={at}") for at in (1.5, 4)
    )  # fmt: skip
    assert first.headers["content-type"] == "image/svg+xml"
    roots = [ET.fromstring(one.text) for one in (first, later)]
    assert [root.get("data-minute") for root in roots] == ["1.5", "4"]
    paths = [[e.get("d") for e in root.iter("{http://www.w3.org/2000/svg}path")] for root in roots]
    assert paths[0] != paths[1]
    assert " style=" not in first.text


def test_a_moment_that_names_its_plan_may_be_kept_another_is_asked_again(office):
    plain = office.get("/houses/two/moment.svg?minute=2")
    assert plain.headers["cache-control"] == "private, no-cache"
    again = office.get(
        "/houses/two/moment.svg?minute=2", headers={"if-none-match": plain.headers["etag"]}
    )
    assert again.status_code == 304
    page = office.get("/houses/two").text
    word = page.split("moment.svg?plan=")[1].split("&")[0]
    named = office.get(f"/houses/two/moment.svg?plan={word}&minute=2")
    assert "immutable" in named.headers["cache-control"]


@pytest.mark.parametrize("minute", ["x", "nan", "inf", "1e9"])
def test_a_minute_that_is_none_is_refused_calmly(office, minute):
    answer = office.get(f"/houses/two?minute={minute}")
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []


@pytest.mark.parametrize(
    "path", ["/houses/none", "/houses/none/moment.svg", "/houses/none/state",
             "/houses/none/run-sheet.pdf", "/houses/two/plan.exe"],
)  # fmt: skip
def test_what_is_not_there_is_a_page_too(office, path):
    answer = office.get(path)
    assert answer.status_code == 404
    assert faults_of_html(answer.text) == []


def test_the_papers_are_made_on_demand(office):
    sheet = office.get("/houses/two/run-sheet.pdf")
    assert sheet.content.startswith(b"%PDF")
    assert sheet.headers["content-type"] == "application/pdf"
    for name in ("floor.svg", "moments.svg"):
        drawn = office.get(f"/houses/two/{name}")
        ET.fromstring(drawn.text)
        assert "sandbox" in drawn.headers["content-security-policy"]


def test_while_the_plan_is_made_the_page_says_so_and_looks_again(own):
    own.put(two_rooms(id="new"))
    text = own.get("/houses/new").text
    assert "being made" in text
    assert 'data-wait="/houses/new/state"' in text
    assert 'http-equiv="refresh"' in text
    state = own.get("/houses/new/state").json()
    assert (state["version"], state["fresh"], state["no"]) == (1, True, [])
    assert "data-wait" not in own.get("/houses/new").text


def test_a_changed_fact_is_a_new_version_and_its_gain_is_told(own):
    answer = own.post("/houses/two/facts", data=form(start="09:30"))
    assert answer.headers["location"] == "/houses/two"
    assert own.book.facts("two")["starts_at"].startswith("2026-06-08T09:30:00")
    assert own.book.facts("two", 1)["starts_at"].startswith("2026-06-08T08:00:00")
    text = own.get("/houses/two").text
    assert faults_of_html(text) == []
    assert "Against facts 1 (" in text
    assert "sprayed 90 min later" in text


def test_the_plan_before_is_shown_while_the_new_one_is_made(own):
    own.put(two_rooms(crew={"sprayers": 1, "helper": True, "second_adult": True}))
    text = own.get("/houses/two").text
    assert "The facts have changed" in text
    assert 'id="tape"' in text


def test_facts_that_cannot_be_planned_say_why_beside_the_plan_before(own):
    own.put(two_rooms(name="Changed"))
    no = {"facts": 2, "faults": [], "no": ["Because <it> is so."]}
    own.book.put_document("plan-of", "two", no)
    text = own.get("/houses/two").text
    assert faults_of_html(text) == []
    assert "No plan can be made of these facts" in text
    assert "Because &lt;it&gt; is so." in text
    assert "Below is the plan of the facts before" in text
    assert 'id="tape"' in text
    assert "data-wait" not in text


def test_a_house_that_never_had_a_plan_says_why_and_offers_its_facts(own):
    own.put(two_rooms(id="never"))
    no = {"facts": 1, "faults": [], "no": ["Because."]}
    own.book.put_document("plan-of", "never", no)
    text = own.get("/houses/never").text
    assert faults_of_html(text) == []
    assert "Because." in text
    assert 'name="helper"' in text
    assert own.get("/houses/never/moment.svg?minute=1").status_code == 409


@pytest.mark.parametrize("page", ["", "/papers", "/price", "/acid"])
def test_why_it_cannot_be_planned_is_said_in_spanish_and_rooms_keep_their_names(own, page):
    facts = two_rooms(id="never")
    facts["floor"]["rooms"][0]["name"] = "Walk-in closet"
    own.put(facts)
    why = "No way in to Walk-in closet: no opening joins it to a way out."
    own.book.put_document("plan-of", "never", {"facts": 1, "faults": [], "no": [why]})
    text = own.get(f"/houses/never{page}", headers={"accept-language": "es"}).text
    assert "No hay entrada a Walk-in closet: ninguna abertura" in text
    assert "No way in" not in text


def test_a_plan_with_a_no_says_it_first(own):
    document = own.book.document("plan", "two")
    document["fields"][0]["verdict"] = "cannot"
    own.put(two_rooms(id="no"))
    own.book.put_document("plan", "no", document)
    own.book.put_document("plan-of", "no", {"facts": 1, "faults": ["dead-edge: x"], "no": []})
    text = own.get("/houses/no").text
    assert faults_of_html(text) == []
    assert "NO: " in text.split('id="floor-here"')[0]
    assert "dead-edge: x" in text
    assert "All " not in text.split("<h2>Why</h2>")[1].split("</section>")[0]
    assert "cannot be done" in own.get("/").text


def test_the_same_facts_change_nothing(own):
    own.post("/houses/two/facts", data=form())
    assert len(own.book.versions("two")) == 1


def test_every_wrong_fact_is_told_at_once_and_none_is_kept(own):
    wrong = form(helper="maybe", sprayers="7", day="soon", band="nan")
    answer = own.post("/houses/two/facts", data=wrong)
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    box = answer.text.split('class="no"')[1].split("</ul>")[0]
    assert box.count("<li>") == 4
    assert len(own.book.versions("two")) == 1


def test_a_width_beyond_reason_is_refused_by_the_reader_of_jobs(own):
    answer = own.post("/houses/two/facts", data=form(band="900"))
    assert answer.status_code == 422
    assert "band" in answer.text
    assert 'value="900"' in answer.text


def test_facts_that_somebody_else_changed_meanwhile_are_not_written_over(own):
    own.post("/houses/two/facts", data=form(start="09:30"))
    answer = own.post("/houses/two/facts", data=form(start="07:00"))
    assert answer.status_code == 422
    assert "somebody else" in answer.text
    assert len(own.book.versions("two")) == 2


def test_two_who_try_other_facts_at_once_lose_nothing(own):
    own.post("/houses/two/facts", data=form(start="09:30", helper="yes"))
    answer = own.post("/houses/two/facts", data=form(start="07:00", sprayers="2"))
    assert answer.status_code == 422
    assert faults_of_html(answer.text) == []
    assert "Start: Somebody else put 09:30 here meanwhile" in answer.text
    assert 'name="version" value="2"' in answer.text
    assert 'name="helper" value="yes" checked' in answer.text  # theirs
    assert 'name="sprayers" value="2" checked' in answer.text  # mine
    assert 'name="start" value="07:00"' in answer.text


def test_a_band_typed_in_inches_is_told_in_the_centimetres_of_the_newest_facts():
    us = FactForm(1, "us", "no", "1", "2026-06-08", "08:00", "43.3")
    metric = FactForm(2, "metric", "no", "1", "2026-06-08", "08:00", "110")
    assert over_newest(us, metric, {"band": "40"})[0].band == "101.6"
    assert over_newest(us, metric, {"band": "43.3"})[0].band == "110"
    assert over_newest(us, metric, {"band": "wide"})[0].band == "wide"
    assert over_newest(metric, us, {"band": "101.6"})[0].band == "40"


def test_what_was_entered_on_the_slab_is_told_in_the_office(own):
    from farwall.facts.log import Entry

    at = "2026-06-08T08:03:00+00:00"
    entry = Entry("0190-a", "two", "mixed", at, about={"coat": "first", "litres": 20.0})
    own.book.keep([entry], received_at=at)
    text = own.get("/houses/two").text
    assert "As entered on the slab" in text
    assert "NOW 8:" in text


def test_metric_houses_are_told_in_metric(own):
    own.put(two_rooms(id="metric", wishes={"units": "metric"}))
    own.get("/houses/metric")
    text = own.get("/houses/metric").text
    assert "m²" in text
    assert "ft²" not in text.split('class="soft"')[1].split("</p>")[0]
    assert "Band width, cm" in text


def test_a_house_without_a_day_counts_days_from_its_first(own):
    facts = two_rooms(id="undated")
    del facts["starts_at"]
    own.put(facts)
    own.get("/houses/undated")
    text = own.get("/houses/undated?scale=days").text
    assert faults_of_html(text) == []
    assert "day 1" in text
    assert 'id="to-now"' not in text


def test_in_spanish_the_page_is_sound_and_its_drawings_are_kept_apart(own):
    spanish = {"accept-language": "es"}
    for asked in ("", "?minute=300", "?scale=days&minute=4000"):
        text = own.get(f"/houses/two{asked}", headers=spanish).text
        assert faults_of_html(text) == []
        assert "datos 1" in text
    last = max(one["end_min"] for one in own.book.document("plan", "two")["fields"])
    there = f"/houses/two/moment.svg?minute={last + 5}"
    assert "keep off" in own.get(there).text
    assert "no pise" in own.get(there, headers=spanish).text
    assert "keep off" in own.get(there).text


def test_the_tape_is_drawn_for_a_window_and_a_width_or_refused_calmly(own):
    drawn = own.get("/houses/two/tape.svg?from=0&to=30&minute=5&width=640")
    root = ET.fromstring(drawn.text)
    assert (root.get("data-from"), root.get("data-to"), root.get("data-width")) == (
        "0.0", "30.0", "640",
    )  # fmt: skip
    assert own.get("/houses/two/tape.svg?from=nan&to=1").status_code == 422
    assert own.get("/houses/two/tape.svg?width=9e9").status_code == 422
    turned = ET.fromstring(own.get("/houses/two/tape.svg?from=50&to=1&minute=5").text)
    assert float(turned.get("data-from")) < float(turned.get("data-to"))


def test_what_is_logged_is_what_the_floor_shows_and_a_page_that_watches_hears_of_it(own):
    from farwall.facts.log import Entry

    before = own.get("/houses/two/state").json()["day"]
    band = own.book.document("plan", "two")["fields"][0]["bands"][0]
    at = "2026-06-08T08:03:00+00:00"
    own.book.keep([Entry("0190-b", "two", "band-done", at, about={"band": band["id"]})],
                  received_at=at)  # fmt: skip
    text = own.get("/houses/two").text
    assert "floor as logged" in text
    assert own.get("/houses/two/state").json()["day"] != before


def test_each_figure_opens_its_source(office):
    text = office.get("/houses/two").text
    rests = text.split('class="rests"')[1].split("</section>")[0]
    assert rests.count("<details>") > 5
    assert "Plastic Shrinkage Cracking" in rests
    assert "Guess: ours, until somebody measures it." in rests


def test_a_house_is_called_by_its_name_on_its_own_page_too(tmp_path):
    office = Office(tmp_path)
    office.enter()
    office.put_planned("Two rooms")
    text = office.get("/houses/two").text
    assert "<h1>Two rooms</h1>" in text
    assert "<title>Two rooms</title>" in text or "<title>Two rooms" in text
    assert re.search(r"coverage, coat 1:\s\d+\sft²/gal", text)
    office.close()
