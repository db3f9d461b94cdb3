"""Write the bytecode of all that Farwall imports, so that no command has to compile it.

`python3 run.py` calls this once, at the end of its set-up. Where the environment forbids Python
to write bytecode, or the first command is the only one, compiling costs more than half a second.
Imports inside functions count as well. Whole libraries are not compiled: two files of three are
never used. Farwall's own files are compiled by a process of their own meanwhile.
"""

import ast
import re
import subprocess
import sys
from collections.abc import Iterator
from contextlib import suppress
from importlib import import_module
from pathlib import Path

SOURCE = Path(__file__).resolve().parent.parent / "src"
# What the libraries themselves import only when it is first needed.
LATE = ("numpy.ma", "pydantic.dataclasses", "pydantic.fields", "pydantic._internal._validators")
SHARES = 2
IMPORTED = re.compile(r"^\s*(?:from|import)\s+(\w+)", re.MULTILINE)


def imports(source: Path) -> Iterator[tuple[str, str]]:
    """Every module of a library that the Python files below a folder import, with a name taken
    from it. Python's own modules, and those of the folder, are left out."""
    known = {"__future__", *sys.stdlib_module_names, *(one.name for one in source.iterdir())}
    for path in sorted(source.rglob("*.py")):
        text = path.read_text(encoding="utf-8")
        if not {*IMPORTED.findall(text)} - known:
            continue  # most of them: parsing a file takes a hundred times as long as this
        for module, name in _imports_of(text):
            if module.partition(".")[0] not in known:
                yield module, name


def _imports_of(text: str) -> Iterator[tuple[str, str]]:
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.ImportFrom) and node.module and not node.level:
            yield from ((node.module, name.name) for name in node.names)
        elif isinstance(node, ast.Import):
            yield from ((name.name, "") for name in node.names)


def main() -> None:
    """Compile our own, and import what they import, in processes side by side."""
    others = [
        [sys.executable, "-m", "compileall", "-q", str(SOURCE)],
        *([sys.executable, __file__, str(share)] for share in range(1, SHARES)),
    ]
    begun = [subprocess.Popen(one) for one in others]
    load(0)
    sys.exit(max(one.wait() for one in begun))


def load(share: int) -> None:
    """Import every so-manieth of the libraries, bytecode allowed; what is there for type checkers
    only is passed over."""
    sys.dont_write_bytecode = False
    wanted = dict.fromkeys([*imports(SOURCE), *((late, "") for late in LATE)])
    libraries = sorted({module.partition(".")[0] for module, _ in wanted})
    own = libraries[share::SHARES]
    for module, name in wanted:
        if module.partition(".")[0] in own:
            # AttributeError: what moves the book's tables runs only in a move; compiled by then.
            with suppress(ImportError, AttributeError):
                getattr(import_module(module), name, None)  # a name may be a module not yet loaded


if __name__ == "__main__":
    main() if len(sys.argv) == 1 else load(int(sys.argv[1]))
