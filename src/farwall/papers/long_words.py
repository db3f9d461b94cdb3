"""Words longer than any column: they may break every few letters, and take no more room for it."""

from __future__ import annotations

import re

_LONG = re.compile(r"[^\W\d_\u0590-\u08ff\u2e80-\uffff]{19,}|[\w.@/-]{25,}")
"""Arabic joins its letters and must not be cut; Chinese, Japanese and Korean break anywhere."""
_STEP = 9
_BREAK = "\u200b"


def breakable(text: str) -> str:
    """The text with places inside its overlong words at which a line may end."""
    return _LONG.sub(
        lambda word: _BREAK.join(word[0][at : at + _STEP] for at in range(0, len(word[0]), _STEP)),
        text,
    )
