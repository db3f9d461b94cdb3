"""What the code can say: its strings of two words and more, places standing where values come."""

import ast
import re
from pathlib import Path

import farwall
from farwall.phrasebook.places import HOLE

ROOT = Path(farwall.__file__).parent


def spoken_in(path):
    """Line and text of each such string of a module, but for its docstrings."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    silent = set()
    for node in ast.walk(tree):
        for one in getattr(node, "body", []) if isinstance(getattr(node, "body", 0), list) else []:
            if isinstance(one, ast.Expr) and isinstance(one.value, ast.Constant):
                silent.add(id(one.value))
        if isinstance(node, ast.JoinedStr):
            silent |= {id(part) for part in node.values}
    for node in ast.walk(tree):
        text = None
        if isinstance(node, ast.JoinedStr):
            parts = node.values
            text = "".join(p.value if isinstance(p, ast.Constant) else HOLE for p in parts)
        elif isinstance(node, ast.Constant) and isinstance(node.value, str):
            text = None if id(node) in silent else re.sub(r"\{[^{}]*\}", HOLE, node.value)
        if text is not None and _speaks(text):
            yield node.lineno, text


def _speaks(text):
    return " " in text.strip() and len(re.findall(r"[A-Za-z]{2,}", text)) >= 2


def modules(*names):
    """The modules under these folders or of these names, below the package."""
    for name in names:
        there = ROOT / name
        yield from sorted(there.rglob("*.py")) if there.is_dir() else [there]
