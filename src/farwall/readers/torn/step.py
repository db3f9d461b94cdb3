"""Whether the text of a STEP file is whole: statements, numbers and references.

The library that reads it passes over a statement that it cannot make out, and a room may go with
it. Source: ISO 10303-21, clause 6 to 9 (the grammar; from memory).
"""

from __future__ import annotations

import re
from collections import Counter

_TEXTS = re.compile(rb"'[^']*'|/\*.*?\*/", re.DOTALL)
_SECTION = re.compile(rb"\bDATA\s*(?:\([^;]*\))?;(.*?)(?:\bENDSEC\s*;|\Z)", re.DOTALL)
_STATEMENT = re.compile(rb"\s*#(\d+)\s*=\s*[A-Za-z_]?\w*\s*\([^'\"]*\)\s*", re.DOTALL)
_REFERENCE = re.compile(rb"#(\d+)")
_QUOTED = re.compile(rb'"[0-9A-Fa-f]*"')
_END = b"END-ISO-10303-21"
_LOOK = "Something of the building may be missing: export it anew, or compare the rooms."


def torn_step(data: bytes) -> list[str]:
    """A sentence for each way in which the data section is not whole."""
    bare = _QUOTED.sub(b"0", _TEXTS.sub(_aside if b"/*" in data else b"0", data))
    found: list[str] = []
    if _END not in bare[-200:]:
        found.append(f"The file breaks off before its end. {_LOOK}")
    known: Counter[int] = Counter()
    named: set[int] = set()
    broken = 0
    sections = list(_SECTION.finditer(bare))
    if not sections:
        found.append(f"Where its data begin cannot be made out. {_LOOK}")
    for section in sections:
        *statements, rest = section[1].split(b";")
        broken += bool(rest.strip())
        for statement in statements:
            whole = _STATEMENT.fullmatch(statement)
            if whole is None:
                broken += bool(statement.strip())
                continue
            known[int(whole[1])] += 1
            named.update(int(number) for number in _REFERENCE.findall(statement, whole.end(1)))
    if broken:
        found.append(f"{broken} × statement that could not be made out was passed over. {_LOOK}")
    double = sorted(number for number, count in known.items() if count > 1)
    if double:
        found.append(f"{_numbers(double)} stands for more than one thing. {_LOOK}")
    lost = sorted(named - known.keys())
    if lost:
        found.append(f"{_numbers(lost)} is referred to and not there. {_LOOK}")
    return found


def _aside(found: re.Match[bytes]) -> bytes:
    """A text stands for a value, a remark for nothing."""
    return b" " if found[0].startswith(b"/*") else b"0"


def _numbers(numbers: list[int]) -> str:
    shown = ", ".join(f"#{str(number)[:20]}" for number in numbers[:3])
    return shown if len(numbers) <= 3 else f"{shown} and {len(numbers) - 3} more numbers"
