"""Run every check of the house, or only the tests that pytest's arguments name.

`python3 run.py test` calls this inside the project's own environment. Each step is said in one
line; the lints run beside pytest, whose closing line is the last one. Exit 1 when any step failed.
"""

import os
import shutil
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
PYTHON = sys.executable
SCRIPTS = Path(PYTHON).parent
# A command that tests need -> the Debian package that brings it.
SYSTEM_TOOLS = {
    "chromium": "chromium",
    "pdftoppm": "poppler-utils",
    "pdftotext": "poppler-utils",
    "initdb": "postgresql",  # a server of our own for the job book, thrown away afterwards
    "certutil": "libnss3-tools",  # has a browser trust an authority of our own
    "strace": "strace",  # records what the job book writes, to cut the power in between
}
# Debian keeps a server's programs off the path.
ASIDE = Path("/usr/lib/postgresql")
LINT = {
    "ruff check": [PYTHON, "-m", "ruff", "check", "-q"],
    "ruff format": [PYTHON, "-m", "ruff", "format", "-q", "--check"],
    "mypy": [PYTHON, "-m", "mypy"],
    "layers": [str(SCRIPTS / "lint-imports"), "--no-cache"],
}


def say(text: str) -> None:
    """One line to the person who waits."""
    print(f"farwall test: {text}", flush=True)


def run(name: str, command: list[str]) -> bool:
    """Run one step in the project's folder and say how it went; True when it passed."""
    quiet = subprocess.run(
        command, cwd=ROOT, check=False, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True
    )
    say(f"{name}: {'passed' if quiet.returncode == 0 else 'FAILED'}")
    if quiet.returncode:
        print(quiet.stdout, flush=True)
    return quiet.returncode == 0


def may_install() -> list[str] | None:
    """The words before apt-get when this user may install packages; None when not."""
    if not shutil.which("apt-get"):
        return None
    if os.geteuid() == 0:
        return []
    sudo = shutil.which("sudo") and subprocess.run(
        ["sudo", "-n", "true"], check=False, capture_output=True
    )
    return ["sudo", "-n"] if sudo and sudo.returncode == 0 else None


def get_system_tools() -> None:
    """Install what tests need from Debian, or say loudly what will be skipped and why."""
    missing = {
        tool: package
        for tool, package in SYSTEM_TOOLS.items()
        if not shutil.which(tool) and not any(ASIDE.glob(f"*/bin/{tool}"))
    }
    if not missing:
        return
    packages = sorted(set(missing.values()))
    why = "apt-get is not here, or this user may not install (neither root nor `sudo -n`)"
    if (prefix := may_install()) is not None:
        say(f"installing {', '.join(packages)} with apt-get")
        apt = [*prefix, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-qq"]
        apt += ["-o", "DPkg::Lock::Timeout=300"]
        if run("apt-get update", [*apt, "update"]) and run(
            "apt-get install", [*apt, "install", "-y", "--no-install-recommends", *packages]
        ):
            return
        why = "apt-get failed, see above"
    say(f"SKIPPING the tests that need {', '.join(missing)}: {why}.")
    say(f"To run them, install {', '.join(packages)} and run this again.")


def lint() -> list[str]:
    """The names of what failed; all begin at once, for the slowest keeps to one core."""
    with ThreadPoolExecutor(len(LINT)) as beside:
        passed = list(beside.map(run, LINT, LINT.values()))
    return [name for name, good in zip(LINT, passed, strict=True) if not good]


def workers() -> int:
    """How many tests run at once: half as many again as cores, for what tries the pages waits for
    disks and browsers half of its time."""
    cores = len(os.sched_getaffinity(0)) if sys.platform == "linux" else os.cpu_count() or 1
    return cores + cores // 2


def main(args: list[str]) -> int:
    """Lint, types, layers and all tests; with arguments, only pytest with these.

    `--full` has the costly tests try all they can, not only what each run tries.
    `--long [FROM:TO [FORMAT]]` reads many spoilt files instead, for as long as that takes.
    """
    asked: dict[str, str] = {}
    if "--full" in args:
        args = [one for one in args if one != "--full"]
        asked = {"FARWALL_FULL": "1"}
    if args[:1] == ["--long"]:
        long = [PYTHON, "-m", "tests.hostile.long", *args[1:]]
        return subprocess.run(long, cwd=ROOT, check=False).returncode
    get_system_tools()
    if not args:  # what comes of it only saves time: nothing fails with it
        subprocess.run([PYTHON, str(ROOT / "tools" / "rewritten.py")], cwd=ROOT, check=False)
    say("pytest")
    command = [PYTHON, "-m", "pytest", "-n", str(workers()), "--dist", "worksteal", *args]
    with ThreadPoolExecutor(1) as beside:  # mypy has one core for most of a minute
        linted = None if args else beside.submit(lint)
        pytest = subprocess.run(command, cwd=ROOT, check=False, env={**os.environ, **asked})
        failed = linted.result() if linted else []
    if failed:
        print(f"farwall test: FAILED beside pytest: {', '.join(failed)}", file=sys.stderr)
    return pytest.returncode or (1 if failed else 0)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
