"""The finder on floors of its own and on sheets it must refuse."""

import numpy as np
import pytest
from tests.colour.marks.drawn import lap_line, plain, sheet_of, step

from farwall.colour.marks.find import marks_in
from farwall.colour.marks.nouns import Sheet
from farwall.errors import Refused


@pytest.mark.parametrize("seed", range(2))
@pytest.mark.parametrize("laid", [lap_line, step])
def test_a_lap_line_across_the_floor_is_proposed_where_it_lies(seed, laid) -> None:
    depth, (kind, (x, y)) = laid(plain(seed), seed)
    found = [mark for mark in marks_in(sheet_of(depth)) if mark.kind == kind]
    assert found
    assert np.hypot(found[0].at[0] - x, -found[0].at[1] - y) < 0.6
    assert found[0].length_m > 1.5


def test_the_same_sheet_gives_the_same_marks() -> None:
    depth, _ = lap_line(plain(3), 3)
    assert marks_in(sheet_of(depth)) == marks_in(sheet_of(depth))


@pytest.mark.parametrize(
    "sheet",
    [
        Sheet(np.full((40, 40, 3), 50, np.float32), np.ones((40, 40), bool), 0.01),
        Sheet(np.full((200, 200, 3), 50, np.float32), np.zeros((200, 200), bool), 0.01),
        Sheet(np.full((200, 200, 3), 50, np.float32), np.ones((100, 200), bool), 0.01),
        Sheet(np.full((200, 200, 3), 50, np.float32), np.ones((200, 200), bool), float("nan")),
    ],
)
def test_what_shows_too_little_floor_is_refused_with_a_remedy(sheet: Sheet) -> None:
    with pytest.raises(Refused) as refused:
        marks_in(sheet)
    assert all(mistake.remedy for mistake in refused.value.mistakes)


def kinds_and_places(sheet: Sheet) -> list[tuple[str, float, float]]:
    return [(m.kind, m.at[0], m.at[1]) for m in marks_in(sheet) if m.confidence > 0.515]


def test_a_brighter_photo_shows_the_same_lap_line() -> None:
    depth, _ = lap_line(plain(0), 0)
    dim, bright = sheet_of(depth), sheet_of(depth - 0.3)
    assert [m[0] for m in kinds_and_places(dim)] == [m[0] for m in kinds_and_places(bright)]


@pytest.mark.parametrize("turned", [np.fliplr, np.flipud, np.rot90])
def test_a_mirrored_or_turned_floor_shows_the_same_lap_line(turned) -> None:
    depth, _ = lap_line(plain(0), 0)
    here = [m for m in marks_in(sheet_of(depth)) if m.kind == "lap line"]
    there = [m for m in marks_in(sheet_of(turned(depth))) if m.kind == "lap line"]
    assert here
    assert there
    assert here[0].length_m == pytest.approx(there[0].length_m, abs=0.15)


def test_nothing_is_proposed_within_a_hand_of_what_glare_hides() -> None:
    depth, _ = lap_line(plain(0), 0)
    sheet = sheet_of(depth)
    floor = sheet.floor.copy()
    floor[200:420, 300:520] = False
    glaring = sheet.lab.copy()
    glaring[200:420, 300:520, 0] = 99.0
    for mark in marks_in(Sheet(glaring, floor, sheet.m_per_px)):
        column, row = mark.at[0] / sheet.m_per_px, -mark.at[1] / sheet.m_per_px
        assert not (195 < row < 425 and 295 < column < 525), mark


def test_an_even_floor_shows_nothing() -> None:
    lab = np.full((300, 400, 3), 45, np.float32)
    assert marks_in(Sheet(lab, np.ones((300, 400), bool), 0.005)) == ()
