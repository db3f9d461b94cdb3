"""Make the three hash-locked requirement files again.

.venv/bin/python tools/lock.py             keep what is locked, add or drop what pyproject.toml says
.venv/bin/python tools/lock.py --upgrade   take the newest releases

The locks hold names, versions, markers and hashes; no address of any package index, so that they
work behind any mirror. The core lock is cut from the test lock: both sets always agree.
"""

import re
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
COMPILE = [sys.executable, "-m", "uv", "pip", "compile", "-q", "--universal",
           "--python-version", "3.11", "--generate-hashes", "--no-emit-index-url",
           "--no-header", "--no-annotate"]  # fmt: skip
LOCKS = {
    "requirements-boot.lock": ["requirements-boot.in"],
    "requirements-test.lock": [
        "pyproject.toml",
        "--extra",
        "fast",
        "--extra",
        "postgres",
        "--extra",
        "batch",
        "--extra",
        "ifc",
        "--group",
        "dev",
    ],
    "requirements.lock": ["pyproject.toml", "-c", "requirements-test.lock"],
}

for lock, inputs in LOCKS.items():
    subprocess.run([*COMPILE, *inputs, "-o", lock, *sys.argv[1:]], cwd=ROOT, check=True)
    text = (ROOT / lock).read_text()
    if found := re.search(r"^.*(://|--(extra-)?index-url|--find-links).*$", text, re.MULTILINE):
        sys.exit(f"{lock}: holds an address, which must not be there: {found.group()}")
    print(f"{lock}: {text.count('==')} packages")
