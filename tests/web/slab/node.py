"""The sources of the page, built aside with what is installed; skipped aloud where nothing is."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parents[3]
WEB = ROOT / "web"
DIST = ROOT / "src" / "farwall" / "web" / "slab" / "dist"
OFFICE = ROOT / "src" / "farwall" / "web" / "static" / "built"


def tools() -> None:
    """Skips aloud where node or what the sources need is missing."""
    if shutil.which("node") is None:
        pytest.skip("no node here: the page's sources were not tried")
    if not (WEB / "node_modules" / ".bin" / "tsc").exists():
        pytest.skip("run `npm ci` in web/ once: the page's sources were not tried")


def ran(*words: str) -> str:
    """What a command in web/ printed; it must succeed."""
    done = subprocess.run(words, cwd=WEB, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout[-3000:] + done.stderr[-3000:]
    return done.stdout


def replayed(kind: str, drawn: Any, folder: Path) -> Any:
    """What the page's own code makes of what was drawn, from sources compiled just now."""
    tools()
    out = folder / "built"
    ran("node_modules/.bin/tsc", "-p", "tsconfig.test.json", "--outDir", str(out))
    (out / "package.json").write_text('{"type": "module"}')
    (folder / "drawn.json").write_text(json.dumps(drawn))
    return json.loads(
        ran("node", str(out / "tests" / "replay.js"), kind, str(folder / "drawn.json"))
    )
