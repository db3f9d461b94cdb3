"""How long a look at the mopped floor takes on a photo of twelve megapixels, and how much memory.

    .venv/bin/python bench/marks.py            three floors, 4000 x 3000; --once: one of 1200 x 900

Each photo of an invented floor is laid flat and searched in a process of its own. Seconds of the
processor, and by the clock; memory is that process's peak (Linux).
"""

import json
import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from timing import ONCE

from farwall.bench.mopped_sheet import clicks_of, read_sheet

FLOORS, LONG_PX = ((1_000_002,), 1200) if ONCE else ((1_000_002, 1_000_003, 1_000_006), 4000)


def main() -> None:
    """Draw, photograph, look, tell."""
    if "--look" in sys.argv:
        look(Path(sys.argv[-1]))
        return
    from farwall.bench.mopped_camera import photograph
    from farwall.bench.mopped_floors import mopped

    with tempfile.TemporaryDirectory() as folder:
        for seed in FLOORS:
            floor = mopped(seed)
            photo = photograph(floor, long_px=LONG_PX)
            path = Path(folder) / f"{seed}.jpg"
            path.write_bytes(photo.data)
            told = {"clicks": clicks_of(floor, photo), "size": [floor.wide_m, floor.high_m]}
            path.with_suffix(".json").write_text(json.dumps(told))
            size = f"{photo.wide_px} x {photo.high_px}, {len(photo.data) / 1e6:.1f} MB"
            print(f"floor {seed} of {floor.wide_m} x {floor.high_m} m, {size}", flush=True)
            subprocess.run([sys.executable, __file__, "--look", str(path)], check=True)


def look(path: Path) -> None:
    """Lay flat, seek, print: in this process, whose peak of memory is told."""
    from farwall.colour.marks.find import marks_in

    told = json.loads(path.with_suffix(".json").read_text())
    began, clock = time.process_time(), time.perf_counter()
    sheet = read_sheet(path.read_bytes(), told["clicks"], *told["size"])
    flat = time.process_time()
    marks = marks_in(sheet)
    done, clock = time.process_time(), time.perf_counter() - clock
    # Not `getrusage`: its peak is handed down by the process that drew the photo.
    told_kb = re.search(r"VmHWM:\s+(\d+)", Path("/proc/self/status").read_text())
    peak = int(told_kb[1]) / 1024 if told_kb else float("nan")
    print(
        f"  laid flat {flat - began:.2f} s, searched {done - flat:.2f} s, together "
        f"{done - began:.2f} s of the processor, {clock:.2f} s by the clock; "
        f"{len(marks)} proposed, peak {peak:.0f} MB"
    )


if __name__ == "__main__":
    main()
