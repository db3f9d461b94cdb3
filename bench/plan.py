"""How long a cold `farwall plan` takes: planned anew, and shown as planned before.

Wanted: a house of 12 rooms under 2 s and 400 MB.
"""

import json
import os
import tempfile
from pathlib import Path

from timing import FARWALL, ONCE, ROOT, cold

DONE, ANSWER_IS_NO = 0, 1

JOBS = sorted((ROOT / "examples").glob("**/*job*.json"))
for job in JOBS[:2] if ONCE else JOBS:
    rooms = len(json.loads(job.read_text())["floor"]["rooms"])
    with tempfile.TemporaryDirectory() as folder:
        out = str(Path(folder) / "plan")
        os.environ["XDG_CACHE_HOME"] = folder
        for how, words in (("anew", ["--fresh"]), ("as before", [])):
            cold(
                f"farwall plan {job.parent.name} ({rooms} rooms), {how}",
                [FARWALL, "plan", str(job), "--out", out, *words],
                times=3,
                good=(DONE, ANSWER_IS_NO),
            )
