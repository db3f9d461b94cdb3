"""Which modules the set-up compiles."""

import importlib.util
import sys
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


def test_libraries_that_a_source_imports_are_found_inside_functions_too(bytecode, tmp_path):
    (tmp_path / "house").mkdir()
    (tmp_path / "house" / "__init__.py").write_text("import json\nfrom house.door import f\n")
    (tmp_path / "house" / "door.py").write_text(
        "import shapely\nimport house\n"
        "def f():\n    from pydantic import (\n        TypeAdapter,\n    )\n"
    )
    assert set(bytecode.imports(tmp_path)) == {("shapely", ""), ("pydantic", "TypeAdapter")}


def test_what_only_a_text_speaks_of_is_no_library(bytecode, tmp_path):
    (tmp_path / "door.py").write_text('"""\nfrom walls come doors\n"""\n')
    assert list(bytecode.imports(tmp_path)) == []


def test_every_library_has_one_process_that_imports_it(bytecode, monkeypatch):
    """Nothing is loaded here: who would import what is only noted."""
    asked = []
    monkeypatch.setattr(sys, "dont_write_bytecode", sys.dont_write_bytecode)
    monkeypatch.setattr(bytecode, "import_module", asked.append)
    monkeypatch.setattr(bytecode, "imports", lambda _: [("shapely", ""), ("fastapi", "FastAPI")])
    for share in range(bytecode.SHARES):
        bytecode.load(share)
    assert sorted(asked) == sorted(["shapely", "fastapi", *bytecode.LATE])
