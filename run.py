#!/usr/bin/env python3
"""Set Farwall up beside this file on the first run, then run it.

    python3 run.py demo          plan the invented house
    python3 run.py test [args]   check everything, or only the tests that pytest's args name
    python3 run.py X ...         the same as `farwall X ...`

The set-up lives in .venv. A stamp is written there last, so a set-up that was cut short is
made again from nothing, and a file lock lets two first runs start at once.
"""

from __future__ import annotations  # so that an old Python gets as far as being told so

import hashlib
import os
import shutil
import subprocess
import sys
from importlib.util import find_spec
from pathlib import Path

ROOT = Path(__file__).resolve().parent
VENV = ROOT / ".venv"
BIN = VENV / ("Scripts" if sys.platform == "win32" else "bin")
PYTHON = BIN / ("python.exe" if sys.platform == "win32" else "python")
STAMP = VENV / "lib" / "farwall-stamp"
LOCKS = {"core": "requirements.lock", "test": "requirements-test.lock"}
INPUTS = ("pyproject.toml", "requirements-boot.lock", *LOCKS.values())


def place() -> str:
    """What ties a set-up to where it lies: this folder, and the Python behind its link."""
    return f"{ROOT} {PYTHON.resolve()}"


def stamp(kind: str) -> str:
    """What the stamp of a finished set-up says: its kind, what it was made from, its place."""
    made_from = b"".join((ROOT / name).read_bytes() for name in INPUTS)
    return f"{kind} {hashlib.sha256(made_from).hexdigest()} {place()}"


def stamped() -> str:
    """The stamp of the set-up that is there; empty when none was finished here."""
    text = STAMP.read_text() if STAMP.exists() and PYTHON.exists() else ""
    return text if text.endswith(place()) else ""


def ready(kind: str) -> bool:
    """Whether this set-up is there and up to date; the test set contains the core set."""
    return stamped() in (stamp(kind), stamp("test"))


def set_up(kind: str) -> None:
    """Install the locked requirements and this project into .venv; the stamp comes last."""
    print(f"farwall: setting up {VENV} (once, about 20 seconds)", file=sys.stderr, flush=True)
    kind = "test" if stamped().startswith("test") else kind
    pip = [str(PYTHON), "-m", "pip"]
    if not stamped():
        shutil.rmtree(VENV, ignore_errors=True)
        make = [sys.executable, "-m", "venv", str(VENV)]
        if find_spec("pip"):  # quicker than a pip of its own, and needs no python3-venv package
            make.append("--without-pip")
            pip = [sys.executable, "-m", "pip", "--python", str(PYTHON)]
        step(make)
        step([*pip, "install", "-q", "--disable-pip-version-check", "--no-user",
              "--require-hashes", "-r", "requirements-boot.lock"])  # fmt: skip
    STAMP.unlink(missing_ok=True)
    uv = [str(PYTHON), "-m", "uv", "pip", "install", "-q", "--python", str(PYTHON)]
    uv.append("--no-build-isolation")  # the build backends are locked too
    step([*uv, "--require-hashes", "-r", "requirements-boot.lock", "-r", LOCKS[kind]])
    step([*uv, "--no-deps", "-e", "."])
    step([str(PYTHON), "tools/bytecode.py"])
    STAMP.write_text(stamp(kind))


def step(command: list[str]) -> None:
    """Run one step of the set-up in the project's folder; stop calmly when it fails."""
    # close_fds: a step that outlives a killed run still holds the lock
    done = subprocess.run(command, cwd=ROOT, check=False, stdout=sys.stderr, close_fds=False)
    if code := done.returncode:
        sys.exit(f"farwall: this step of the set-up failed (exit {code}): {' '.join(command)}\n"
                 "Mend what the lines above say (often: no network, or on Debian "
                 "`apt-get install python3-venv`), then run the same command again.")  # fmt: skip


def main(args: list[str]) -> None:
    """Set up when needed, then become farwall, or the check of everything."""
    if sys.version_info < (3, 11):  # noqa: UP036 - a calm line for whoever has an older one
        sys.exit(f"farwall: needs Python 3.11 or later; this one is {sys.version.split()[0]}.")
    kind = "test" if args[:1] == ["test"] else "core"
    if not ready(kind):
        with (ROOT / ".venv.lock").open("w") as lock:
            wait_for(lock.fileno())
            os.set_inheritable(lock.fileno(), True)  # noqa: FBT003 - it takes no keyword
            if not ready(kind):
                set_up(kind)
    command = [str(BIN / "farwall"), *args]
    if kind == "test":
        command = [str(PYTHON), str(ROOT / "tools" / "check.py"), *args[1:]]
    if sys.platform == "win32":
        sys.exit(subprocess.run(command, check=False).returncode)
    os.execv(command[0], command)


def wait_for(file: int) -> None:
    """Wait until no other run is setting up; the system lets go of it if that run dies."""
    if sys.platform == "win32":
        import msvcrt

        msvcrt.locking(file, msvcrt.LK_LOCK, 1)
    else:
        import fcntl

        fcntl.flock(file, fcntl.LOCK_EX)


if __name__ == "__main__":
    try:
        main(sys.argv[1:])
    except KeyboardInterrupt:
        sys.exit("farwall: stopped. Run the same command again to carry on.")
