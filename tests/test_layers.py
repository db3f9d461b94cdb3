"""The layers hold, and the machine that says so is not asleep."""

import ast
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
        ("spray/check/tank.py", "import farwall.floor.nouns", "The checker shares no code"),
        ("spray/check/tank.py", "import farwall.spray.sweep", "The checker shares no code"),
        ("days/solve.py", "import random", "The core knows no file"),
        ("days/check.py", "import farwall.days.nouns", "The checker of the calendar shares"),
    ],
    ids=[
        "upward",
        "no layer",
        "clock in the core",
        "checker leans on ours",
        "checker leans on the solver",
        "chance in the calendar",
        "checker of the calendar leans on ours",
    ],
)
def test_a_broken_layer_is_named(copy, file, line, named):
    spoiled = copy / "src" / "farwall" / file
    spoiled.parent.mkdir(exist_ok=True)
    with spoiled.open("a") as text:
        text.write(f"\n{line}\n")
    result = lint(copy)
    assert result.returncode != 0
    assert named in result.stdout


def imported(file: Path) -> set[str]:
    """Full names of the modules that a file imports."""
    names = set()
    for node in ast.walk(ast.parse(file.read_text())):
        if isinstance(node, ast.Import):
            names |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom):
            names.add(node.module or ".")
    return names


def test_the_checker_imports_only_itself_the_standard_library_numpy_and_shapely():
    files = list((SOURCE / "spray" / "check").glob("*.py"))
    names = set().union(*map(imported, files))
    assert len(files) > 3
    assert "shapely" in {name.split(".")[0] for name in names}
    allowed = {*sys.stdlib_module_names, "numpy", "shapely"}
    others = {name for name in names if name.split(".")[0] not in allowed}
    assert {name for name in others if not f"{name}.".startswith("farwall.spray.check.")} == set()


def test_what_python_loads_on_the_way_to_the_checker_is_not_the_solver():
    """Importing a.b.c runs a and a.b first: they must bring nothing of ours along."""
    code = "import sys, farwall.spray.check; print(*(m for m in sys.modules if 'farwall.' in m))"
    run = subprocess.run(
        [sys.executable, "-c", code], check=True, capture_output=True, text=True, cwd=ROOT
    )
    brought = {name for name in run.stdout.split() if not name.startswith("farwall.spray.check")}
    assert brought == {"farwall.spray"}
