"""docs/acid-pouring.md lists the rules as they are."""

import importlib.util
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]


def test_the_page_lists_every_rule_as_it_is():
    spec = importlib.util.spec_from_file_location("rules", ROOT / "tools" / "pouring_rules.py")
    tool = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(tool)
    page = (ROOT / "docs" / "acid-pouring.md").read_text(encoding="utf-8")
    told = page.split(tool.BEGIN)[1].split(tool.END)[0].strip()
    assert told == tool.tables().strip(), "run: python tools/pouring_rules.py"
