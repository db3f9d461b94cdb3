"""Where on a photo the floor is read: six boxes, none on the target or at its edge."""

import numpy as np
import pytest

from farwall.errors import Refused
from farwall.evidence import Rank
from farwall.readers.colour_photo.nouns import ColourPhoto, TargetSeen
from farwall.web.pages.colour.photo_spots import boxes


def photo(*corners):
    lab = np.zeros((400, 600, 3), dtype=np.float32)
    target = TargetSeen("ours", corners, (), 0.5, 1.0) if corners else None
    return ColourPhoto(lab, target, Rank.MEASURED if corners else Rank.GUESS)


def test_without_a_target_six_boxes_lie_within_the_photo():
    found = boxes(photo())
    assert len(found) == 6
    assert all(0 <= left < right <= 600 and 0 <= top < bottom <= 400
               for left, top, right, bottom in found)  # fmt: skip


def test_none_lies_on_the_target():
    corners = ((60.0, 60.0), (190.0, 60.0), (190.0, 160.0), (60.0, 160.0))
    found = boxes(photo(*corners))
    assert len(found) == 5
    assert not any(left < 190 and top < 160 for left, top, _, _ in found)


def test_a_target_that_fills_the_photo_leaves_no_floor():
    with pytest.raises(Refused, match="fills the photo"):
        boxes(photo((0.0, 0.0), (600.0, 0.0), (600.0, 400.0), (0.0, 400.0)))
