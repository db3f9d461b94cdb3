"""The tape: where a minute lies on it, which waits it shows, how it is ruled at each scale."""

import xml.etree.ElementTree as ET

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.job.plan_job import plan_job
from farwall.papers.wall_clock import plan_clock
from farwall.web.pages.tape import SCALES, tape, waits_of

WIDTH = 860.0


@pytest.fixture(scope="module")
def plan():
    return plan_job(job(TWO_ROOMS, id="two", starts_at="2026-06-08T08:00:00+00:00"))


def drawn(plan, scale, minute=2.0, width=WIDTH, link=""):
    clock = plan_clock(plan, "us")
    found = tape(plan, clock, scale=scale, minute=minute, width=width, link=link)
    return found, ET.fromstring(found.svg)


def plumb_x(root):
    group = next(e for e in root.iter() if e.get("class") == "plumb")
    return float(group.get("transform").removeprefix("translate(").split()[0])


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("width", [WIDTH, 358.0])
def test_the_plumb_line_stands_at_its_minutes_share_of_the_tape(plan, scale, width):
    found, root = drawn(plan, scale, minute=3.0, width=width)
    share = (3.0 - found.from_min) / (found.to_min - found.from_min)
    assert plumb_x(root) == pytest.approx(share * width, abs=0.01)  # written to two places


@pytest.mark.parametrize("scale", SCALES)
def test_a_moment_beyond_the_tape_stands_at_its_end(plan, scale):
    _, root = drawn(plan, scale, minute=1e6)
    assert plumb_x(root) == WIDTH


def test_each_scale_holds_more_time_than_the_one_before(plan):
    spans = []
    for scale in SCALES:
        found, _ = drawn(plan, scale)
        spans.append(found.to_min - found.from_min)
        assert found.from_min <= min(field.start_min for field in plan.fields)
        assert found.to_min >= max(field.end_min for field in plan.fields)
    assert spans == sorted(spans)
    assert len(set(spans)) == len(spans)


def test_the_days_show_every_wait_to_come_and_the_day_those_after_a_coat(plan):
    day, days = list(waits_of(plan, chain=False)), list(waits_of(plan, chain=True))
    assert set(day) < set(days)
    assert all(wait.begins_min is None for _, wait in day)
    last = max(field.end_min for field in plan.fields)
    assert all(begins >= last - 1 for begins, wait in days if wait.begins_min is not None)
    assert all(wait.name != "open time" for _, wait in days)


@pytest.mark.parametrize("scale", SCALES)
def test_no_word_runs_over_the_ends_of_the_tape(plan, scale):
    for width in (WIDTH, 358.0):
        _, root = drawn(plan, scale, width=width)
        for text in root.iter("{http://www.w3.org/2000/svg}text"):
            assert 0 <= float(text.get("x")) < width


def test_a_field_leads_to_its_own_moment_without_any_script(plan):
    _, root = drawn(plan, "day", link="/houses/two?scale=day&minute=")
    links = [e.get("href") for e in root.iter("{http://www.w3.org/2000/svg}a")]
    minutes = [float(one.rpartition("=")[2]) for one in links]
    assert len(minutes) == len(plan.fields)
    for field, minute in zip(sorted(plan.fields, key=lambda f: f.start_min), minutes, strict=True):
        assert field.start_min <= minute + 0.05
        assert minute - 0.05 <= field.end_min
