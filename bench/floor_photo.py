"""A photo of 12 million points laid on the plan and looked over, in a process of its own.

python bench/floor_photo.py [--once]: seconds of the processor and of the clock, and the most
memory, of one room of 24 m², three times; printed, never asserted. A process begun by one that
drew a picture would be told to have had that one's memory, so the photo is drawn in another.
"""

from __future__ import annotations

import pickle
import resource
import subprocess
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from farwall.readers.apart.floor_photos import floor_seen_of
from farwall.readers.floor_photo.seen import pairs_text

SIZE = (4000, 3000)


def main() -> None:
    """Draw in one process, look in another."""
    if "--draw" in sys.argv:
        sys.stdout.buffer.write(pickle.dumps(drawn()))
    elif "--look" in sys.argv:
        look(*pickle.loads(sys.stdin.buffer.read()))
    else:
        me = [sys.executable, __file__]
        made = subprocess.run([*me, "--draw"], check=True, capture_output=True).stdout
        subprocess.run([*me, "--look", *sys.argv[1:]], check=True, input=made)


def look(data: bytes, told, room) -> None:  # type: ignore[no-untyped-def]
    """Print what three looks take; each reader is a process of its own."""
    for _ in range(1 if "--once" in sys.argv else 3):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        began = time.perf_counter()
        found = floor_seen_of(data, points=pairs_text(told), room=room)
        took = time.perf_counter() - began
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        cpu = after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime
        print(
            f"{len(data) / 1e6:.1f} MB, {found.told.seen_m2:.1f} m² looked at, "
            f"{len(found.marks)} marks: {cpu:.2f} s of the processor, {took:.2f} s by the clock, "
            f"{after.ru_maxrss / 1000:.0f} MB",
            flush=True,
        )


def drawn():  # type: ignore[no-untyped-def]
    """The photo, its points and its room."""
    import cv2
    import numpy as np
    from tests.floor_photos import ROOM, camera, floor_picture, pairs

    matrix = camera(size=SIZE)
    cells = np.array([[0.0025, 0, 0], [0, -0.0025, 4.0], [0, 0, 1]])
    seen = cv2.warpPerspective(floor_picture(), matrix @ cells, SIZE, flags=cv2.INTER_LINEAR)
    noisy = seen + np.random.default_rng(1).normal(0, 3, seen.shape)
    shot = np.clip(noisy, 0, 255).astype(np.uint8)[..., ::-1]
    data = bytes(cv2.imencode(".jpg", shot, [cv2.IMWRITE_JPEG_QUALITY, 92])[1])
    return data, pairs(matrix), ROOM


if __name__ == "__main__":
    main()
