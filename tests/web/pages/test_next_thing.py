"""The next thing to do at a house: by its log, else the calendar, else its day."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from farwall.store.nouns import JobLine
from farwall.web.pages.next_thing import Known, next_told
from farwall.web.pages.where_stands import Progress, Standing

NOW = datetime(2026, 6, 8, 12, tzinfo=UTC)
LINE = JobLine("elm", 1, "Elm Row", 1, 0, NOW.isoformat(), closed=False)
AHEAD = Standing(LINE, "2026-06-11T08:00:00+00:00", 1, no=False, progress=None, plain="")
PLAN = {
    "inputs": {"coats": [{"id": "light"}, {"id": "dark"}]},
    "clocks": [
        {"coat": "light", "name": "dry to recoat", "begins_min": None, "low_min": 60.0,
         "likely_min": 120.0},
        {"coat": "dark", "name": "dry to neutralise", "begins_min": None, "low_min": 30.0,
         "likely_min": None},
        {"coat": "dark", "name": "dry-down before sealing", "begins_min": 900.0,
         "low_min": 1440.0, "likely_min": 2880.0},
    ],
}  # fmt: skip


def after(word, *, minutes=30, wait="", **about):
    last = Progress(word, NOW - timedelta(minutes=minutes), about, wait)
    return next_told(replace(AHEAD, progress=last), Known(NOW, PLAN))


def test_a_house_ahead_says_its_first_coat_and_when():
    assert next_told(AHEAD, Known(NOW)) == "coat 1, Thu 11 Jun, 8:00 am."


def test_the_calendar_knows_what_comes_before_the_coat():
    days = {"steps": [
        {"id": "clean", "starts_at": "2026-06-07T07:30:00+00:00"},
        {"id": "mask", "starts_at": "2026-06-09T07:30:00+00:00"},
    ]}  # fmt: skip
    assert next_told(AHEAD, Known(NOW, None, days)) == "mask, last drop map, Tue 9 Jun, 7:30 am."


@pytest.mark.parametrize(
    ("change", "told"),
    [({"starts_at": ""}, "choose its day."), ({"planned": 0}, "open it, and its plan is made."),
     ({"no": True}, "it cannot be planned"), ({"line": replace(LINE, closed=True)}, "handed over."),
     ({"starts_at": "2026-06-01T08:00:00+00:00"}, "Mon 1 Jun, is past and nothing was entered")],
)  # fmt: skip
def test_what_stands_in_the_way_is_said(change, told):
    assert told in next_told(replace(AHEAD, **change), Known(NOW))


def test_by_hand_a_coat_that_was_done_at_half_past_eleven_dries_till_half_past_one():
    """11:30 and 60 min is 12:30, and 120 min is 1:30."""
    assert after("coat-done", coat="light") == (
        "it dries; coat 2 from 12:30 pm, most likely 1:30 pm."
    )


def test_after_the_last_coat_comes_neutralising_and_a_wait_without_a_likely_end_tells_none():
    assert after("coat-done", coat="dark") == "it dries; then neutralise."


def test_the_dry_down_runs_on_into_other_days():
    told = after("rinsed", minutes=0)
    assert "sealer, coat 1 from Tue 9 Jun, 12:00 pm, most likely Wed 10 Jun, 12:00 pm." in told


def test_what_was_looked_at_says_so():
    assert after("still-damp", wait="coat-done", coat="light").startswith("still damp 11:30 am;")
    assert after("dry", wait="coat-done", coat="light") == "it is dry: coat 2 now."
    assert after("dry", wait="rinsed") == "it is dry: sealer, coat 1 now."
    assert after("neutralised") == "rinse until the white rag stays clean."
    assert after("coat-judged", next="another") == "another coat, as judged."


def test_in_work_the_last_entry_is_named():
    assert after("band-done") == "in work; last entered band done, 11:30 am."
