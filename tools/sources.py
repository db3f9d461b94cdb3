"""Write the lines of docs/sources.md down as data for the screens: src/farwall/web/sources.json.

python tools/sources.py: run it when docs/sources.md has changed; a test holds the two together.
"""

from __future__ import annotations

import json
import re
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
TOLD = ROOT / "docs" / "sources.md"
DATA = ROOT / "src" / "farwall" / "web" / "sources.json"
_MARKS = re.compile(r"\*\*|`|\\(?=\|)")
_COLUMNS = (3, 4)


def lines_of(text: str) -> dict[str, list[str]]:
    """Source, use and how it was seen, by key; the first line of a key counts."""
    found: dict[str, list[str]] = {}
    for line in text.splitlines():
        cells = [_MARKS.sub("", cell.strip()) for cell in line.strip().strip("|").split(" | ")]
        if len(cells) in _COLUMNS and re.fullmatch(r"[a-z0-9][a-z0-9-]+", cells[0]):
            found.setdefault(cells[0], [*cells[1:], ""][:3])
    found.pop("key", None)
    return found


def main() -> None:
    """Write them."""
    lines = lines_of(TOLD.read_text(encoding="utf-8"))
    text = json.dumps(lines, ensure_ascii=False, indent=0, sort_keys=True)
    DATA.write_text(text + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
