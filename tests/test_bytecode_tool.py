"""Which modules the set-up compiles."""

import importlib.util
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]


@pytest.fixture
def bytecode():
    """tools/bytecode.py as a module."""
    spec = importlib.util.spec_from_file_location("bytecode_tool", ROOT / "tools" / "bytecode.py")
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_modules_of_a_source_and_its_imports_are_found_inside_functions_too(bytecode, tmp_path):
    (tmp_path / "house").mkdir()
    (tmp_path / "house" / "__init__.py").write_text("")
    (tmp_path / "house" / "door.py").write_text(
        "import shapely\ndef f():\n    from pydantic import TypeAdapter\n"
    )
    assert set(bytecode.imports(tmp_path)) == {
        ("house", ""), ("house.door", ""), ("shapely", ""), ("pydantic", "TypeAdapter"),
    }  # fmt: skip


def test_every_command_is_among_them(bytecode):
    from farwall.cli.main import COMMANDS

    found = {module for module, _ in bytecode.imports(bytecode.SOURCE)}
    assert {f"farwall.cli.{name.replace('-', '_')}" for name in COMMANDS} <= found
