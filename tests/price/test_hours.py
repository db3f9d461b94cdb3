"""Hours go with floor and wall, and what jobs taught wins over practice."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.bench.learn_firms import closed_jobs, firm
from farwall.evidence import Rank
from farwall.learn.lessons import lessons_of
from farwall.learn.told import typical_share
from farwall.phrasebook import said_whole, speaking
from farwall.price.hours import WORDS, Sizes, hours_of_sizes, wide

LESSONS = lessons_of([one.job for one in closed_jobs(firm(7), count=25)])
SIZES = Sizes(area_m2=110, wall_m=180, coat_min=(40.0, 40.0))


def test_a_metric_job_has_the_same_hours_told_in_metres():
    """By hand: 80 to 250 ft² an hour, usually 150, are 7.4 to 23 m², usually 14; 40 to 100 ft of
    wall, usually 65, are 12 to 30 m, usually 20."""
    us, metric = by_id(SIZES), by_id(replace(SIZES, us=False))
    for task, one in metric.items():
        assert (one.low_h, one.likely_h, one.high_h) == (
            us[task].low_h, us[task].likely_h, us[task].high_h,
        )  # fmt: skip
        assert "ft" not in one.rule
    assert metric["clean"].rule == "110 m² of floor at 7.4 to 23 an hour, usually 14"
    assert metric["mask"].rule == "180 m of wall at 12 to 30 an hour, usually 20"
    assert metric["judge"].rule.endswith("of a floor of 139 m²")
    assert us["clean"].rule == "1,184 ft² of floor at 80 to 250 an hour, usually 150"
    with speaking("es"):
        assert all(said_whole(one.rule) for one in (*us.values(), *metric.values()))


def by_id(sizes, lessons=None):
    return {one.id: one for one in hours_of_sizes(sizes, lessons)}


def test_every_task_has_words_of_its_own():
    assert len(set(WORDS.values())) == len(WORDS)
    assert set(by_id(SIZES)) <= set(WORDS)


@given(
    st.floats(1, 1000), st.floats(0, 2000), st.lists(st.floats(0, 300), max_size=4),
    st.integers(0, 4), st.integers(0, 4),
)  # fmt: skip
def test_every_range_stands_in_order_and_holds_something(area, wall, coats, sealer, finish):
    sizes = Sizes(area, wall, tuple(coats), sealer_coats=sealer, finish_coats=finish)
    for one in hours_of_sizes(sizes):
        assert 0 <= one.low_h <= one.likely_h <= one.high_h
        assert one.high_h > 0
        assert one.rule
        assert one.source


@given(st.floats(5, 500), st.floats(5, 500))
def test_more_floor_and_more_wall_never_take_less(area, more):
    small = by_id(Sizes(area, area, (30.0,)))
    large = by_id(Sizes(area + more, area + more, (30.0,)))
    assert all(large[id_].likely_h >= one.likely_h for id_, one in small.items())


def test_no_stain_no_washing():
    tasks = by_id(Sizes(100, 100, ()))
    assert not {"mix", "coat", "judge", "wash"} & set(tasks)
    assert "seal" in tasks


def test_lessons_win_over_practice_and_say_so():
    found, lesson = by_id(SIZES, LESSONS)["mask"], LESSONS.find("hours to mask")
    assert found.likely_h == pytest.approx(lesson.likely * typical_share(110))
    assert found.rank == Rank.LEARNED.value
    assert "25 jobs" in found.source
    assert found.likely_h != by_id(SIZES)["mask"].likely_h
    assert by_id(SIZES, LESSONS)["seal"].rank == Rank.PRACTICE.value


def test_rinsing_alone_was_taught_and_neutralising_is_added_by_practice():
    rinse = LESSONS.find("hours to rinse")
    found = by_id(SIZES, LESSONS)["wash"]
    assert found.likely_h == pytest.approx((rinse.likely + 5.6) * typical_share(110))


def test_four_in_five_is_widened_to_nine_in_ten():
    lesson = LESSONS.find("hours to mask")
    low, likely, high = wide(lesson)
    assert low < lesson.low < likely < lesson.high < high
    assert (high / likely) ** (1.2815515655 / 1.6448536270) == pytest.approx(
        lesson.high / lesson.likely
    )


def test_the_wash_day_wins_over_the_pace_and_loses_to_lessons():
    sizes = Sizes(110, 180, (40.0,), wash_h=(5.0, 6.0, 7.0))
    assert by_id(sizes)["wash"].likely_h == 6.0
    assert by_id(sizes, LESSONS)["wash"].likely_h != 6.0
