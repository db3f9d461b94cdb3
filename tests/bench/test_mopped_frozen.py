"""The mopped floors are frozen: who changes one changes these figures, and has to say why.

Pictures are held by block means within a tolerance, for the last bits of a blur differ between
processors; what is told of the floors is held by a digest.
"""

import hashlib
from functools import cache

import numpy as np
import pytest
import rfc8785

from farwall.bench.mopped_camera import photograph
from farwall.bench.mopped_floors import mopped

TOLD_DIGEST = "a0537e302281a30fdc745a1223b0eb090c46b296b4d34062eaf0ef6b0e5fe15a"
SEEDS = (0, 9, 117, 1_000_003)
LOOKS = {
    0: (0.1036, 0.0948, 0.0957, 0.1011, 0.0980, 0.0973, 0.1105, 0.1075, 0.0992),
    9: (0.0833, 0.0788, 0.0814, 0.0794, 0.0708, 0.0806, 0.0772, 0.0833, 0.0869),
    117: (0.0926, 0.0887, 0.0859, 0.0862, 0.0895, 0.0897, 0.0901, 0.0889, 0.0877),
    1_000_003: (0.0711, 0.0724, 0.0700, 0.0712, 0.0730, 0.0709, 0.0701, 0.0679, 0.0781),
}
"""Mean of the linear red, green, blue of the clean wet look, in nine blocks by rows."""
PHOTOS = {
    0: (188, 179, 169, 140, 122, 97, 97, 96, 83),
    9: (224, 226, 222, 195, 151, 155, 106, 113, 107),
    117: (181, 179, 175, 136, 108, 111, 107, 97, 86),
    1_000_003: (223, 234, 224, 131, 141, 177, 83, 83, 85),
}
"""Mean byte of the photo, in nine blocks."""
WHY = "a frozen floor has changed: its figures can no longer be laid beside those of before"

drawn = cache(mopped)


def blocks(picture):
    import cv2

    return cv2.resize(picture, (3, 3), interpolation=cv2.INTER_AREA).mean(axis=2).ravel()


def told(floor):
    """Sizes to the centimetre, marks by kind, contrast and middle to one figure, what else lies."""
    marks = [
        [one.kind, round(one.lighter), [round(float(v), 1) for v in np.mean(one.rings[0], axis=0)]]
        for one in floor.marks
    ]
    decoys = sorted({one.kind for one in floor.decoys})
    return [floor.seed, floor.wide_m, floor.high_m, marks, decoys]


def test_what_is_told_of_the_floors_holds():
    digest = hashlib.sha256(rfc8785.dumps([told(drawn(seed)) for seed in SEEDS])).hexdigest()
    assert digest == TOLD_DIGEST, WHY


@pytest.mark.parametrize("seed", SEEDS)
def test_the_look_and_the_photo_hold(seed):
    import cv2

    assert blocks(drawn(seed).look) == pytest.approx(LOOKS[seed], abs=0.001), WHY
    data = photograph(drawn(seed), long_px=320).data
    picture = cv2.imdecode(np.frombuffer(data, np.uint8), cv2.IMREAD_COLOR)
    assert blocks(picture) == pytest.approx(PHOTOS[seed], abs=2), WHY
