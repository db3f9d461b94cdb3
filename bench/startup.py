"""How soon the command line answers. Wanted: `farwall --help` under 0.3 s."""

import sys

from timing import FARWALL, ROOT, cold

cold("farwall --help", [FARWALL, "--help"], times=10)
cold("run.py --help", [sys.executable, str(ROOT / "run.py"), "--help"], times=10)
