"""The next coat: what may never happen, whatever was seen."""

import math

import numpy as np
import pytest

from farwall.bench.colour import WAYS, score_foreseen, score_jobs
from farwall.colour.belief import Seen, believe
from farwall.colour.dose import Laid
from farwall.colour.foresight import darkest, foreseen
from farwall.colour.next_coat import (
    MOST_TOO_DARK,
    WORST_SHARE,
    Outlook,
    Way,
    chosen_of,
    next_coat,
    outlooks,
)

BARE, ONE, STRONG = (56.0, 0.5, 1.5), (46.0, 5.0, 10.0), (40.0, 7.0, 13.0)
SEEN = (
    Seen((), BARE, "samples", "a"),
    Seen((Laid(0, 0.05),), (50.5, 3.0, 6.5), "samples", "a"),
    Seen((Laid(0, 0.1),), ONE, "samples", "a"),
    Seen((Laid(0, 0.1), Laid(0, 0.1)), STRONG, "samples", "a"),
    Seen((), (56.5, 0.4, 1.4), "floor", "b", 6, 1.2),
)


@pytest.fixture(scope="module")
def belief():
    return believe(SEEN, stains=1)


def answer(belief, sample=(42.0, 6.3, 12.2), so_far=(), **more):
    return next_coat(belief, so_far, WAYS, sample_lab=sample, dark_range=3.0, **more)


def test_the_weights_are_a_whole_and_the_samples_are_met(belief):
    assert sum(belief.weights) == pytest.approx(1)
    looks = foreseen(belief, [(), (Laid(0, 0.1),)]).mean(axis=0)
    assert looks[0] == pytest.approx(np.array(BARE), abs=1.5)
    assert looks[1] == pytest.approx(np.array(ONE), abs=2.0)


def test_more_stain_never_looks_lighter(belief):
    doses = [(Laid(0, one),) for one in np.linspace(0.01, 0.6, 12)]
    assert (np.diff(foreseen(belief, doses)[..., 0], axis=1) < 0).all()


def test_the_darkest_patch_is_darker_than_the_mean_and_a_smaller_share_darker_still(belief):
    coats = [(Laid(0, 0.1),)]
    mean = foreseen(belief, coats)[:, 0, 0]
    wide, narrow = (darkest(belief, coats, share=one)[:, 0] for one in (0.2, 0.05))
    assert (wide < mean).all()
    assert (narrow < wide).all()


def test_what_is_laid_keeps_the_bound_and_nothing_weaker_closes_the_gap(belief):
    found = answer(belief)
    assert found.verdict == "lay"
    assert found.chosen.too_dark <= MOST_TOO_DARK
    weaker = [
        one for one in found.ways
        if one.way.laid.l_per_m2 < found.chosen.way.laid.l_per_m2
        and one.too_dark <= MOST_TOO_DARK and one.gap <= 1.0
    ]  # fmt: skip
    assert weaker == [] or found.chosen.gap > 1.0


def test_a_floor_that_has_the_tone_is_left_alone(belief):
    found = answer(belief, sample=BARE)
    assert found.verdict == "stop"
    assert found.chosen.way is None


def test_a_lower_bound_never_lays_more(belief):
    laid = [
        0.0 if found.chosen.way is None else found.chosen.way.laid.l_per_m2
        for found in (answer(belief, most_too_dark=one) for one in (0.0001, 0.001, 0.01, 0.03))
    ]
    closing = [one for one in laid if one]
    assert laid[0] <= max(closing, default=0.0)


def test_the_same_is_answered_each_time(belief):
    assert answer(believe(SEEN, stains=1)) == answer(belief)


def test_a_patchy_floor_is_held_to_less():
    calm = believe((*SEEN[:-1], Seen((), BARE, "floor", "b", 12, 0.4)), stains=1)
    wild = believe((*SEEN[:-1], Seen((), BARE, "floor", "b", 12, 4.0)), stains=1)
    way = [(Laid(0, 0.1),)]
    assert darkest(wild, way, share=0.05).mean() < darkest(calm, way, share=0.05).mean()


def test_a_cut_and_a_coverage_make_the_stain():
    assert Way(0, 1.0, 0.2).laid == Laid(0, 0.1)
    assert Way(1, 3.0, 0.2).laid == Laid(1, 0.05)


def test_on_a_few_invented_floors_it_beats_the_habit():
    ours, habit = score_jobs(range(6))
    assert ours.cost < habit.cost
    seen = score_foreseen(range(6))
    assert all(one.median < one.change for one in seen)


def outlook(way, too_dark, gap, away):
    return Outlook(way, too_dark, gap, gap - 1, gap + 1, away, (40.0, 5.0, 9.0))


def test_of_two_colours_the_one_that_comes_nearest_is_laid_and_never_above_the_bound():
    stop = outlook(None, 0.0, 6.0, 7.0)
    ways = (
        outlook(Way(0, 1.0, 0.2), 0.01, 0.5, 4.0),
        outlook(Way(1, 4.0, 0.2), 0.02, 2.0, 1.5),
        outlook(Way(1, 6.0, 0.2), 0.02, 2.5, 1.6),
        outlook(Way(1, 1.0, 0.2), 0.2, 0.0, 0.3),
    )
    found = chosen_of(stop, ways)
    assert found.verdict == "lay"
    assert found.chosen.way == Way(1, 6.0, 0.2)
    assert chosen_of(stop, ways, most_too_dark=0.5).chosen.way == Way(1, 1.0, 0.2)
    assert chosen_of(stop, ways, most_too_dark=0.001).verdict == "stop"


def test_of_two_colours_nothing_is_laid_that_brings_little():
    stop = outlook(None, 0.0, 1.2, 1.9)
    ways = (outlook(Way(0, 8.0, 0.2), 0.0, 0.9, 1.5), outlook(Way(1, 8.0, 0.2), 0.0, 1.0, 1.7))
    found = chosen_of(stop, ways)
    assert found.verdict == "stop"
    assert found.why == "the floor has the sample's tone"


def test_a_blurred_sample_never_makes_a_way_look_safer_than_the_bound_allows(belief):
    sharp, blurred = (answer(belief, sample_blur=one) for one in (0.5, 6.0))
    safe = [
        {one.way for one in found.ways if one.too_dark <= MOST_TOO_DARK}
        for found in (sharp, blurred)
    ]
    assert safe[1] <= safe[0]


def test_an_outlook_is_told_from_the_draws_as_plain_sums_say(belief):
    """The mean and its range of what may come; the chance that a darkest patch is 3 L too dark."""
    sample, blur = (44.0, 6.0, 12.0), math.hypot(0.45, 2.0 * belief.prior.photo[0])
    ways = (None, WAYS[0], WAYS[-1])
    coats = [() if way is None else (way.laid,) for way in ways]
    draws = foreseen(belief, coats)
    worst = darkest(belief, coats, share=WORST_SHARE)
    found = outlooks(belief, (), ways, sample_lab=sample, dark_range=3.0, sample_blur=2.0)
    for n, one in enumerate(found):
        gaps = draws[:, n, 0] - 44.0
        assert one.lab == pytest.approx(tuple(draws[:, n].mean(axis=0)), abs=1e-9)
        assert one.gap == pytest.approx(gaps.mean(), abs=1e-9)
        assert one.gap_low == pytest.approx(np.quantile(gaps, 0.1), abs=1e-9)
        assert one.gap_high == pytest.approx(np.quantile(gaps, 0.9), abs=1e-9)
        dark = [0.5 * math.erfc(-(41.0 - each) / blur / math.sqrt(2)) for each in worst[:, n]]
        assert one.too_dark == pytest.approx(sum(dark) / len(dark), abs=1e-9)
