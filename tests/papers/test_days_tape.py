"""The tape of days: words with room, nothing outside, colour never alone."""

from __future__ import annotations

import re

import pytest
from tests.days.shop import shop, typical
from tests.papers.pictures import parsed, words

from farwall.days.calendar import calendar
from farwall.days.document import document
from farwall.papers.days_tape import days_tape_svg
from farwall.papers.ink import DANGER, INK, LINE, RAMP, SOFT, WHITE
from farwall.papers.lettering import PAPER_LETTERING

ALONE = document(calendar(typical()))
MANY = document(calendar(shop(4, crews=2)))


@pytest.mark.parametrize("told", [ALONE, MANY], ids=["one house", "many"])
def test_words_stay_inside_and_do_not_run_into_each_other(told):
    svg = days_tape_svg(told)
    width = float(parsed(svg).get("width"))
    found = words(svg)
    assert len(found) > 10
    for one in found:
        assert one.box[0] >= -0.1
        assert one.box[2] <= width + 0.1
    for n, one in enumerate(found):
        for other in found[n + 1 :]:
            apart = (
                one.box[2] <= other.box[0] + 0.5 or other.box[2] <= one.box[0] + 0.5
                or one.box[3] <= other.box[1] + 1.5 or other.box[3] <= one.box[1] + 1.5
            )  # fmt: skip
            assert apart, (one, other)


def test_what_is_planned_is_dashed_and_what_begins_is_a_bar():
    svg = days_tape_svg(ALONE)
    bars = re.findall(r'<rect [^>]*height="20"[^>]*>', svg)
    dashed = [one for one in bars if "stroke-dasharray" in one]
    assert len(bars) - len(dashed) == 1
    assert all(RAMP[1] not in one for one in dashed)


def test_the_days_of_the_week_stand_on_the_tape_and_the_steps_under_them():
    told = " ".join(one.text for one in words(days_tape_svg(ALONE)))
    for word in ("Mon 1 Jan", "clean", "mask, coat 1, coat 2", "rinse", "handed over", "locked"):
        assert word in told


def test_many_houses_have_numbers_that_are_told_below():
    told = [one.text for one in words(days_tape_svg(MANY))]
    assert "crew 1" in told
    assert any("House 1" in one for one in told)


def test_colours_are_those_of_the_look():
    for told in (ALONE, MANY):
        found = set(re.findall(r"#[0-9a-f]{6}", days_tape_svg(told)))
        assert found <= {INK, LINE, SOFT, WHITE, RAMP[1], DANGER}
        assert DANGER not in found


def test_one_house_of_many_can_be_drawn_alone():
    svg = days_tape_svg(MANY, house="house-2", lettering=PAPER_LETTERING, width=520)
    assert "House 2" in parsed(svg).find("{http://www.w3.org/2000/svg}desc").text
    assert "House 1" not in svg


def test_the_same_calendar_gives_the_same_tape():
    assert days_tape_svg(MANY) == days_tape_svg(MANY)
