"""The run sheet as one file: page, style, script and plan, with a policy of its own. Pure."""

from __future__ import annotations

import base64
import gzip
import hashlib
import json
import re
from collections.abc import Mapping, Sequence
from importlib.resources import files
from typing import Any

_LANGUAGES = ("en", "es")
_SCRIPT = '<script src="/slab/files/slab.js" defer></script>\n'
_FIRST = '<meta charset="utf-8">\n'
_END = "<noscript>"


def one_file(sheet: Mapping[str, Any], paper: Sequence[bytes] = ()) -> bytes:
    """The page as UTF-8: it opens from a disk and asks nobody for anything.

    paper: the pages of the paper run sheet as SVG; the file shows them and is printed as them. Its
    policy allows this very script and this very style, by their SHA-256 [csp3], and pictures that
    it holds itself; no connection can be made from it.
    """
    page, script = _built("index.html"), _built("slab.js")
    page = page.replace(f"<script>{early_script(page)}</script>\n", "")
    bare = style_of(page)
    style = bare + _page_size(paper)
    if "</script" in script or "<!--" in script or "</style" in style:
        raise AssertionError("the built files cannot stand inside a page")
    policy = (
        f"default-src 'none'; script-src '{script_hash(script)}'; "
        f"style-src '{script_hash(style)}'; "
        "img-src data: blob:; media-src blob:; base-uri 'none'; form-action 'none'"
    )
    # A sheet is text from outside: nothing in it may end the block that it stands in.
    told = _inside(sheet)
    words = _inside({name: json.loads(_built(f"{name}.json")) for name in _LANGUAGES})
    meta = f'<meta http-equiv="Content-Security-Policy" content="{policy}">\n'
    held = f'<script type="application/json" id="sheet">{told}</script>\n'
    held += f'<script type="application/json" id="words">{words}</script>\n'
    place = ""
    if paper:
        held += f'<script type="application/json" id="paper-packed">{_packed(paper)}</script>\n'
        place = '<section id="paper"></section>\n'
    for old, new in (
        (_FIRST, _FIRST + meta),
        (f"<style>{bare}</style>", f"<style>{style}</style>"),
        (_SCRIPT, f"{held}<script>{script}</script>\n"),
        (_END, place + _END),
    ):
        if page.count(old) != 1:
            raise AssertionError(f"the built page has not one {old.strip()}")
        page = page.replace(old, new)
    return page.encode()


def early_script(page: str) -> str:
    """What the built page begins before its own script is there."""
    found = re.search(r"<script>(.*?)</script>", page, re.DOTALL)
    if found is None:
        raise AssertionError("the built page begins nothing early")
    return found[1]


def style_of(page: str) -> str:
    """The style of the built page."""
    found = re.search(r"<style>(.*?)</style>", page, re.DOTALL)
    if found is None:
        raise AssertionError("the built page has no style")
    return found[1]


def _inside(told: Mapping[str, Any]) -> str:
    """JSON that nothing in it can end the block of."""
    return json.dumps(told, ensure_ascii=False, separators=(",", ":")).replace("<", "\\u003c")


def _packed(paper: Sequence[bytes]) -> str:
    """The pages, each as base64 of gzip, as a JSON list."""
    told = [base64.b64encode(gzip.compress(one, 9, mtime=0)).decode() for one in paper]
    return json.dumps(told)


def _page_size(paper: Sequence[bytes]) -> str:
    """The paper that the pages were set for, in points, so that they are printed at full size."""
    found = re.match(rb'<svg viewBox="0 0 ([\d.]+) ([\d.]+)"', paper[0]) if paper else None
    if found is None:
        return ""
    wide, high = (float(one) for one in found.groups())
    return f"@page {{ size: {wide:g}pt {high:g}pt; margin: 0; }}"


def _built(name: str) -> str:
    return files("farwall.web.slab").joinpath("dist", name).read_text(encoding="utf-8")


def script_hash(text: str) -> str:
    """What a policy names the text of a script or style by: its SHA-256 [csp3]."""
    return "sha256-" + base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()
