"""A program that is killed, and whether a process that it began lives on."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path


def left_behind(program: str, folder: Path) -> str:
    """Runs a program until it says that it works, kills it, and waits until all that it began has
    ended; what they printed after that. Raises `TimeoutExpired` when one lives on."""
    (folder / "program.py").write_text(program)
    run = subprocess.Popen(
        [sys.executable, str(folder / "program.py")], stdout=subprocess.PIPE, text=True
    )
    assert run.stdout is not None
    assert run.stdout.readline() == "works\n"
    run.kill()
    # what it began holds the other end of this pipe: it ends when they are gone
    rest, _ = run.communicate(timeout=60)
    return rest
