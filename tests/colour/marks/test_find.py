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
