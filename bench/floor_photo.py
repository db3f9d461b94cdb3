"""A photo of 12 million points laid on the plan and looked over, in a process of its own.

python bench/floor_photo.py: seconds of the processor and of the clock, and the most memory, of one
room of 24 m²; printed, never asserted.
"""

from __future__ import annotations

import resource
import sys
import time
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from tests.floor_photos import ROOM, camera, floor_picture, pairs

from farwall.readers.apart.floor_photos import floor_seen_of
from farwall.readers.floor_photo.nouns import Pair
from farwall.readers.floor_photo.seen import pairs_text

SIZE = (4000, 3000)


def main() -> None:
    """Print them for three photos."""
    import cv2

    matrix = camera(size=SIZE)
    cells = np.array([[0.0025, 0, 0], [0, -0.0025, 4.0], [0, 0, 1]])
    seen = cv2.warpPerspective(floor_picture(), matrix @ cells, SIZE, flags=cv2.INTER_LINEAR)
    noisy = seen + np.random.default_rng(1).normal(0, 3, seen.shape)
    shot = np.clip(noisy, 0, 255).astype(np.uint8)[..., ::-1]
    data = bytes(cv2.imencode(".jpg", shot, [cv2.IMWRITE_JPEG_QUALITY, 92])[1])
    told: tuple[Pair, ...] = pairs(matrix)
    for _ in range(3):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        began = time.perf_counter()
        found = floor_seen_of(data, points=pairs_text(told), room=ROOM)
        took = time.perf_counter() - began
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        cpu = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
        print(
            f"{len(data) / 1e6:.1f} MB, {found.told.seen_m2:.1f} m² looked at, "
            f"{len(found.marks)} marks: {cpu:.2f} s of the processor, {took:.2f} s by the clock, "
            f"{after.ru_maxrss / 1000:.0f} MB"
        )


if __name__ == "__main__":
    main()
