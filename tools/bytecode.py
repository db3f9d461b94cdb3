"""Write the bytecode of all that Farwall imports, so that no command has to compile it.

`python3 run.py` calls this once, at the end of its set-up. Where the environment forbids Python
to write bytecode, or the first command is the only one, compiling costs more than half a second.
Imports inside functions count as well. Whole libraries are not compiled: two files of three are
never used.
"""

import ast
import sys
from collections.abc import Iterator
from contextlib import suppress
from importlib import import_module
from pathlib import Path

SOURCE = Path(__file__).resolve().parent.parent / "src"
# What the libraries themselves import only when it is first needed.
LATE = ("numpy.ma", "pydantic.dataclasses", "pydantic.fields", "pydantic._internal._validators")


def imports(source: Path) -> Iterator[tuple[str, str]]:
    """Every module that the Python files below a folder import, with a name taken from it."""
    for path in sorted(source.rglob("*.py")):
        module = ".".join(path.relative_to(source).with_suffix("").parts)
        yield module.removesuffix(".__init__"), ""
        for node in ast.walk(ast.parse(path.read_bytes())):
            if isinstance(node, ast.ImportFrom) and node.module and not node.level:
                yield from ((node.module, name.name) for name in node.names)
            elif isinstance(node, ast.Import):
                yield from ((name.name, "") for name in node.names)


def main() -> None:
    """Import them all, bytecode allowed; what is there for type checkers only is passed over."""
    sys.dont_write_bytecode = False
    for module, name in dict.fromkeys([*imports(SOURCE), *((late, "") for late in LATE)]):
        # AttributeError: what moves the book's tables runs only in a move; it is compiled by then.
        with suppress(ImportError, AttributeError):
            getattr(import_module(module), name, None)  # a name may be a module not loaded yet


if __name__ == "__main__":
    main()
