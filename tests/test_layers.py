"""The layers hold, and the machine that says so is not asleep."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SOURCE = ROOT / "src" / "farwall"
LINT_IMPORTS = str(Path(sys.executable).with_name("lint-imports"))


def lint(folder: Path) -> subprocess.CompletedProcess[str]:
    """Check the layers of the copy of the source in `folder`."""
    return subprocess.run(
        [LINT_IMPORTS, "--no-cache", "--no-logo"],
        cwd=folder, check=False, capture_output=True, text=True,
        env={**os.environ, "PYTHONPATH": str(folder / "src")},
    )  # fmt: skip


@pytest.fixture
def copy(tmp_path):
    """A copy of the source that a test may spoil."""
    shutil.copytree(SOURCE, tmp_path / "src" / "farwall",
                    ignore=shutil.ignore_patterns("__pycache__"))  # fmt: skip
    shutil.copy(ROOT / "pyproject.toml", tmp_path)
    return tmp_path


def test_the_layers_hold(copy):
    result = lint(copy)
    assert result.returncode == 0, result.stdout
    assert "0 broken" in result.stdout


@pytest.mark.parametrize(
    ("file", "line", "named"),
    [
        ("units.py", "import farwall.floor.nouns", "Upper layers know lower ones"),
        ("shed/__init__.py", "", "farwall.shed"),
        ("floor/nouns.py", "import time", "The core knows no file"),
    ],
    ids=["upward", "no layer", "clock in the core"],
)
def test_a_broken_layer_is_named(copy, file, line, named):
    spoiled = copy / "src" / "farwall" / file
    spoiled.parent.mkdir(exist_ok=True)
    with spoiled.open("a") as text:
        text.write(f"\n{line}\n")
    result = lint(copy)
    assert result.returncode != 0
    assert named in result.stdout
