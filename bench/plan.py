"""How long a cold `farwall plan` takes. Wanted: a house of 12 rooms under 2 s and 400 MB."""

import json
import tempfile
from pathlib import Path

from timing import FARWALL, ROOT, cold

DONE, ANSWER_IS_NO = 0, 1

for job in sorted((ROOT / "examples").glob("**/*job*.json")):
    rooms = len(json.loads(job.read_text())["floor"]["rooms"])
    with tempfile.TemporaryDirectory() as folder:
        out = str(Path(folder) / "plan")
        cold(
            f"farwall plan {job.parent.name} ({rooms} rooms)",
            [FARWALL, "plan", str(job), "--out", out],
            times=3,
            good=(DONE, ANSWER_IS_NO),
        )
