"""Real concrete that nobody stained: each proposal is a false alarm, cracks and joints apart.

No scale is recorded, so each picture is read at two that are guessed.
"""

import numpy as np
import pytest

from farwall.colour.marks.find import marks_in
from farwall.colour.marks.nouns import Sheet

APART = {"crack", "joint"}


@pytest.mark.slow
@pytest.mark.needs_shared
@pytest.mark.parametrize("m_per_px", [0.002, 0.004])
def test_real_concrete_gives_at_most_one_false_alarm_a_photo(shared, m_per_px: float) -> None:
    import cv2

    alarms = {}
    for path in sorted(shared("data/surfaces").glob("*.jpg")):
        picture = cv2.imread(str(path))[..., ::-1].astype(np.float32) / 255
        lab = cv2.cvtColor(np.ascontiguousarray(picture), cv2.COLOR_RGB2LAB)
        found = marks_in(Sheet(lab, np.ones(lab.shape[:2], bool), m_per_px))
        alarms[path.name] = [mark.kind for mark in found if mark.kind not in APART]
    assert len(alarms) == 14
    assert sum(map(len, alarms.values())) <= len(alarms), alarms
