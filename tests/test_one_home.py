"""A function that says the same as another has one home: names of arguments and of itself apart.

Methods are left out, for classes of one kind may keep the same thing; so are functions of one short
line. Where two must not share code, or lie in layers that may not know each other, that is told.
"""

import ast
from collections import defaultdict
from functools import cache
from pathlib import Path

import farwall

ROOT = Path(farwall.__file__).parent
LEAST = 450
"""Characters of the dump of a body below which nothing is compared: one short line."""
APART = {
    "_fork": "a bench that kills a writer, and the command line",
    "_laid": "two generators of floors, each frozen by itself",
    "science": "the invented photos share nothing with what reads them",
    "_middle": "readers of vectors and of photos; the point of a line, the point within a shape",
    "_place_of": "readers of drawings and of maps",
    "_at": "a bench rounds like the reader that it judges, on its own",
    "_texts": "a page and a reader",
    "_letter": "letters of what is masked and letters of walls have nothing in common",
    "_triple": "a bench that foresees on its own",
    "_point": "readers of vectors and of photos",
    "_first": "a capital letter, in the job and on a page",
}


class _Unnamed(ast.NodeTransformer):
    def __init__(self):
        self.names = {}

    def visit_arg(self, node):
        node.annotation = None
        node.arg = self.names.setdefault(node.arg, f"v{len(self.names)}")
        return node

    def visit_Name(self, node):
        node.id = self.names.get(node.id, node.id)
        return node


def said_by(node):
    """What a function does, without its words, its name and those of its arguments.

    The node is not what it was after.
    """
    if ast.get_docstring(node) is not None:
        node.body = node.body[1:]
    node.name, node.decorator_list, node.returns = "f", [], None
    return ast.dump(_Unnamed().visit(node))


def functions(root):
    for path in sorted(root.rglob("*.py")):
        for node in ast.parse(path.read_text(encoding="utf-8")).body:
            if isinstance(node, ast.FunctionDef):
                home = f"{path.relative_to(root).as_posix()} {node.name}"
                yield home, said_by(node)


@cache
def twice(root):
    homes = defaultdict(list)
    for home, said in functions(root):
        if len(said) >= LEAST:
            homes[said].append(home)
    return [each for each in homes.values() if len(each) > 1]


def test_no_function_is_written_twice():
    unsaid = [each for each in twice(ROOT) if not {one.split()[1] for one in each} & APART.keys()]
    assert unsaid == []


def test_each_of_those_that_are_told_is_still_there():
    told = {one.split()[1] for each in twice(ROOT) for one in each}
    assert APART.keys() - told == set()


def test_the_same_under_other_names_is_found(tmp_path):
    body = (
        "    if {0} is None:\n        return 0.0\n    return round({0} * 2.0, 4) + abs({0} - 1.5)\n"
    )
    (tmp_path / "a.py").write_text("def one(x: float) -> float:\n" + body.format("x"))
    (tmp_path / "b.py").write_text(
        'def two(length_m):\n    """Twice."""\n' + body.format("length_m")
    )
    assert twice(tmp_path) == [["a.py one", "b.py two"]]
    (tmp_path / "b.py").write_text("def two(y):\n" + body.format("y").replace("1.5", "1.6"))
    twice.cache_clear()
    assert twice(tmp_path) == []
