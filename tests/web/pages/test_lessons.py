"""The lessons on a page: `farwall learn` with its figures, looked into, switched, forgotten."""

from __future__ import annotations

import html
import json
import re
import xml.etree.ElementTree as ET

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms_planned

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.cli.learn_words import told_lesson, told_lessons
from farwall.cli.main import main
from farwall.facts.plain import plain
from farwall.learn.lessons import lessons_of
from farwall.web.firm import keep_lessons
from farwall.web.firm import lessons_of as kept_lessons
from farwall.web.pages.lesson_picture import narrowing
from farwall.web.pages.lessons import STEPS
from farwall.web.teaching import taught
from farwall.web.words import LANGUAGE, words

JOBS = [one.job for one in closed_jobs(firm(3), count=5)]
LESSONS = lessons_of(JOBS)
TAUGHT = taught(json.loads(json.dumps([plain(one, omit_empty=True) for one in JOBS])), {})
SVG = "{http://www.w3.org/2000/svg}"


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    yield found
    found.close()


@pytest.fixture
def learned(office):
    keep_lessons(office.book, LESSONS)
    office.book.put_document(STEPS, "firm", {"steps": TAUGHT["steps"], "odd": []})
    return office


def test_a_book_that_taught_nothing_says_so(office):
    text = office.get("/lessons").text
    assert faults_of_html(text) == []
    assert "Nothing has been learned yet" in text
    assert "Learn from all of them" not in text
    assert "Hand a house over in its log" in text


def test_every_lesson_stands_there_with_the_figures_of_the_command(learned):
    text = html.unescape(learned.get("/lessons").text)
    assert faults_of_html(text) == []
    rows = told_lessons(LESSONS).splitlines()[-len(LESSONS.lessons) :]
    sentences = re.findall(r"<strong>.*?</strong>: (.*?)</p>", text)
    assert len(sentences) == len(rows)
    for row in rows:
        figures = r"(\S+) +(\S+) +(\S+)  +\S+(?: to \S+)? +\d+  ([+-][\d.]+)"
        low, likely, high, moved = re.search(figures, row).groups()
        assert any(
            one.startswith(f"{likely} ") and f" {low} to {high};" in one and f" {moved} " in one
            for one in sentences
        ), row


def test_a_lesson_is_looked_into_with_the_jobs_and_shares_of_the_command(learned):
    for name in ("spray rate", "coverage of coat 1", "call-backs"):
        lesson = LESSONS.named(name)
        text = html.unescape(learned.get("/lessons/look", params={"name": name}).text)
        assert faults_of_html(text) == []
        rows = re.findall(r"^  (\S.*?)\s+([\d.]+) %  (.+)$", told_lesson(lesson), re.MULTILINE)
        assert len(rows) == len(lesson.shares)
        for job, weighs, by in rows:
            assert re.search(
                rf"<td>{re.escape(job.strip())}</td><td class=\"number\">{weighs} %</td>"
                rf"<td class=\"number\">{re.escape(by)}</td>", text,
            ), job  # fmt: skip
        assert text.count('class="lesson-drawing"') == 2


def test_a_lesson_that_is_not_there_is_a_calm_page(learned):
    assert learned.get("/lessons/look?name=x").status_code == 404
    assert learned.post("/lessons/switch", data={"name": "x", "on": "no"}).status_code == 422


def test_switched_off_it_is_told_and_not_put_to_work_and_switched_on_again(learned):
    learned.post("/lessons/switch", data={"name": "spray rate", "on": "no"})
    kept = kept_lessons(learned.book)
    assert kept.find("spray rate") is None
    assert kept.named("spray rate").likely == LESSONS.named("spray rate").likely
    assert "Switched off: told" in learned.get("/lessons").text
    learned.post("/lessons/switch", data={"name": "spray rate", "on": "yes"})
    assert kept_lessons(learned.book) == LESSONS


def closed_house(office):
    office.put_planned("Two rooms")
    office.app.state.live.replanning.tapped = lambda job: None
    coat = two_rooms_planned()["inputs"]["coats"][0]["id"]
    for word, told in (
        ("mixed", {"coat": coat, "gal": "3"}),
        ("filled", {"tank_gal": "1.5", "tub_gal": "1.5"}),
        ("coat-done", {"coat": coat, "tank_gal": "0.5", "tub_gal": "1"}),
        ("hours", {"task": "coat", "hours": "2.5"}),
        ("handed-over", {}),
    ):
        answer = office.post("/houses/two/log", data={"word": word} | told, files={"x": ("", b"")})
        assert answer.status_code == 303, answer.text


def test_what_the_book_teaches_is_what_the_command_learns_from_it(office, capsys):
    closed_house(office)
    office.post("/lessons/learn")
    main(["learn", "--book", str(office.book.where.folder), "--json"])
    due = json.loads(capsys.readouterr().out)
    assert office.get("/lessons/lessons.json").json() == due
    assert due["jobs"] == 1
    text = office.get("/lessons").text
    assert "Learned from 1 closed job" in text
    assert "hours to coat" in text


def test_a_closed_house_that_is_set_aside_teaches_nothing(office):
    closed_house(office)
    office.post("/houses/two/aside", data={"do": "aside"})
    office.post("/lessons/learn")
    assert kept_lessons(office.book).jobs == 0
    office.post("/houses/two/aside", data={"do": "back"})
    office.post("/lessons/learn")
    assert kept_lessons(office.book).jobs == 1


def test_forgetting_and_leaving_out_are_learned_again_and_kept(office):
    closed_house(office)
    office.post("/lessons/switch", data={"name": "x"})
    office.post("/lessons/learn", data={"forgetting": "yes", "jobs": "8", "months": ""})
    office.post("/lessons/switch", data={"name": "hours to coat", "on": "no"})
    office.post("/lessons/learn")
    kept = kept_lessons(office.book)
    assert (kept.forget_jobs, kept.forget_months) == (8, None)
    assert not kept.named("hours to coat").on
    office.post("/lessons/learn", data={"without": "two"})
    assert kept_lessons(office.book).jobs == 0
    assert "Left out" in office.get("/lessons").text
    office.post("/lessons/learn", data={"without": "two"})
    assert kept_lessons(office.book).jobs == 1
    wrong = office.post("/lessons/learn", data={"forgetting": "yes", "jobs": "-1"})
    assert wrong.status_code == 422
    assert "no number of jobs" in wrong.text


@pytest.mark.parametrize("width", [860.0, 358.0])
def test_each_wedge_is_thickest_at_its_likeliest_and_lies_on_the_tape(width):
    one = LESSONS.named("spray rate")
    root = ET.fromstring(narrowing(one, TAUGHT["steps"], "us", width))
    wedges = [e.get("d") for e in root.iter(f"{SVG}path") if e.get("fill-opacity")]
    assert len(wedges) == len(TAUGHT["steps"])
    for d in wedges:
        (x0, _), (x1, top), (x2, _), (x3, low) = [
            tuple(map(float, pair.split(","))) for pair in re.findall(r"[\d.]+,[\d.]+", d)
        ]
        assert x0 < x1 < x2 <= width
        assert x1 == x3
        assert low - top == pytest.approx(18)
    for text in root.iter(f"{SVG}text"):
        assert 0 <= float(text.get("x")) < width


def test_without_steps_nothing_is_drawn_and_the_page_says_how_to_see_it(office):
    keep_lessons(office.book, LESSONS)
    assert narrowing(LESSONS.lessons[0], [], "us", 860.0) == ""
    text = office.get("/lessons/look", params={"name": "spray rate"}).text
    assert "Learn again to see" in text


def test_in_spanish_the_pages_are_sound_and_no_key_lacks(learned):
    for path in ("/lessons", "/lessons/look?name=spray%20rate"):
        text = learned.get(path, headers={"accept-language": "es"}).text
        assert faults_of_html(text) == []
        assert "ritmo de rociado" in text
    token = LANGUAGE.set("es")
    own = [key for key in words("en") if key.startswith(("lessons-", "van-", "days-", "firm-"))]
    LANGUAGE.reset(token)
    assert [key for key in own if key not in words("es")] == []
