"""Nothing stands in the source for its own tests alone: what no code asks for goes."""

import ast
import re
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[1]
SOURCE = ROOT / "src" / "farwall"
WORD = re.compile(r"[A-Za-z_]\w*")
ASKED_BY = ("*.py", "*.html", "*.toml", "*.json", "*.ini", "*.mako")
ELSEWHERE = {
    "revision": "a step of the book's layout, asked for by the library that moves it",
    "down_revision": "as `revision`",
    "preprocess": "a template's extension, asked for by the library",
    "run": "each command's own, asked for by its name",
    "arguments": "as `run`",
    "plan_to_text": "the way back of a reader: what it reads is written by it",
    "entry_to_line": "as `plan_to_text`",
    "closed_text": "as `plan_to_text`",
    "rh_percent_from_dew_point": "the way back of the dew point",
    "_pack_": "how a structure lies in memory, asked for by the library",
    "floor_places": "the way back of `photo_places`",
    "sentences_of": "all that a form may say, for who goes through it",
    "field_pages": "`field_pages_begun` with nothing else at work",
    "about_any_m": "one of three bounds, each held to its own proof",
    "cut_off_m": "as `about_any_m`",
    "whole_patches": "the sun on an endless floor, before walls stop it",
    "depths_m": "where each node of the slab lies, to lay its figures beside a measurement",
    "SEEN_ONLY": "findings that offer no repair: the other half of what each page offers",
    "WATCHABLE": "what may be watched, for who draws a watch",
    "before_sheet": "the photo from before: its trials are told in docs/bench-marks.md",
}
"""What only a library or a test asks for, and why it is there."""


def _named(body: list[ast.stmt]) -> Iterator[str]:
    """The names that a body of statements gives, and those within its classes that are no fields.

    A field goes out with its noun as a whole (JSON), so nobody has to name it.
    """
    for one in body:
        if isinstance(one, ast.FunctionDef | ast.AsyncFunctionDef):
            if not (one.name.startswith("__") or _is_hook(one)):
                yield one.name
        elif isinstance(one, ast.ClassDef):
            yield one.name
            yield from _named([each for each in one.body if not isinstance(each, ast.AnnAssign)])
        elif isinstance(one, ast.Assign):
            yield from (each.id for each in one.targets if isinstance(each, ast.Name))
        elif isinstance(one, ast.AnnAssign) and isinstance(one.target, ast.Name):
            yield one.target.id


def _is_hook(one: ast.FunctionDef | ast.AsyncFunctionDef) -> bool:
    """Whether a call decorates it (`@route(...)`): then its name is for the reader alone."""
    return any(isinstance(each, ast.Call) for each in one.decorator_list)


def unused(source: Path, *others: Path) -> set[str]:
    """Names of the source that no text of it or of the other folders has beyond their own place."""
    given: Counter[str] = Counter()
    asked: Counter[str] = Counter()
    for folder in (source, *others):
        for pattern in ASKED_BY:
            for path in folder.rglob(pattern):
                text = path.read_text(encoding="utf-8")
                asked.update(WORD.findall(text))
                if folder == source and path.suffix == ".py":
                    given.update(_named(ast.parse(text).body))
    return {name for name, times in given.items() if asked[name] <= times}


@pytest.fixture(scope="module")
def found() -> set[str]:
    return {one for one in unused(SOURCE, ROOT / "bench") if not one.startswith("__")}


@pytest.mark.slow
def test_no_name_of_the_source_is_for_tests_alone(found):
    assert found - set(ELSEWHERE) == set(), "take it out, or say in ELSEWHERE who asks for it"


@pytest.mark.slow
def test_no_exception_outlives_its_reason(found):
    assert set(ELSEWHERE) - found <= {"revision", "run", "arguments"}


def test_the_search_is_not_asleep(tmp_path):
    (tmp_path / "a.py").write_text(
        "LEFT = 1\nTAKEN = 2\n\n\nclass Noun:\n    field: int\n\n    def stray(self): ...\n\n"
        "    def told(self): ...\n\n\n@route('/x')\ndef page(): ...\n"
    )
    (tmp_path / "b.py").write_text("from a import TAKEN, Noun\n\nprint(TAKEN, Noun().told())\n")
    assert unused(tmp_path) == {"LEFT", "stray"}
