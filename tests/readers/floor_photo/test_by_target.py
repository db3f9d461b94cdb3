"""A photo laid on the plan by our own target: its corners tell the plane, its size the scale."""

from __future__ import annotations

import numpy as np
import pytest
from tests.colour_photos import laid, own_page, shot
from tests.floor_photos import jpeg

from farwall.errors import Refused
from farwall.readers.floor_photo.nouns import Ground, TargetAt
from farwall.readers.floor_photo.seen import floor_seen, pairs_from, target_from, target_text

AT = (2.0, 1.0)
ROOM = Ground((((1.0, 0.0), (4.0, 0.0), (4.0, 2.0), (1.0, 2.0), (1.0, 0.0)),))


@pytest.mark.parametrize(("values", "near"), [(None, 5), (laid("own").values, 3)])
def test_a_piece_of_floor_beside_the_target_lies_where_it_lies(values, near):
    """Twelve stained pieces, some centimetres wide, whose place beside the target is known.

    Within a piece all is of one lightness to 3 L, half way to its corners too; it is the piece's
    own to 5 L where the sheet's colours are not measured and its paper alone balances them, to 3 L
    by the values of the print (2.2 at the worst, measured here). The pieces lie 37 L apart.
    """
    photo, (_, corner_mm) = shot("own"), own_page()
    sheets = []

    def find(sheet):
        sheets.append(sheet)
        return ()

    seen = floor_seen(photo.data, (), ROOM, find, TargetAt(AT, 0.0), own_values=values)
    sheet = sheets[0]
    assert seen.told.pairs == 4
    assert seen.told.place_mm < 30
    assert sheet.true_colour
    back = np.linalg.inv(photo.to_px)
    for piece in photo.pieces:
        ring = np.column_stack([piece.polygon_px, np.ones(len(piece.polygon_px))]) @ back.T
        corners = ring[:, :2] / ring[:, 2:]
        middle = corners.mean(axis=0)
        places = np.vstack([middle, middle + 0.5 * (corners - middle)]) - corner_mm
        x, y = AT[0] + places[:, 0] / 1000, AT[1] - places[:, 1] / 1000
        rows = np.round((sheet.top_m - y) / sheet.m_per_px).astype(int)
        columns = np.round((x - sheet.left_m) / sheet.m_per_px).astype(int)
        assert sheet.floor[rows, columns].all()
        lightness = sheet.lab[rows, columns, 0]
        assert lightness[0] == pytest.approx(piece.lab[0], abs=near)
        assert lightness == pytest.approx(lightness[0], abs=3)


def test_where_no_target_is_seen_the_photo_is_refused_with_a_way_out():
    with pytest.raises(Refused, match="set points"):
        floor_seen(jpeg(), (), ROOM, lambda _: (), TargetAt(AT, 0.0))


def test_the_place_of_the_target_is_told_among_the_points():
    target = target_from("A:10,20=1,2; target=2.8,2.2,90")
    assert target == TargetAt((2.8, 2.2), 90.0)
    assert target_from(target_text(target)) == target
    assert [one.name for one in pairs_from("A:10,20=1,2;target=2.8,2.2,90")] == ["A"]
    assert target_from("10,20=1,2") is None
    with pytest.raises(Refused, match="tells no place"):
        target_from("target=2,here,0")
