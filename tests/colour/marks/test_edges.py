"""Lap lines along known edges: found where the whole floor would not tell them, none where none."""

from dataclasses import replace

import numpy as np
import pytest
from tests.colour.marks.drawn import cloud, grid, plain, sheet_of, soft

from farwall.colour.marks.corridor import PIECE_M, POINT_M, WIDTHS_M, corridor_of, kernels_of
from farwall.colour.marks.edges import REACH_SD, edge_finds, edge_laps, of_no_edge
from farwall.colour.marks.find import marks_in
from farwall.colour.marks.ground import ground_of
from farwall.colour.marks.nouns import KnownEdge, Mark
from farwall.phrasebook import in_spanish

AT_M, SD_M = 1.4, 0.11


def floor(seed, depth_of_lap, off_m=0.0, wide_m=0.16):
    """A floor whose bands met at 1.4 m from the top, `off_m` lower in truth."""
    depth = plain(seed)
    _, y = grid(depth, 0.004)
    line = AT_M + off_m + 0.01 * cloud(seed + 7, (8, depth.shape[1]), 1.2)[0][None, :]
    return sheet_of(depth + depth_of_lap * soft(wide_m / 2 - np.abs(y - line), 0.008))


def edge(at_m=AT_M, sd_m=SD_M, coat=1, band=2):
    return KnownEdge(((0.0, -at_m), (1.8, -at_m), (3.6, -at_m)), sd_m, coat, band)


EDGES = (edge(), edge(0.5, band=1), edge(2.3, band=3))


@pytest.mark.parametrize("off_m", [-0.15, 0.0, 0.12])
def test_a_faint_strip_off_its_edge_is_found_there_and_named_by_band_and_coat(off_m):
    sheet = floor(1, 0.10, off_m)
    (found, *more) = edge_laps(sheet, ground_of(sheet), EDGES, ())
    assert abs(-found.at[1] - AT_M - off_m) < 0.08  # within the strip
    assert found.length_m > 2.4
    assert found.lighter < 0
    assert "band 2 of coat 1" in found.why
    assert all(one.confidence <= found.confidence for one in more)


def test_a_deeper_strip_is_surer_than_a_fainter_one_and_than_none():
    sure = []
    for depth in (0.0, 0.05, 0.12):
        sheet = floor(2, depth)
        (one,) = [o for o in edge_finds(sheet, ground_of(sheet), EDGES, ()) if o.edge.band == 2]
        sure.append(one.sure)
    assert sure == sorted(sure)
    assert sure[0] < 0.2
    assert sure[2] > 0.6


def test_a_light_strip_is_no_lap():
    sheet = floor(1, -0.12)
    found = edge_laps(sheet, ground_of(sheet), EDGES, ())
    assert all(abs(-one.at[1] - AT_M) > 0.06 for one in found)


def test_a_strip_farther_off_than_the_hand_errs_is_not_told():
    sheet = floor(1, 0.12, off_m=0.45)
    finds = edge_finds(sheet, ground_of(sheet), (edge(),), ())
    assert all(abs(one.beside_m) <= REACH_SD * SD_M + 1e-6 for one in finds)


def test_a_known_joint_is_taken_out_before():
    sheet = floor(3, 0.5, wide_m=0.012)
    ring = ((0.0, -AT_M - 0.02), (3.6, -AT_M - 0.02), (3.6, -AT_M + 0.02), (0.0, -AT_M + 0.02))
    joint = Mark("joint", (1.8, -AT_M), ring, 0.9, -3.0, 3.6, 0.01, "")
    bare = edge_finds(sheet, ground_of(sheet), (edge(),), ())
    without = edge_finds(sheet, ground_of(sheet), (edge(),), (joint,))
    score = [one[0].score if one else 0.0 for one in (bare, without)]
    assert score[1] < score[0]


def test_edges_of_two_coats_that_lie_together_tell_one_strip_once():
    sheet = floor(1, 0.12)
    found = edge_laps(sheet, ground_of(sheet), (edge(), edge(AT_M + 0.05, coat=2)), ())
    assert len([one for one in found if abs(-one.at[1] - AT_M) < 0.1]) == 1


def test_an_edge_beside_the_sheet_or_too_short_tells_nothing():
    sheet = floor(1, 0.1)
    away = replace(edge(), line=((50.0, 50.0), (53.0, 50.0)))
    short = replace(edge(), line=((1.0, -AT_M), (1.2, -AT_M)))
    assert edge_finds(sheet, ground_of(sheet), (away, short), ()) == []


def test_a_lap_of_the_search_at_any_slope_has_to_be_sure_and_other_lines_stay():
    lap = Mark("lap line", (1.8, -0.4), ((0.1, -0.38), (3.5, -0.38), (3.5, -0.42), (0.1, -0.42)),
               0.6, -2.0, 3.4, 0.04, "")  # fmt: skip
    other = replace(lap, kind="ring")
    assert of_no_edge([lap, other]) == [other]
    assert of_no_edge([replace(lap, confidence=0.95)]) != []


def test_the_look_tells_it_with_the_edges_and_the_same_again():
    sheet = floor(1, 0.08)
    found = marks_in(sheet, EDGES)
    assert any(one.kind == "lap line" and "band 2 of coat 1" in one.why for one in found)
    assert found == marks_in(sheet, EDGES)


def test_a_corridor_has_a_piece_for_each_eight_centimetres_and_a_place_for_each_centimetre():
    sheet = floor(1, 0.0)
    ground = ground_of(sheet)
    kernels = kernels_of(ground.flat, ground.step_m)
    line = np.array([[200.0, 10.0], [200.0, 10.0 + 2.0 / ground.step_m]])
    of = corridor_of(ground.dark, ground.seen, ground.step_m, line, kernels, reach_m=0.2)
    assert of.answers.shape == (len(WIDTHS_M), round(2.0 / PIECE_M), 2 * round(0.2 / POINT_M) + 1)
    assert of.across_m[0] == pytest.approx(-0.2)


def test_what_falls_off_evenly_or_in_a_bow_is_no_strip():
    ground = ground_of(floor(1, 0.0))
    kernels = kernels_of(ground.flat, ground.step_m)
    across = np.linspace(-1, 1, kernels.shape[1])
    for power in range(4):
        assert np.abs(kernels @ across**power).max() < 1e-6 * np.abs(kernels).sum()


def test_why_is_said_in_spanish_too():
    sheet = floor(1, 0.12)
    (found, *_) = edge_laps(sheet, ground_of(sheet), EDGES, ())
    said = in_spanish(found.why, frozenset())
    assert said is not None
    assert "franja 2 de la mano 1" in said
