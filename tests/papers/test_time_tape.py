"""The tape of time: everything on it, nothing over each other."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from tests.papers.invented_plan import big_house, long_names, many_bands, small_house
from tests.papers.pictures import SVG, outside, overlaps, parsed, words

from farwall.facts.plan import Plan
from farwall.papers.lettering import PAPER_LETTERING
from farwall.papers.time_tape import time_tape_svg


def shifted(plan: Plan, minutes: float) -> Plan:
    """The second coat so many minutes later."""
    first = plan.fields[0].coat
    return replace(
        plan,
        fields=tuple(
            f
            if f.coat == first
            else replace(f, start_min=f.start_min + minutes, end_min=f.end_min + minutes)
            for f in plan.fields
        ),
    )


@pytest.mark.parametrize("house", [small_house, long_names, many_bands, big_house])
@pytest.mark.parametrize("later", [0.0, 200.0, 1300.0])
def test_no_word_lies_on_another_or_sticks_out(house: Callable[[], Plan], later: float):
    svg = time_tape_svg(shifted(house(), later), width=532, lettering=PAPER_LETTERING)
    assert overlaps(words(svg)) == []
    assert outside(words(svg), svg) == []


def bars(svg: str) -> list[tuple[float, float, str | None]]:
    """Left end, width and dash of each bar, in the units of the drawing."""
    rects = [node for node in parsed(svg).iter(f"{SVG}rect") if node.get("height") == "18"]
    return [
        (float(r.get("x", "0")), float(r.get("width", "0")), r.get("stroke-dasharray"))
        for r in rects
    ]


def test_bars_are_as_long_as_their_fields_and_later_coats_are_dashed():
    plan = small_house()
    drawn = bars(time_tape_svg(plan, width=532, lettering=PAPER_LETTERING))
    assert [dash for _, _, dash in drawn] == [None] * 5 + ["4 3"] * 5
    first = plan.fields[0]
    longest = plan.fields[4]
    a_minute = drawn[4][1] / (longest.end_min - longest.start_min)
    for field, (left, wide, _) in zip(plan.fields, drawn, strict=True):
        assert wide == pytest.approx((field.end_min - field.start_min) * a_minute, abs=0.1)
        since = (field.start_min - first.start_min) * a_minute
        assert left - drawn[0][0] == pytest.approx(since, abs=0.1)


def test_the_wedge_is_thickest_where_drying_is_likeliest():
    """Low 75, likely 120, high 205 min after the first coat: by proportion of the wedge's path."""
    plan = small_house()
    svg = time_tape_svg(plan, width=532, lettering=PAPER_LETTERING)
    path = next(n.get("d", "") for n in parsed(svg).iter(f"{SVG}path") if n.get("fill-opacity"))
    low, likely, high = (float(p.split(",")[0]) for p in path[1:-1].split("L")[:3])
    assert (likely - low) / (high - low) == pytest.approx((120 - 75) / (205 - 75), abs=0.01)


def test_a_coat_on_the_next_day_gets_its_own_tape():
    plan = small_house()
    one = float(parsed(time_tape_svg(plan)).get("height", "0"))
    two = float(parsed(time_tape_svg(shifted(plan, 1300))).get("height", "0"))
    assert two == pytest.approx(2 * one, abs=8)


def test_the_first_hour_of_a_tape_on_another_day_names_that_day():
    told = [word.text for word in words(time_tape_svg(shifted(small_house(), 1300)))]
    assert "8 am" in told
    assert "Fri 9 am" in told


def test_a_floor_that_does_not_dry_says_so():
    plan = small_house()
    never = replace(plan.clocks[0], likely_min=None, high_min=None)
    svg = time_tape_svg(replace(plan, clocks=(never,)))
    assert any("not in these conditions" in word.text for word in words(svg))
