"""What two looks into tub and tank tell of the slab, by hand on two fields of two bands each."""

from dataclasses import astuple
from types import SimpleNamespace

import pytest
from tests.job.live.test_now import PLAN as DAY
from tests.job.live.test_now import morning

from farwall.job.live.thirst import READ_L, _spans, after_look, belief_of, seen_factor
from farwall.job.story import story
from farwall.job.story.noun import CoatStory, FieldStory, Level, Sprayed
from farwall.mix.thirst import Thirst

LITRES = {"c.1.1": 2.0, "c.1.2": 3.0, "c.2.1": 4.0, "c.2.2": 5.0}
PLAN = SimpleNamespace(
    fields=[
        SimpleNamespace(
            id=name, bands=[SimpleNamespace(id=f"{name}.{n}", litres=LITRES[f"{name}.{n}"])
                            for n in (1, 2)]
        )
        for name in ("c.1", "c.2")
    ]
)  # fmt: skip


def coat(done, *levels, mixed_l=20.0):
    bands = tuple(Sprayed(name, 10.0 * n, 10.0 * n + 8, True) for n, name in enumerate(done))
    field = FieldStory("c.1", "c", 0.0, None, bands, 0.0, 0.0)
    return CoatStory("c", 0.0, None, (field,), mixed_l, None, None, None, levels)


def level(bands, hand_l, *, mixed_l=20.0, planned_l=0.0):
    return Level(0.0, mixed_l, hand_l, 0.0, bands, planned_l, 0.0)


def spans(*levels, done=("c.1.1", "c.1.2", "c.2.1"), **told):
    return [astuple(one) for one in _spans(PLAN, coat(done, *levels, **told))]


def test_from_stop_line_to_stop_line_and_into_the_open_field_by_hand():
    """By hand: 20 L mixed, 14 left at the stop line: 6 used of 5; then 5 used of 4."""
    assert spans(level(2, 14.0), level(3, 9.0)) == [(5.0, 6.0, (5.0,)), (4.0, 5.0, (4.0,))]


def test_a_look_inside_a_field_gives_way_to_the_one_at_its_stop_line():
    assert spans(level(1, 17.0), level(2, 14.0)) == [(5.0, 6.0, (5.0,))]


def test_a_span_over_two_fields_has_a_part_of_each():
    assert spans(level(4, 9.0), done=tuple(LITRES)) == [(14.0, 11.0, (5.0, 9.0))]


def test_what_was_mixed_between_two_looks_was_used_too():
    assert spans(level(2, 14.0), level(3, 12.0, mixed_l=24.0))[1] == (4.0, 6.0, (4.0,))


def test_of_several_looks_at_the_same_floor_the_last_counts():
    assert spans(level(2, 1.0), level(2, 14.0)) == [(5.0, 6.0, (5.0,))]


def test_a_look_by_which_nothing_was_used_or_of_bands_struck_since_tells_nothing():
    assert spans(level(2, 20.0), level(3, 9.0)) == [(9.0, 11.0, (5.0, 4.0))]
    assert spans(level(2, 14.0), level(4, 1.0)) == [(5.0, 6.0, (5.0,))]


def test_where_nothing_was_entered_as_mixed_the_first_look_is_the_beginning():
    assert spans(level(2, 14.0), level(3, 9.0), mixed_l=None) == [(4.0, 5.0, (4.0,))]


def test_a_span_over_two_fields_weighs_the_noise_of_each_by_hand():
    """By hand: 3 of 4 L and 1 of 4 L: (9 + 1) / 16 of a field's own variance, 0.025 of 0.04, and
    the scale's at both ends: 2 x (0.15 / 4)², 0.0028. The weight is 0.02 of 0.0478, 0.4183; the
    logarithm of 1.5 is 0.40547."""
    assert READ_L == 0.15
    after = after_look(Thirst(0.0, 0.02, 0.04), parts_l=(3.0, 1.0), used_l=6.0)
    assert after.mean == pytest.approx(0.16961, abs=1e-5)
    assert after.variance == pytest.approx(0.011634, abs=1e-6)
    assert after.field_variance == 0.04


def test_used_over_planned_by_hand():
    assert seen_factor(coat((), level(2, 14.0, planned_l=5.0))) == 1.2
    assert seen_factor(coat((), level(2, 19.4, planned_l=0.5))) == pytest.approx(1.2)
    assert seen_factor(coat((), level(0, 20.0))) is None
    assert seen_factor(coat(())) is None
    assert seen_factor(None) is None


def test_the_belief_at_a_stop_line_is_that_of_the_looks_until_then():
    """Four fields told; after two of them the belief is that of a day on which two were told."""
    four, two = (
        story(DAY, morning(1.2, fields=count).kept).coat("first") for count in (4, 2)
    )  # fmt: skip
    bands = len(two.done)
    early = belief_of(DAY, "first", four, bands=bands)
    assert early == belief_of(DAY, "first", two)
    assert early.variance > belief_of(DAY, "first", four).variance
    assert belief_of(DAY, "first", four, bands=0) == belief_of(DAY, "first", None)
