"""Whether the text of a DXF is whole: pairs of a code and a value up to its end.

The recovering library puts itself in step again where a pair is broken, and says nothing of it.
"""

from __future__ import annotations

import re

_CODES = re.compile(rb"(?:[ \t]*-?\d{1,5}[ \t\r]*\n)*")
_BINARY = b"AutoCAD Binary DXF"
_LOOK = "Lines may be missing: ask for the file anew, or compare the rooms."


def torn_dxf(data: bytes) -> list[str]:
    """A sentence for each way in which the text is not whole; a binary one is not looked at."""
    if data.startswith(_BINARY):
        return []
    lines = data.rstrip().split(b"\n")
    codes = b"\n".join(lines[::2]) + b"\n"
    whole = _CODES.match(codes)
    good = whole[0].count(b"\n") if whole else 0
    if good < (len(lines) + 1) // 2:
        return [f"From line {2 * good + 1} on codes and values are out of step. {_LOOK}"]
    if lines[-1].strip() != b"EOF":
        return [f"The file breaks off before its end. {_LOOK}"]
    return []
