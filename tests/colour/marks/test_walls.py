"""Lap lines where no edge is known: with the walls they are found, and what is no lap is not."""

import numpy as np
import pytest
from tests.colour.marks.drawn import cloud, grid, plain, sheet_of, soft

from farwall.colour.marks.find import marks_in
from farwall.colour.marks.ground import ground_of
from farwall.colour.marks.walls import PITCH_M, REACH_M, chance_here, wall_laps, wall_lines
from farwall.phrasebook import in_spanish

WIDE_M = 0.16


def laps(more, seed=1):
    depth = plain(seed)
    x, y = grid(depth, 0.004)
    sheet = sheet_of(depth + more(x, y))
    return wall_laps(sheet, ground_of(sheet), ())


def strip(across, at_m, seed=8, deep=0.16):
    waver = 0.01 * cloud(seed, (8, max(across.shape)), 1.2)[0]
    level = np.ptp(across[0]) == 0  # runs along the rows
    line = at_m + (
        waver[: across.shape[1]][None, :] if level else waver[: across.shape[0]][:, None]
    )
    return deep * soft(WIDE_M / 2 - np.abs(across - line), 0.008)


@pytest.mark.parametrize("at_m", [0.62, 1.40, 1.93])
@pytest.mark.parametrize("turned", [False, True])
def test_a_strip_that_runs_with_the_walls_is_found_wherever_it_lies(at_m, turned):
    (found, *more) = laps(lambda x, y: strip(x if turned else y, at_m))
    place = found.at[0] if turned else -found.at[1]
    assert abs(place - at_m) < 0.08
    assert found.length_m > 1.5
    assert found.lighter < 0
    assert all(one.confidence <= found.confidence for one in more)


@pytest.mark.parametrize("seed", [1, 2, 3, 4])
def test_a_floor_without_one_gives_none(seed):
    assert laps(lambda _x, y: 0.0 * y, seed) == []


def test_a_light_strip_and_one_that_runs_aslant_are_none():
    assert all(abs(-one.at[1] - 1.4) > 0.06 for one in laps(lambda _x, y: -strip(y, 1.4)))
    aslant = laps(lambda x, y: 0.16 * soft(WIDE_M / 2 - np.abs(y - 0.4 - 0.6 * x), 0.008))
    assert all(one.length_m < 1.6 for one in aslant)


def test_grooves_over_the_whole_floor_are_its_own():
    assert laps(lambda _x, y: 0.2 * (np.sin(2 * np.pi * y / 0.35) > 0.3)) == []


def test_lines_cover_every_place_of_the_sheet_both_ways():
    sheet = sheet_of(plain(1))
    ground = ground_of(sheet)
    lines = wall_lines(sheet, ground)
    level = sorted(-one.line[0][1] for one in lines if one.line[0][1] == one.line[-1][1])
    upright = sorted(one.line[0][0] for one in lines if one.line[0][0] == one.line[-1][0])
    for at, size_m in ((level, 2.8), (upright, 3.6)):
        assert np.allclose(np.diff(at), PITCH_M)
        assert at[0] <= REACH_M
        assert size_m - at[-1] <= REACH_M + PITCH_M / 2
    assert 2 * REACH_M > PITCH_M


def test_better_odds_are_a_better_chance():
    chances = [chance_here(odds) for odds in (-20.0, -1.0, 0.0, 2.0, 20.0)]
    assert chances == sorted(chances)
    assert 0 <= chances[0] < 0.01
    assert 0.99 < chances[-1] <= 1


def test_the_look_tells_it_without_edges_and_says_so_in_spanish():
    depth = plain(1)
    _, y = grid(depth, 0.004)
    found = [m for m in marks_in(sheet_of(depth + strip(y, 1.4))) if m.kind == "lap line"]
    said = [in_spanish(one.why, frozenset()) for one in found if "with the walls" in one.why]
    assert said
    assert all(one is not None and "muros" in one for one in said)
