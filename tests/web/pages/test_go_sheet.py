"""Go or no-go as sentences: under their headings, with rank, and what is in order folded away."""

from dataclasses import replace

from tests.web.pages.office import two_rooms

from farwall.facts.go import SlabTest
from farwall.job.go import go_or_no_go
from farwall.readers.job_json import job_from
from farwall.web.pages.go_sheet import go_sheet
from farwall.web.words import LANGUAGE


def sheet(**survey):
    job = job_from(two_rooms(survey=survey), "two")
    return go_sheet(go_or_no_go(job), job)


def test_a_no_stands_first_with_what_would_change_it():
    found = sheet(slab_age_days=10)
    assert (found.word, found.verdict) == ("no", "No.")
    first = found.parts[0]
    assert first.key == "go-part-no"
    assert "younger than 21 days" in first.lines[0].reason
    assert first.lines[0].change.startswith("Wait")
    assert "common practice" in first.lines[0].source


def test_what_is_in_order_is_folded_and_last():
    found = sheet(slab_age_days=60)
    assert [one.folded for one in found.parts] == [False] * (len(found.parts) - 1) + [True]


def test_all_findings_are_there_once():
    job = job_from(two_rooms(), "two")
    go = go_or_no_go(job)
    assert sum(len(one.lines) for one in go_sheet(go, job).parts) == len(go.findings)
    assert len(go_sheet(go, job).tests) == len(go.tests)


def test_reasons_are_said_in_spanish_where_the_phrasebook_has_them():
    token = LANGUAGE.set("es")
    try:
        found = sheet(slab_age_days=10)
    finally:
        LANGUAGE.reset(token)
    assert "días" in found.parts[0].lines[0].reason


def test_rooms_to_test_first_are_told_to_be_first():
    job = job_from(two_rooms(), "two")
    one = SlabTest("F1869", 1, (job.floor.rooms[0].id,), "Weigh it.", "published", "astm-f1869")
    go = replace(go_or_no_go(job), tests=(one,))
    (line,) = go_sheet(go, job).tests
    assert line.told.endswith(f"Weigh it. First in {job.floor.rooms[0].label}.")
