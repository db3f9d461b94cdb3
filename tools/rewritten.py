"""Compile all tests once, their asserts rewritten, before several workers would each do it.

`tools/check.py` calls this before all tests. pytest rewrites the asserts of a test file as it is
imported, and every worker imports all of them; where the environment forbids Python to write
bytecode, or workers begin together, each rewrites them all. pytest reads what lies here whether it
may write or not, and makes anew what is not of the very same source. What tests import is compiled
as well, and what was changed in Farwall since its set-up: tests begin thousands of its processes.
"""

import ast
import compileall
import os
import py_compile
import sys
from collections.abc import Iterable, Iterator
from concurrent.futures import ProcessPoolExecutor
from contextlib import suppress
from importlib import import_module
from multiprocessing import get_context
from pathlib import Path

TESTS = Path(__file__).resolve().parent.parent / "tests"
SOURCE = TESTS.parent / "src"


def is_rewritten(path: Path) -> bool:
    """Whether pytest rewrites the asserts of this file: a test, or what they share by fixtures."""
    return path.name.startswith("test_") or path.name == "conftest.py"


def rewrite(paths: Iterable[Path]) -> int:
    """Put the rewritten bytecode of these test files where pytest looks; how many were made."""
    from _pytest.assertion import rewrite as pytests
    from _pytest.config import _prepareconfig

    config = _prepareconfig(["-c", os.devnull, "--rootdir", str(TESTS.parent), "--noconftest"])
    state, made = config.stash[pytests.assertstate_key], 0
    for path in paths:
        folder = pytests.get_cache_dir(path)
        kept = folder / (path.name[:-3] + pytests.PYC_TAIL)
        if pytests._read_pyc(path, kept) is None and pytests.try_makedirs(folder):
            source_hash, code = pytests._rewrite_test(path, config)
            made += pytests._write_pyc(state, code, source_hash, kept)
    return made


def libraries(paths: Iterable[Path]) -> Iterator[str]:
    """Every module from outside the project that these files name at their top."""
    for path in paths:
        for node in ast.parse(path.read_bytes()).body:
            named = [one.name for one in node.names] if isinstance(node, ast.Import) else []
            if isinstance(node, ast.ImportFrom) and node.module and not node.level:
                named = [node.module]
            yield from (one for one in named if one.split(".")[0] not in {"tests", "farwall"})


def compile_others(paths: list[Path]) -> None:
    """The bytecode of the helpers among the tests, and of all libraries that tests name."""
    for path in paths:
        if not is_rewritten(path):
            py_compile.compile(str(path), quiet=2)
    for module in dict.fromkeys(libraries(paths)):
        with suppress(ImportError):
            import_module(module)


def compile_changed(source: Path) -> None:
    """The bytecode of what has none below this folder, or that of an earlier state of its file."""
    compileall.compile_dir(source, quiet=2)


def main() -> None:
    """All tests, by as many processes as there are cores; bytecode allowed."""
    sys.dont_write_bytecode = False
    paths = sorted(TESTS.rglob("*.py"))
    tests = [path for path in paths if is_rewritten(path)]
    cores = os.cpu_count() or 1
    with ProcessPoolExecutor(cores, mp_context=get_context("fork")) as beside:
        shares = [beside.submit(rewrite, tests[n::cores]) for n in range(cores)]
        compile_changed(SOURCE)
        compile_others(paths)
        made = sum(share.result() for share in shares)
    print(f"compiled {made} test files", flush=True)


if __name__ == "__main__":
    main()
