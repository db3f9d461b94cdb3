"""Words for a terminal or a pipe that cannot show every letter: an older console, say."""

from __future__ import annotations

import codecs
import io
import sys
import unicodedata
from collections.abc import Sequence

_SIMPLER = {
    "°": "deg ", "×": "x", "·": "-", "–": "-", "—": "-", "−": "-", "’": "'", "\u2018": "'",
    "“": '"', "”": '"', "→": "->", "≤": "<=", "≥": ">=", "≈": "about ", "µ": "u", "\u2044": "/",
}  # fmt: skip
_NAME = "farwall-simpler"


def simpler(text: str) -> str:
    """The nearest in plain letters: `ft²` is `ft2`, `70 °F` is `70 deg F`; `?` where none is."""
    apart = "".join(_SIMPLER.get(one, one) for one in text)
    apart = "".join(_SIMPLER.get(one, one) for one in unicodedata.normalize("NFKD", apart))
    bare = "".join(one for one in apart if not unicodedata.combining(one))
    return bare.encode("ascii", "replace").decode("ascii")


def let_all_be_said(words: Sequence[str]) -> None:
    """Have what this process prints never fail for a letter that the place it goes to lacks.

    words: those of the command. JSON is UTF-8 wherever it goes (RFC 8259, 8.1).
    """
    codecs.register_error(_NAME, _instead)
    for stream in (sys.stdout, sys.stderr):
        if not isinstance(stream, io.TextIOWrapper) or _holds_all(stream.encoding):
            continue
        if "--json" in words and stream is sys.stdout:
            stream.reconfigure(encoding="utf-8")
        else:
            stream.reconfigure(errors=_NAME)


def _holds_all(encoding: str) -> bool:
    return codecs.lookup(encoding).name.startswith("utf")


def _instead(error: UnicodeError) -> tuple[str, int]:
    if not isinstance(error, UnicodeEncodeError):
        raise error
    return simpler(error.object[error.start : error.end]), error.end
