"""Whether the text of a DXF is whole: pairs of a code and a value up to its end.

The recovering library puts itself in step again where a pair is broken, and says nothing of it.
Codes below nought live inside a program and in no file (the format's reference, from memory).
"""

from __future__ import annotations

import re

_PAIRS = re.compile(rb"(?:[ \t]*+\d{1,5}+[ \t\r]*+\n[^\n]*+\n?+)*+")
_CODES = re.compile(rb"(?:[ \t]*\d{1,5}[ \t\r]*\n)*")
_BINARY = b"AutoCAD Binary DXF"
_LOOK = "Lines may be missing: ask for the file anew, or compare the rooms."


def torn_dxf(data: bytes) -> list[str]:
    """A sentence for each way in which the text is not whole; a binary one is not looked at."""
    if data.startswith(_BINARY):
        return []
    text = data.rstrip()
    if _PAIRS.fullmatch(text) is None and (line := _out_of_step(text)):
        return [f"From line {line} on codes and values are out of step. {_LOOK}"]
    if text[text.rfind(b"\n") + 1 :].strip() != b"EOF":
        return [f"The file breaks off before its end. {_LOOK}"]
    return []


def _out_of_step(text: bytes) -> int:
    """The first line that should be a code and is none, 0 where all are."""
    lines = text.split(b"\n")
    whole = _CODES.match(b"\n".join(lines[::2]) + b"\n")
    good = whole[0].count(b"\n") if whole else 0
    return 2 * good + 1 if good < (len(lines) + 1) // 2 else 0
