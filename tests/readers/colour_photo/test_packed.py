"""A photo goes from process to process, and only a photo."""

from dataclasses import replace

import numpy as np
import pytest
from tests.colour_photos import laid, shot

from farwall.errors import Refused
from farwall.evidence import Rank
from farwall.readers.apart import wire
from farwall.readers.apart.colours import read_colour_apart
from farwall.readers.colour_photo.nouns import ColourPhoto, TargetSeen
from farwall.readers.colour_photo.packed import packed, unpacked
from farwall.readers.colour_photo.read import read_colour_photo

CORNERS = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
SMALL = ColourPhoto(
    np.array([[[50.25, -3.5, 12.0], [0.0, 0.0, 0.0]]], np.float32),
    TargetSeen("24 patches", CORNERS, (), 0.5, 1.5, ("x",), None, "linear"),
    Rank.MEASURED, "2026-05-14T10:20:30", (), 2.0,
)  # fmt: skip


def test_it_comes_back_over_the_wire():
    back = unpacked(wire.answer_in(wire.colours_text(packed(SMALL))))
    assert (back.lab == SMALL.lab).all()
    assert replace(back, lab=SMALL.lab) == SMALL


@pytest.mark.parametrize(
    "spoilt",
    [{"rows": 2}, {"rows": 0}, {"columns": 10**9}, {"lab_base64": "!"}, {"rank": "sure"},
     {"file_px": 0.0}],
)  # fmt: skip
def test_what_is_no_photo_is_told(spoilt):
    with pytest.raises(ValueError, match=r"size|base64|length|Rank"):
        unpacked(replace(packed(SMALL), **spoilt))


def test_a_process_of_its_own_reads_the_same():
    data, values = shot("own").data, laid("own").values
    here = read_colour_photo(data, own_values=values)
    there = read_colour_apart(data, own_values=values)
    assert there.lab == pytest.approx(here.lab, abs=0.011)
    assert replace(there, lab=here.lab) == here


def test_a_process_of_its_own_refuses_calmly():
    with pytest.raises(Refused) as refusal:
        read_colour_apart(b"no picture", name="floor.jpg")
    assert "floor.jpg" in refusal.value.about
