"""Our own sheet beside the 24 patches in one photo: a print measured without an instrument."""

from functools import cache

import numpy as np
from tests.colour_photos import laid

from farwall.bench.colour_photos import Hard, photograph
from farwall.bench.colour_scene import Sheet, common_24
from farwall.cli.main import main
from farwall.colour.ciede2000 import quick_de2000
from farwall.readers.colour_photo.read import read_colour_photo
from farwall.readers.colour_photo.values import values_in


@cache
def both():
    """The two on one floor, a hand apart."""
    own, other = laid("own").sheet, common_24(px_mm=3.0)
    ground = len(own.reflects) + len(other.reflects)
    wide = max(own.which.shape[1], other.which.shape[1])
    high = own.which.shape[0] + 60 + other.which.shape[0]
    which = np.full((high, wide), ground)
    which[: own.which.shape[0], : own.which.shape[1]] = own.which
    which[-other.which.shape[0] :, : other.which.shape[1]] = other.which + len(own.reflects)
    floor = np.full((1, own.reflects.shape[1]), 0.3)
    sheet = Sheet(which, 3.0, np.vstack([own.reflects, other.reflects, floor]))
    return photograph(sheet, "sun", seed=5, hard=Hard(tilt_deg=15, uneven=0.1), wide_px=2000)


def test_a_print_is_measured_by_the_target_beside_it():
    photo = read_colour_photo(both().data, own_values=laid("24").values)
    assert photo.target.name == "24 patches"
    true = laid("own").values
    off = [float(quick_de2000(one.seen_lab, true[one.name])) for one in photo.print_seen]
    assert len(off) == 45
    assert np.median(off) < 2.0
    asked = [float(quick_de2000(one.own_lab, true[one.name])) for one in photo.print_seen]
    assert np.median(off) < 0.5 * np.median(asked)


def test_it_is_written_as_a_table_that_is_read_again(tmp_path, capsys):
    path, table = tmp_path / "both.jpg", tmp_path / "print.csv"
    path.write_bytes(both().data)
    assert main(["colour", "look", str(path), "--print-values", str(table)]) == 0
    values = values_in(table.read_bytes())
    assert len(values) == 45
    assert "paper" in values
    capsys.readouterr()
