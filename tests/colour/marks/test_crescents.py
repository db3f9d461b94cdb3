"""Crescents by their form and their sides, on floors drawn here."""

import math
from dataclasses import replace

import numpy as np
import pytest
from tests.colour.marks.drawn import crescent, grid, lap_line, plain, sheet_of, soft

from farwall.colour.marks.cleared import cleared
from farwall.colour.marks.crescent_forms import LONG, SIZES, TURNS, Form, drawn, waves_of_forms
from farwall.colour.marks.crescent_sides import chance_of, gentler_side, steepness_of
from farwall.colour.marks.crescents import CANDIDATES, crescents_of
from farwall.colour.marks.find import CRESCENT_SURE, marks_in
from farwall.colour.marks.glare import shine_on, unglared
from farwall.colour.marks.ground import ground_of

STEP_M = 0.004


def bare_of(depth, sheet=None):
    """The floor with nothing on it that glares, and no crack."""
    sheet = sheet or sheet_of(depth)
    ground = ground_of(sheet)
    slab = np.zeros(ground.seen.shape, bool)
    return unglared(ground, cleared(sheet, ground), slab, shine_on(ground))


@pytest.mark.parametrize("seed", range(4))
def test_a_crescent_is_the_likeliest_place_and_proposed(seed: int) -> None:
    depth, (_, (x, y)) = crescent(plain(seed), seed)
    bare = bare_of(depth)
    first = crescents_of(bare)[0]
    assert math.hypot(first.at[1] * bare.step_m - x, first.at[0] * bare.step_m - y) < 0.08
    assert first.sure > 5 * CRESCENT_SURE
    assert "missed crescent" in {mark.kind for mark in marks_in(sheet_of(depth))}


@pytest.mark.parametrize("seed", range(4))
def test_a_floor_without_one_has_likely_none_and_the_likeliest_first(seed: int) -> None:
    found = crescents_of(bare_of(plain(seed)))
    assert len(found) <= CANDIDATES
    assert all(one.sure < CRESCENT_SURE for one in found)
    sure = [one.sure for one in found]
    assert sure == sorted(sure, reverse=True)


def test_two_crescents_of_one_floor_are_both_proposed() -> None:
    depth, (_, one) = crescent(plain(1), 1)
    seed = next(
        s for s in range(2, 40)
        if math.dist(crescent(plain(1), s)[1][1], one) > 0.9
    )  # fmt: skip
    depth, _ = crescent(depth, seed)
    kinds = [mark.kind for mark in marks_in(sheet_of(depth))]
    assert kinds.count("missed crescent") == 2


@pytest.mark.parametrize("seed", [2, 3])
def test_a_crescent_across_a_joint_is_proposed_all_the_same(seed: int) -> None:
    """One that lies along a joint is cut away by it still, as those of seeds 0 and 1 here."""
    depth, (_, at) = crescent(plain(seed), seed)
    across, _ = grid(depth, STEP_M)
    sheet = sheet_of(depth + 0.3 * soft(0.004 - np.abs(across - at[0]), 0.001))
    marks = marks_in(sheet)
    assert "joint" in {mark.kind for mark in marks}
    places = [(mark.at[0], -mark.at[1]) for mark in marks if mark.kind == "missed crescent"]
    assert min(math.dist(at, place) for place in places) < 0.13


def test_streaks_beside_a_hole_do_not_hide_a_crescent() -> None:
    depth, (_, (x, y)) = crescent(plain(2), 2)
    across, _ = grid(depth, STEP_M)
    far = x > 1.8
    burnt = across < 0.3 if far else across > 3.3
    streak = soft(0.25 - abs(across - (0.4 if far else 3.2)), 0.01) * (np.sin(90 * across) > -0.5)
    sheet = sheet_of(depth - 1.1 * streak)
    sheet = replace(sheet, floor=~burnt)
    bare = bare_of(depth, sheet)
    first = crescents_of(bare)[0]
    assert math.hypot(first.at[1] * bare.step_m - x, first.at[0] * bare.step_m - y) < 0.08
    assert first.sure > 0.5


def test_a_dark_crescent_and_a_lap_line_are_none() -> None:
    depth, _ = crescent(plain(3), 3)
    dark = 2 * plain(3) - depth
    lap, _ = lap_line(plain(3), 3)
    for one in (dark, lap):
        assert all(found.sure < CRESCENT_SURE for found in crescents_of(bare_of(one)))


def test_a_form_mirrored_is_the_form_turned_by_half_a_circle() -> None:
    shape = (90, 96)
    laid = list(waves_of_forms(0.02, shape))
    assert len(laid) % (TURNS // 2) == 0
    for form, waves in laid[:8]:
        round_ = np.fft.rfft2(drawn(form.turned_round, 0.02, shape))
        assert np.abs(round_ - np.conj(waves)).max() < 0.02 * np.abs(waves).max()


def test_a_form_is_lighter_as_large_as_its_outline_and_thickest_at_its_place() -> None:
    import shapely

    form = Form(0.24, 0.08, LONG, 0.7)
    picture = drawn(form, 0.01, (120, 120))
    assert picture.min() == pytest.approx(-1.0)
    assert picture[0, 0] == pytest.approx(-1.0)
    assert -picture.sum() * 1e-4 == pytest.approx(shapely.Polygon(form.outline()).area, rel=0.05)
    assert form.half_thick(np.array([0.0, LONG])) == pytest.approx([0.04, 0.0])


def test_the_gentler_side_tells_and_a_crescent_that_is_hidden_is_none() -> None:
    depth, _ = crescent(plain(1), 1)
    bare = bare_of(depth)
    first = crescents_of(bare)[0]
    steep = steepness_of(bare)
    turned = replace(first.form, turn=first.form.turn + math.pi / 2)
    there, beside = (gentler_side(bare, first.at, one, steep) for one in (first.form, turned))
    assert there is not None
    assert beside is not None
    assert there > beside + 0.5
    hidden = replace(bare, known=np.zeros_like(bare.known))
    assert gentler_side(hidden, first.at, first.form, steep) is None


def test_the_chance_grows_with_the_answer_and_with_the_side_and_stays_a_share() -> None:
    assert chance_of(6.0, 2.0) < chance_of(8.0, 2.0) < chance_of(8.0, 4.0)
    assert 0 < chance_of(-100.0, -100.0) < chance_of(100.0, 100.0) < 1


@pytest.mark.parametrize("size", SIZES)
def test_nothing_of_a_form_is_cut_off(size: tuple[float, float, float]) -> None:
    radius, thick, half = size
    area = radius * thick * 4 * half / math.pi
    for turn in (0.0, 1.1, math.pi):
        told = -drawn(Form(radius, thick, half, turn), 0.01, (180, 180)).sum() * 0.01**2
        assert told == pytest.approx(area, rel=0.03)
