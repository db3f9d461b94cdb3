"""Where the run sheet has the edges of the frozen floors: beside lap lines, the same for a seed."""

import numpy as np
import pytest

from farwall.bench.mopped_edges import known_edges
from farwall.bench.mopped_floors import MoppedFloor, TrueMark

LAP = TrueMark("lap line", ((),), (tuple((0.2 + 0.1 * n, 1.7) for n in range(30)),), -2.0)


def floor(seed, marks=(), wide_m=4.0, high_m=3.0):
    look = np.zeros((2, 2, 3), np.float32)
    return MoppedFloor(seed, 0.005, wide_m, high_m, look, look[..., 0], marks, ())


def test_the_same_seed_gives_the_same_edges_and_every_coat_counts_its_own():
    assert known_edges(floor(3)) == known_edges(floor(3))
    assert known_edges(floor(3)) != known_edges(floor(4))
    for coat in (1, 2):
        bands = [one.band for one in known_edges(floor(3)) if one.coat == coat]
        assert bands == list(range(1, len(bands) + 1))


def test_a_lap_line_has_an_edge_beside_it_by_the_error_of_the_hand():
    off = []
    for seed in range(60):
        level = [
            one for one in known_edges(floor(seed, (LAP,)))
            if np.ptp(np.array(one.line)[:, 0]) > 3 and one.coat == 1
        ]  # fmt: skip
        near = [np.array(one.line)[:, 1].mean() - 1.7 for one in level]
        off.append(min(near, key=abs))
    assert np.std(off) == pytest.approx(0.10, rel=0.35)
    assert abs(np.mean(off)) < 0.05


def test_without_an_error_the_edge_lies_on_it_and_others_a_band_away():
    level = [
        np.array(one.line)[:, 1].mean()
        for one in known_edges(floor(5, (LAP,)), off_m=0.0, wander_m=0.0) if one.coat == 1
    ]  # fmt: skip
    assert min(abs(at - 1.7) for at in level) < 1e-6
    assert all(0.6 < gap < 1.3 for gap in np.diff(sorted(level)))
