"""One place that is no number does not spoil a sheet."""

from math import inf, nan

import pytest

from farwall.readers.lines.reach import FARTHEST, in_reach
from farwall.readers.lines.read import read_sheet
from farwall.readers.lines.sheet import Ring, Role, Sheet, Stroke, Words

CORNERS = [(0.0, 0.0), (4.0, 0.0), (4.0, 3.0), (0.0, 3.0)]
BOX = tuple(
    Stroke(start, end, "", Role.OTHER)
    for start, end in zip(CORNERS, CORNERS[1:] + CORNERS[:1], strict=True)
)


def test_a_sheet_in_reach_stays_the_same() -> None:
    sheet = Sheet(strokes=BOX)
    assert in_reach(sheet) is sheet


@pytest.mark.parametrize("far", [nan, inf, -inf, 1e308, 2 * FARTHEST])
def test_what_lies_beyond_is_dropped_and_counted(far: float) -> None:
    odd = Stroke((0.0, 0.0), (far, 1.0), "", Role.OTHER)
    sheet = Sheet(
        strokes=(*BOX, odd),
        rings=(Ring(((0.0, far), *CORNERS), "", Role.OTHER),),
        words=(Words("HALL", (far, 1.0), 0.2, 0.0, ""), Words("HALL", (2.0, 1.0), nan, 0.0, "")),
    )
    found = in_reach(sheet)
    assert found.strokes == BOX
    assert (found.rings, found.words) == ((), ())
    assert found.skipped == (("thing far beyond any sheet", 4),)
    reading = read_sheet(sheet, scale_m_per_unit=1.0)
    assert [round(room.polygon.shape.area, 6) for room in reading.floor.rooms] == [12.0]
    assert "4 × thing far beyond any sheet" in " ".join(note.what for note in reading.left)


def test_a_stroke_drawn_ten_thousand_times_is_taken_twice() -> None:
    sheet = Sheet(strokes=BOX * 10_000)
    assert len(in_reach(sheet).strokes) == 2 * len(BOX)
    assert in_reach(sheet).skipped == ()
    reading = read_sheet(sheet, scale_m_per_unit=1.0)
    assert [round(room.polygon.shape.area, 6) for room in reading.floor.rooms] == [12.0]
    assert "doubles-dropped" in [note.code for note in reading.mended]
