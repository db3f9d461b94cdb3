"""The spray plan on frozen floors: `farwall bench spray` on all shapes, or on three with --once."""

import subprocess
import sys

from timing import FARWALL, ONCE

CALLS = [["--set", "shapes", "--keep-going"]]
if ONCE:
    CALLS = [["--only", name] for name in ("small square", "L, inner corner", "kitchen island")]

for words in CALLS:
    code = subprocess.run([FARWALL, "bench", "spray", *words], check=False).returncode
    if code not in {0, 1}:  # 1: a figure that must not be, for the reader and not the smoke test
        sys.exit(f"farwall bench spray {' '.join(words)}: exit {code}")
